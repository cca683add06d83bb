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
        Inputs =
        [
            new Input.Quantity("plan_area", "roof.input.plan-area", "ft²", 1, 1_000_000),
            new Input.Quantity("span", "roof.input.span", "ft", 1, 1000),
            new Input.Quantity("length", "roof.input.length", "ft", 1, 1000),
            new Input.Quantity("pitch", "roof.input.pitch", "in/ft", 0, 48) { Required = true },
            new Input.Choice("covering", "roof.input.covering", [.. Coverings.Rows.Select(row => row["covering"])]),
        ],
        Sources = ["slope factor √(1 + (rise/12)²), hip and valley factor √(2 + (rise/12)²): geometry",
            .. Coverings.Rows.Select(row => row.Source).Distinct()],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        var sheet = new Worksheet(Calculation, given);
        if (given.Has("span") != given.Has("length"))
            return new Refusal(given.Has("span") ? "length" : "span", "refused.missing", "roof.allowed.span-length-plan-area");
        if (given.Has("plan_area") == given.Has("span"))
            return new Refusal("plan_area", given.Has("span")
                ? new Said("roof.given.span-length") : new Said("refused.missing"), "roof.allowed.plan-area-span-length");
        sheet.From(Calculation.Sources[0]);
        var pitch = given.Number("pitch");
        var plan = given.NumberOrNone("plan_area")
            ?? sheet.Step("roof.step.plan-area-span-length", given.Number("span") * given.Number("length"), "ft²");
        var factor = sheet.Step("roof.step.slope-factor-rise", Math.Sqrt(1 + pitch * pitch / 144));
        sheet.Result("slope_factor", factor);
        sheet.Result("hip_factor", Math.Sqrt(2 + pitch * pitch / 144));
        sheet.Result("degrees", Math.Atan(pitch / 12) * 180 / Math.PI, "°");
        var area = sheet.Result("area", sheet.Step("roof.step.area-plan-slope-factor", plan * factor, "ft²"), "ft²");
        sheet.Result("squares", sheet.Step("roof.step.roofing-squares-area", area / 100));
        sheet.Caution("roof.caution.area-roofs-pitch-waste");
        return Judge(sheet, given, pitch);
    }

    private static Checked<Working> Judge(Worksheet sheet, Given given, double pitch)
    {
        if (given.TextOrNone("covering") is not { } covering)
        {
            sheet.Result("least_pitch", null);
            return sheet.CannotSay("roof.because.no-covering-given-whose");
        }
        var row = Coverings.Rows.Single(row => row["covering"] == covering);
        sheet.From(row.Source);
        var least = sheet.Result("least_pitch",
            sheet.Step("roof.step.least-slope", row.Number("least"), "in/ft", ("covering", Words.Of(covering))), "in/ft");
        if (row["note"].Length > 0 && (row.NumberOrNone("doubled_below") is not { } doubled || pitch < doubled))
            sheet.Caution("roof.caution.covering", ("covering", Words.Of(covering)), ("note", row.Words("note")));
        return pitch >= least - 1e-9
            ? sheet.Within("roof.because.slope-least-need", ("pitch", pitch), ("least", least), ("covering", Words.Of(covering)))
            : sheet.Outside("roof.because.slope-less-need", ("pitch", pitch), ("least", least), ("covering", Words.Of(covering)));
    }
}
