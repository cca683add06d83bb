using Purlin.Journal;

namespace Purlin.Demo.AlderLane;

/// <summary>Roof and attic: a stain below is followed up through both.</summary>
internal static class Above
{
    public static void Go(House house)
    {
        Roof(house);
        Attic(house);
    }

    private static void Roof(House house)
    {
        var walk = house.Walk;
        var (roof, place) = (walk.Component("roof covering", house["Roof"]), house["Roof"]);
        walk.Fact(roof, "material", FactValue.Of("asphalt composition shingle"), Basis.Seen);
        walk.Fact(roof, "year", FactValue.Of(2006), Basis.Told);
        walk.Fact(roof, "span", FactValue.Of(30), Basis.Measured, "ft");
        walk.Fact(roof, "length", FactValue.Of(46), Basis.Measured, "ft");
        walk.Fact(roof, "how inspected", FactValue.Of("from a ladder at two eaves and by binoculars"), Basis.Seen);
        var worn = walk.Seen(place, "roof-covering.asphalt-worn", "granules thin on the south slope; corners curl", "south slope", roof);
        walk.Photo("roof", place, worn, PhotoUse.Finding, "Rear slope: patches where the granules are gone.", roof);
        var torn = walk.Seen(place, "roof-covering.asphalt-missing", "one shingle gone, one lifted", "rear slope, near the ridge", roof);
        walk.Photo("roof-torn", place, torn, PhotoUse.Finding, "Bare patch and a lifted shingle.", roof);
        var open = walk.Seen(place, "flashing.chimney-open", "gap of about 1/2 in under the uphill flashing", "at the chimney");
        walk.Photo("chimney-flashing", place, open, PhotoUse.Finding, "Gap under the flashing on the uphill side.");
        walk.Seen(place, "chimney.crown-cracked", "two cracks across the crown, seen by binoculars");
        walk.Clear(place, null, "chimney.no-cap");
        var rear = walk.Component("gutter", house["Rear"]);
        walk.Fact(rear, "roof area", FactValue.Of(690), Basis.Measured, "ft²");
        walk.Fact(rear, "gutter size", FactValue.Of("K-style 5 in"), Basis.Measured);
        walk.Fact(rear, "downspout size", FactValue.Of("2x3 in"), Basis.Measured);
        walk.Fact(rear, "downspouts", FactValue.Of(2), Basis.Seen);
        var gutter = walk.Seen(house["Rear"], "gutter.full", "full of leaves and needles", "rear eave");
        walk.Photo("gutter", house["Rear"], gutter, PhotoUse.Finding, "Leaves fill the gutter.");
        walk.Clear(house["Front"], null, "gutter.full");
        walk.Limit(place, "The upper slopes were not walked",
            "The shingles were too worn and steep to walk on without harm to the roof or the inspector.",
            "Have the roofing contractor who mends the flashing look at the upper slopes too.");
    }

    private static void Attic(House house)
    {
        var (walk, place) = (house.Walk, house["Attic"]);
        var fan = walk.Seen(place, "bath-fan.vents-into-attic", "the duct of bathroom 2 ends under the sheathing", "above bathroom 2");
        walk.Photo("attic-fan", place, fan, PhotoUse.Finding, "The duct ends inside the attic.");
        var dark = walk.Seen(place, "roof-deck.stained", "dark, dry sheathing around the end of the fan duct and down the north slope",
            "north slope");
        walk.Photo("attic-dark", place, dark, PhotoUse.Finding, "Dark sheathing on the north slope.");
        var stain = walk.Seen(place, "roof-deck.stained", "brown rings on the sheathing below the chimney, damp to the meter",
            "below the chimney");
        walk.Photo("attic-stain", place, stain, PhotoUse.Finding, "Water rings on both sides of the chimney.");
        walk.Reading(place, "wood moisture", 21, "%", "pin meter", label: "sheathing below the chimney");
        walk.Reading(place, "wood moisture", 14, "%", "pin meter", label: "sheathing, north slope");
        var thin = walk.Seen(place, "insulation.shallow", "loose fill about 5 in deep", "over bedrooms");
        walk.Photo("attic-depth", place, thin, PhotoUse.Finding, "Rule in the insulation: 5 in.");
        var insulation = walk.Component("insulation", place);
        walk.Fact(insulation, "material", FactValue.Of("loose-fill glass fibre"), Basis.Seen);
        walk.Reading(place, "insulation depth", 5, "in", "rule", insulation);
        walk.Seen(place, "attic-ventilation.too-little", "two gable vents only; no vents seen at the eaves");
        walk.Clear(place, null, "framing.rot");
        var end = walk.Limit(place, "The north end of the attic was not entered", "No walkway, and insulation hides the joists.",
            "Have it looked at when a walkway is laid or the insulation is renewed.");
        walk.Photo("attic-end", place, end, PhotoUse.Context, "Joists under insulation at the north end.");
    }
}
