using Purlin.Journal;
using Purlin.Reckoning.Quantities;

namespace Purlin.Reckoning.Air;

/// <summary>How much a furnace or heat pump warms its air, against the range on its plate.</summary>
internal static class TemperatureRise
{
    // 60 min/h × 0.075 lb/ft³ × 0.24 Btu/lb°F, standard air (eng-tips.com, thread 132220; ASHRAE's standard air).
    private const double SensibleFactor = 1.08;

    internal static Calculation Calculation { get; } = new()
    {
        Name = "temperature-rise",
        Inputs =
        [
            new Input.Quantity("input", "temperature-rise.input.input", "Btu/h", 1_000, 2_000_000),
            new Input.Quantity("efficiency", "temperature-rise.input.efficiency", "%", 30, 100),
            new Input.Quantity("airflow", "temperature-rise.input.airflow", "cfm", 50, 20_000),
            new Input.Quantity("supply", "temperature-rise.input.supply", "°F", 32, 250),
            new Input.Quantity("return", "temperature-rise.input.return", "°F", 20, 120),
            new Input.Quantity("nameplate_min", "temperature-rise.input.nameplate-min", "Δ°F", 1, 150),
            new Input.Quantity("nameplate_max", "temperature-rise.input.nameplate-max", "Δ°F", 1, 150),
            new Input.Quantity("altitude", "temperature-rise.input.altitude", "ft", -1500, 15_000),
        ],
        Sources = ["Airflow = input × efficiency / (1.08 × rise): the trade's standard-air formula (common practice)",
            "The range on the equipment's own plate"],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        if (given.Has("supply") != given.Has("return"))
            return new Refusal(given.Has("supply")
                ? "return" : "supply", "refused.missing", "temperature-rise.allowed.both-supply-return-airflow");
        if (given.Has("airflow") == given.Has("supply"))
            return new Refusal("airflow", given.Has("airflow") ? new Said("temperature-rise.given.given-supply-return")
                : new Said("refused.missing"), "temperature-rise.allowed.either-airflow-supply-return");
        foreach (var needed in new[] { "input", "efficiency" })
            if (given.Has("airflow") && !given.Has(needed))
                return new Refusal(needed, "refused.missing", new("temperature-rise.allowed.when-rise-come-airflow", ("needed", needed)));
        if (given.NumberOrNone("nameplate_min") > given.NumberOrNone("nameplate_max"))
            return new Refusal("nameplate_min", new("refused.given.tenth", ("given", given.Number("nameplate_min"), "°F")),
                new("temperature-rise.allowed.most-nameplate-max", ("nameplate-max", given.Number("nameplate_max"), "°F")));
        if (given.Has("nameplate_min") != given.Has("nameplate_max"))
            return new Refusal(given.Has("nameplate_min")
                ? "nameplate_max" : "nameplate_min", "refused.missing", "temperature-rise.allowed.both-ends-plate-range");
        var sheet = new Worksheet(Calculation, given);
        sheet.Caution("temperature-rise.caution.measured-after-minutes-full");
        sheet.Caution("temperature-rise.caution.rise-out-range-symptom");
        return Judge(given, sheet, Rise(given, sheet));
    }

    private static double Rise(Given given, Worksheet sheet)
    {
        var factor = SensibleFactor;
        if (given.NumberOrNone("altitude") is { } feet)
            factor = sheet.Step("temperature-rise.step.made-smaller-thinner-air",
                SensibleFactor * Atmosphere.Pressure(Length.FromFeet(feet)).Psi / Atmosphere.Pressure(Length.FromFeet(0)).Psi);
        if (given.Has("input") != given.Has("efficiency")) sheet.Say("temperature-rise.step.input-efficiency-not-both");
        var output = given.Has("input") && given.Has("efficiency")
            ? sheet.Step("temperature-rise.step.heat-air-input-efficiency", given.Number("input") * given.Number("efficiency") / 100,
            "Btu/h") : (double?)null;
        if (given.NumberOrNone("airflow") is { } airflow)
        {
            sheet.Result("airflow", airflow, "cfm");
            return sheet.Result("rise",
                sheet.Step("temperature-rise.step.rise-heat-airflow", output!.Value / (factor * airflow), "°F", ("factor", factor)), "°F");
        }
        var rise = sheet.Result("rise",
            sheet.Step("temperature-rise.step.rise-supply-return", given.Number("supply") - given.Number("return"), "°F"), "°F");
        if (output is { } heat && rise > 0)
            sheet.Result("airflow",
                sheet.Step("temperature-rise.step.airflow-heat-rise", heat / (factor * rise), "cfm", ("factor", factor)), "cfm");
        else sheet.NoResult("airflow");
        return rise;
    }

    private static Checked<Working> Judge(Given given, Worksheet sheet, double rise)
    {
        if (rise <= 0) return sheet.Outside("temperature-rise.because.air-leaves-no-warmer");
        if (given.NumberOrNone("nameplate_min") is not { } least || given.NumberOrNone("nameplate_max") is not { } most)
            return sheet.CannotSay("temperature-rise.because.rise-plate-range-not", ("rise", rise, "°F"));
        sheet.Say("temperature-rise.step.plate-range", ("least", least), ("most", most, "°F"));
        if (rise < least - Exact.Doubt)
            return sheet.Outside("temperature-rise.because.rise-below-plate-much", ("rise", rise, "°F"), ("least", least),
                ("most", most, "°F"));
        return rise > most + Exact.Doubt
            ? sheet.Outside("temperature-rise.because.rise-above-plate-too", ("rise", rise, "°F"), ("least", least), ("most", most, "°F"))
            : sheet.Within("temperature-rise.because.rise-within-plate", ("rise", rise, "°F"), ("least", least), ("most", most, "°F"));
    }
}
