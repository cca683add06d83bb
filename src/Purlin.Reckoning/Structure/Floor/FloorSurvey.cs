using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Purlin.Journal;

namespace Purlin.Reckoning.Structure.Floor;

/// <summary>
/// How far a floor leans and bends, from a level survey. Leaning is the slope of the best-fit plane; bending is how far a profile leaves
/// the straight line between two of its readings. A true plane bends nowhere, however much it leans.
/// </summary>
public static class FloorSurvey
{
    private const int FewestPoints = 4;
    private const int MostPoints = 500;
    private const int MostLines = 24;
    private const int MostLevels = 40;

    private static readonly Table Criteria = Tables.Read("structure/floor-criteria.csv");

    /// <summary>The reckoning.</summary>
    public static Calculation Calculation { get; } = new()
    {
        Name = "floor-survey",
        Title = "Floor: level survey",
        Purpose = "How far a floor leans and bends, from readings of a level taken over it.",
        Inputs =
        [
            new Input.List("points", "the readings", [
                new Input.Quantity("x", "distance along the house from any corner", "ft", -1000, 1000) { Required = true },
                new Input.Quantity("y", "distance across the house from the same corner", "ft", -1000, 1000) { Required = true },
                new Input.Quantity("reading", "height of the finished floor there, higher is more", "in", -240, 240) { Required = true },
                new Input.Quantity("covering", "thickness of the floor covering there, or the running offset found at thresholds", "in", -12, 12),
                new Input.Text("label", "what the reading is called", 40)], FewestPoints, MostPoints) { Required = true },
            new Input.Quantity("reference_covering", "thickness of the covering where the level was set to zero", "in", -12, 12),
            new Input.List("outline", "corners of the floor, in order round it", [
                new Input.Quantity("x", "along", "ft", -1000, 1000) { Required = true },
                new Input.Quantity("y", "across", "ft", -1000, 1000) { Required = true }], 3, 200),
            new Input.Group("criteria", "limits other than the published ones", [
                new Input.Quantity("tilt", "greatest tilt", "%", 0.01, 100),
                new Input.Quantity("deflection", "the n of the greatest deflection 1/n", "", 10, 10_000)]),
            new Input.Quantity("alignment", "how far a reading may lie off a line and still belong to it", "ft", 0.01, 2),
            new Input.Quantity("contour_interval", "step between contour lines", "in", 0.01, 50),
        ],
        Sources = [.. Criteria.Rows.Select(row => row.Source).Distinct()],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        var sheet = new Worksheet(Calculation, given);
        var all = Correct(sheet, given);
        if (LevelPlane.Fit(all) is null) return new Refusal("points", "readings in one line", "readings spread over the floor: a line does not say how the floor leans across it");
        var outline = Outline(sheet, given, all);
        if (outline.AreaSquareFeet < 1) return new Refusal("outline", "corners that enclose no area", "corners in order round the floor");
        var accuracy = Criterion("accuracy").Number("value");
        var stray = StrayReading.Find(all, Criterion("stray").Number("value"), accuracy);
        var kept = stray is { } found ? all.Remove(found.Point) : all;
        if (LevelPlane.Fit(kept) is not { } plane) (stray, kept, plane) = (null, all, LevelPlane.Fit(all)!.Value);
        var interval = given.NumberOrNone("contour_interval");
        var range = kept.Max(point => point.LevelInches) - kept.Min(point => point.LevelInches);
        if (interval is { } step && range / step > MostLevels) return new Refusal("contour_interval", $"{step:0.###} in", $"{range / MostLevels:0.###} in or more for readings {range:0.##} in apart, so that the lines can be told apart");

        var alignment = sheet.Or("alignment", 0.25, "ft", "a tape laid by eye");
        var reading = new FloorReading(kept, plane, FloorProfiles.Find(kept, plane, alignment), accuracy);
        if (stray is { } aside) SetAside(sheet, aside.Point, aside.Inches);
        reading.Write(sheet, MostLines);
        Contour(sheet, reading, interval, range, outline);
        return Judge(sheet, given, reading, all, stray?.Point, alignment);
    }

    private static ImmutableArray<FloorPoint> Correct(Worksheet sheet, Given given)
    {
        var points = given.List("points");
        var reference = points.Any(point => point.Has("covering"))
            ? sheet.Or("reference_covering", 0, "in", "it moves every level alike and changes neither tilt nor bend")
            : 0;
        if (points.Any(point => point.Has("covering"))) sheet.Say("Level at each point = reading − covering there + covering at the reference");
        else sheet.Say("No coverings given: the readings are taken as they are");
        return [.. points.Select((point, index) => new FloorPoint
        {
            Index = index,
            Label = point.TextOrNone("label") ?? $"{index + 1}",
            XFeet = point.Number("x"),
            YFeet = point.Number("y"),
            LevelInches = point.Number("reading") - (point.NumberOrNone("covering") ?? 0) + reference,
        })];
    }

