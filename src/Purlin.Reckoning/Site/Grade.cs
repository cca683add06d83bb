using Purlin.Journal;

namespace Purlin.Reckoning.Site;

/// <summary>Whether the ground beside a house leads water away, over the whole strip and inside it.</summary>
public static class Grade
{
    private const double Slack = 1e-9;

    private static readonly Table Limits = Tables.Read("site/grade.csv");

    /// <summary>The reckoning.</summary>
    public static Calculation Calculation { get; } = new()
    {
        Name = "grade",
        Inputs =
        [
            new Input.List("points", "grade.input.points", [
                new Input.Quantity("distance", "grade.input.points.distance", "ft", 0, 100) { Required = true },
                new Input.Quantity("level", "grade.input.points.level", "in", -1200, 1200) { Required = true }], 2, 50) { Required = true },
            new Input.Choice("surface", "grade.input.surface", ["soil", "hard"]),
            new Input.Choice("reads", "grade.input.reads", ["elevation", "rod"]),
            new Input.Quantity("barrier", "grade.input.barrier", "ft", 0.5, 100),
            new Input.Flag("drained", "grade.input.drained"),
            new Input.Choice("edition", "grade.input.edition", ["2006", "later"]),
        ],
        Sources = [.. Limits.Rows.Select(row => row.Source).Distinct()],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        var sheet = new Worksheet(Calculation, given);
        var hard = sheet.WordOr("surface", "soil", "grade.why.stricter-two-rules") == "hard";
        var rod = sheet.WordOr("reads", "elevation", "grade.why.larger-level-higher-ground") == "rod";
        var points = given.List("points").Select(point => (Feet: point.Number("distance"), Inches: (rod ? -1 : 1) * point.Number("level")))
            .OrderBy(point => point.Feet).ToArray();
        if (points.Zip(points.Skip(1), (a, b) => b.Feet - a.Feet).Any(step => step <= 0))
            return new Refusal("points", "grade.given.two-readings-distance", "grade.allowed.reading-distance-wall");
        if (points[0].Feet > 1)
            return new Refusal("points", new("grade.given.first-reading", ("points", points[0].Feet, "ft")),
                "grade.allowed.reading-wall-within-ft");
        var strip = Value(sheet, "distance");
        var reach = Math.Min(Math.Min(points[^1].Feet, given.NumberOrNone("barrier") ?? strip), strip);
        if (reach <= points[0].Feet)
            return new Refusal("barrier", new("refused.given", ("given", given.NumberOrNone("barrier") ?? strip, "ft")),
                "grade.allowed.further-out-first-reading");
        var fall = sheet.Result("fall",
            sheet.Step("grade.step.fall-wall-level-wall", points[0].Inches - LevelAt(points, reach), "in", ("reach", reach, "ft")), "in");
        var slope = sheet.Result("slope", sheet.Step("grade.step.slope-fall-distance", 100 * fall / (12 * (reach - points[0].Feet)), "%"),
            "%");
        sheet.Result("measured_to", reach, "ft");
        var rise = Rise(sheet, points.Where(point => point.Feet <= reach + Slack).ToArray());
        sheet.Result("class", Class(sheet, hard, reach, fall, slope, rise));
        sheet.Caution("grade.caution.fill-beside-house-settles");
        sheet.Caution("grade.caution.soil-added-must-stay");
        return Judge(sheet, given, hard, reach, fall, slope, rise);
    }

    // Between two readings the ground is taken as straight.
    private static double LevelAt((double Feet, double Inches)[] points, double feet)
    {
        var after = Array.FindIndex(points, point => point.Feet >= feet - Slack);
        if (after == 0 || Math.Abs(points[after].Feet - feet) <= Slack) return points[after].Inches;
        var (a, b) = (points[after - 1], points[after]);
        return a.Inches + (b.Inches - a.Inches) * (feet - a.Feet) / (b.Feet - a.Feet);
    }

