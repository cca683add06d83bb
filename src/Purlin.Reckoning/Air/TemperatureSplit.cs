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
        Title = "Cooling: temperature split",
        Purpose = "Whether the air of a running cooling system drops in temperature as the published target expects.",
        Inputs =
        [
            new Input.Quantity("return_dry_bulb", "Air entering the coil, dry bulb, at the return plenum", "°F", 32, 120) { Required = true },
            new Input.Quantity("return_wet_bulb", "Air entering the coil, wet bulb, at the return plenum", "°F", 32, 120) { Required = true },
            new Input.Quantity("supply_dry_bulb", "Air leaving the coil, dry bulb, at the supply plenum", "°F", 10, 150) { Required = true },
            new Input.Quantity("outdoor", "Outdoor air", "°F", -40, 130),
            new Input.Quantity("least_outdoor", "Coldest outdoor air in which you judge cooling", "°F", 55, 80),
            new Input.Choice("band", "Whose band: the installer's or the independent rater's", ["installer", "rater"]),
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
        if (wetBulb > dryBulb) return new Refusal("return_wet_bulb", $"{wetBulb.Fahrenheit:0.##} °F", $"at most the return dry bulb, {dryBulb.Fahrenheit:0.##} °F");
        sheet.From(TargetSplit.Source);
        Cautions(sheet);

        var split = dryBulb - supply;
        sheet.Result("split", sheet.Step("Split: return dry bulb - supply dry bulb", split.Fahrenheit, "°F"), "°F");
        var tooCold = TooCold(given, sheet);
        var target = TargetSplit.At(dryBulb, wetBulb);
        if (target is null) sheet.Say($"The table has no target at {dryBulb.Fahrenheit:0.#} °F dry bulb and {wetBulb.Fahrenheit:0.#} °F wet bulb");
        else if (!double.IsInteger(dryBulb.Fahrenheit) || !double.IsInteger(wetBulb.Fahrenheit)) sheet.Say("Between whole degrees the table is read linearly; it is printed in whole degrees");
        if (tooCold is not null || target is null)
        {
            sheet.NoResult("target_split");
            sheet.NoResult("difference");
            return sheet.CannotSay(tooCold ?? "The return air is outside the table of targets, so the split cannot be judged by it.");
        }
        sheet.Result("target_split", sheet.Step("Target split from the table", target.Value.Fahrenheit, "°F"), "°F");
        var difference = sheet.Result("difference", sheet.Step("Difference: split - target", split.Fahrenheit - target.Value.Fahrenheit, "°F"), "°F");
        return Judge(sheet, difference);
    }

    private static string? TooCold(Given given, Worksheet sheet)
    {
        var rule = CoolingTest.Rule("least_outdoor");
        sheet.From(CoolingTest.Source(rule));
        if (given.NumberOrNone("outdoor") is not { } outdoor)
        {
            sheet.Say("Outdoor temperature not given: whether it was warm enough to test is not checked");
            sheet.Caution("The outdoor temperature was not recorded; in air too cold to test the split says nothing.");
            return null;
        }
        var least = sheet.Or("least_outdoor", rule.Number("value"), "°F", "the procedure's own limit");
        if (outdoor < least - Exact.Doubt) return $"Outdoor air at {outdoor:0.#} °F is below {least:0.#} °F, too cold to judge cooling by its split.";
        if (outdoor < CautiousFahrenheit) sheet.Caution($"Outdoor air was {outdoor:0.#} °F. Below {CautiousFahrenheit:0} °F many practitioners do not run cooling, to spare the compressor (common practice).");
        return null;
    }

    private static Checked<Working> Judge(Worksheet sheet, double difference)
    {
        var band = CoolingTest.Rule("band_" + sheet.WordOr("band", "installer", "the narrower of the two"));
        sheet.From(CoolingTest.Source(band));
        var width = sheet.Step("Band on either side of the target", band.Number("value"), "°F");
        if (difference > width + Exact.Doubt)
            return sheet.Outside($"The split is {difference:0.0} °F above target, a sign of too little air over the coil: filter, coil, blower, closed registers or a small return.");
        if (difference < -width - Exact.Doubt)
            return sheet.Outside($"The split is {-difference:0.0} °F below target: measure again, and if it stays low, a sign of low capacity.");
        return sheet.Within($"The split is within {width:0} °F of its target.");
    }

    private static void Cautions(Worksheet sheet)
    {
        sheet.Caution("A split is a symptom, not a diagnosis: a unit that is right in its split can still be low in capacity, and the reverse.");
        sheet.Caution($"It stands only after {CoolingTest.Rule("minutes_running").Number("value"):0} minutes of running, filter in, panels on, probes in the plenums; readings at registers or by infrared make it look smaller.");
        sheet.Caution("Refrigerant circuits are opened only by a licensed heating and cooling contractor.");
    }
}
