using Purlin.Journal;

namespace Purlin.Demo.AlderLane;

/// <summary>First round: the ground, the four sides, the deck.</summary>
internal static class Outside
{
    public static void Go(House house)
    {
        Sides(house);
        Ground(house);
        Deck(house);
    }

    private static void Sides(House house)
    {
        var walk = house.Walk;
        walk.Photo("front", house["Front"], use: PhotoUse.Context, caption: "Front, facing south.");
        walk.Photo("left", house["Left side"], use: PhotoUse.Context, caption: "Left side.");
        walk.Photo("rear", house["Rear"], use: PhotoUse.Context, caption: "Rear, with the deck.");
        walk.Photo("right", house["Right side"], use: PhotoUse.Context, caption: "Right side, with the chimney.");
        var siding = walk.Component("siding", null);
        walk.Fact(siding, "material", FactValue.Of("hardboard lap"), Basis.Seen);
        walk.Fact(siding, "year", FactValue.Of(1986), Basis.Told);
        walk.Seen(house["Rear"], "siding.hardboard-swollen", "lower edges of the bottom two courses are swollen and soft",
            "left of the deck", siding);
        walk.Seen(house["Left side"], "siding.hardboard-swollen", "swollen at the hose tap", null, siding);
        walk.Clear(house["Front"], siding, "siding.hardboard-swollen", "siding.rot");
        walk.Clear(house["Right side"], siding, "siding.hardboard-swollen", "siding.rot");
        walk.Seen(house["Front"], "siding.paint-worn", "chalking on the south wall", null, siding);
        var windows = walk.Component("window", null);
        walk.Fact(windows, "material", FactValue.Of("aluminium frame, double glazed"), Basis.Seen);
        walk.Fact(windows, "year", FactValue.Of(1994), Basis.Presumed);
        walk.Seen(house["Right side"], "vegetation.against-house", "cedar branches on the wall and gutter");
        walk.Clear(house["Front"], null, "vegetation.against-house");
    }

    private static void Ground(House house)
    {
        var walk = house.Walk;
        var drive = walk.Component("driveway", house["Site"]);
        walk.Fact(drive, "material", FactValue.Of("concrete"), Basis.Seen);
        var crack = walk.Seen(house["Site"], "driveway.shrinkage-crack", "one hairline crack, level across", "middle bay", drive);
        walk.Photo("driveway", house["Site"], crack, PhotoUse.Finding, "Hairline crack, no step across it.", drive);
        var falls = walk.Seen(house["Rear"], "grading.falls-to-house", "ground falls toward the wall, 2 in over 6 ft by level",
            "between deck and corner");
        walk.Photo("grading", house["Rear"], falls, PhotoUse.Finding, "The level shows the ground falling toward the wall.");
        walk.Reading(house["Rear"], "ground level", 0, "in", "level and rule", set: "grade rear", point: new PlanPoint(0, 0, "ft"));
        walk.Reading(house["Rear"], "ground level", 1.1, "in", "level and rule", set: "grade rear", point: new PlanPoint(3, 0, "ft"));
        walk.Reading(house["Rear"], "ground level", 2.0, "in", "level and rule", set: "grade rear", point: new PlanPoint(6, 0, "ft"));
        walk.Seen(house["Rear"], "downspout.ends-at-wall", "downspout stops 4 in from the wall", "rear left corner");
        walk.Seen(house["Left side"], "downspout.ends-at-wall", null, "rear end");
        walk.Clear(house["Front"], null, "downspout.ends-at-wall", "grading.falls-to-house");
        walk.Seen(house["Left side"], "grading.soil-touches-siding", "bark mulch against the siding for 8 ft", "at the hose tap");
        walk.Clear(house["Rear"], null, "grading.soil-touches-siding");
        var wall = walk.Seen(house["Rear"], "crack.structural",
            "stepped diagonal crack, about 3/16 in at the top, no sign of recent movement", "north-east corner");
        walk.Photo("foundation-crack", house["Rear"], wall, PhotoUse.Finding, "Diagonal crack, wider at the top.");
        walk.Clear(house["Left side"], null, "crack.structural");
        walk.Clear(house["Right side"], null, "crack.structural");
    }

    private static void Deck(House house)
    {
        var walk = house.Walk;
        var deck = walk.Component("deck", house["Deck"]);
        walk.Fact(deck, "material", FactValue.Of("wood on posts"), Basis.Seen);
        walk.Fact(deck, "year", FactValue.Of(1991), Basis.Told);
        var ledger = walk.Seen(house["Deck"], "deck.ledger-nailed", "nails only; no bolts or lag screws seen", "along the house wall",
            deck);
        walk.Photo("deck-ledger", house["Deck"], ledger, PhotoUse.Finding, "Nail heads only, and a dark stain above the ledger.", deck);
        walk.Seen(house["Deck"], "deck.flashing-missing", null, "above the ledger", deck);
        var guard = walk.Seen(house["Deck"], "guard.low", "30 in above the deck; drop of 44 in", null, deck);
        walk.Photo("deck-guard", house["Deck"], guard, PhotoUse.Finding, "Tape at the guard: 30 in.", deck);
        walk.Reading(house["Deck"], "guard height", 30, "in", "tape", deck, "deck guard");
        walk.Reading(house["Deck"], "guard opening", 3.75, "in", "tape", deck, "deck guard");
        walk.Reading(house["Deck"], "guard drop", 44, "in", "tape", deck, "deck guard");
        walk.Clear(house["Deck"], "guard.openings-wide", deck);
        var stairs = walk.Component("stairs", house["Deck"], "deck stairs");
        var uneven = walk.Seen(house["Deck"], "stairs.risers-uneven", "top riser is the tallest", null, stairs);
        walk.Photo("deck-stairs", house["Deck"], uneven, PhotoUse.Finding, "Risers from bottom to top: 6 1/2, 8, 8, 10 1/2 in.", stairs);
        foreach (var riser in (ReadOnlySpan<double>)[6.5, 8, 8, 10.5])
            walk.Reading(house["Deck"], "stair riser", riser, "in", "tape", stairs, "deck stairs");
        walk.Seen(house["Deck"], "handrail.missing", "four risers, no rail on either side", null, stairs);
    }
}
