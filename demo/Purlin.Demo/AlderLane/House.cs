using Purlin.Journal;

namespace Purlin.Demo.AlderLane;

/// <summary>The invented house of the demo and its places, as the walk refers to them.</summary>
internal sealed class House
{
    private readonly Dictionary<string, EntryName> places = new(StringComparer.Ordinal);

    public required Walk Walk { get; init; }

    public required EntryName Opening { get; init; }

    public EntryName this[string name] => places[name];

    public static House Open(Walk walk)
    {
        Property property = new()
        {
            Address = "14 Alder Lane, Fernhollow (an invented house)",
            YearBuilt = 1968,
            FloorArea = new Amount(1860, "ft²"),
            Storeys = 2,
            Foundation = "crawl space",
            RoofForm = "gable",
            RoofPitch = 6,
            Garage = "attached",
            Attic = "walkable",
            Chimney = true,
            Deck = true,
            Bedrooms = 3,
            Bathrooms = 2,
            Facing = "S",
        };
        var opening = walk.Write(new EntryBody.InspectionOpened
        {
            Property = property,
            Client = "R. Example (invented)",
            Inspector = "A. Sample, licence 0000 (invented)",
            Date = new DateOnly(2026, 10, 14),
            Standards = ["washington"],
            RuleBook = Purlin.Book.RuleBook.BuiltIn.Edition,
            Weather = "Dry, 71 °F; rain two days ago",
            Present = "Client and seller's agent, last half hour",
            Demo = true,
        });
        walk.Write(new EntryBody.DeviceJoined { Name = "Demo phone" });
        Agree(walk, opening);
        House house = new() { Walk = walk, Opening = opening };
        // Of the place, looked up once before the visit: it says how much rain a gutter must carry and how deep insulation should lie.
        walk.Fact(opening, "climate zone", FactValue.Of("4 marine"), Basis.Presumed);
        walk.Fact(opening, "five-minute rain", FactValue.Of(3.2), Basis.Presumed, "in/h");
        foreach (var place in StartingPlaces.For(property)) house.places[place.Name] = walk.Write(place);
        return house;
    }

    /// <summary>What was settled before the visit, as the standard chosen asks.</summary>
    private static void Agree(Walk walk, EntryName opening)
    {
        walk.Fact(opening, "agreement signed", FactValue.Of("2026-10-12"), Basis.Seen);
        walk.Fact(opening, "agreement states", FactValue.Of("all that the rule lists"), Basis.Seen);
        walk.Fact(opening, "disclosures", FactValue.Of("nothing to disclose"), Basis.Told);
    }
}
