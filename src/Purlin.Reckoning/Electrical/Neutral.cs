namespace Purlin.Reckoning.Electrical;

/// <summary>
/// The load of the neutral by NEC 220.61: the greatest imbalance between it and either line. The same for every method. The program
/// takes the figure that follows from the rule; the worked example D1(b) has been printed with 83 and with 84 A.
/// </summary>
internal static class Neutral
{
    /// <summary>Volt-amperes; none when an appliance's voltage is not known.</summary>
    /// <param name="house">The loads.</param>
    /// <param name="cookingColumns">As for the total.</param>
    /// <param name="rules">The edition.</param>
    /// <param name="sheet">Where the neutral's own steps go.</param>
    /// <param name="parts">Where lighting, cooking and dryers are worked out: another sheet where the first has them already.</param>
    internal static double? Load(DwellingLoads house, string cookingColumns, LoadRules rules, Worksheet sheet, Worksheet parts)
    {
        if (house.Appliances.FirstOrDefault(appliance => appliance.Volts is null) is { } unknown)
        {
            sheet.Say("neutral.step.neutral-not-worked-out", ("name", unknown.Name));
            return null;
        }
        sheet.Say("neutral.step.neutral-loads-alone-heating");
        var share = rules.Share("neutral_cooking_dryer_share");
        var lighting = StandardMethod.Lighting(house, rules, parts);
        var cooking = share * Cooking.Demand(house.RangesKilowatts, cookingColumns, rules, parts).VoltAmperes;
        var dryers = share * StandardMethod.Dryers(house, rules, parts);
        var appliances = Appliances(house, rules.Share("motor_share"));
        sheet.Step("neutral.step.lighting-demand", lighting, "VA");
        sheet.Step("neutral.step.cooking-dryer-demand", cooking + dryers, "VA", ("share", share));
        if (appliances > 0) sheet.Step("neutral.step.appliances-line-neutral-worse", appliances, "VA");
        var load = lighting + cooking + dryers + appliances;
        var whole = rules.Value("neutral_over_amps") * house.Volts.Volts;
        if (load > whole) load = sheet.Step("neutral.step.part-above", whole
            + rules.Share("neutral_over_share") * (load - whole), "VA", ("neutral-over-amps", rules.Value("neutral_over_amps"), "A"),
            ("neutral-over-share", rules.Share("neutral_over_share")));
        return load;
    }

    // On a three-wire service two equal loads on opposite lines cancel in the neutral; counted against the full voltage, a load on one
    // line alone weighs twice. Loads without a line are taken as evenly spread.
    private static double Appliances(DwellingLoads house, double motorShare)
    {
        var loads = house.Appliances.Where(appliance => appliance.LineToNeutral).ToList();
        double On(string line) => loads.Where(load => load.Line == line).Sum(load => Scaled(load, house));
        var spread = loads.Where(load => load.Line is null).Sum(load => load.Load.VoltAmperes);
        var motor = loads.Where(load => load.Motor).Select(load => load.Line is null ? load.Load.VoltAmperes : Scaled(load, house))
            .DefaultIfEmpty(0).Max();
        return spread + Math.Max(On("A"), On("B")) + motorShare * motor;
    }

    /// <summary>A load on one line, as the load between the lines that gives the same current.</summary>
    private static double Scaled(FixedAppliance load, DwellingLoads house) => load.Load.VoltAmperes / load.Volts!.Value * house.Volts.Volts;
}
