using Purlin.Journal;

namespace Purlin.Reckoning.Structure;

/// <summary>Whether a person can climb out through a window: its clear opening by height, width and area, and the height of its sill.</summary>
public static class EscapeOpening
{
    private const double Slack = 1e-9;
    private const double SquareInchesPerSquareFoot = 144;

    private static readonly Table Limits = Tables.Read("structure/escape.csv");

    /// <summary>The reckoning.</summary>
    public static Calculation Calculation { get; } = new()
    {
        Name = "escape-opening",
        Inputs =
        [
            new Input.Quantity("height", "escape-opening.input.height", "in", 1, 120) { Required = true },
            new Input.Quantity("width", "escape-opening.input.width", "in", 1, 120) { Required = true },
            new Input.Quantity("sill", "escape-opening.input.sill", "in", 0, 120),
            new Input.Flag("at_grade", "escape-opening.input.at-grade"),
        ],
        Sources = [.. Limits.Rows.Select(row => row.Source).Distinct()],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        var (height, width, sill) = (given.Number("height"), given.Number("width"), given.NumberOrNone("sill"));
        var sheet = new Worksheet(Calculation, given);
        sheet.Caution("escape-opening.caution.open-it");
        var area = sheet.Result("area", sheet.Step("escape-opening.step.area", height * width / SquareInchesPerSquareFoot, "ft²"), "ft²");
        var (lowest, narrowest, highest) = (Limit(sheet, "height"), Limit(sheet, "width"), Limit(sheet, "sill"));
        // Where nobody said how high the ground is outside, only what is too small for both is outside, and only what is enough for both is within.
        var (full, grade) = (Limit(sheet, "area"), Limit(sheet, "area-grade"));
        var least = given.Has("at_grade") && !given.Flag("at_grade") ? full : grade;
        var enough = given.Flag("at_grade") ? grade : full;
        sheet.Result("least_area", sheet.Step("escape-opening.step.least-area", least, "ft²"), "ft²");
        if (height < lowest - Slack) return sheet.Outside("escape-opening.because.low", ("height", height, "in"), ("least", lowest, "in"));
        if (width < narrowest - Slack) return sheet.Outside("escape-opening.because.narrow", ("width", width, "in"), ("least", narrowest, "in"));
        if (area < least - Slack) return sheet.Outside("escape-opening.because.small", ("area", area, "ft²"), ("least", least, "ft²"));
        if (sill > highest + Slack) return sheet.Outside("escape-opening.because.sill-high", ("sill", sill.Value, "in"), ("most", highest, "in"));
        if (area < enough - Slack) return sheet.CannotSay("escape-opening.because.ground-not-known", ("area", area, "ft²"), ("grade", grade, "ft²"), ("full", full, "ft²"));
        return sill is null ? sheet.CannotSay("escape-opening.because.sill-not-measured", ("area", area, "ft²")) : sheet.Within("escape-opening.because.enough", ("area", area, "ft²"), ("sill", sill.Value, "in"));
    }

    private static double Limit(Worksheet sheet, string limit)
    {
        var row = Limits.Rows.First(row => row["limit"] == limit);
        sheet.From(row.Source);
        return row.Number("value");
    }
}
