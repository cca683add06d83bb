using Purlin.Journal;
using Purlin.Journal.Fold;

namespace Purlin.Book.Search;

/// <summary>Where one stands while one says it, and what house that is: of two things with like names the nearer is meant.</summary>
public sealed record Standpoint
{
    /// <summary>Nowhere in particular.</summary>
    public static Standpoint Nowhere { get; } = new();

    /// <summary>Kind of place one stands in; none for anywhere.</summary>
    public string? Place { get; init; }

    /// <summary>Kind of component in hand; none for nothing in hand.</summary>
    public string? Component { get; init; }

    /// <summary>Year the house was built; none while unknown.</summary>
    public int? Year { get; init; }

    /// <summary>What things are made of, by kind of component, in the words of the fact sheets.</summary>
    public IReadOnlyDictionary<string, string> Materials { get => field ?? new Dictionary<string, string>(); init; }

    /// <summary>Kinds of component and place that this house does not have.</summary>
    public IReadOnlyCollection<string> Absent { get => field ?? []; init; }

    /// <summary>Where one stands in an inspection: its house, and what is on record of it.</summary>
    /// <param name="inspection">The evidence.</param>
    /// <param name="placeKind">Kind of place one stands in.</param>
    /// <param name="inHand">The component in hand; none for nothing.</param>
    public static Standpoint In(Inspection inspection, string placeKind, EntryName? inHand = null)
    {
        ArgumentNullException.ThrowIfNull(inspection);
        var property = inspection.Opening?.Body.Property;
        Dictionary<string, string> materials = new(StringComparer.Ordinal);
        foreach (var component in inspection.Components)
            if (component.Fact("material")?.Value.Text is { Length: > 0 } made)
                materials[component.Kind] = materials.TryGetValue(component.Kind, out var other) ? $"{other} {made}" : made;
        return new Standpoint
        {
            Place = placeKind,
            Component = inHand is { } id ? inspection.Components.FirstOrDefault(component => component.Id == id)?.Kind : null,
            Year = property?.YearBuilt,
            Materials = materials,
            Absent = property is null ? [] : [.. Without(property).Where(kind => inspection.Places.All(place => place.Kind != kind))],
        };
    }

    /// <summary>What the facts of a property say it does not have.</summary>
    private static IEnumerable<string> Without(Property property)
    {
        if (property.Foundation is not (null or PlaceKind.CrawlSpace)) yield return PlaceKind.CrawlSpace;
        if (property.Foundation is not (null or PlaceKind.Basement)) yield return PlaceKind.Basement;
        if (property.Attic == "none") yield return PlaceKind.Attic;
        if (property.Garage == "none") yield return PlaceKind.Garage;
        if (property.Deck == false) yield return PlaceKind.Deck;
        if (property.Chimney == false) yield return "chimney";
    }
}
