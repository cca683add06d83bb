namespace Purlin.Reckoning.Electrical;

/// <summary>NEC 220.83: whether an existing service carries an added load. Part A without, part B with new heating or cooling.</summary>
internal static class ExistingMethod
{
    /// <summary>None when the edition's table is not known to this program.</summary>
    internal static double? Total(DwellingLoads house, bool? addsComfort, LoadRules rules, Worksheet sheet)
    {
        if (!rules.Knows("existing_first_va"))
        {
            sheet.Say("existing-method.step.edition-table-own-existing", ("edition", rules.Edition));
            sheet.From($"NEC (NFPA 70) {rules.Edition}, Table 120.83 (figures not seen)");
            return null;
        }
        var pool = StandardMethod.Connected(house, rules, sheet)
            + sheet.Step("existing-method.step.nameplates-cooking-drying-fixed", house.NameplatesVoltAmperes
                + house.Vehicle.VoltAmperes, "VA");
        var heating = house.Heating.VoltAmperes + (house.HeatingKind == "heat pump" ? house.Supplement.VoltAmperes : 0);
        var comfort = Math.Max(heating, house.Cooling.VoltAmperes
            + house.Appliances.Where(appliance => appliance.Comfort).Sum(appliance => appliance.Load.VoltAmperes));
        var (first, share) = (rules.Value("existing_first_va"), rules.Share("existing_rest_share"));
        if (comfort <= 0) return OptionalMethod.Tiers("optional-method.pool.all", pool, first, share, sheet);
        if (addsComfort == false)
        {
            sheet.Step("existing-method.step.part-no-new-heating", comfort, "VA");
            return OptionalMethod.Tiers("optional-method.pool.all", pool + comfort, first, share, sheet);
        }
        if (addsComfort is null) sheet.Say("existing-method.step.whether-heating-cooling-new");
        if (house.HeatingKind == "separate" && house.HeatingUnits >= 4)
            sheet.Caution("existing-method.caution.four-more-separately-controlled");
        var full = rules.Share("existing_comfort_share") * comfort;
        sheet.Step("existing-method.step.part-larger-heating-cooling", full, "VA");
        sheet.Result("heating_or_cooling", full, "VA");
        return full + OptionalMethod.Tiers("optional-method.pool.other", pool, first, share, sheet);
    }
}
