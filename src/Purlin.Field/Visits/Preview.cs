using Purlin.Field.House;
using Purlin.Journal;
using Purlin.Journal.Fold;

namespace Purlin.Field.Visits;

/// <summary>The house as its facts would draw it, before an inspection is opened.</summary>
public static class Preview
{
    public static string Of(Property facts)
    {
        var opened = new EntryBody.InspectionOpened { Property = facts, Date = new DateOnly(2000, 1, 1) };
        return Section.Picture(new Inspection
        {
            Id = "preview",
            Opening = new(new EntryName("preview", 1), opened),
            Places = [.. StartingPlaces.For(facts).Select((place, index) => new Place { Id = new EntryName("preview", index + 2), Kind = place.Kind, Name = place.Name, Storey = place.Storey, Order = place.Order ?? index })],
        });
    }
}
