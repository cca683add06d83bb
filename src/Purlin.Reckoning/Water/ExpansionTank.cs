using Purlin.Journal;

namespace Purlin.Reckoning.Water;

/// <summary>How much the water of a heater grows, and the smallest tank that takes it up below the pressure allowed.</summary>
public static class ExpansionTank
{
    // Standard atmosphere, 101 325 Pa (BIPM), in psi: gauge readings become absolute by adding it.
    private const double AtmospherePsi = 14.695948775513;

    private static readonly Table Standard = Tables.Read("water/expansion.csv");

    /// <summary>The reckoning.</summary>
    public static Calculation Calculation { get; } = new()
    {
        Name = "expansion-tank",
        Title = "Water: thermal expansion tank",
        Purpose = "How much heated water grows and the smallest expansion tank for it.",
        Inputs =
        [
            new Input.Quantity("volume", "water in the heater", "gal", 1, 500),
            new Input.Quantity("expanded", "growth of the water, where it is known instead", "gal", 0.01, 100),
            new Input.Quantity("supply", "pressure of the supply", "psi", 1, 300) { Required = true },
            new Input.Quantity("max", "highest pressure allowed", "psi", 2, 400),
            new Input.Quantity("cold", "temperature of the cold water", "°F", 32, 212),
            new Input.Quantity("hot", "temperature to which it is heated", "°F", 33, 212),
            new Input.Quantity("precharge", "air pressure in the tank before it is fitted", "psi", 1, 300),
            new Input.Quantity("tank", "size of the tank that is there", "gal", 0.1, 200),
        ],
        Sources = ["tank = growth / (1 − P precharge / P max), absolute pressures: Boyle's law, as plumbing engineers' pages give it", "G. S. Kell, Journal of Chemical and Engineering Data 20 (1975) 97: density of water"],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        if (!given.Has("volume") && !given.Has("expanded")) return new Refusal("volume", "missing", "the volume of the heater, or the growth of its water as expanded");
        var sheet = new Worksheet(Calculation, given);
        sheet.From(Calculation.Sources[0]);
        var (supply, most) = (given.Number("supply"), Or(sheet, given, "max", "limit"));
        var precharge = sheet.Or("precharge", supply, "psi", "a tank is pumped up to the pressure of its line before it is fitted");
        if (most <= supply) return new Refusal("max", $"{most:0.##} psi", $"more than the supply, {supply:0.##} psi");
        if (precharge > supply) return new Refusal("precharge", $"{precharge:0.##} psi", $"the supply pressure, {supply:0.##} psi, or less: above it the tank takes no water until the line reaches it");
        if (Growth(sheet, given) is not { } growth) return new Refusal("hot", $"{given.NumberOrNone("hot"):0.##} °F", "warmer than the cold water, so that the water grows");
        var line = sheet.Step("Line pressure, absolute = supply + 14.7", supply + AtmospherePsi, "psi");
        var limit = sheet.Step("Highest pressure, absolute = max + 14.7", most + AtmospherePsi, "psi");
        var air = precharge == supply ? line : sheet.Step("Precharge, absolute = precharge + 14.7", precharge + AtmospherePsi, "psi");
        var share = sheet.Result("acceptance", sheet.Step(precharge == supply ? "Share of the tank that takes water = 1 − P line / P max" : "Share of the tank that takes water = P precharge / P line − P precharge / P max", air / line - air / limit), "");
        var smallest = sheet.Result("smallest_tank", sheet.Step("Smallest tank = growth / share", growth / share, "gal"), "gal");
        if (precharge < supply) sheet.Caution("The tank is pumped up to less than its line, so part of it is full before the heater fires.");
        sheet.Caution("A relief valve that drips may be doing its work. Whoever looks after the tank lets the pressure out of the line first.");
        return given.NumberOrNone("tank") is not { } tank
            ? sheet.CannotSay($"No tank was given to compare; the smallest that takes {growth:0.00} gal is {smallest:0.0} gal.")
            : tank >= smallest
                ? sheet.Within($"A tank of {tank:0.0} gal takes the {growth:0.00} gal by which the water grows; {smallest:0.0} gal is the least.")
                : sheet.Outside($"A tank of {tank:0.0} gal is too small for water that grows by {growth:0.00} gal; {smallest:0.0} gal is the least.");
    }

    // None when nothing grows.
    private static double? Growth(Worksheet sheet, Given given)
    {
        if (given.NumberOrNone("expanded") is { } known)
        {
            sheet.Result("expanded", sheet.Step("Growth of the water, as given", known, "gal"), "gal");
            return known;
        }
        var (cold, hot) = (Or(sheet, given, "cold", "cold"), Or(sheet, given, "hot", "hot"));
        sheet.From(Calculation.Sources[1]);
        var (before, after) = (WaterDensity.KilogramsPerCubicMetre(cold), WaterDensity.KilogramsPerCubicMetre(hot));
        var share = before / after - 1;
        if (hot <= cold || share <= 0) return null;
        sheet.Step($"Density of water at {cold:0.#} °F", before, "kg/m³");
        sheet.Step($"Density of water at {hot:0.#} °F", after, "kg/m³");
        sheet.Result("growth_share", sheet.Step("Growth = density cold / density hot − 1", share));
        return sheet.Result("expanded", sheet.Step("Growth of the heater's water = volume × growth", given.Number("volume") * share, "gal"), "gal");
    }

    private static double Or(Worksheet sheet, Given given, string name, string item)
    {
        var row = Standard.Rows.Single(row => row["item"] == item);
        if (!given.Has(name)) sheet.From(row.Source);
        return sheet.Or(name, row.Number("value"), row["unit"], row.Source);
    }
}
