using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Purlin.Journal;

namespace Purlin.Reckoning.Structure.Floor;

/// <summary>What one survey says once its plane and its profiles are known.</summary>
internal sealed class FloorReading(ImmutableArray<FloorPoint> points, LevelPlane plane, ImmutableArray<FloorSegment> segments,
    double accuracyInches)
{
    // So that 1/360 itself, computed in floating point, is not called sharper than 1/360.
    private const double Slack = 1e-9;

    public ImmutableArray<FloorPoint> Points { get; } = points;

    public LevelPlane Plane { get; } = plane;

    public double AccuracyInches { get; } = accuracyInches;

    public FloorPoint High { get; } = points.MaxBy(point => point.LevelInches)!;

    public FloorPoint Low { get; } = points.MinBy(point => point.LevelInches)!;

    /// <summary>
    /// The sharpest bend among those larger than the survey is accurate; the sharpest of all where none is. None without a point between
    /// two others.
    /// </summary>
    public FloorSegment? Worst => segments.FirstOrDefault(Readable) ?? segments.FirstOrDefault();

    /// <summary>The same among whole profiles.</summary>
    public FloorSegment? WorstWhole => Whole.FirstOrDefault(Readable) ?? Whole.FirstOrDefault();

    private IEnumerable<FloorSegment> Whole => segments.Where(segment => segment.Whole);

    /// <summary>True inside both limits, false outside one, null where the readings cannot show a bend.</summary>
    public bool? Verdict(double tiltPercent, double oneIn) =>
        Plane.TiltPercent > tiltPercent * (1 + Slack) || Bends(oneIn) == true ? false : Worst is null ? null : true;

    public Said Because(double tiltPercent, double oneIn)
    {
        var leans = Plane.TiltPercent > tiltPercent * (1 + Slack) ? "more" : "within";
        Filled[] tilt = [("tilt", Plane.TiltPercent, "%"), ("leans", leans), ("most", tiltPercent, "%")];
        if (Worst is not { } worst) return new("floor-reading.because.no-bend", tilt);
        Filled[] bend = [.. tilt, ("read", Readable(worst) ? "yes" : "no"), ("one-in", oneIn)];
        return worst.DeflectionInches == 0
            ? new("floor-reading.because.flat", bend)
            : new("floor-reading.because.bend",
                [.. bend, ("found", 1 / worst.Ratio), ("bends", Bends(oneIn) == true ? "sharper" : "within")]);
    }

    public void Write(Worksheet sheet, int mostLines)
    {
        sheet.Result("points", Points.Length);
        sheet.Result("high", Spot(High));
        sheet.Result("low", Spot(Low));
        sheet.Result("range", sheet.Step("floor-reading.step.range-highest-lowest", High.LevelInches - Low.LevelInches, "in",
            ("high", High.Label), ("low", Low.Label)), "in");
        WritePlane(sheet);
        sheet.Result("pairs_examined", segments.Length);
        sheet.Result("lines_examined", Whole.Count());
        sheet.Result("deflection", Worst is { } worst ? Bend(worst) : null);
        sheet.Result("line_deflection", WorstWhole is { } whole ? Bend(whole) : null);
        sheet.Result("lines", new JsonArray([.. Whole.Take(mostLines).Select(line => (JsonNode)Bend(line))]));
        sheet.Result("levels", new JsonArray([.. Points.Select(point => (JsonNode)Spot(point))]));
        if (Worst is not { } sharpest) return;
        sheet.Step("floor-reading.step.sharpest-bend-two-readings", sharpest.DeflectionInches, "in", ("from", sharpest.From.Label),
            ("to", sharpest.To.Label), ("at", sharpest.At.Label));
        sheet.Step("floor-reading.step.effective-length-part", sharpest.LengthInches, "in");
        if (sharpest.DeflectionInches != 0) sheet.Step("floor-reading.step.length-over-deflection", 1 / sharpest.Ratio);
        if (!Readable(sharpest)) sheet.Step("floor-reading.step.no-bend-larger-survey", AccuracyInches, "in");
        else if (segments[0] != sharpest)
            sheet.Step("floor-reading.step.bends-less-not-judged", AccuracyInches, "in", ("accuracy-inches", AccuracyInches, "in"));
    }

    public JsonNode[] Against(double tiltPercent, double oneIn) =>
    [
        new JsonObject
        {
            ["name"] = "tilt", ["found"] = Worksheet.Quantity(Plane.TiltPercent, "%"), ["limit"] = Worksheet.Quantity(tiltPercent, "%"),
            ["verdict"] = Plane.TiltPercent > tiltPercent * (1 + Slack) ? "outside" : "within",
        },
        new JsonObject
        {
            ["name"] = "deflection", ["found"] = Worst is { DeflectionInches: not 0 } worst ? 1 / worst.Ratio : null, ["limit"] = oneIn,
            ["verdict"] = Bends(oneIn) switch { true => "outside", false => "within", null => "cannot say" },
        },
    ];

    private bool? Bends(double oneIn) => Worst is not { } worst ? null : Readable(worst) && worst.Ratio * oneIn > 1 + Slack;

    private bool Readable(FloorSegment segment) => Math.Abs(segment.DeflectionInches) > AccuracyInches * (1 + Slack);

    private void WritePlane(Worksheet sheet)
    {
        var off = Points.Select(Plane.Residual).ToArray();
        sheet.Say("floor-reading.step.best-fit-plane-least", ("a", Plane.A), ("b", Plane.B), ("c", Plane.C, "in"));
        sheet.Result("tilt_x", sheet.Step("floor-reading.step.tilt-along", Plane.TiltXPercent, "%"), "%");
        sheet.Result("tilt_y", sheet.Step("floor-reading.step.tilt-along-2", Plane.TiltYPercent, "%"), "%");
        sheet.Result("tilt", sheet.Step("floor-reading.step.tilt-plane", Plane.TiltPercent, "%"), "%");
        sheet.Result("falls_toward", Plane.TiltPercent == 0 ? null : Worksheet.Quantity(Plane.FallDegrees, "°"));
        sheet.Result("plane", new JsonObject
        {
            ["a"] = Worksheet.Quantity(Plane.A, "in/ft"),
            ["b"] = Worksheet.Quantity(Plane.B, "in/ft"),
            ["c"] = Worksheet.Quantity(Plane.C, "in")
        });
        sheet.Result("residual_rms",
            sheet.Step("floor-reading.step.scatter-about-plane-root", Math.Sqrt(off.Average(value => value * value)), "in"), "in");
        sheet.Result("residual_max", off.Max(), "in");
        sheet.Result("residual_min", off.Min(), "in");
    }

    private JsonObject Spot(FloorPoint point) => new()
    {
        ["label"] = point.Label,
        ["x"] = Worksheet.Quantity(point.XFeet, "ft"),
        ["y"] = Worksheet.Quantity(point.YFeet, "ft"),
        ["level"] = Worksheet.Quantity(point.LevelInches, "in"),
        ["residual"] = Worksheet.Quantity(Plane.Residual(point), "in"),
    };

    private JsonObject Bend(FloorSegment segment) => new()
    {
        ["from"] = Spot(segment.From),
        ["to"] = Spot(segment.To),
        ["at"] = Spot(segment.At),
        ["between"] = segment.Between,
        ["deflection"] = Worksheet.Quantity(segment.DeflectionInches, "in"),
        ["effective_length"] = Worksheet.Quantity(segment.LengthInches, "in"),
        ["one_in"] = segment.DeflectionInches == 0 ? null : 1 / segment.Ratio,
        ["shape"] = segment.DeflectionInches switch { > 0 => "crown", < 0 => "dish", _ => "straight" },
        ["whole"] = segment.Whole,
        ["readable"] = Readable(segment),
    };
}
