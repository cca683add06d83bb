using Purlin.Journal;

namespace Purlin.Demo.AlderLane;

/// <summary>Crawl space and the floor above it: wet soil, a sunken post, a floor out of level.</summary>
internal static class Below
{
    public static void Go(House house)
    {
        Crawl(house);
        Survey(house);
    }

    private static void Crawl(House house)
    {
        var (walk, place) = (house.Walk, house["Crawl space"]);
        var foundation = walk.Component("foundation", place);
        walk.Fact(foundation, "material", FactValue.Of("poured concrete walls, piers and wood posts"), Basis.Seen);
        var floor = walk.Component("floor framing", place);
        walk.Fact(floor, "material", FactValue.Of("2 x 8 wood joists on wood girders"), Basis.Seen);
        walk.Fact(floor, "size", FactValue.Of("2x8"), Basis.Measured);
        walk.Fact(floor, "spacing", FactValue.Of(16), Basis.Measured, "in");
        walk.Fact(floor, "species", FactValue.Of("douglas fir-larch"), Basis.Seen);
        walk.Fact(floor, "grade", FactValue.Of("No. 2"), Basis.Seen);
        walk.Reading(place, "joist span", 11.5, "ft", "laser measure", floor);
        var wet = walk.Seen(place, "crawl-space.water-marks", "wet soil and white salts along the rear wall", "rear wall");
        walk.Photo("crawl-wet", place, wet, PhotoUse.Finding, "Wet soil and salts on the rear wall.");
        var bare = walk.Seen(place, "crawl-space.no-ground-cover", "about a third of the soil is bare", "rear half");
        walk.Photo("crawl", place, bare, PhotoUse.Finding, "Ground cover stops halfway.");
        walk.Clear(place, null, "crawl-space.standing-water");
        var joist = walk.Seen(place, "framing.wood-wet", "joist ends at the rear wall wet to the meter",
            "rear wall, third and fourth joist", floor);
        walk.Photo("crawl-joist", place, joist, PhotoUse.Finding, "Dark, wet joist end.", floor);
        walk.Reading(place, "wood moisture", 24, "%", "pin meter", floor, label: "joist end at the rear wall");
        walk.Reading(place, "wood moisture", 22, "%", "pin meter", floor, label: "sill at the rear wall");
        walk.Reading(place, "wood moisture", 15, "%", "pin meter", floor, label: "girder, middle");
        walk.Reading(place, "air dry bulb", 64, "°F", "thermo-hygrometer", set: "crawl air");
        walk.Reading(place, "air relative humidity", 78, "%", "thermo-hygrometer", set: "crawl air");
        var post = walk.Seen(place, "pier.leaning", "middle post stands on a tipped pad", "middle girder", floor);
        walk.Seen(place, "pier.shimmed", "gap above the post closed with wood shims", "middle girder", floor);
        walk.Photo("crawl-post", place, post, PhotoUse.Finding, "Post on a tipped pad.", floor);
        walk.Clear(place, null, "framing.rot", "framing.notched");
        var corner = walk.Limit(place, "The north-east corner of the crawl space was not entered", "Less than 12 in below the beam there.",
            "Have the foundation contractor look at that corner when the post is set right; dig a way in if need be.");
        walk.Photo("crawl-corner", place, corner, PhotoUse.Context, "The way is too low at the north-east corner.");
    }

    /// <summary>Twenty-four points by water level over the ground floor, a dip around the sunken post.</summary>
    private static void Survey(House house)
    {
        var (walk, place) = (house.Walk, house["Living room"]);
        double[,] levels =
        {
            { 0.1, 0.0, -0.2, -0.3, -0.2, 0.0 },
            { 0.0, -0.4, -0.9, -1.4, -0.7, -0.2 },
            { 0.0, -0.2, -0.6, -0.8, -0.5, -0.1 },
            { 0.1, 0.0, -0.2, -0.2, -0.1, 0.0 },
        };
        for (var row = 0; row < 4; row++)
            for (var column = 0; column < 6; column++)
                walk.Reading(place, "floor level", levels[row, column], "in", "water level", set: "ground floor",
                    point: new PlanPoint(2 + column * 7.2, 2 + row * 8, "ft", row == 3 ? 0.4 : 0), label: row == 3 ? "carpet" : null);
        walk.Photo("floor-level", place, use: PhotoUse.Fine, caption: "Floor level survey: lowest near the middle.");
        var door = walk.Seen(house["Entry and hall"], "floor.out-of-level", "hall door rubs; gap of 1/2 in at the head of the frame",
            "door to the living room");
        walk.Photo("door", house["Entry and hall"], door, PhotoUse.Finding, "Door frame out of square.");
    }
}
