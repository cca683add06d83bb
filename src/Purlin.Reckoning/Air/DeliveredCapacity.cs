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
        Inputs =
        [
            new Input.Quantity("airflow", "delivered-capacity.input.airflow", "cfm", 50, 20_000) { Required = true },
            new Input.Group("return", "delivered-capacity.input.return", AirInputs.State) { Required = true },
            new Input.Group("supply", "delivered-capacity.input.supply", AirInputs.State) { Required = true },
            .. AirInputs.Place,
            new Input.Choice("airflow_as", "delivered-capacity.input.airflow-as", ["standard", "actual"]),
            new Input.Quantity("nominal", "delivered-capacity.input.nominal", "tons", 0.5, 50),
        ],
        Sources = [Psychrometrics.Source,
            "Total = 4.5 × cfm × enthalpy difference; sensible = 1.08 × cfm × °F; latent = 0.68 × cfm × gr/lb: the trade's standard-air formulas (common practice)"],
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

    private static Checked<Working> Refuse(System.Collections.Immutable.ImmutableArray<Refusal> refusals) =>
        Checked<Working>.Refused(refusals);

    private static Checked<Working> Write(Given given, Worksheet sheet, MoistAir before, MoistAir after)
    {
        var dried = before.Ratio.GrainsPerPound - after.Ratio.GrainsPerPound;
        if (dried < -DoubtGrains)
            return new Refusal($"supply.{Humidity(given)}",
                new("delivered-capacity.given.air-water", ("ratio", after.Ratio.GrainsPerPound, "gr/lb")),
                new("delivered-capacity.allowed.no-more-return-cooling", ("ratio", before.Ratio.GrainsPerPound, "gr/lb")));
        foreach (var source in Calculation.Sources) sheet.From(source);
        sheet.Step("delivered-capacity.step.enthalpy-return-air", before.Enthalpy.BtuPerPound, "Btu/lb");
        sheet.Step("delivered-capacity.step.enthalpy-supply-air", after.Enthalpy.BtuPerPound, "Btu/lb");
        var flow = MassFlow(given, sheet, before);
        var total = HeatRate.FromBtuPerHour(sheet.Step("delivered-capacity.step.total-pounds-hour-enthalpy",
            flow * (before.Enthalpy.BtuPerPound - after.Enthalpy.BtuPerPound), "Btu/h"));
        var sensible = sheet.Step("delivered-capacity.step.sensible-pounds-hour-temperature",
            flow * SensiblePerPound * (before.DryBulb - after.DryBulb).Fahrenheit, "Btu/h");
        var latent = sheet.Step("delivered-capacity.step.latent-pounds-hour-grains", flow * LatentPerPoundAndGrain * dried, "Btu/h");
        sheet.Step("delivered-capacity.step.sensible-latent-together-less", sensible + latent - total.BtuPerHour, "Btu/h");
        sheet.Result("total", total.BtuPerHour, "Btu/h");
        sheet.Result("sensible", sensible, "Btu/h");
        sheet.Result("latent", latent, "Btu/h");
        sheet.Result("tons", sheet.Step("delivered-capacity.step.total", total.Tons, "tons"), "tons");
        if (total.BtuPerHour > 0) sheet.Result("sensible_share", 100 * sensible / total.BtuPerHour, "%");
        sheet.Caution("delivered-capacity.caution.moment-capacity-indoor-outdoor");
        sheet.Caution("delivered-capacity.caution.good-airflow-wrong-wrong");
        return Judge(given, sheet, total);
    }

    private static double MassFlow(Given given, Worksheet sheet, MoistAir before)
    {
        var airflow = Airflow.FromCubicFeetPerMinute(given.Number("airflow"));
        var placed = given.Has("altitude") || given.Has("pressure");
        var kind = sheet.WordOr("airflow_as", placed ? "actual" : "standard", placed
            ? new Said("delivered-capacity.why.place-pressure-given") : new Said("delivered-capacity.why.no-height-given"));
        return kind == "standard"
            ? sheet.Step("delivered-capacity.step.standard-air-airflow-pounds", PoundsPerHourPerCfm * airflow.CubicFeetPerMinute, "lb/h")
            : sheet.Step("delivered-capacity.step.air-return-airflow-specific",
                60 * airflow.CubicFeetPerMinute / before.Volume.CubicFeetPerPound, "lb/h");
    }

    private static Checked<Working> Judge(Given given, Worksheet sheet, HeatRate total)
    {
        if (total.BtuPerHour <= 0) return sheet.Outside("delivered-capacity.because.air-leaves-no-less");
        if (given.NumberOrNone("nominal") is not { } nominal)
            return sheet.CannotSay("delivered-capacity.because.coil-delivers-nominal-capacity", ("total", total.Tons, "tons"));
        var rules = new RuleTable("air/capacity.csv", "", sheet);
        var perTon = sheet.Result("airflow_per_ton",
            sheet.Step("delivered-capacity.step.airflow-nominal-ton", given.Number("airflow") / nominal, "cfm"), "cfm");
        var share = sheet.Result("share_of_nominal", sheet.Step("delivered-capacity.step.share-nominal", 100 * total.Tons / nominal, "%"),
            "%");
        if (perTon < rules.Value("least_airflow"))
            return sheet.Outside("delivered-capacity.because.airflow-ton-too-low", ("per-ton", perTon, "cfm"));
        return share < rules.Value("least_share")
            ? sheet.Outside("delivered-capacity.because.coil-delivers-sign-low", ("total", total.Tons), ("nominal", nominal, "tons"),
                ("share", share, "%"))
            : sheet.Within("delivered-capacity.because.coil-delivers", ("total", total.Tons), ("nominal", nominal, "tons"),
                ("share", share, "%"));
    }

    private static string Humidity(Given given) => new[] { "wet_bulb", "relative_humidity", "dew_point" }.First(given.Group("supply")!.Has);
}
