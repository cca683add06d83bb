using Purlin.Journal;

namespace Purlin.Reckoning.Water;

/// <summary>Whether a drain falls enough to carry what it carries; a trap arm must not fall too much either.</summary>
public static class DrainSlope
{
    // A level reads no finer than this; so that 2.5 in over 10 ft, measured in millimetres, still is a quarter inch a foot.
    private const double Slack = 1e-9;

    private static readonly Table Slopes = Tables.Read("water/drain-slope.csv");
    private static readonly Table TrapArms = Tables.Read("water/trap-arm.csv");

    /// <summary>The reckoning.</summary>
    public static Calculation Calculation { get; } = new()
    {
        Name = "drain-slope",
        Title = "Drain: slope",
        Purpose = "Whether a drain falls enough for its size.",
        Inputs =
        [
            new Input.Quantity("run", "length along the drain", "ft", 0.5, 1000) { Required = true },
            new Input.Quantity("fall", "drop over that length; negative where it runs backwards", "in", -240, 1200) { Required = true },
            new Input.Quantity("diameter", "size of the pipe", "in", 1, 12) { Required = true },
            new Input.Flag("trap_arm", "it is the arm from a trap to its vent"),
        ],
        Sources = [Slopes.Source, TrapArms.Source],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        var (run, fall, diameter) = (given.Number("run"), given.Number("fall"), given.Number("diameter"));
        var sheet = new Worksheet(Calculation, given);
        var row = Slopes.Rows.First(row => diameter <= row.Number("diameter_most_in") + Slack);
        sheet.From(row.Source);
        var slope = sheet.Result("slope", sheet.Step("Slope = fall / run", fall / run, "in/ft"), "in/ft");
        var least = sheet.Result("least", sheet.Step($"Least slope for {diameter:0.##} in pipe", row.Number("inches_per_foot"), "in/ft"), "in/ft");
        sheet.Result("least_fall", sheet.Step("Least fall over this run = least slope × run", least * run, "in"), "in");
        sheet.Result("slope_percent", 100 * slope / 12, "%");
        if (fall < 0) return sheet.Outside($"It runs backwards by {-fall:0.##} in; water and waste stand in it.");
        if (slope < least - Slack) return sheet.Outside($"It falls {slope:0.###} in a foot, less than {least:0.####}; {least * run - fall:0.##} in more over this run would do.");
        return given.Flag("trap_arm") ? TrapArm(sheet, run, fall, diameter, least) : sheet.Within($"It falls {slope:0.###} in a foot, at least {least:0.####}.");
    }

    private static Checked<Working> TrapArm(Worksheet sheet, double run, double fall, double diameter, double least)
    {
        sheet.From(TrapArms.Source);
        sheet.Result("most_fall", sheet.Step("Greatest fall of a trap arm = one pipe diameter", diameter, "in"), "in");
        var row = TrapArms.Rows.FirstOrDefault(row => Math.Abs(row.Number("diameter_in") - diameter) < 0.01);
        if (row is not null)
        {
            sheet.From(row.Source);
            sheet.Result("most_run", sheet.Step($"Longest trap arm of {diameter:0.##} in", row.Number("feet_most"), "ft"), "ft");
        }
        if (fall > diameter + Slack) return sheet.Outside($"As a trap arm it falls {fall:0.##} in, more than its diameter; its vent can lie below the water of the trap.");
        if (row is not null && run > row.Number("feet_most") + Slack) return sheet.Outside($"As a trap arm it is {run:0.#} ft long, more than {row.Number("feet_most"):0} ft.");
        return row is null
            ? sheet.CannotSay("No longest trap arm is published for this size.")
            : sheet.Within($"As a trap arm it falls at least {least:0.####} in a foot and no more than its diameter.");
    }
}
