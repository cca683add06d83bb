using Purlin.Journal;

namespace Purlin.Demo.AlderLane;

/// <summary>Heating and cooling, with the readings of one cooling run.</summary>
internal static class Air
{
    public static void Go(House house)
    {
        Furnace(house);
        Cooling(house);
    }

    private static void Furnace(House house)
    {
        var (walk, place) = (house.Walk, house["Mechanical closet"]);
        var furnace = walk.Component("furnace", place);
        walk.Photo("furnace", place, use: PhotoUse.Context, caption: "Furnace in the closet.", component: furnace);
        walk.Photo("furnace-plate", place, use: PhotoUse.Nameplate, caption: "Nameplate: made November 1999, rise 40 to 70 °F.",
            component: furnace);
        walk.Fact(furnace, "plate",
            FactValue.Of("GAS FURNACE  CATEGORY I\nMODEL  FU-080-12\nSERIAL  9911 20736\nINPUT  80,000 BTU/H\nTEMP RISE  40 - 70 °F\nMFD  11/1999"), Basis.Nameplate);
        walk.Fact(furnace, "fuel", FactValue.Of("natural gas"), Basis.Nameplate);
        walk.Fact(furnace, "year", FactValue.Of(1999), Basis.Nameplate);
        walk.Fact(furnace, "input", FactValue.Of(80000), Basis.Nameplate, "Btu/h");
        walk.Fact(furnace, "rise least", FactValue.Of(40), Basis.Nameplate, "°F");
        walk.Fact(furnace, "rise most", FactValue.Of(70), Basis.Nameplate, "°F");
        walk.Reading(place, "heating return dry bulb", 68, "°F", "thermometer", furnace, "heating run");
        walk.Reading(place, "heating supply dry bulb", 121, "°F", "thermometer", furnace, "heating run");
        var air = walk.Component("combustion air", place);
        walk.Fact(air, "air from", FactValue.Of("rooms on this floor"), Basis.Seen);
        walk.Fact(air, "upper opening", FactValue.Of(112), Basis.Measured, "in²");
        walk.Fact(air, "lower opening", FactValue.Of(112), Basis.Measured, "in²");
        walk.NotVisible(place, "furnace.rust-soot-burners", "sealed: cannot be seen without taking the furnace apart", furnace);
        // Nobody has said yet what this one shows: it waits on the page before issue.
        var filter = walk.Photo("filter", place, component: furnace);
        walk.Note(filter, "Filter dark with dust; slot has no cover.", furnace);
        var ducts = walk.Component("duct", house["Crawl space"]);
        walk.Fact(ducts, "material", FactValue.Of("sheet metal with glass-fibre wrap"), Basis.Seen);
    }

    private static void Cooling(House house)
    {
        var walk = house.Walk;
        var (indoors, outdoors) = (house["Mechanical closet"], house["Left side"]);
        var unit = walk.Component("outdoor unit", outdoors);
        walk.Photo("outdoor-unit", outdoors, use: PhotoUse.Context, caption: "Outdoor unit.", component: unit);
        walk.Photo("outdoor-plate", outdoors, use: PhotoUse.Nameplate,
            caption: "Nameplate: made May 2008, 36 thousand Btu/h by its model number, R-22.", component: unit);
        walk.Fact(unit, "plate",
            FactValue.Of("SPLIT SYSTEM  COOLING\nMODEL  CU-036-B\nSERIAL  0508 61190\nREFRIGERANT  R-22   96 OZ\n208/230 V  60 HZ  1 PH\nMIN CIRCUIT AMPS  18.6\nMAX FUSE OR BREAKER  30\nMFD  05/2008"), Basis.Nameplate);
        walk.Fact(unit, "year", FactValue.Of(2008), Basis.Nameplate);
        walk.Fact(unit, "breaker", FactValue.Of(30), Basis.Seen, "A");
        walk.Fact(unit, "conductor size", FactValue.Of("10"), Basis.Seen);
        walk.Fact(unit, "capacity", FactValue.Of(3), Basis.Presumed, "tons");
        walk.Fact(unit, "refrigerant", FactValue.Of("R-22"), Basis.Nameplate);
        walk.Reading(outdoors, "outdoor dry bulb", 71, "°F", "thermometer", unit, "cooling run");
        walk.Reading(indoors, "return dry bulb", 75, "°F", "thermo-hygrometer", unit, "cooling run");
        walk.Reading(indoors, "return wet bulb", 63, "°F", "thermo-hygrometer", unit, "cooling run");
        var supply = walk.Reading(indoors, "supply dry bulb", 64, "°F", "thermometer", unit, "cooling run");
        walk.Photo("probe", indoors, supply, PhotoUse.Finding, "Supply air at the plenum: 64.0 °F.", unit);
        walk.Seen(outdoors, "outdoor-unit.refrigerant-old", "R-22 on the plate", null, unit);
    }
}
