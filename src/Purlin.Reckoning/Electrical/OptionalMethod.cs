using Purlin.Journal;

namespace Purlin.Reckoning.Electrical;

/// <summary>NEC 220.82: one pool at 100 and 40 %, then the largest of the ways to heat or cool.</summary>
internal static class OptionalMethod
{
    internal static double Total(DwellingLoads house, LoadRules rules, Worksheet sheet)
    {
        var apart = rules.Value("optional_vehicle_apart") > 0;
        var pool = StandardMethod.Connected(house, rules, sheet)
            + sheet.Step("optional-method.step.nameplates-cooking-drying-fixed", house.NameplatesVoltAmperes, "VA")
            + (apart ? 0 : house.Vehicle.VoltAmperes);
        if (!apart && house.Vehicle.VoltAmperes > 0)
            sheet.Step("optional-method.step.vehicle-supply-nameplate-pool", house.Vehicle.VoltAmperes, "VA");
        var general = Tiers("optional-method.pool.general", pool, rules.Value("optional_first_va"), rules.Share("optional_rest_share"),
            sheet);
        var comfort = sheet.Result("heating_or_cooling", Comfort(house, rules, sheet), "VA");
        var vehicle = apart && house.Vehicle.VoltAmperes > 0
            ? sheet.Step("optional-method.step.vehicle-supply-outside-pool",
            Math.Max(rules.Value("vehicle_least_va"), house.Vehicle.VoltAmperes), "VA")
            : 0;
        sheet.Result("general", general, "VA");
        return general + comfort + vehicle;
    }

    /// <summary>A pool of loads, the first part whole and the rest at a share.</summary>
    internal static double Tiers(Said what, double pool, double first, double share, Worksheet sheet)
    {
        sheet.Step("optional-method.step.together", pool, "VA", ("what", what));
        return sheet.Step("optional-method.step.first-rest", Math.Min(pool, first)
            + share * Math.Max(0, pool - first), "VA", ("first", first, "VA"), ("share", share));
    }

    // The items of 220.82(C) changed their numbers between editions, so each is known by its meaning.
    private static double Comfort(DwellingLoads house, LoadRules rules, Worksheet sheet)
    {
        var cooling = rules.Share("optional_cooling_share") * (house.Cooling.VoltAmperes + RoomUnits(house));
        var heating = house.Heating.VoltAmperes;
        var (words, heat) = house.HeatingKind switch
        {
            null => ((Said)"optional-method.heat.none", 0),
            "heat pump" => HeatPump(house, rules),
            "separate" when house.HeatingUnits >= rules.Value("optional_separate_units") =>
                Heat("optional-method.heat.four", rules.Share("optional_separate_share"), heating),
            "storage" => Heat("optional-method.heat.storage", rules.Share("optional_storage_share"), heating),
            "separate" => Heat("optional-method.heat.few", rules.Share("optional_central_share"), heating),
            _ => Heat("optional-method.heat.central", rules.Share("optional_central_share"), heating),
        };
        if (cooling <= 0 && heat <= 0) return 0;
        sheet.Step("optional-method.step.cooling", cooling, "VA");
        sheet.Step("optional-method.step.heating", heat, "VA", ("words", words));
        return sheet.Step("optional-method.step.larger-two", Math.Max(cooling, heat), "VA");
    }

    private static (Said Words, double Load) Heat(Said what, double share, double load) =>
        (new("optional-method.heat.share", ("heat", what), ("share", share)), share * load);

    private static double RoomUnits(DwellingLoads house) =>
        house.Appliances.Where(appliance => appliance.Comfort).Sum(appliance => appliance.Load.VoltAmperes);

    private static (Said Words, double Load) HeatPump(DwellingLoads house, LoadRules rules)
    {
        var supplement = rules.Share("optional_supplement_share") * house.Supplement.VoltAmperes;
        var compressor = rules.Share("optional_heat_pump_share") * house.Heating.VoltAmperes;
        if (house.Supplement.VoltAmperes <= 0) return ("optional-method.heat.pump", compressor);
        return house.SupplementLocksOut
            ? ("optional-method.heat.pump.either", Math.Max(compressor, supplement))
            : ("optional-method.heat.pump.both", compressor + supplement);
    }
}
