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
        Title = "Attic: ventilation",
        Purpose = "Vent area needed and there, its ratio and its balance between low and high.",
        Inputs =
        [
            new Input.Quantity("area", "attic that is to be vented", "ft²", 1, 100_000) { Required = true },
            new Input.List("vents", "the vents", [
                new Input.Choice("kind", "what it is", ["soffit", "gable", "ridge", "roof vent", "turbine", "power fan", "other"]) { Required = true },
                new Input.Quantity("net_free_area", "net free area of one, or of the whole length", "in²", 0, 100_000) { Required = true },
                new Input.Choice("level", "where it sits: low near the eaves, high within 3 ft of the ridge", ["low", "high"]) { Required = true },
                new Input.Whole("count", "how many", 1, 200)], 0, 60) { Required = true },
            new Input.Flag("vapour_retarder", "a class I or II vapour retarder is on the warm side of the ceiling"),
            new Input.Whole("climate_zone", "climate zone of the energy code", 1, 8),
            new Input.Choice("edition", "which code", [.. Editions.Rows.Select(row => row["edition"])]),
        ],
        Sources = [.. Editions.Rows.Select(row => row.Source)],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        var sheet = new Worksheet(Calculation, given);
        var edition = sheet.WordOr("edition", "from 2015", "the newest at hand; an older attic was vented by the code of its day");
        var rule = Editions.Rows.Single(row => row["edition"] == edition);
        sheet.From(rule.Source);
        var attic = given.Number("area");
        double low = 0, high = 0;
        foreach (var vent in given.List("vents"))
        {
            var area = vent.Number("net_free_area") * (vent.WholeOrNone("count") ?? 1);
            if (vent.Text("kind") == "power fan") sheet.Say("A power fan is not counted: it has no net free area when it stands");
            else if (vent.Text("level") == "low") low += area;
            else high += area;
        }
        var (full, reduced) = (attic * SquareInchesPerSquareFoot / rule.Number("one_in"), attic * SquareInchesPerSquareFoot / rule.Number("reduced_one_in"));
        sheet.Result("required_full", sheet.Step($"Vent area by 1/{rule.Number("one_in"):0} = attic × 144 / {rule.Number("one_in"):0}", full, "in²"), "in²");
        sheet.Result("required_reduced", sheet.Step($"Vent area by 1/{rule.Number("reduced_one_in"):0}", reduced, "in²"), "in²");
        sheet.Result("low", low, "in²");
        sheet.Result("high", high, "in²");
        var provided = sheet.Result("provided", sheet.Step("Net free area that is there, low and high", low + high, "in²"), "in²");
        sheet.Result("one_in", provided > 0 ? attic * SquareInchesPerSquareFoot / provided : null);
        var balanced = Balance(sheet, rule, high, provided, reduced);
        var retarder = Retarder(sheet, given, rule);
        sheet.Caution("Foam-insulated attics without vents are judged by other rules. Blocked vents count for nothing, whatever their size.");
        return Judge(sheet, rule, provided, full, reduced, Allowed(rule["conditions"], retarder, balanced));
    }

    private static bool Balance(Worksheet sheet, TableRow rule, double high, double provided, double reduced)
    {
        var (least, most) = (rule.Number("upper_least"), rule.Number("upper_most"));
        var ofRequired = sheet.Step("High vents as a share of the smaller area needed", 100 * high / reduced, "%");
        var ofProvided = provided > 0 ? sheet.Step("High vents as a share of what is there", 100 * high / provided, "%") : 0;
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
        if (zone is null && from > 1) sheet.Say("Climate zone not given: whether a vapour retarder counts is not known");
        if (there is null) sheet.Say("Vapour retarder not recorded");
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
        var ratio = provided > 0 ? $"1/{full * rule.Number("one_in") / provided:0}" : "nothing";
        if (provided >= full - 1e-9) return sheet.Within($"Vents of {ratio} are at least 1/{rule.Number("one_in"):0}.");
        if (provided < reduced - 1e-9) return sheet.Outside($"Vents of {ratio} are less than even 1/{rule.Number("reduced_one_in"):0}.");
        return allowed switch
        {
            true => sheet.Within($"Vents of {ratio} are at least 1/{rule.Number("reduced_one_in"):0}, which is enough here."),
            false => sheet.Outside($"Vents of {ratio} are less than 1/{rule.Number("one_in"):0}, and the conditions for 1/{rule.Number("reduced_one_in"):0} are not met."),
            null => sheet.CannotSay($"Vents of {ratio} lie between 1/{rule.Number("one_in"):0} and 1/{rule.Number("reduced_one_in"):0}; which is needed hangs on a vapour retarder that was not recorded."),
        };
    }
}