    // How far ground further out stands above ground nearer in: the depth of the water it can hold.
    private static double Rise(Worksheet sheet, (double Feet, double Inches)[] points)
    {
        var (lowest, rise, at) = (points[0], 0.0, points[0]);
        foreach (var point in points)
        {
            if (point.Inches - lowest.Inches > rise) (rise, at) = (point.Inches - lowest.Inches, point);
            if (point.Inches < lowest.Inches) lowest = point;
        }
        sheet.Result("reverse", rise > 0 ? sheet.Step("grade.step.rise-inside-strip-up", rise, "in", ("at", at.Feet, "ft")) : 0, "in");
        return rise;
    }

    private static string Class(Worksheet sheet, bool hard, double reach, double fall, double slope, double rise)
    {
        if (slope < -Value(sheet, "flat")) return "negative";
        if (rise > Value(sheet, "reversed")) return "reversed inside the strip";
        if (Math.Abs(slope) <= Value(sheet, "flat")) return "flat";
        var enough = hard ? slope >= Value(sheet, "hard-slope") - Slack
            : fall >= Value(sheet, "soil-fall") * reach / Value(sheet, "distance") - Slack;
        return enough ? "meets" : "positive but too little";
    }

    private static Checked<Working> Judge(Worksheet sheet, Given given, bool hard, double reach, double fall, double slope, double rise)
    {
        if (slope < 0) return sheet.Outside("grade.because.ground-falls-toward-wall", ("fall", -fall, "in"), ("reach", reach, "ft"));
        if (rise > Value(sheet, "reversed")) return sheet.Outside("grade.because.inside-strip-ground-rises", ("rise", rise, "in"));
        if (hard)
        {
            var least = sheet.Result("least_slope", Value(sheet, "hard-slope"), "%");
            return slope >= least - Slack
                ? sheet.Within("grade.because.paving-falls-away-wall", ("slope", slope, "%"), ("least", least, "%"))
                : sheet.Outside("grade.because.paving-falls-away-wall-2", ("slope", slope, "%"), ("least", least, "%"));
        }
        var (distance, needed) = (Value(sheet, "distance"), Value(sheet, "soil-fall"));
        sheet.Result("least_fall", needed, "in");
        if (reach >= distance - Slack)
            return fall >= needed - Slack
                ? sheet.Within("grade.because.ground-falls-over-least", ("fall", fall, "in"), ("distance", distance, "ft"),
                ("needed", needed, "in"))
                : sheet.Outside("grade.because.ground-falls-over-more", ("fall", fall, "in"), ("distance", distance, "ft"),
                ("needed", needed - fall, "in"));
        return given.Has("barrier") ? Barrier(sheet, given, reach, fall, slope)
            : sheet.CannotSay("grade.because.measured-only-rule-over", ("reach", reach, "ft"), ("needed", needed, "in"),
            ("distance", distance, "ft"));
    }

    private static Checked<Working> Barrier(Worksheet sheet, Given given, double reach, double fall, double slope)
    {
        var edition = sheet.WordOr("edition", "later", "grade.why.newer-text-asks-drains");
        var least = Value(sheet, "barrier-slope");
        if (edition == "2006" && slope < least - Slack)
            return sheet.Outside("grade.because.up-barrier-ground-falls", ("reach", reach, "ft"), ("slope", slope, "%"),
                ("least", least, "%"));
        if (!given.Has("drained"))
            return sheet.CannotSay("grade.because.ground-falls-up-barrier", ("fall", fall, "in"), ("reach", reach, "ft"));
        return given.Flag("drained") ? sheet.Within("grade.because.ground-falls-up-barrier-2", ("fall", fall, "in"), ("reach", reach, "ft"))
            : sheet.Outside("grade.because.barrier-ends-strip-no");
    }

    private static double Value(Worksheet sheet, string limit)
    {
        var row = Limits.Rows.Single(row => row["limit"] == limit);
        sheet.From(row.Source);
        return row.Number("value");
    }
}
