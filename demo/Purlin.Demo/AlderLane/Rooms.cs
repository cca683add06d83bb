using Purlin.Journal;

namespace Purlin.Demo.AlderLane;

/// <summary>The rooms, the garage and what was left over at the end of the walk.</summary>
internal static class Rooms
{
    public static void Go(House house)
    {
        Ceiling(house);
        Garage(house);
        Leaving(house);
    }

    private static void Ceiling(House house)
    {
        var walk = house.Walk;
        var stain = walk.Seen(house["Bedroom 2"], "ceiling.stain", "brown stain, about 2 ft across, damp to the meter",
            "beside the chimney");
        walk.Photo("ceiling", house["Bedroom 2"], stain, PhotoUse.Finding, "Brown stain beside the chimney.");
        var wet = walk.Reading(house["Bedroom 2"], "surface moisture", 24, "%", "pin meter", label: "ceiling stain");
        walk.Photo("moisture", house["Bedroom 2"], wet, PhotoUse.Finding, "Pin meter on the stain: 24.");
        walk.Reading(house["Bedroom 2"], "surface moisture", 9, "%", "pin meter", label: "ceiling, 6 ft away");
        walk.Clear(house["Bedroom 3"], "ceiling.stain");
        walk.Clear(house["Living room"], "ceiling.stain");
        var pane = walk.Seen(house["Bedroom 1"], "window.pane-cracked", "one pane cracked from corner to corner", "east window",
            sample: new Sample(2, 2, 1));
        walk.Photo("pane", house["Bedroom 1"], pane, PhotoUse.Finding, "Cracked pane.");
        walk.Seen(house["Bedroom 3"], "window.seal-failed", "fog between the panes", "north window", sample: new Sample(3, 3, 1));
        walk.Clear(house["Bedroom 2"], "window.wont-open", sample: new Sample(2, 2, 0));
        walk.Clear(house["Bedroom 3"], "window.wont-open", sample: new Sample(3, 3, 0));
        walk.Clear(house["Living room"], "window.seal-failed", sample: new Sample(4, 4, 0));
        var hearth = walk.NotVisible(house["Living room"], "fireplace.creosote", "the inside of the flue is seen only with a camera");
        walk.Photo("fireplace", house["Living room"], hearth, PhotoUse.Context, "Fireplace: firebox and damper looked at, flue not seen.");
        walk.Limit(house["Living room"], "The inside of the chimney flue was not seen",
            "It can be seen only with a camera and swept walls.", "Have a chimney specialist sweep and scan it before the first fire.");
        walk.Clear(house["Stairs"], null, "handrail.missing", "stairs.risers-uneven", "guard.low");
    }

    private static void Garage(House house)
    {
        var (walk, place) = (house.Walk, house["Garage"]);
        var door = walk.Seen(place, "garage.house-door-not-fire", "hollow-core panel door, no closer", "door to the hall");
        walk.Photo("garage-door", place, door, PhotoUse.Finding, "Hollow-core door between garage and house.");
        walk.Clear(place, null, "garage.separation-open", "garage-door.reverse-fails");
        var goods = walk.Limit(place, "The north wall of the garage was not seen", "Boxes to the ceiling.",
            "Have it looked at when the boxes are gone, before closing if you can.");
        walk.Photo("garage-goods", place, goods, PhotoUse.Context, "Boxes to the ceiling on the north wall.");
    }

    private static void Leaving(House house)
    {
        var walk = house.Walk;
        walk.Note(null, "Thermostat back at 68, breakers as found, oven and taps off, doors locked 12:40.", house.Opening);
        walk.Limit(house["Laundry"], "The washing machine was not run", "The machine was full of the seller's laundry.", null);
    }
}
