using Purlin.Journal;

namespace Purlin.Reckoning.Water;

/// <summary>Whether a drain falls enough to carry what it carries; a trap arm must not fall too much either.</summary>
public static class DrainSlope
{
    // A level reads no finer than this; so that 2.5 in over 10 ft, measured in millimetres, still is a quarter inch a foot.
    private const double Slack = 1e-9;
    private const string TrapArmKind = "trap arm";

    private static readonly Table Slopes = Tables.Read("water/drain-slope.csv");
    private static readonly Table TrapArms = Tables.Read("water/trap-arm.csv");

    /// <summary>The reckoning.</summary>
    public static Calculation Calculation { get; } = new()
    {
        Name = "drain-slope",
        Inputs =
        [
            new Input.Quantity("run", "drain-slope.input.run", "ft", 0.5, 1000) { Required = true },
            new Input.Quantity("fall", "drain-slope.input.fall", "in", -240, 1200) { Required = true },
            new Input.Quantity("diameter", "drain-slope.input.diameter", "in", 1, 12) { Required = true },
            new Input.Choice("kind", "drain-slope.input.kind", ["drain", TrapArmKind]),
            new Input.Choice("code", "drain-slope.input.code", ["IRC", "UPC"]),
        ],
        Sources = [Slopes.Source, .. TrapArms.Rows.Select(row => row.Source).Distinct()],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        var (run, fall, diameter) = (given.Number("run"), given.Number("fall"), given.Number("diameter"));
        var sheet = new Worksheet(Calculation, given);
        var row = Slopes.Rows.First(row => diameter <= row.Number("diameter_most_in") + Slack);
        sheet.From(row.Source);
        var slope = sheet.Result("slope", sheet.Step("drain-slope.step.slope-fall-run", fall / run, "in/ft"), "in/ft");
        var least = sheet.Result("least", sheet.Step("drain-slope.step.least-slope-pipe", row.Number("inches_per_foot"), "in/ft", ("diameter", diameter, "in")), "in/ft");
        sheet.Result("least_fall", sheet.Step("drain-slope.step.least-fall-over-run", least * run, "in"), "in");
        sheet.Result("slope_percent", 100 * slope / 12, "%");
        if (fall < 0) return sheet.Outside("drain-slope.because.runs-backwards-water-waste", ("fall", -fall, "in"));
        if (slope < least - Slack) return sheet.Outside("drain-slope.because.falls-foot-less-more", ("slope", slope, "in"), ("least", least), ("more", least * run - fall, "in"));
        return given.TextOrNone("kind") == TrapArmKind ? TrapArm(sheet, run, fall, diameter, least, given.TextOrNone("code")) : sheet.Within("drain-slope.because.falls-foot-least", ("slope", slope, "in"), ("least", least));
    }

    private static Checked<Working> TrapArm(Worksheet sheet, double run, double fall, double diameter, double least, string? code)
    {
        sheet.Result("most_fall", sheet.Step("drain-slope.step.greatest-fall-trap-arm", diameter, "in"), "in");
        // Where the code of the place is not known, only what is too long by both of them is outside, and only what fits both is within.
        var rows = TrapArms.Rows.Where(row => Math.Abs(row.Number("diameter_in") - diameter) < 0.01 && (code is null || row["code"] == code))
            .OrderByDescending(row => row.Number("feet_most")).ToArray();
        foreach (var known in rows)
        {
            sheet.From(known.Source);
            sheet.Step("drain-slope.step.longest-trap-arm", known.Number("feet_most"), "ft", ("diameter", diameter, "in"), ("code", known["code"]));
        }
        var row = rows.FirstOrDefault();
        if (row is not null) sheet.Result("most_run", row.Number("feet_most"), "ft");
        if (fall > diameter + Slack) return sheet.Outside("drain-slope.because.trap-arm-falls-more", ("fall", fall, "in"));
        if (row is not null && run > row.Number("feet_most") + Slack) return sheet.Outside("drain-slope.because.trap-arm-long-more", ("run", run, "ft"), ("feet-most", row.Number("feet_most"), "ft"));
        if (row is null) return sheet.CannotSay("drain-slope.because.no-longest-trap-arm");
        var shortest = rows[^1];
        return run > shortest.Number("feet_most") + Slack
            ? sheet.CannotSay("drain-slope.because.trap-arm-codes-differ", ("run", run, "ft"), ("longer", row.Number("feet_most"), "ft"), ("longer-code", row["code"]), ("shorter", shortest.Number("feet_most"), "ft"), ("shorter-code", shortest["code"]))
            : sheet.Within("drain-slope.because.trap-arm-falls-least", ("least", least, "in"));
    }
}
