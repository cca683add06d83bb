using Purlin.Journal;
using Purlin.Reckoning.Quantities;

namespace Purlin.Reckoning.Air;

/// <summary>Cooling judged by how much colder the air comes back than it went in, against the published target.</summary>
internal static class TemperatureSplit
{
    // Below this many practitioners do not run cooling at all, to spare the compressor (common practice).
    private const double CautiousFahrenheit = 65;

    internal static Calculation Calculation { get; } = new()
    {
        Name = "temperature-split",
        Inputs =
        [
            new Input.Quantity("return_dry_bulb", "temperature-split.input.return-dry-bulb", "°F", 32, 120) { Required = true },
            new Input.Quantity("return_wet_bulb", "temperature-split.input.return-wet-bulb", "°F", 32, 120) { Required = true },
            new Input.Quantity("supply_dry_bulb", "temperature-split.input.supply-dry-bulb", "°F", 10, 150) { Required = true },
            new Input.Quantity("outdoor", "temperature-split.input.outdoor", "°F", -40, 130),
            new Input.Quantity("least_outdoor", "temperature-split.input.least-outdoor", "°F", 55, 80),
            new Input.Choice("band", "temperature-split.input.band", ["installer", "rater"]),
        ],
        Sources = [TargetSplit.Source, "California Energy Commission, 2008 Residential Appendices, RA3.2.1 to RA3.2.3"],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        var sheet = new Worksheet(Calculation, given);
        var dryBulb = Temperature.FromFahrenheit(given.Number("return_dry_bulb"));
        var wetBulb = Temperature.FromFahrenheit(given.Number("return_wet_bulb"));
        var supply = Temperature.FromFahrenheit(given.Number("supply_dry_bulb"));
        if (wetBulb > dryBulb) return new Refusal("return_wet_bulb", new("refused.given.hundredth", ("given", wetBulb.Fahrenheit, "°F")),
            new("temperature-split.allowed.most-return-dry-bulb", ("dry-bulb", dryBulb.Fahrenheit, "°F")));
        sheet.From(TargetSplit.Source);
        Cautions(sheet);

        var split = dryBulb - supply;
        sheet.Result("split", sheet.Step("temperature-split.step.split-return-dry-bulb", split.Fahrenheit, "°F"), "°F");
        var tooCold = TooCold(given, sheet);
        var target = TargetSplit.At(dryBulb, wetBulb);
        if (target is null) sheet.Say("temperature-split.step.table-no-target-dry", ("dry-bulb", dryBulb.Fahrenheit, "°F"),
            ("wet-bulb", wetBulb.Fahrenheit, "°F"));
        else if (!double.IsInteger(dryBulb.Fahrenheit) || !double.IsInteger(wetBulb.Fahrenheit))
            sheet.Say("temperature-split.step.between-whole-degrees-table");
        if (tooCold is not null || target is null)
        {
            sheet.NoResult("target_split");
            sheet.NoResult("difference");
            return sheet.CannotSay(tooCold ?? new Said("temperature-split.because.return-air-outside-table"));
        }
        sheet.Result("target_split", sheet.Step("temperature-split.step.target-split-table", target.Value.Fahrenheit, "°F"), "°F");
        var difference = sheet.Result("difference",
            sheet.Step("temperature-split.step.difference-split-target", split.Fahrenheit - target.Value.Fahrenheit, "°F"), "°F");
        return Judge(sheet, difference);
    }

    private static Said? TooCold(Given given, Worksheet sheet)
    {
        var rule = CoolingTest.Rule("least_outdoor");
        sheet.From(CoolingTest.Source(rule));
        if (given.NumberOrNone("outdoor") is not { } outdoor)
        {
            sheet.Say("temperature-split.step.outdoor-temperature-not-given");
            sheet.Caution("temperature-split.caution.outdoor-temperature-not-recorded");
            return null;
        }
        var least = sheet.Or("least_outdoor", rule.Number("value"), "°F", "temperature-split.why.procedure-own-limit");
        if (outdoor < least - Exact.Doubt)
            return new("temperature-split.because.too-cold", ("outdoor", outdoor, "°F"), ("least", least, "°F"));
        if (outdoor < CautiousFahrenheit)
            sheet.Caution("temperature-split.caution.outdoor-air-below-many", ("outdoor", outdoor, "°F"),
                ("cautious-fahrenheit", CautiousFahrenheit, "°F"));
        return null;
    }

    private static Checked<Working> Judge(Worksheet sheet, double difference)
    {
        var band = CoolingTest.Rule("band_" + sheet.WordOr("band", "installer", "temperature-split.why.narrower-two"));
        sheet.From(CoolingTest.Source(band));
        var width = sheet.Step("temperature-split.step.band-either-side-target", band.Number("value"), "°F");
        if (difference > width + Exact.Doubt)
            return sheet.Outside("temperature-split.because.split-above-target-sign", ("difference", difference, "°F"));
        if (difference < -width - Exact.Doubt)
            return sheet.Outside("temperature-split.because.split-below-target-measure", ("difference", -difference, "°F"));
        return sheet.Within("temperature-split.because.split-within-target", ("width", width, "°F"));
    }

    private static void Cautions(Worksheet sheet)
    {
        sheet.Caution("temperature-split.caution.split-symptom-not-diagnosis");
        sheet.Caution("temperature-split.caution.stands-only-after-minutes",
            ("value", CoolingTest.Rule("minutes_running").Number("value")));
        sheet.Caution("temperature-split.caution.refrigerant-circuits-opened-only");
    }
}
