using Purlin.Journal;
using Purlin.Reckoning.Quantities;

namespace Purlin.Reckoning.Moisture;

/// <summary>The moisture that air alone gives to wood.</summary>
internal static class WoodEmc
{
    internal static Calculation Calculation { get; } = new()
    {
        Name = "wood-emc",
        Inputs =
        [
            new Input.Quantity("temperature", "wood-emc.input.temperature", "°F", 20, 270) { Required = true },
            new Input.Quantity("relative_humidity", "wood-emc.input.relative-humidity", "%", 1, 100) { Required = true },
        ],
        Sources = [Equilibrium.Source],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        var sheet = new Worksheet(Calculation, given);
        var (air, humidity) = (Temperature.FromFahrenheit(given.Number("temperature")),
            RelativeHumidity.FromPercent(given.Number("relative_humidity")));
        var emc = sheet.Step("wood-emc.step.equilibrium-moisture-content", Equilibrium.Of(air, humidity).Percent, "%");
        sheet.Result("equilibrium_moisture_content", emc, "%");
        sheet.Caution("wood-emc.caution.wood-needs-weeks-months");
        if (!Equilibrium.IsInTable(air, humidity))
            return sheet.CannotSay("wood-emc.because.handbook-table-runs-humidity", ("least-fahrenheit", Equilibrium.LeastFahrenheit),
                ("most-fahrenheit", Equilibrium.MostFahrenheit, "°F"), ("least-percent", Equilibrium.LeastPercent),
                ("most-percent", Equilibrium.MostPercent, "%"));
        return sheet.Within("wood-emc.because.wood-stays-air-comes", ("emc", emc, "%"));
    }
}
