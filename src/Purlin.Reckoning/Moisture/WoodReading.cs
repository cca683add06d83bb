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
        Inputs =
        [
            new Input.Quantity("meter", "wood-reading.input.meter", "%", 1, 100) { Required = true },
            new Input.Text("species", "wood-reading.input.species", 60),
            new Input.Quantity("species_correction", "wood-reading.input.species-correction", "", -15, 15),
            new Input.Quantity("temperature", "wood-reading.input.temperature", "°F", -4, 160),
            new Input.Flag("meter_compensates", "wood-reading.input.meter-compensates"),
            new Input.Quantity("air_temperature", "wood-reading.input.air-temperature", "°F", 20, 160),
            new Input.Quantity("relative_humidity", "wood-reading.input.relative-humidity", "%", 1, 100),
        ],
        Sources = [MeterCorrection.Source, "US Navy MO-312, wood inspection", Equilibrium.Source],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        if (given.Has("air_temperature") != given.Has("relative_humidity"))
            return new Refusal(given.Has("air_temperature")
                ? "relative_humidity" : "air_temperature", "refused.missing", "wood-reading.allowed.both-air-temperature-relative");
        var sheet = new Worksheet(Calculation, given);
        var reading = sheet.Step("wood-reading.step.reading-meter", given.Number("meter"), "%");
        var corrected = Math.Max(0, Species(given, sheet, Temperature(given, sheet, reading)));
        sheet.Result("corrected", sheet.Step("wood-reading.step.corrected-reading", corrected, "%"), "%");
        sheet.Caution("wood-reading.caution.approximate-published-charts");
        sheet.Caution("wood-reading.caution.pins-read-falsely-high");
        if (corrected < LeastTrue) sheet.Caution("wood-reading.caution.below-about-pin-meter");
        Compare(given, sheet, corrected);
        return Judge(sheet, corrected);
    }

    private static double Temperature(Given given, Worksheet sheet, double reading)
    {
        if (given.Flag("meter_compensates"))
        {
            sheet.Say("wood-reading.step.meter-corrects-temperature-itself");
            return reading;
        }
        if (given.NumberOrNone("temperature") is not { } fahrenheit)
        {
            sheet.Say("wood-reading.step.temperature-wood-not-given");
            return reading;
        }
        sheet.From(MeterCorrection.Source);
        var celsius = (fahrenheit - 32) / 1.8;
        return sheet.Step("wood-reading.step.temperature-first-reading", MeterCorrection.AtTemperature(reading, celsius), "%",
            ("celsius", celsius, "°C"));
    }

    private static double Species(Given given, Worksheet sheet, double percent)
    {
        if (given.NumberOrNone("species_correction") is { } own)
            return sheet.Step("wood-reading.step.then-species-meter-own", percent + own, "%", ("own", own));
        if (given.TextOrNone("species") is not { } species)
        {
            sheet.Say("wood-reading.step.kind-wood-not-given");
            return percent;
        }
        if (MeterCorrection.Species(species, percent) is not { } row)
        {
            sheet.Say("wood-reading.step.no-published-correction-known", ("species", species));
            sheet.Caution("wood-reading.caution.look-up-meter-own", ("species", species));
            return percent;
        }
        sheet.From(row.Source);
        return sheet.Step("wood-reading.step.then-species-points", percent
            + row.Number("add"), "%", ("species", species), ("add", row.Number("add")));
    }

    private static void Compare(Given given, Worksheet sheet, double corrected)
    {
        if (given.NumberOrNone("air_temperature") is not { } air)
        { sheet.NoResult("equilibrium"); sheet.NoResult("above_equilibrium"); return; }
        sheet.From(Equilibrium.Source);
        var emc = Equilibrium.Of(Quantities.Temperature.FromFahrenheit(air),
            RelativeHumidity.FromPercent(given.Number("relative_humidity"))).Percent;
        sheet.Result("equilibrium", sheet.Step("wood-reading.step.moisture-air-alone-gives", emc, "%"), "%");
        sheet.Result("above_equilibrium", sheet.Step("wood-reading.step.reading-above", corrected - emc, "%"), "%");
        sheet.Caution("wood-reading.caution.wood-lags-behind-air");
    }

    private static Checked<Working> Judge(Worksheet sheet, double corrected)
    {
        var row = Tables.Read("moisture/thresholds.csv").Rows.Last(row => corrected >= row.Number("from_percent"));
        foreach (var threshold in Tables.Read("moisture/thresholds.csv").Rows.Where(threshold => threshold["source"] != "common practice"))
            sheet.From(threshold.Source);
        sheet.Result("class", row["class"]);
        sheet.Say("wood-reading.step.class", ("class", row["class"]), ("meaning", row["meaning"]));
        return row["class"] is "high" or "wet"
            ? sheet.Outside("wood-reading.because.about", ("corrected", corrected, "%"), ("class", row["class"]),
            ("meaning", row["meaning"]))
            : sheet.Within("wood-reading.because.about-below-decay-stops", ("corrected", corrected, "%"), ("class", row["class"]));
    }
}