    private static Polygon Outline(Worksheet sheet, Given given, ImmutableArray<FloorPoint> points)
    {
        if (given.Has("outline")) return new Polygon([.. given.List("outline").Select(corner => (corner.Number("x"), corner.Number("y")))]);
        sheet.Say("Outline not given: contours are drawn inside the outermost readings");
        return Polygon.Around(points.Select(point => (point.XFeet, point.YFeet)));
    }

    private static void SetAside(Worksheet sheet, FloorPoint point, double inches)
    {
        sheet.Step($"Reading {point.Label} stands {Math.Abs(inches):0.0#} in {(inches > 0 ? "above" : "below")} what the readings round it foretell; it is left out", inches, "in");
        sheet.Caution($"Reading {point.Label} does not agree with its neighbours and was left out. Take it again before relying on this survey.");
        sheet.From(Criterion("stray").Source);
    }

    private static void Contour(Worksheet sheet, FloorReading reading, double? asked, double range, Polygon outline)
    {
        var interval = asked ?? FloorContours.Interval(range);
        if (asked is null) sheet.Step($"Contour interval not given: {interval:0.##} in taken (at most a dozen lines)", interval, "in");
        var field = new LevelField(reading.Points, reading.Plane, outline.AreaSquareFeet);
        var grid = FloorContours.Grid(field, outline);
        sheet.Result("contour_interval", interval, "in");
        sheet.Result("contours", new JsonArray([.. FloorContours.Levels(reading.Low.LevelInches, reading.High.LevelInches, interval)
            .Select(level => (Level: level, Lines: FloorContours.At(level, grid, outline))).Where(contour => contour.Lines.Length > 0)
            .Select(contour => (JsonNode)new JsonObject
            {
                ["level"] = Worksheet.Quantity(contour.Level, "in"),
                ["unit"] = "ft",
                ["lines"] = new JsonArray([.. contour.Lines.Select(line => (JsonNode)new JsonArray([.. line.Select(at => (JsonNode)new JsonArray(at.X, at.Y))]))]),
            })]));
    }

    private static Checked<Working> Judge(Worksheet sheet, Given given, FloorReading reading, ImmutableArray<FloorPoint> all, FloorPoint? stray, double alignment)
    {
        var limits = Limits(sheet, given.Group("criteria"));
        sheet.Result("criteria", new JsonArray(reading.Against(limits.Tilt, limits.Deflection)));
        sheet.Result("stray", stray is null ? null : new JsonObject { ["label"] = stray.Label, ["index"] = stray.Index, ["level"] = Worksheet.Quantity(stray.LevelInches, "in") });
        sheet.From(Criterion("effective-length").Source);
        sheet.From(Criterion("accuracy").Source);
        sheet.Say($"Effective length is the distance between the two ends of the part of a profile that is judged ({Criterion("effective-length")["mark"]})");
        sheet.Caution("One survey shows the shape on one day. Movement shows only against an earlier survey.");
        sheet.Caution("These values screen; they do not diagnose. A licensed structural engineer judges a floor that exceeds them, or that shows cracks, sticking doors or other signs.");
        sheet.Caution("Garages, porches, shower floors and additions may slope on purpose and are surveyed apart.");
        var verdict = reading.Verdict(limits.Tilt, limits.Deflection);
        var because = reading.Because(limits.Tilt, limits.Deflection);
        if (stray is not null)
        {
            var plane = LevelPlane.Fit(all)!.Value;
            var with = new FloorReading(all, plane, FloorProfiles.Find(all, plane, alignment), reading.AccuracyInches);
            because = $"Without reading {stray.Label}, which must be taken again: {because}";
            var edge = Polygon.Around(all.Select(point => (point.XFeet, point.YFeet))).ToEdge((stray.XFeet, stray.YFeet)) <= alignment;
            // A lone drop at the edge can be real; in the middle of a floor it cannot.
            if (edge && with.Verdict(limits.Tilt, limits.Deflection) != verdict) return sheet.CannotSay($"{because} With it the floor is outside, and a lone drop at an edge can be real.");
        }
        return verdict switch
        {
            true => sheet.Within(because),
            false => sheet.Outside(because),
            null => sheet.CannotSay(because),
        };
    }

    private static (double Tilt, double Deflection) Limits(Worksheet sheet, Given? own)
    {
        return (Limit("tilt", "%"), Limit("deflection", "one in"));

        double Limit(string name, string unit)
        {
            if (own?.NumberOrNone(name) is { } limit)
            {
                sheet.Step($"Limit of {name} given by the user", limit, unit);
                sheet.From($"limit of {name} given by the user");
                return limit;
            }
            var row = Criterion(name);
            sheet.From(row.Source);
            return sheet.Step($"Limit of {name} not given: the published screening value is taken ({row.Source})", row.Number("value"), unit);
        }
    }

    private static TableRow Criterion(string name) => Criteria.Rows.First(row => row["criterion"] == name);
}
