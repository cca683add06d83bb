using Purlin.Book;
using Purlin.Journal.Fold;
using Purlin.Journal;
using Purlin.Judgement;

namespace Purlin.Tests.Report;

/// <summary>A small invented house, folded and judged by hand, so that the report is tested apart from the rooms before it.</summary>
internal static class SampleHouse
{
    public static readonly DateTimeOffset Noon = new(2026, 11, 20, 12, 0, 0, TimeSpan.FromHours(-8));

    public static Property Property { get; } = new()
    {
        Address = "41 Invented Lane, Nowhere Falls",
        YearBuilt = 1962,
        Storeys = 2,
        Foundation = "crawl space",
        RoofForm = "gable",
        RoofPitch = 7,
        Garage = "attached",
        Attic = "hatch only",
        Chimney = true,
        Deck = true,
        Bedrooms = 4,
        Bathrooms = 2,
        Facing = "SW",
        FloorArea = new Amount(1940, "sq ft"),
    };

    public static EntryName Name(int seq) => new("sample", seq);

    /// <summary>A house of these facts; the first so many of its places were looked at.</summary>
    public static Inspection House(Property property, int looked = 0)
    {
        var places = StartingPlaces.For(property).Select((place, index) => new Place
        {
            Id = Name(index + 2),
            Kind = place.Kind,
            Name = place.Name,
            Storey = place.Storey,
            Order = place.Order ?? 0,
        }).ToArray();
        return new Inspection
        {
            Id = "sample",
            Opening = new Opening(Name(1), new EntryBody.InspectionOpened { Property = property, Client = "An Invented Buyer", Inspector = "An Invented Inspector, licence 0000", Date = new DateOnly(2026, 11, 20), Weather = "dry, 51 °F, rain two days ago", Present = "the buyer and the listing agent", Demo = true, Standards = ["washington"] }),
            Places = places,
            Components = [new Component { Id = Name(1), Kind = "house" }],
            Observations = [.. places.Take(looked).Select((place, index) => new Observation { Id = Name(100 + index), At = Noon, Body = new EntryBody.ObservationMade { Place = place.Id, Outcome = Outcome.Clear, Words = "stains" } })],
        };
    }

    public static EntryName Place(Inspection inspection, string name) => inspection.Places.First(place => place.Name == name).Id;

    /// <summary>A judgement with these findings and loose ends and nothing else.</summary>
    public static JudgedInspection Judged(IReadOnlyList<Finding> findings, IReadOnlyList<LooseEnd>? ends = null) => new()
    {
        RuleBook = Purlin.Book.RuleBook.BuiltIn.Edition,
        Year = 2026,
        Findings = findings,
        LooseEnds = ends ?? [],
        Coverage = [],
        Limitations = [],
        Workings = [],
        Photos = [],
        Alerts = [],
        Obstacles = [],
    };

    public static Finding Finding(string title, Weight weight, params IReadOnlyList<EntryName> places) => new()
    {
        Id = new FindingId(title.ToLowerInvariant().Replace(' ', '-')),
        Condition = "own",
        System = "plumbing",
        Title = title,
        Weight = weight,
        Why = [new Contribution(Speaks.Consequence, "Someone nearby can be hurt.", weight)],
        Spread = Spread.OnePlace,
        Places = places,
        ComponentKind = "water heater",
        Evidence = [],
        Where = "Garage, right of the door",
        Observed = "The outlet of the relief valve is open.",
        Matters = "The valve lets scalding water out when the tank overheats.",
        Do = "Fit a full-size discharge pipe that ends near the floor.",
        Trade = "licensed plumber",
    };

    public static LooseEnd End(string question, params IReadOnlyList<EntryName> places) => new()
    {
        Id = new LooseEndId("sample", question),
        Question = question,
        Because = "Stains at the water heater.",
        OpenedBy = [],
        LookIn = places,
        StillToLook = places,
        Referral = $"Have a plumber settle this: {question}",
        Trade = "licensed plumber",
    };
}
