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
        Title = "Heating: temperature rise",
        Purpose = "How much heating equipment warms its air, the airflow that goes with it, and whether the plate's range is kept.",
        Inputs =
        [
            new Input.Quantity("input", "Heat put in: fuel or electric input; for a heat pump its output", "Btu/h", 1_000, 2_000_000),
            new Input.Quantity("efficiency", "Share of the input that reaches the air", "%", 30, 100),
            new Input.Quantity("airflow", "Air moved", "cfm", 50, 20_000),
            new Input.Quantity("supply", "Air leaving, out of sight of the heat exchanger", "°F", 32, 250),
            new Input.Quantity("return", "Air entering", "°F", 20, 120),
            new Input.Quantity("nameplate_min", "Least rise on the plate", "Δ°F", 1, 150),
            new Input.Quantity("nameplate_max", "Largest rise on the plate", "Δ°F", 1, 150),
            new Input.Quantity("altitude", "Height above the sea", "ft", -1500, 15_000),
        ],
        Sources = ["Airflow = input × efficiency / (1.08 × rise): the trade's standard-air formula (common practice)", "The range on the equipment's own plate"],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        if (given.Has("supply") != given.Has("return")) return new Refusal(given.Has("supply") ? "return" : "supply", "missing", "both supply and return, or airflow");
        if (given.Has("airflow") == given.Has("supply")) return new Refusal("airflow", given.Has("airflow") ? "given with supply and return" : "missing", "either airflow, or supply and return");
        foreach (var needed in new[] { "input", "efficiency" })
            if (given.Has("airflow") && !given.Has(needed)) return new Refusal(needed, "missing", $"{needed}, when the rise is to come from airflow");
        if (given.NumberOrNone("nameplate_min") > given.NumberOrNone("nameplate_max")) return new Refusal("nameplate_min", $"{given.Number("nameplate_min"):0.#} °F", $"at most nameplate_max, {given.Number("nameplate_max"):0.#} °F");
        if (given.Has("nameplate_min") != given.Has("nameplate_max")) return new Refusal(given.Has("nameplate_min") ? "nameplate_max" : "nameplate_min", "missing", "both ends of the plate's range");
        var sheet = new Worksheet(Calculation, given);
        sheet.Caution("Measured after 15 minutes of full fire, some feet from the heat exchanger; supplemental strips off when a heat pump is judged.");
        sheet.Caution("A rise out of range is a symptom. A heat exchanger, burner or blower is judged and set only by a licensed contractor; burning appliances can give off carbon monoxide.");
        return Judge(given, sheet, Rise(given, sheet));
    }

    private static double Rise(Given given, Worksheet sheet)
    {
        var factor = SensibleFactor;
        if (given.NumberOrNone("altitude") is { } feet)
            factor = sheet.Step("1.08 made smaller by the thinner air at that height", SensibleFactor * Atmosphere.Pressure(Length.FromFeet(feet)).Psi / Atmosphere.Pressure(Length.FromFeet(0)).Psi);
        if (given.Has("input") != given.Has("efficiency")) sheet.Say("Input and efficiency were not both given: the airflow is not worked out");
        var output = given.Has("input") && given.Has("efficiency") ? sheet.Step("Heat to the air: input × efficiency", given.Number("input") * given.Number("efficiency") / 100, "Btu/h") : (double?)null;
        if (given.NumberOrNone("airflow") is { } airflow)
        {
            sheet.Result("airflow", airflow, "cfm");
            return sheet.Result("rise", sheet.Step($"Rise: heat / ({factor:0.###} × airflow)", output!.Value / (factor * airflow), "°F"), "°F");
        }
        var rise = sheet.Result("rise", sheet.Step("Rise: supply - return", given.Number("supply") - given.Number("return"), "°F"), "°F");
        if (output is { } heat && rise > 0) sheet.Result("airflow", sheet.Step($"Airflow: heat / ({factor:0.###} × rise)", heat / (factor * rise), "cfm"), "cfm");
        else sheet.NoResult("airflow");
        return rise;
    }

    private static Checked<Working> Judge(Given given, Worksheet sheet, double rise)
    {
        if (rise <= 0) return sheet.Outside("The air leaves no warmer than it came in: nothing is being heated.");
        if (given.NumberOrNone("nameplate_min") is not { } least || given.NumberOrNone("nameplate_max") is not { } most)
            return sheet.CannotSay($"The rise is {rise:0.#} °F; the plate's range was not given, so there is nothing to hold it against.");
        sheet.Say($"The plate's range is {least:0.#} to {most:0.#} °F");
        if (rise < least - Exact.Doubt) return sheet.Outside($"The rise of {rise:0.#} °F is below the plate's {least:0.#} to {most:0.#} °F: much air or little heat.");
        return rise > most + Exact.Doubt
            ? sheet.Outside($"The rise of {rise:0.#} °F is above the plate's {least:0.#} to {most:0.#} °F: too little air, which strains the heat exchanger.")
            : sheet.Within($"The rise of {rise:0.#} °F is within the plate's {least:0.#} to {most:0.#} °F.");
    }
}
