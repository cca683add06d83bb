using Purlin.Journal;

namespace Purlin.Reckoning.Site;

/// <summary>True area of a roof from its plan and pitch, and whether its covering may lie so flat.</summary>
public static class Roof
{
    private static readonly Table Coverings = Tables.Read("site/roof-slope.csv");

    /// <summary>The reckoning.</summary>
    public static Calculation Calculation { get; } = new()
    {
        Name = "roof",
        Title = "Roof: area and slope",
        Purpose = "Area of a roof from its plan, and the least slope of its covering.",
        Inputs =
        [
            new Input.Quantity("plan_area", "area seen from above, overhangs with it", "ft²", 1, 1_000_000),
            new Input.Quantity("span", "width of the plan, overhangs with it", "ft", 1, 1000),
            new Input.Quantity("length", "length of the plan, overhangs with it", "ft", 1, 1000),
            new Input.Quantity("pitch", "rise in 12 in", "in/ft", 0, 48) { Required = true },
            new Input.Choice("covering", "what it is covered with", [.. Coverings.Rows.Select(row => row["covering"])]),
        ],
        Sources = ["slope factor √(1 + (rise/12)²), hip and valley factor √(2 + (rise/12)²): geometry", .. Coverings.Rows.Select(row => row.Source).Distinct()],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        var sheet = new Worksheet(Calculation, given);
        if (given.Has("span") != given.Has("length")) return new Refusal(given.Has("span") ? "length" : "span", "missing", "span and length, or plan_area instead");
        if (given.Has("plan_area") == given.Has("span")) return new Refusal("plan_area", given.Has("span") ? "with span and length" : "missing", "plan_area, or span and length instead");
        sheet.From(Calculation.Sources[0]);
        var pitch = given.Number("pitch");
        var plan = given.NumberOrNone("plan_area") ?? sheet.Step("Plan area = span × length", given.Number("span") * given.Number("length"), "ft²");
        var factor = sheet.Step("Slope factor = √(1 + (rise/12)²)", Math.Sqrt(1 + pitch * pitch / 144));
        sheet.Result("slope_factor", factor);
        sheet.Result("hip_factor", Math.Sqrt(2 + pitch * pitch / 144));
        sheet.Result("degrees", Math.Atan(pitch / 12) * 180 / Math.PI, "°");
        var area = sheet.Result("area", sheet.Step("Area = plan × slope factor", plan * factor, "ft²"), "ft²");
        sheet.Result("squares", sheet.Step("Roofing squares = area / 100", area / 100));
        sheet.Caution("The area is for roofs of one pitch. Waste, dormers and valleys come on top.");
        return Judge(sheet, given, pitch);
    }

    private static Checked<Working> Judge(Worksheet sheet, Given given, double pitch)
    {
        if (given.TextOrNone("covering") is not { } covering)
        {
            sheet.Result("least_pitch", null);
            return sheet.CannotSay("No covering was given whose least slope could be compared.");
        }
        var row = Coverings.Rows.Single(row => row["covering"] == covering);
        sheet.From(row.Source);
        var least = sheet.Result("least_pitch", sheet.Step($"Least slope of {covering}", row.Number("least"), "in/ft"), "in/ft");
        if (row["note"].Length > 0 && (row.NumberOrNone("doubled_below") is not { } doubled || pitch < doubled)) sheet.Caution($"{char.ToUpperInvariant(covering[0])}{covering[1..]}: {row["note"]}.");
        return pitch >= least - 1e-9
            ? sheet.Within($"A slope of {pitch:0.##} in 12 is at least the {least:0.##} in 12 that {covering} need.")
            : sheet.Outside($"A slope of {pitch:0.##} in 12 is less than the {least:0.##} in 12 that {covering} need.");
    }
}
