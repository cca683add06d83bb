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
        Title = "Grade beside the house",
        Purpose = "Fall of the ground over the first 10 ft from the wall, and water trapped inside the strip.",
        Inputs =
        [
            new Input.List("points", "readings out from the wall", [
                new Input.Quantity("distance", "distance from the wall", "ft", 0, 100) { Required = true },
                new Input.Quantity("level", "level there", "in", -1200, 1200) { Required = true }], 2, 50) { Required = true },
            new Input.Choice("surface", "what the ground is", ["soil", "hard"]),
            new Input.Choice("reads", "what a larger level means: higher ground (elevation), or lower ground read off a rod (rod)", ["elevation", "rod"]),
            new Input.Quantity("barrier", "distance to a lot line, wall or bank that ends the strip", "ft", 0.5, 100),
            new Input.Flag("drained", "a drain or swale takes the water at the barrier"),
            new Input.Choice("edition", "text of the barrier rule", ["2006", "later"]),
        ],
        Sources = [.. Limits.Rows.Select(row => row.Source).Distinct()],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        var sheet = new Worksheet(Calculation, given);
        var hard = sheet.WordOr("surface", "soil", "the stricter of the two rules") == "hard";
        var rod = sheet.WordOr("reads", "elevation", "a larger level is higher ground") == "rod";
        var points = given.List("points").Select(point => (Feet: point.Number("distance"), Inches: (rod ? -1 : 1) * point.Number("level"))).OrderBy(point => point.Feet).ToArray();
        if (points.Zip(points.Skip(1), (a, b) => b.Feet - a.Feet).Any(step => step <= 0)) return new Refusal("points", "two readings at one distance", "one reading at each distance from the wall");
        if (points[0].Feet > 1) return new Refusal("points", $"first reading at {points[0].Feet:0.##} ft", "a reading at the wall, within 1 ft of it");
        var strip = Value(sheet, "distance");
        var reach = Math.Min(Math.Min(points[^1].Feet, given.NumberOrNone("barrier") ?? strip), strip);
        if (reach <= points[0].Feet) return new Refusal("barrier", $"{given.NumberOrNone("barrier"):0.##} ft", "further out than the first reading");
        var fall = sheet.Result("fall", sheet.Step($"Fall from the wall to {reach:0.##} ft = level at the wall − level there", points[0].Inches - LevelAt(points, reach), "in"), "in");
        var slope = sheet.Result("slope", sheet.Step("Slope = 100·fall/(12·distance)", 100 * fall / (12 * (reach - points[0].Feet)), "%"), "%");
        sheet.Result("measured_to", reach, "ft");
        var rise = Rise(sheet, points.Where(point => point.Feet <= reach + Slack).ToArray());
        sheet.Result("class", Class(sheet, hard, reach, fall, slope, rise));
        sheet.Caution("Fill beside a house settles, and slopes grow flatter with the years.");
        sheet.Caution("Soil that is added must stay 6 in below siding and must not bury weeps, vents or a stucco screed.");
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
        sheet.Result("reverse", rise > 0 ? sheet.Step($"Rise inside the strip, up to {at.Feet:0.##} ft", rise, "in") : 0, "in");
        return rise;
    }

    private static string Class(Worksheet sheet, bool hard, double reach, double fall, double slope, double rise)
    {
        if (slope < -Value(sheet, "flat")) return "negative";
        if (rise > Value(sheet, "reversed")) return "reversed inside the strip";
        if (Math.Abs(slope) <= Value(sheet, "flat")) return "flat";
        var enough = hard ? slope >= Value(sheet, "hard-slope") - Slack : fall >= Value(sheet, "soil-fall") * reach / Value(sheet, "distance") - Slack;
        return enough ? "meets" : "positive but too little";
    }

    private static Checked<Working> Judge(Worksheet sheet, Given given, bool hard, double reach, double fall, double slope, double rise)
    {
        if (slope < 0) return sheet.Outside($"The ground falls toward the wall, {-fall:0.#} in over {reach:0.#} ft.");
        if (rise > Value(sheet, "reversed")) return sheet.Outside($"Inside the strip the ground rises {rise:0.#} in, so water can stand there.");
        if (hard)
        {
            var least = sheet.Result("least_slope", Value(sheet, "hard-slope"), "%");
            return slope >= least - Slack ? sheet.Within($"The paving falls {slope:0.0} % away from the wall, at least {least:0} %.") : sheet.Outside($"The paving falls {slope:0.0} % away from the wall, less than {least:0} %.");
        }
        var (distance, needed) = (Value(sheet, "distance"), Value(sheet, "soil-fall"));
        sheet.Result("least_fall", needed, "in");
        if (reach >= distance - Slack) return fall >= needed - Slack ? sheet.Within($"The ground falls {fall:0.0} in over {distance:0} ft, at least {needed:0} in.") : sheet.Outside($"The ground falls {fall:0.0} in over {distance:0} ft; {needed - fall:0.0} in more would do.");
        return given.Has("barrier") ? Barrier(sheet, given, reach, fall, slope) : sheet.CannotSay($"It was measured to {reach:0.#} ft only; the rule is {needed:0} in over {distance:0} ft.");
    }

    private static Checked<Working> Barrier(Worksheet sheet, Given given, double reach, double fall, double slope)
    {
        var edition = sheet.WordOr("edition", "later", "the newer text asks for drains or swales and names no slope");
        var least = Value(sheet, "barrier-slope");
        if (edition == "2006" && slope < least - Slack) return sheet.Outside($"Up to the barrier at {reach:0.#} ft the ground falls {slope:0.0} %, less than {least:0} %.");
        if (!given.Has("drained")) return sheet.CannotSay($"The ground falls {fall:0.0} in up to the barrier at {reach:0.#} ft; whether a drain or swale takes the water there was not recorded.");
        return given.Flag("drained") ? sheet.Within($"The ground falls {fall:0.0} in up to the barrier at {reach:0.#} ft, and a drain or swale takes the water.") : sheet.Outside("A barrier ends the strip, and no drain or swale takes the water there.");
    }

    private static double Value(Worksheet sheet, string limit)
    {
        var row = Limits.Rows.Single(row => row["limit"] == limit);
        sheet.From(row.Source);
        return row.Number("value");
    }
}
