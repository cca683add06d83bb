using Purlin.Journal;
using Purlin.Reckoning.Quantities;

namespace Purlin.Reckoning.Moisture;

/// <summary>The moisture that air alone gives to wood.</summary>
internal static class WoodEmc
{
    internal static Calculation Calculation { get; } = new()
    {
        Name = "wood-emc",
        Title = "Wood: equilibrium moisture",
        Purpose = "The moisture content that wood takes in air of this temperature and humidity.",
        Inputs =
        [
            new Input.Quantity("temperature", "Air temperature", "°F", 20, 270) { Required = true },
            new Input.Quantity("relative_humidity", "Relative humidity", "%", 1, 100) { Required = true },
        ],
        Sources = [Equilibrium.Source],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        var sheet = new Worksheet(Calculation, given);
        var (air, humidity) = (Temperature.FromFahrenheit(given.Number("temperature")), RelativeHumidity.FromPercent(given.Number("relative_humidity")));
        var emc = sheet.Step("Equilibrium moisture content by equation 4-5", Equilibrium.Of(air, humidity).Percent, "%");
        sheet.Result("equilibrium_moisture_content", emc, "%");
        sheet.Caution("Wood needs weeks to months to come to it; it follows the season, not the hour.");
        if (!Equilibrium.IsInTable(air, humidity))
            return sheet.CannotSay($"The handbook's table runs from {Equilibrium.LeastFahrenheit:0} to {Equilibrium.MostFahrenheit:0} °F and {Equilibrium.LeastPercent:0} to {Equilibrium.MostPercent:0} % humidity; outside it the equation is stretched.");
        return sheet.Within($"Wood that stays in this air comes to about {emc:0} % moisture.");
    }
}
