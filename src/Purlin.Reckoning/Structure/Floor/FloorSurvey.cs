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
        Inputs =
        [
            new Input.List("points", "floor-survey.input.points", [
                new Input.Quantity("x", "floor-survey.input.points.x", "ft", -1000, 1000) { Required = true },
                new Input.Quantity("y", "floor-survey.input.points.y", "ft", -1000, 1000) { Required = true },
                new Input.Quantity("reading", "floor-survey.input.points.reading", "in", -240, 240) { Required = true },
                new Input.Quantity("covering", "floor-survey.input.points.covering", "in", -12, 12),
                new Input.Text("label", "floor-survey.input.points.label", 40)], FewestPoints, MostPoints) { Required = true },
            new Input.Quantity("reference_covering", "floor-survey.input.reference-covering", "in", -12, 12),
            new Input.List("outline", "floor-survey.input.outline", [
                new Input.Quantity("x", "floor-survey.input.outline.x", "ft", -1000, 1000) { Required = true },
                new Input.Quantity("y", "floor-survey.input.outline.y", "ft", -1000, 1000) { Required = true }], 3, 200),
            new Input.Group("criteria", "floor-survey.input.criteria", [
                new Input.Quantity("tilt", "floor-survey.input.criteria.tilt", "%", 0.01, 100),
                new Input.Quantity("deflection", "floor-survey.input.criteria.deflection", "", 10, 10_000)]),
            new Input.Quantity("alignment", "floor-survey.input.alignment", "ft", 0.01, 2),
            new Input.Quantity("contour_interval", "floor-survey.input.contour-interval", "in", 0.01, 50),
        ],
        Sources = [.. Criteria.Rows.Select(row => row.Source).Distinct()],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        var sheet = new Worksheet(Calculation, given);
        var all = Correct(sheet, given);
        if (LevelPlane.Fit(all) is null)
            return new Refusal("points", "floor-survey.given.readings-line", "floor-survey.allowed.readings-spread-over-floor");
        var outline = Outline(sheet, given, all);
        if (outline.AreaSquareFeet < 1)
            return new Refusal("outline", "floor-survey.given.corners-enclose-no-area", "floor-survey.allowed.corners-order-round-floor");
        var accuracy = Criterion("accuracy").Number("value");
        var stray = StrayReading.Find(all, Criterion("stray").Number("value"), accuracy);
        var kept = stray is { } found ? all.Remove(found.Point) : all;
        if (LevelPlane.Fit(kept) is not { } plane) (stray, kept, plane) = (null, all, LevelPlane.Fit(all)!.Value);
        var interval = given.NumberOrNone("contour_interval");
        var range = kept.Max(point => point.LevelInches) - kept.Min(point => point.LevelInches);
        if (interval is { } step && range / step > MostLevels)
            return new Refusal("contour_interval", new("refused.given.0.###", ("given", step, "in")),
                new("floor-survey.allowed.more-readings-apart-lines", ("range", range / MostLevels, "in"), ("whole", range, "in")));

        var alignment = sheet.Or("alignment", 0.25, "ft", "floor-survey.why.tape-laid-eye");
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
            ? sheet.Or("reference_covering", 0, "in", "floor-survey.why.moves-every-level-alike")
            : 0;
        if (points.Any(point => point.Has("covering"))) sheet.Say("floor-survey.step.level-point-reading-covering");
        else sheet.Say("floor-survey.step.no-coverings-given-readings");
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
        sheet.Say("floor-survey.step.outline-not-given-contours");
        return Polygon.Around(points.Select(point => (point.XFeet, point.YFeet)));
    }

    private static void SetAside(Worksheet sheet, FloorPoint point, double inches)
    {
        sheet.Step("floor-survey.step.reading-stands-what-readings", inches, "in", ("label", point.Label),
            ("inches", Math.Abs(inches), "in"), ("side", inches > 0 ? "above" : "below"));
        sheet.Caution("floor-survey.caution.reading-does-not-agree", ("label", point.Label));
        sheet.From(Criterion("stray").Source);
    }

    private static void Contour(Worksheet sheet, FloorReading reading, double? asked, double range, Polygon outline)
    {
        var interval = asked ?? FloorContours.Interval(range);
        if (asked is null) sheet.Step("floor-survey.step.contour-interval-not-given", interval, "in", ("interval", interval, "in"));
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

    private static Checked<Working> Judge(Worksheet sheet, Given given, FloorReading reading, ImmutableArray<FloorPoint> all,
        FloorPoint? stray, double alignment)
    {
        var limits = Limits(sheet, given.Group("criteria"));
        sheet.Result("criteria", new JsonArray(reading.Against(limits.Tilt, limits.Deflection)));
        sheet.Result("stray", stray is null ? null
            : new JsonObject { ["label"] = stray.Label, ["index"] = stray.Index, ["level"] = Worksheet.Quantity(stray.LevelInches, "in") });
        sheet.From(Criterion("effective-length").Source);
        sheet.From(Criterion("accuracy").Source);
        sheet.Say("floor-survey.step.effective-length-distance-between");
        sheet.Caution("floor-survey.caution.survey-shows-shape-day");
        sheet.Caution("floor-survey.caution.these-values-screen-they");
        sheet.Caution("floor-survey.caution.garages-porches-shower-floors");
        var verdict = reading.Verdict(limits.Tilt, limits.Deflection);
        var because = reading.Because(limits.Tilt, limits.Deflection);
        if (stray is not null)
        {
            var plane = LevelPlane.Fit(all)!.Value;
            var with = new FloorReading(all, plane, FloorProfiles.Find(all, plane, alignment), reading.AccuracyInches);
            because = new("floor-survey.because.without", ("label", stray.Label), ("because", because));
            var edge = Polygon.Around(all.Select(point => (point.XFeet, point.YFeet))).ToEdge((stray.XFeet, stray.YFeet)) <= alignment;
            // A lone drop at the edge can be real; in the middle of a floor it cannot.
            if (edge && with.Verdict(limits.Tilt, limits.Deflection) != verdict)
                return sheet.CannotSay("floor-survey.because.floor-outside-lone-drop", ("because", because));
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
                sheet.Step("floor-survey.step.limit-given-user", limit, unit, ("name", Words.Of(name)));
                sheet.From($"limit of {name} as given");
                return limit;
            }
            var row = Criterion(name);
            sheet.From(row.Source);
            return sheet.Step("floor-survey.step.limit-not-given-published", row.Number("value"), unit, ("name", Words.Of(name)));
        }
    }

    private static TableRow Criterion(string name) => Criteria.Rows.First(row => row["criterion"] == name);
}
