using Purlin.Journal;

namespace Purlin.Demo.AlderLane;

/// <summary>Service, panelboard and what it feeds.</summary>
internal static class Power
{
    public static void Go(House house)
    {
        Panel(house);
        Rooms(house);
    }

    private static void Panel(House house)
    {
        var (walk, garage) = (house.Walk, house["Garage"]);
        var service = walk.Component("service", house["Right side"]);
        walk.Fact(service, "rating", FactValue.Of(125), Basis.Nameplate, "A");
        walk.Fact(service, "material", FactValue.Of("aluminium, stranded, overhead"), Basis.Seen);
        walk.Fact(service, "small appliance circuits", FactValue.Of(2), Basis.Seen);
        walk.Fact(service, "laundry circuits", FactValue.Of(1), Basis.Seen);
        walk.Fact(service, "conductor size", FactValue.Of("1/0"), Basis.Seen);
        walk.Fact(service, "conductor material", FactValue.Of("aluminium"), Basis.Seen);
        var ground = walk.Component("grounding", house["Right side"]);
        walk.Fact(ground, "electrode", FactValue.Of("ground rod"), Basis.Seen);
        walk.Fact(ground, "conductor size", FactValue.Of("6"), Basis.Seen);
        walk.Fact(ground, "conductor material", FactValue.Of("copper"), Basis.Seen);
        walk.Photo("meter-base", house["Right side"], use: PhotoUse.Context, caption: "Service entrance.", component: service);
        var panel = walk.Component("panelboard", garage);
        walk.Fact(panel, "rating", FactValue.Of(125), Basis.Nameplate, "A");
        walk.Fact(panel, "year", FactValue.Of(1984), Basis.Presumed);
        walk.Photo("panel", garage, use: PhotoUse.Context, caption: "Panelboard with its cover off.", component: panel);
        var neutrals = walk.Seen(garage, "panelboard.neutrals-doubled", "three screws hold two neutrals each", "neutral bar", panel);
        walk.Photo("panel-neutrals", garage, neutrals, PhotoUse.Finding, "Two white wires under one screw.", panel);
        var breaker = walk.Component("circuit", garage, "left column, fourth breaker");
        walk.Fact(breaker, "breaker", FactValue.Of(30), Basis.Seen, "A");
        walk.Fact(breaker, "conductor size", FactValue.Of("12"), Basis.Seen);
        walk.Fact(breaker, "conductor material", FactValue.Of("copper"), Basis.Seen);
        walk.Fact(breaker, "length", FactValue.Of(62), Basis.Measured, "ft");
        walk.Fact(breaker, "load", FactValue.Of(12), Basis.Measured, "A");
        walk.Fact(breaker, "volts", FactValue.Of(120), Basis.Measured, "V");
        var large = walk.Seen(garage, "panelboard.breaker-too-large", "30 A breaker on 12 AWG copper", "left column, fourth", panel);
        walk.Photo("panel-breaker", garage, large, PhotoUse.Finding, "Middle breaker: 30 A on the thin wire.", panel);
        walk.Seen(garage, "panelboard.directory-missing", "half of the circuits are not named", null, panel);
        walk.Seen(garage, "panelboard.breaker-off", "right column, seventh, found off; left as found", null, panel);
        walk.Clear(garage, panel, "panelboard.heat-damage", "panelboard.breaker-doubled", "panelboard.bonding-not-seen");
        walk.Clear(garage, null, "grounding.electrode-not-found");
        walk.Seen(house["Crawl space"], "grounding.water-pipe-not-bonded", "no clamp seen on the copper within 5 ft of entry");
    }

    private static void Rooms(House house)
    {
        var walk = house.Walk;
        var wiring = walk.Component("branch wiring", null);
        walk.Fact(wiring, "material", FactValue.Of("copper, and solid aluminium on some 15 A circuits"), Basis.Seen);
        walk.Fact(wiring, "year", FactValue.Of(1968), Basis.Presumed);
        var silver = walk.Seen(house["Bedroom 3"], "branch-wiring.aluminium-solid", "solid silver-coloured wire at two opened receptacles",
            "north wall", wiring);
        walk.Photo("aluminium", house["Bedroom 3"], silver, PhotoUse.Finding, "Solid aluminium wire at the receptacle.", wiring);
        walk.Clear(house["Living room"], wiring, "branch-wiring.aluminium-solid");
        var counter = walk.Seen(house["Kitchen"], "receptacle.no-gfci", "two counter receptacles do not trip by tester", "beside the sink",
            sample: new Sample(4, 4, 2));
        walk.Photo("kitchen-outlet", house["Kitchen"], counter, PhotoUse.Finding, "Counter receptacle without ground-fault protection.");
        walk.Clear(house["Bathroom 1"], "receptacle.no-gfci", sample: new Sample(1, 1, 0));
        walk.Seen(house["Bathroom 2"], "receptacle.no-gfci", null, "beside the basin", sample: new Sample(1, 1, 1));
        var open = walk.Seen(house["Bedroom 3"], "receptacle.open-ground", "three-slot receptacles with no ground by tester", null,
            sample: new Sample(4, 5, 2));
        walk.Photo("tester", house["Bedroom 3"], open, PhotoUse.Finding, "Tester: no ground.");
        walk.Clear(house["Bedroom 2"], "receptacle.open-ground", sample: new Sample(4, 5, 0));
        walk.Clear(house["Living room"], "receptacle.open-ground", sample: new Sample(6, 8, 0));
        var alarm = walk.Seen(house["Entry and hall"], "smoke-alarm.missing", "empty bracket on the hall ceiling");
        walk.Photo("alarm", house["Entry and hall"], alarm, PhotoUse.Finding, "Empty alarm bracket.");
        walk.Seen(house["Bedroom 2"], "smoke-alarm.missing");
        walk.Seen(house["Bedroom 3"], "smoke-alarm.missing");
        walk.Seen(house["Bedroom 1"], "smoke-alarm.old", "dated 2009 on its back");
        walk.Seen(house["Entry and hall"], "carbon-monoxide-alarm.missing", "none seen on either floor");
    }
}
