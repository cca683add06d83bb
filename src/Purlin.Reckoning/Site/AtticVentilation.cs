using Purlin.Journal;

namespace Purlin.Reckoning.Site;

/// <summary>Vent area of an attic against 1/150, or 1/300 where an edition's conditions are met.</summary>
public static class AtticVentilation
{
    private const double SquareInchesPerSquareFoot = 144;

    private static readonly Table Editions = Tables.Read("site/attic-ventilation.csv");

    /// <summary>The reckoning.</summary>
    public static Calculation Calculation { get; } = new()
    {
        Name = "attic-ventilation",
        Inputs =
        [
            new Input.Quantity("area", "attic-ventilation.input.area", "ft²", 1, 100_000) { Required = true },
            new Input.List("vents", "attic-ventilation.input.vents", [
                new Input.Choice("kind", "attic-ventilation.input.vents.kind",
                ["soffit", "gable", "ridge", "roof vent", "turbine", "power fan", "other"]) { Required = true },
                new Input.Quantity("net_free_area", "attic-ventilation.input.vents.net-free-area", "in²", 0, 100_000) { Required = true },
                new Input.Choice("level", "attic-ventilation.input.vents.level", ["low", "high"]) { Required = true },
                new Input.Whole("count", "attic-ventilation.input.vents.count", 1, 200)], 0, 60) { Required = true },
            new Input.Flag("vapour_retarder", "attic-ventilation.input.vapour-retarder"),
            new Input.Whole("climate_zone", "attic-ventilation.input.climate-zone", 1, 8),
            new Input.Choice("edition", "attic-ventilation.input.edition", [.. Editions.Rows.Select(row => row["edition"])]),
        ],
        Sources = [.. Editions.Rows.Select(row => row.Source)],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        var sheet = new Worksheet(Calculation, given);
        var edition = sheet.WordOr("edition", "from 2015", "attic-ventilation.why.newest-hand-older-attic");
        var rule = Editions.Rows.Single(row => row["edition"] == edition);
        sheet.From(rule.Source);
        var attic = given.Number("area");
        double low = 0, high = 0;
        foreach (var vent in given.List("vents"))
        {
            var area = vent.Number("net_free_area") * (vent.WholeOrNone("count") ?? 1);
            if (vent.Text("kind") == "power fan") sheet.Say("attic-ventilation.step.power-fan-not-counted");
            else if (vent.Text("level") == "low") low += area;
            else high += area;
        }
        var (full, reduced) = (attic * SquareInchesPerSquareFoot / rule.Number("one_in"),
            attic * SquareInchesPerSquareFoot / rule.Number("reduced_one_in"));
        sheet.Result("required_full", sheet.Step("attic-ventilation.step.vent-area-attic", full, "in²", ("one-in", rule.Number("one_in"))),
            "in²");
        sheet.Result("required_reduced",
            sheet.Step("attic-ventilation.step.vent-area", reduced, "in²", ("reduced-one-in", rule.Number("reduced_one_in"))), "in²");
        sheet.Result("low", low, "in²");
        sheet.Result("high", high, "in²");
        var provided = sheet.Result("provided", sheet.Step("attic-ventilation.step.net-free-area-low", low + high, "in²"), "in²");
        sheet.Result("one_in", provided > 0 ? attic * SquareInchesPerSquareFoot / provided : null);
        var balanced = Balance(sheet, rule, high, provided, reduced);
        var retarder = Retarder(sheet, given, rule);
        sheet.Caution("attic-ventilation.caution.foam-insulated-attics-without");
        return Judge(sheet, rule, provided, full, reduced, Allowed(rule["conditions"], retarder, balanced));
    }

    private static bool Balance(Worksheet sheet, TableRow rule, double high, double provided, double reduced)
    {
        var (least, most) = (rule.Number("upper_least"), rule.Number("upper_most"));
        var ofRequired = sheet.Step("attic-ventilation.step.high-vents-share-smaller", 100 * high / reduced, "%");
        var ofProvided = provided > 0 ? sheet.Step("attic-ventilation.step.high-vents-share-what", 100 * high / provided, "%") : 0;
        sheet.Result("high_share_of_required", ofRequired, "%");
        sheet.Result("high_share_of_provided", ofProvided, "%");
        // More low vents than needed do no harm, so the upper bound is held against what is there.
        return ofRequired >= least - 1e-9 && ofProvided <= most + 1e-9;
    }

    // Whether the retarder condition is met; none where it was not recorded and matters. From 2015 it binds in cold zones only.
    private static bool? Retarder(Worksheet sheet, Given given, TableRow rule)
    {
        var from = rule.Number("retarder_from_zone");
        var zone = given.WholeOrNone("climate_zone");
        var cold = from <= 1 ? true : zone is { } known ? known >= from : (bool?)null;
        bool? there = given.Has("vapour_retarder") ? given.Flag("vapour_retarder") : null;
        if (zone is null && from > 1) sheet.Say("attic-ventilation.step.climate-zone-not-given");
        if (there is null) sheet.Say("attic-ventilation.step.vapor-retarder-not-recorded");
        if (rule["conditions"] == "both") return cold == false ? true : there == true ? true : cold is null || there is null ? null : false;
        return cold == false || there == false ? false : cold is null || there is null ? null : true;
    }

    private static bool? Allowed(string conditions, bool? retarder, bool balanced) => conditions == "both"
        ? !balanced || retarder == false ? false : retarder
        : balanced || retarder == true ? true : retarder is null ? null : false;

    private static Checked<Working> Judge(Worksheet sheet, TableRow rule, double provided, double full, double reduced, bool? allowed)
    {
        sheet.Result("reduced_allowed", allowed switch { true => "yes", false => "no", null => "cannot say" });
        var required = sheet.Result("required", allowed == true ? reduced : full, "in²");
        sheet.Result("short", Math.Max(0, required - provided), "in²");
        Said ratio = provided > 0
            ? new Said("attic-ventilation.ratio", ("one-in", full * rule.Number("one_in") / provided)) : "attic-ventilation.nothing";
        if (provided >= full - 1e-9)
            return sheet.Within("attic-ventilation.because.vents-least", ("ratio", ratio), ("one-in", rule.Number("one_in")));
        if (provided < reduced - 1e-9)
            return sheet.Outside("attic-ventilation.because.vents-less-even", ("ratio", ratio),
                ("reduced-one-in", rule.Number("reduced_one_in")));
        return allowed switch
        {
            true => sheet.Within("attic-ventilation.because.vents-least-enough-here", ("ratio", ratio),
                ("reduced-one-in", rule.Number("reduced_one_in"))),
            false => sheet.Outside("attic-ventilation.because.vents-less-conditions-not", ("ratio", ratio),
                ("one-in", rule.Number("one_in")), ("reduced-one-in", rule.Number("reduced_one_in"))),
            null => sheet.CannotSay("attic-ventilation.because.vents-lie-between-needed", ("ratio", ratio),
                ("one-in", rule.Number("one_in")), ("reduced-one-in", rule.Number("reduced_one_in"))),
        };
    }
}
