using Purlin.Journal;

namespace Purlin.Demo.AlderLane;

/// <summary>Supply, drains and the water heater: one stain is followed from joint to joint.</summary>
internal static class Water
{
    public static void Go(House house)
    {
        var walk = house.Walk;
        var supply = walk.Component("supply piping", null);
        walk.Fact(supply, "material", FactValue.Of("galvanised steel and copper"), Basis.Seen);
        walk.Fact(supply, "year", FactValue.Of(1968), Basis.Presumed);
        var drains = walk.Component("drain piping", null);
        walk.Fact(drains, "material", FactValue.Of("cast iron and plastic"), Basis.Seen);
        walk.Fact(supply, "service size", FactValue.Of("3/4 in"), Basis.Measured);
        var gas = walk.Component("gas piping", house["Crawl space"]);
        walk.Fact(gas, "material", FactValue.Of("black steel"), Basis.Seen);
        walk.Fact(gas, "pipe size", FactValue.Of("3/4 in"), Basis.Measured);
        walk.Fact(gas, "longest run", FactValue.Of(48), Basis.Measured, "ft");
        Heater(house, supply);
        Elsewhere(house, supply);
    }

    private static void Heater(House house, EntryName supply)
    {
        var (walk, garage) = (house.Walk, house["Garage"]);
        var heater = walk.Component("water heater", garage);
        walk.Photo("heater", garage, use: PhotoUse.Context, caption: "Gas water heater in the garage.", component: heater);
        walk.Photo("heater-plate", garage, use: PhotoUse.Nameplate, caption: "Nameplate: made June 2008.", component: heater);
        walk.Fact(heater, "fuel", FactValue.Of("natural gas"), Basis.Nameplate);
        walk.Fact(heater, "capacity", FactValue.Of(40), Basis.Nameplate, "gal");
        walk.Fact(heater, "year", FactValue.Of(2008), Basis.Nameplate);
        walk.Fact(heater, "input", FactValue.Of(38000), Basis.Nameplate, "Btu/h");
        var joints = walk.Seen(garage, "water-heater.connections-corroded", "green and rust-brown crust on both connections; dry today",
            "top of the tank", heater);
        walk.Photo("heater-joints", garage, joints, PhotoUse.Finding, "Crust where copper meets steel.", heater);
        walk.Seen(garage, "water-heater.no-dielectric", null, "top of the tank", heater);
        var relief = walk.Seen(garage, "water-heater.relief-pipe-missing", "pipe ends 4 ft above the floor, cut off",
            "right side of the tank", heater);
        walk.Photo("heater-relief", garage, relief, PhotoUse.Finding, "The relief pipe stops at breast height.", heater);
        walk.Seen(garage, "water-heater.no-expansion-control", null, null, heater);
        walk.Clear(garage, heater, "water-heater.relief-valve-dripping");
        walk.Reading(garage, "hot water temperature", 138, "°F", "thermometer at the kitchen tap", heater);
        walk.Photo("flue", garage, use: PhotoUse.Fine, caption: "Flue connector: rises all the way, screwed joints.", component: heater);
        walk.Reading(house["Left side"], "static water pressure", 92, "psi", "gauge at the hose tap", supply);
        walk.Photo("pressure", house["Left side"], use: PhotoUse.Fine, caption: "92 psi at the hose tap with all taps shut.",
            component: supply);
    }

    private static void Elsewhere(House house, EntryName supply)
    {
        var walk = house.Walk;
        var sink = walk.Seen(house["Kitchen"], "supply-piping.corroded-joint",
            "crust at the shut-off, old water mark on the cupboard floor", "under the sink", supply);
        walk.Photo("sink", house["Kitchen"], sink, PhotoUse.Finding, "Crust at the shut-off under the sink.", supply);
        var bath = walk.Seen(house["Bathroom 2"], "supply-piping.corroded-joint", "white and green crust at the hot valve",
            "under the basin", supply);
        walk.Photo("bath", house["Bathroom 2"], bath, PhotoUse.Finding, "Crust at the hot valve.", supply);
        var crawl = walk.Seen(house["Crawl space"], "supply-piping.dissimilar-metals",
            "copper joined to steel without a separating fitting", "under the kitchen", supply);
        walk.Photo("crawl-pipe", house["Crawl space"], crawl, PhotoUse.Finding, "Copper and steel joined directly.", supply);
        walk.Seen(house["Crawl space"], "supply-piping.galvanised", null, "branches to both bathrooms", supply);
        walk.Clear(house["Bathroom 1"], supply, "supply-piping.corroded-joint");
        walk.Clear(house["Laundry"], supply, "supply-piping.corroded-joint");
        walk.Clear(house["Attic"], supply, "supply-piping.corroded-joint");
        walk.Clear(house["Crawl space"], supply, "supply-piping.active-leak");
        walk.Clear(house["Kitchen"], supply, "supply-piping.active-leak");
        walk.Photo("laundry", house["Laundry"], use: PhotoUse.Fine, caption: "Laundry hoses: dry, no bulges seen.");
        walk.Photo("shower", house["Bathroom 1"], use: PhotoUse.Fine, caption: "Shower run for ten minutes; no water seen below.");
    }
}
