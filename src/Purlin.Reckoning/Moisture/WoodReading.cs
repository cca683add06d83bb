using Purlin.Journal;
using Purlin.Reckoning.Air;
using Purlin.Reckoning.Quantities;

namespace Purlin.Reckoning.Moisture;

/// <summary>A pin meter's reading in wood, corrected and given its meaning.</summary>
internal static class WoodReading
{
    // Resistance meters read truly from about 7 % to fibre saturation (a maker's manual, ST-129).
    private const double LeastTrue = 7;

    internal static Calculation Calculation { get; } = new()
    {
        Name = "wood-reading",
        Title = "Wood: moisture reading",
        Purpose = "A moisture meter's reading corrected for temperature and species, against decay and against what the air gives.",
        Inputs =
        [
            new Input.Quantity("meter", "Reading of the meter", "%", 1, 100) { Required = true },
            new Input.Text("species", "Kind of wood", 60),
            new Input.Quantity("species_correction", "Points to add for the species, from the meter's own chart; may be negative", "", -15, 15),
            new Input.Quantity("temperature", "Temperature of the wood", "°F", -4, 160),
            new Input.Flag("meter_compensates", "The meter corrects for temperature itself"),
            new Input.Quantity("air_temperature", "Air around the wood, dry bulb", "°F", 20, 160),
            new Input.Quantity("relative_humidity", "Relative humidity of that air", "%", 1, 100),
        ],
        Sources = [MeterCorrection.Source, "US Navy MO-312, wood inspection", Equilibrium.Source],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        if (given.Has("air_temperature") != given.Has("relative_humidity"))
            return new Refusal(given.Has("air_temperature") ? "relative_humidity" : "air_temperature", "missing", "both air_temperature and relative_humidity, or neither");
        var sheet = new Worksheet(Calculation, given);
        var reading = sheet.Step("Reading of the meter", given.Number("meter"), "%");
        var corrected = Math.Max(0, Species(given, sheet, Temperature(given, sheet, reading)));
        sheet.Result("corrected", sheet.Step("Corrected reading", corrected, "%"), "%");
        sheet.Caution("Approximate: published charts differ by up to 2 % moisture; the meter's own chart goes first.");
        sheet.Caution("Pins read falsely high where salts or preservatives are in the wood; compare with a dry place of the same wood.");
        if (corrected < LeastTrue) sheet.Caution("Below about 7 % a pin meter does not read truly.");
        Compare(given, sheet, corrected);
        return Judge(sheet, corrected);
    }

    private static double Temperature(Given given, Worksheet sheet, double reading)
    {
        if (given.Flag("meter_compensates"))
        {
            sheet.Say("The meter corrects for temperature itself: nothing added");
            return reading;
        }
        if (given.NumberOrNone("temperature") is not { } fahrenheit)
        {
            sheet.Say("Temperature of the wood not given: no temperature correction");
            return reading;
        }
        sheet.From(MeterCorrection.Source);
        var celsius = (fahrenheit - 32) / 1.8;
        return sheet.Step($"Temperature first: [reading + 0.567 - 0.0260 t + 0.000051 t²] / [0.881 × 1.0056^t], t = {celsius:0.#} °C", MeterCorrection.AtTemperature(reading, celsius), "%");
    }

    private static double Species(Given given, Worksheet sheet, double percent)
    {
        if (given.NumberOrNone("species_correction") is { } own) return sheet.Step($"Then the species, by the meter's own chart: {own:+0.#;-0.#;0} points", percent + own, "%");
        if (given.TextOrNone("species") is not { } species)
        {
            sheet.Say("Kind of wood not given: no species correction, the meter's own setting stands");
            return percent;
        }
        if (MeterCorrection.Species(species, percent) is not { } row)
        {
            sheet.Say($"No published correction for {species} is known to this program: none made");
            sheet.Caution($"Look up {species} in the meter's own chart and enter its points.");
            return percent;
        }
        sheet.From(row.Source);
        return sheet.Step($"Then the species, {species}: {row.Number("add"):+0.#;-0.#;0} points", percent + row.Number("add"), "%");
    }

    private static void Compare(Given given, Worksheet sheet, double corrected)
    {
        if (given.NumberOrNone("air_temperature") is not { } air) { sheet.NoResult("equilibrium"); sheet.NoResult("above_equilibrium"); return; }
        sheet.From(Equilibrium.Source);
        var emc = Equilibrium.Of(Quantities.Temperature.FromFahrenheit(air), RelativeHumidity.FromPercent(given.Number("relative_humidity"))).Percent;
        sheet.Result("equilibrium", sheet.Step("Moisture that this air alone gives to wood", emc, "%"), "%");
        sheet.Result("above_equilibrium", sheet.Step("Reading above that", corrected - emc, "%"), "%");
        sheet.Caution("Wood lags behind its air by weeks; much more than the air gives points to water from elsewhere, not to a certain leak.");
    }

    private static Checked<Working> Judge(Worksheet sheet, double corrected)
    {
        var row = Tables.Read("moisture/thresholds.csv").Rows.Last(row => corrected >= row.Number("from_percent"));
        foreach (var threshold in Tables.Read("moisture/thresholds.csv").Rows.Where(threshold => threshold["source"] != "common practice")) sheet.From(threshold.Source);
        sheet.Result("class", row["class"]);
        sheet.Say($"Class: {row["class"]}, {row["meaning"]}");
        return row["class"] is "high" or "wet"
            ? sheet.Outside($"About {corrected:0} % is {row["class"]}: {row["meaning"]}.")
            : sheet.Within($"About {corrected:0} % is {row["class"]}, below the 20 % at which decay stops.");
    }
}
