namespace Purlin.Reckoning.Electrical;

/// <summary>NEC 220.83: whether an existing service carries an added load. Part A without, part B with new heating or cooling.</summary>
internal static class ExistingMethod
{
    /// <summary>None when the edition's table is not known to this program.</summary>
    internal static double? Total(DwellingLoads house, bool? addsComfort, LoadRules rules, Worksheet sheet)
    {
        if (!rules.Knows("existing_first_va"))
        {
            sheet.Say($"The {rules.Edition} edition has a table of its own for existing dwellings (120.83); its figures were not seen, so nothing is worked out");
            sheet.From($"NEC (NFPA 70) {rules.Edition}, Table 120.83 (figures not seen)");
            return null;
        }
        var pool = StandardMethod.Connected(house, rules, sheet)
            + sheet.Step("Nameplates of cooking, drying and fixed appliances, existing and new", house.NameplatesVoltAmperes + house.Vehicle.VoltAmperes, "VA");
        var heating = house.Heating.VoltAmperes + (house.HeatingKind == "heat pump" ? house.Supplement.VoltAmperes : 0);
        var comfort = Math.Max(heating, house.Cooling.VoltAmperes + house.Appliances.Where(appliance => appliance.Comfort).Sum(appliance => appliance.Load.VoltAmperes));
        var (first, share) = (rules.Value("existing_first_va"), rules.Share("existing_rest_share"));
        if (comfort <= 0) return OptionalMethod.Tiers("All loads", pool, first, share, sheet);
        if (addsComfort == false)
        {
            sheet.Step("Part A, no new heating or cooling: the existing, larger of the two, goes into the pool (a standards body's staff answer; not all inspectors agree)", comfort, "VA");
            return OptionalMethod.Tiers("All loads", pool + comfort, first, share, sheet);
        }
        if (addsComfort is null) sheet.Say("Whether heating or cooling is new was not given: part B taken, which gives the larger load");
        if (house.HeatingKind == "separate" && house.HeatingUnits >= 4)
            sheet.Caution("For four or more separately controlled heaters the factor of part B was not confirmed; they are counted at 100 % (from memory).");
        var full = rules.Share("existing_comfort_share") * comfort;
        sheet.Step("Part B: the larger of heating and cooling at 100 %", full, "VA");
        sheet.Result("heating_or_cooling", full, "VA");
        return full + OptionalMethod.Tiers("Other loads", pool, first, share, sheet);
    }
}
