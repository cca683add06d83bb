using Purlin.Journal;
using Purlin.Reckoning.Quantities;

namespace Purlin.Reckoning.Air;

/// <summary>What a cooling coil takes out of the air that passes it.</summary>
internal static class DeliveredCapacity
{
    // Standard air, 0.075 lb/ft³: 60 min/h × 0.075 = 4.5; with 0.24 Btu/lb°F 1.08; with the heat of a grain of vapour 0.68
    // (the trade's usual factors, for instance designcalculation.com, sensible and latent loads).
    private const double PoundsPerHourPerCfm = 4.5;
    private const double SensiblePerPound = 1.08 / 4.5;
    private const double LatentPerPoundAndGrain = 0.68 / 4.5;

    // A coil adds no water; a rise of less than a grain is the thermometers' own doubt (common practice).
    private const double DoubtGrains = 1;

    internal static Calculation Calculation { get; } = new()
    {
        Name = "delivered-capacity",
        Title = "Cooling: capacity delivered",
        Purpose = "The heat a cooling coil takes from the air, from airflow and the state of the air before and after it.",
        Inputs =
        [
            new Input.Quantity("airflow", "Air over the coil", "cfm", 50, 20_000) { Required = true },
            new Input.Group("return", "Air entering the coil", AirInputs.State) { Required = true },
            new Input.Group("supply", "Air leaving the coil", AirInputs.State) { Required = true },
            .. AirInputs.Place,
            new Input.Choice("airflow_as", "Airflow as standard air (0.075 lb/ft³) or as it is at the return", ["standard", "actual"]),
            new Input.Quantity("nominal", "Nominal capacity of the unit", "tons", 0.5, 50),
        ],
        Sources = [Psychrometrics.Source, "Total = 4.5 × cfm × enthalpy difference; sensible = 1.08 × cfm × °F; latent = 0.68 × cfm × gr/lb: the trade's standard-air formulas (common practice)"],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        var sheet = new Worksheet(Calculation, given);
        return AirInputs.Pressure(given, sheet).Match(
            pressure => AirInputs.Read(given.Group("return")!, pressure, "return").Match(
                before => AirInputs.Read(given.Group("supply")!, pressure, "supply").Match(
                    after => Write(given, sheet, before, after), Refuse), Refuse), Refuse);
    }

    private static Checked<Working> Refuse(System.Collections.Immutable.ImmutableArray<Refusal> refusals) => Checked<Working>.Refused(refusals);

    private static Checked<Working> Write(Given given, Worksheet sheet, MoistAir before, MoistAir after)
    {
        var dried = before.Ratio.GrainsPerPound - after.Ratio.GrainsPerPound;
        if (dried < -DoubtGrains)
            return new Refusal($"supply.{Humidity(given)}", $"air with {after.Ratio.GrainsPerPound:0.0} gr/lb of water", $"no more than the return's {before.Ratio.GrainsPerPound:0.0} gr/lb: a cooling coil adds no water; measure again (wick wet? probes in the right places?)");
        foreach (var source in Calculation.Sources) sheet.From(source);
        sheet.Step("Enthalpy of the return air", before.Enthalpy.BtuPerPound, "Btu/lb");
        sheet.Step("Enthalpy of the supply air", after.Enthalpy.BtuPerPound, "Btu/lb");
        var flow = MassFlow(given, sheet, before);
        var total = HeatRate.FromBtuPerHour(sheet.Step("Total: pounds an hour × enthalpy difference", flow * (before.Enthalpy.BtuPerPound - after.Enthalpy.BtuPerPound), "Btu/h"));
        var sensible = sheet.Step("Sensible: pounds an hour × 0.24 × temperature difference", flow * SensiblePerPound * (before.DryBulb - after.DryBulb).Fahrenheit, "Btu/h");
        var latent = sheet.Step("Latent: pounds an hour × 0.151 × grains removed", flow * LatentPerPoundAndGrain * dried, "Btu/h");
        sheet.Step("Sensible and latent together less the total: the rounded factors do not close exactly", sensible + latent - total.BtuPerHour, "Btu/h");
        sheet.Result("total", total.BtuPerHour, "Btu/h");
        sheet.Result("sensible", sensible, "Btu/h");
        sheet.Result("latent", latent, "Btu/h");
        sheet.Result("tons", sheet.Step("Total / 12,000", total.Tons, "tons"), "tons");
        if (total.BtuPerHour > 0) sheet.Result("sensible_share", 100 * sensible / total.BtuPerHour, "%");
        sheet.Caution("One moment's capacity, at this indoor and outdoor air; the plate's figure is for other air. A symptom for a licensed contractor, not a diagnosis.");
        sheet.Caution("It is as good as the airflow: 10 % wrong there is 10 % wrong here.");
        return Judge(given, sheet, total);
    }

    private static double MassFlow(Given given, Worksheet sheet, MoistAir before)
    {
        var airflow = Airflow.FromCubicFeetPerMinute(given.Number("airflow"));
        var placed = given.Has("altitude") || given.Has("pressure");
        var kind = sheet.WordOr("airflow_as", placed ? "actual" : "standard", placed ? "the place's pressure was given" : "no height was given");
        return kind == "standard"
            ? sheet.Step("Standard air: 4.5 × airflow, pounds an hour", PoundsPerHourPerCfm * airflow.CubicFeetPerMinute, "lb/h")
            : sheet.Step("Air as it is at the return: 60 × airflow / specific volume, pounds an hour", 60 * airflow.CubicFeetPerMinute / before.Volume.CubicFeetPerPound, "lb/h");
    }

    private static Checked<Working> Judge(Given given, Worksheet sheet, HeatRate total)
    {
        if (total.BtuPerHour <= 0) return sheet.Outside("The air leaves with no less heat than it came in: nothing is being cooled.");
        if (given.NumberOrNone("nominal") is not { } nominal)
            return sheet.CannotSay($"The coil delivers {total.Tons:0.0} tons; the nominal capacity was not given, so there is nothing to hold it against.");
        var rules = new RuleTable("air/capacity.csv", "", sheet);
        var perTon = sheet.Result("airflow_per_ton", sheet.Step("Airflow for each nominal ton", given.Number("airflow") / nominal, "cfm"), "cfm");
        var share = sheet.Result("share_of_nominal", sheet.Step("Share of nominal", 100 * total.Tons / nominal, "%"), "%");
        if (perTon < rules.Value("least_airflow")) return sheet.Outside($"Airflow of {perTon:0} cfm a ton is too low to judge the unit by; airflow comes first.");
        return share < rules.Value("least_share")
            ? sheet.Outside($"The coil delivers {total.Tons:0.0} of {nominal:0.#} tons, {share:0} %, a sign of low capacity.")
            : sheet.Within($"The coil delivers {total.Tons:0.0} of {nominal:0.#} tons, {share:0} %.");
    }

    private static string Humidity(Given given) => new[] { "wet_bulb", "relative_humidity", "dew_point" }.First(given.Group("supply")!.Has);
}
