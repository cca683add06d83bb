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
        Inputs =
        [
            new Input.Quantity("volume", "expansion-tank.input.volume", "gal", 1, 500),
            new Input.Quantity("expanded", "expansion-tank.input.expanded", "gal", 0.01, 100),
            new Input.Quantity("supply", "expansion-tank.input.supply", "psi", 1, 300) { Required = true },
            new Input.Quantity("max", "expansion-tank.input.max", "psi", 2, 400),
            new Input.Quantity("cold", "expansion-tank.input.cold", "°F", 32, 212),
            new Input.Quantity("hot", "expansion-tank.input.hot", "°F", 33, 212),
            new Input.Quantity("precharge", "expansion-tank.input.precharge", "psi", 1, 300),
            new Input.Quantity("tank", "expansion-tank.input.tank", "gal", 0.1, 200),
        ],
        Sources = ["tank = growth / (1 − P precharge / P max), absolute pressures: Boyle's law, as plumbing engineers' pages give it",
            "G. S. Kell, Journal of Chemical and Engineering Data 20 (1975) 97: density of water"],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        if (!given.Has("volume") && !given.Has("expanded"))
            return new Refusal("volume", "refused.missing", "expansion-tank.allowed.volume-heater-growth-water");
        var sheet = new Worksheet(Calculation, given);
        sheet.From(Calculation.Sources[0]);
        var (supply, most) = (given.Number("supply"), Or(sheet, given, "max", "limit"));
        var precharge = sheet.Or("precharge", supply, "psi", "expansion-tank.why.tank-pumped-up-pressure");
        if (most <= supply) return new Refusal("max", new("refused.given.hundredth", ("given", most, "psi")),
            new("expansion-tank.allowed.more-supply", ("supply", supply, "psi")));
        if (precharge > supply)
            return new Refusal("precharge", new("refused.given.hundredth", ("given", precharge, "psi")),
                new("expansion-tank.allowed.supply-pressure-less-above", ("supply", supply, "psi")));
        if (Growth(sheet, given) is not { } growth)
            return new Refusal("hot", new("refused.given", ("given", given.NumberOrNone("hot") ?? 0, "°F")),
                "expansion-tank.allowed.warmer-cold-water-water");
        var line = sheet.Step("expansion-tank.step.line-pressure-absolute-supply", supply + AtmospherePsi, "psi");
        var limit = sheet.Step("expansion-tank.step.highest-pressure-absolute-max", most + AtmospherePsi, "psi");
        var air = precharge == supply
            ? line : sheet.Step("expansion-tank.step.precharge-absolute-precharge", precharge + AtmospherePsi, "psi");
        var share = sheet.Result("acceptance",
            sheet.Step(precharge == supply ? new Said("expansion-tank.step.share-tank-takes-water")
            : new Said("expansion-tank.step.share-tank-takes-water-2"), air / line - air / limit), "");
        var smallest = sheet.Result("smallest_tank", sheet.Step("expansion-tank.step.smallest-tank-growth-share", growth / share, "gal"),
            "gal");
        if (precharge < supply) sheet.Caution("expansion-tank.caution.tank-pumped-up-less");
        sheet.Caution("expansion-tank.caution.relief-valve-drips-may");
        return given.NumberOrNone("tank") is not { } tank
            ? sheet.CannotSay("expansion-tank.because.no-tank-given-compare", ("growth", growth, "gal"), ("smallest", smallest, "gal"))
            : tank >= smallest
                ? sheet.Within("expansion-tank.because.tank-takes-water-grows", ("tank", tank, "gal"), ("growth", growth, "gal"),
                ("smallest", smallest, "gal"))
                : sheet.Outside("expansion-tank.because.tank-too-small-water", ("tank", tank, "gal"), ("growth", growth, "gal"),
                    ("smallest", smallest, "gal"));
    }

    // None when nothing grows.
    private static double? Growth(Worksheet sheet, Given given)
    {
        if (given.NumberOrNone("expanded") is { } known)
        {
            sheet.Result("expanded", sheet.Step("expansion-tank.step.growth-water-given", known, "gal"), "gal");
            return known;
        }
        var (cold, hot) = (Or(sheet, given, "cold", "cold"), Or(sheet, given, "hot", "hot"));
        sheet.From(Calculation.Sources[1]);
        var (before, after) = (WaterDensity.KilogramsPerCubicMetre(cold), WaterDensity.KilogramsPerCubicMetre(hot));
        var share = before / after - 1;
        if (hot <= cold || share <= 0) return null;
        sheet.Step("expansion-tank.step.density-water", before, "kg/m³", ("cold", cold, "°F"));
        sheet.Step("expansion-tank.step.density-water-2", after, "kg/m³", ("hot", hot, "°F"));
        sheet.Result("growth_share", sheet.Step("expansion-tank.step.growth-density-cold-density", share));
        return sheet.Result("expanded", sheet.Step("expansion-tank.step.growth-heater-water-volume", given.Number("volume") * share, "gal"),
            "gal");
    }

    private static double Or(Worksheet sheet, Given given, string name, string item)
    {
        var row = Standard.Rows.Single(row => row["item"] == item);
        if (!given.Has(name)) sheet.From(row.Source);
        return sheet.Or(name, row.Number("value"), row["unit"], row.Source);
    }
}
