using Purlin.Journal;
using Purlin.Reckoning.Quantities;

namespace Purlin.Reckoning.Electrical;

/// <summary>
/// NEC article 220 part III: each kind of load with a demand of its own. Its parts also serve the neutral of every method.
/// </summary>
internal static class StandardMethod
{
    internal static double Total(DwellingLoads house, string cookingColumns, LoadRules rules, Worksheet sheet)
    {
        var lighting = Lighting(house, rules, sheet);
        var cooking = Cooking.Demand(house.RangesKilowatts, cookingColumns, rules, sheet).VoltAmperes;
        var dryers = Dryers(house, rules, sheet);
        var appliances = Appliances(house, rules, sheet);
        var comfort = Comfort(house, rules, sheet);
        var vehicle = Vehicle(house, rules, sheet);
        var motor = house.LargestMotor.VoltAmperes > 0
            ? sheet.Step("standard-method.step.largest-motor-more", rules.Share("motor_share") * house.LargestMotor.VoltAmperes, "VA",
            ("motor-share", rules.Share("motor_share")))
            : 0;
        foreach (var (name, value) in new[] { ("lighting", lighting), ("cooking", cooking), ("dryers", dryers), ("appliances", appliances),
            ("heating_or_cooling", comfort) })
            sheet.Result(name, value, "VA");
        return lighting + cooking + dryers + appliances + comfort + vehicle + motor;
    }

    /// <summary>Lighting, receptacles, kitchen and laundry circuits with their demand.</summary>
    internal static double Lighting(DwellingLoads house, LoadRules rules, Worksheet sheet)
    {
        var connected = Connected(house, rules, sheet);
        var first = rules.Value("lighting_first_va");
        var next = rules.Value("lighting_next_to_va");
        var (nextShare, restShare) = (rules.Share("lighting_next_share"), rules.Share("lighting_rest_share"));
        var demand = Math.Min(connected, first) + nextShare * Math.Max(0, Math.Min(connected, next) - first)
            + restShare * Math.Max(0, connected - next);
        return sheet.Step("standard-method.step.lighting-demand-first-next", demand, "VA", ("first", first, "VA"), ("next", next, "VA"),
            ("next-share", nextShare), ("rest-share", restShare));
    }

    /// <summary>The same without demand, as the optional methods pool it.</summary>
    internal static double Connected(DwellingLoads house, LoadRules rules, Worksheet sheet)
    {
        var each = rules.Value("lighting_va_per_ft2");
        var circuit = rules.Value("circuit_va");
        var area = sheet.Step("standard-method.step.lighting-receptacles-va-ft", house.FloorArea.SquareFeet * each, "VA",
            ("floor-area", house.FloorArea.SquareFeet, "ft²"), ("each", each));
        var circuits = sheet.Step("standard-method.step.kitchen-laundry-circuits",
            circuit * (house.SmallApplianceCircuits + house.LaundryCircuits), "VA",
            ("small-appliance-circuits", house.SmallApplianceCircuits), ("laundry-circuits", house.LaundryCircuits),
            ("circuit", circuit, "VA"));
        return sheet.Step("standard-method.step.together", area + circuits, "VA");
    }

    internal static double Dryers(DwellingLoads house, LoadRules rules, Worksheet sheet)
    {
        if (house.Dryers.IsEmpty) return 0;
        var least = rules.Value("dryer_least_va");
        return sheet.Step("standard-method.step.dryers-nameplate-least", house.Dryers.Sum(dryer => Math.Max(least, dryer.VoltAmperes)),
            "VA", ("least", least, "VA"));
    }

    private static double Appliances(DwellingLoads house, LoadRules rules, Worksheet sheet)
    {
        if (house.Appliances.IsEmpty) return 0;
        var comfort = house.Appliances.Where(appliance => appliance.Comfort).Sum(appliance => appliance.Load.VoltAmperes);
        if (comfort > 0) sheet.Step("standard-method.step.room-heaters-coolers-nameplate", comfort, "VA");
        var appliances = house.Appliances.Where(appliance => !appliance.Comfort).ToList();
        var nameplate = sheet.Step("standard-method.step.fixed-appliances-nameplate",
            appliances.Sum(appliance => appliance.Load.VoltAmperes), "VA", ("count", appliances.Count));
        var least = rules.Value("appliance_least_va");
        var counted = appliances.Where(appliance => appliance.Load.VoltAmperes >= least).ToList();
        var count = rules.Value("appliance_count");
        if (counted.Count < count)
        {
            sheet.Say("standard-method.step.fewer-count-no-reduction", ("count", count), ("least", least));
            return nameplate + comfort;
        }
        var share = rules.Share("appliance_share");
        var large = counted.Sum(appliance => appliance.Load.VoltAmperes);
        return comfort + sheet.Step("standard-method.step.count-more-those", nameplate - (1 - share) * large, "VA",
            ("count", counted.Count), ("from", count), ("share", share));
    }

    private static double Comfort(DwellingLoads house, LoadRules rules, Worksheet sheet)
    {
        var heating = house.Heating.VoltAmperes;
        if (house.HeatingKind == "heat pump")
            heating = house.SupplementLocksOut ? Math.Max(heating, house.Supplement.VoltAmperes) : heating + house.Supplement.VoltAmperes;
        var heat = rules.Share("heating_share") * heating;
        var cooling = rules.Share("cooling_share") * house.Cooling.VoltAmperes;
        if (heat <= 0 && cooling <= 0) return 0;
        return sheet.Step("standard-method.step.larger-heating-cooling-do", Math.Max(heat, cooling), "VA", ("heat", heat, "VA"),
            ("cooling", cooling, "VA"));
    }

    private static double Vehicle(DwellingLoads house, LoadRules rules, Worksheet sheet)
    {
        if (house.Vehicle.VoltAmperes <= 0) return 0;
        var least = rules.Value("vehicle_least_va");
        return sheet.Step(least > 0 ? new Said("standard-method.step.vehicle-supply-nameplate-least", ("least", least, "VA"))
            : new Said("standard-method.step.vehicle-supply-nameplate"), Math.Max(least, house.Vehicle.VoltAmperes), "VA");
    }
}
