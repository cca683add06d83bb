using Purlin.Journal;

namespace Purlin.Demo.AlderLane;

/// <summary>What an inspector looks at in passing in every house: mostly looked for and not there.</summary>
internal static class Rounds
{
    public static void Go(House house)
    {
        Shell(house);
        Roof(house);
        Pipes(house);
        Heat(house);
        Interior(house);
        NotThere(house);
    }

    private static void Shell(House house)
    {
        var walk = house.Walk;
        foreach (var side in (ReadOnlySpan<string>)["Front", "Left side", "Right side"])
            walk.Clear(house[side], null, "eave.fascia-rot", "eave.soffit-loose", "trim.rot");
        walk.Seen(house["Rear"], "eave.fascia-rot", "fascia soft behind the full gutter, for about 4 ft", "rear eave");
        walk.Clear(house["Rear"], null, "trim.rot");
        walk.Clear(house["Front"], null, "exterior-door.rot", "exterior-door.wont-latch", "walk.trip-edge", "steps.broken");
        walk.Clear(house["Rear"], null, "exterior-door.slider-drags");
        walk.Clear(house["Site"], null, "fuel-tank.buried-signs");
    }

    private static void Roof(House house)
    {
        var (walk, place) = (house.Walk, house["Roof"]);
        walk.Clear(place, null, "roof-covering.two-layers", "flashing.vent-hood", "flashing.pipe-boot-cracked", "flashing.step-missing");
        walk.Clear(house["Attic"], null, "drain.vent-ends-in-attic", "pests.rodents", "roof-framing.rafter-cracked");
    }

    private static void Pipes(House house)
    {
        var walk = house.Walk;
        foreach (var room in (ReadOnlySpan<string>)["Kitchen", "Bathroom 1", "Bathroom 2", "Laundry"])
            walk.Clear(house[room], null, "drain.active-leak", "drain.slow");
        foreach (var room in (ReadOnlySpan<string>)["Kitchen", "Bathroom 1"])
            walk.Clear(house[room], null, "sink.no-water", "supply-piping.flow-weak");
        walk.Seen(house["Bathroom 2"], "supply-piping.flow-weak-hot", "hot side runs at about half of the cold", "basin");
        walk.Seen(house["Bathroom 2"], "toilet.loose", "rocks on its bolts");
        walk.Clear(house["Bathroom 1"], null, "toilet.loose", "toilet.runs-on", "tub-and-shower.wall-soft", "tub-and-shower.joints-open");
        walk.Clear(house["Crawl space"], null, "drain.unsupported", "drain.cast-iron-rusted");
        walk.Clear(house["Garage"], null, "gas-piping.leak", "supply-piping.main-valve-not-found", "water-heater.low-in-garage");
        walk.Clear(house["Left side"], null, "gas-piping.shutoff-missing");
    }

    private static void Heat(House house)
    {
        var (walk, closet) = (house.Walk, house["Mechanical closet"]);
        walk.Clear(closet, null, "vent.disconnected", "vent.near-wood", "combustion-air.short", "furnace.flame-disturbed",
            "thermostat.fault");
        walk.Clear(house["Garage"], null, "vent.slope-wrong", "vent.spills");
        walk.Seen(house["Crawl space"], "duct.insulation-torn", "wrap hangs from two runs", "rear half");
        walk.Clear(house["Crawl space"], null, "duct.disconnected", "insulation.underfloor-fallen");
        foreach (var room in (ReadOnlySpan<string>)["Living room", "Kitchen", "Bedroom 1", "Bedroom 2", "Bedroom 3"])
            walk.Clear(house[room], "room-heater.none-in-room", words: "warm air at the register");
    }

    private static void Interior(House house)
    {
        var walk = house.Walk;
        foreach (var room in (ReadOnlySpan<string>)["Living room", "Bedroom 1", "Bedroom 3"])
            walk.Clear(house[room], null, "wall.diagonal-crack", "wall.water-stain", "ceiling.sagging", "floor-covering.water-damage");
        walk.Seen(house["Entry and hall"], "wall.diagonal-crack", "crack of about 1/16 in above the door head", "door to the living room");
        walk.Seen(house["Bedroom 1"], "wall.hairline-crack", "hairline at two taped joints");
        walk.Clear(house["Entry and hall"], "interior-door.damaged", sample: new Sample(6, 9, 0));
        foreach (var room in (ReadOnlySpan<string>)["Bedroom 1", "Bedroom 2", "Bedroom 3"])
            walk.Seen(house[room], "protective-device.no-afci");
        walk.Seen(house["Kitchen"], "cabinet-and-counter.water-damage", "floor of the cupboard swollen, dry today", "under the sink");
        walk.Clear(house["Kitchen"], null, "cabinet-and-counter.counter-damaged", "cabinet-and-counter.counter-joint-open",
            "range-hood.dead", "range.no-anti-tip");
        walk.Clear(house["Bathroom 1"], null, "cabinet-and-counter.counter-joint-open", "bath-fan.dead");
        walk.Seen(house["Bathroom 1"], "mould.shower-mildew", "grey spots at the tub edge");
    }

    /// <summary>Duties about things this house does not have, and two in words.</summary>
    private static void NotThere(House house)
    {
        var walk = house.Walk;
        foreach (var duty in (ReadOnlySpan<string>)["core:S-03", "core:S-06", "core:E-12", "core:R-08", "core:P-23", "core:P-24"])
            walk.Write(new EntryBody.DutyMet { Duty = duty, How = DutyClose.NotPresent });
        var ceiling = walk.Component("ceiling framing", null);
        walk.Fact(ceiling, "material", FactValue.Of("2 x 6 wood joists"), Basis.Seen);
        RestOfTheRooms(house);
    }

    /// <summary>A look at one room is no look at the others.</summary>
    private static void RestOfTheRooms(House house)
    {
        var walk = house.Walk;
        foreach (var room in (ReadOnlySpan<string>)["Kitchen", "Bathroom 1", "Bathroom 2"])
            walk.Clear(house[room], null, "wall.water-stain", "ceiling.sagging", "floor-covering.water-damage");
        walk.Clear(house["Bedroom 2"], null, "wall.water-stain", "floor-covering.water-damage");
        walk.Clear(house["Entry and hall"], "ceiling.sagging");
        walk.Clear(house["Bathroom 2"], "bath-fan.dead");
    }
}
