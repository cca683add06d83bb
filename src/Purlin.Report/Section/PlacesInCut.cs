using Purlin.Journal;
using Purlin.Journal.Fold;

namespace Purlin.Report.Section;

/// <summary>The places of an inspection sorted by the part of the drawing they belong to; none is left out.</summary>
internal sealed record PlacesInCut
{
    private static readonly HashSet<string> outside = [PlaceKind.Site, PlaceKind.Side, PlaceKind.Roof, PlaceKind.Attic, PlaceKind.CrawlSpace, PlaceKind.Basement, PlaceKind.Garage, PlaceKind.Deck, PlaceKind.Outbuilding];
    private readonly Dictionary<EntryName, Place> byName;

    private PlacesInCut(Inspection inspection)
    {
        Place[] ordered = [.. inspection.Places.OrderBy(place => place.Order)];
        byName = ordered.ToDictionary(place => place.Id);
        Sites = [.. Of(ordered, PlaceKind.Site)];
        Sides = [.. Of(ordered, PlaceKind.Side)];
        Roofs = [.. Of(ordered, PlaceKind.Roof)];
        Attics = [.. Of(ordered, PlaceKind.Attic)];
        Garages = [.. Of(ordered, PlaceKind.Garage)];
        Decks = [.. Of(ordered, PlaceKind.Deck)];
        Elsewhere = [.. Of(ordered, PlaceKind.Outbuilding)];
        Below = [.. ordered.Where(place => place.Kind is PlaceKind.Basement or PlaceKind.CrawlSpace || IsRoom(place) && StoreyOf(place) < 0)];
        Rooms = [.. ordered.Where(place => IsRoom(place) && StoreyOf(place) >= 0)];
    }

    public IReadOnlyList<Place> Sites { get; }

    public IReadOnlyList<Place> Sides { get; }

    public IReadOnlyList<Place> Roofs { get; }

    public IReadOnlyList<Place> Attics { get; }

    public IReadOnlyList<Place> Rooms { get; }

    public IReadOnlyList<Place> Below { get; }

    public IReadOnlyList<Place> Garages { get; }

    public IReadOnlyList<Place> Decks { get; }

    public IReadOnlyList<Place> Elsewhere { get; }

    public static PlacesInCut Of(Inspection inspection) => new(inspection);

    /// <summary>Its own storey, else that of the place it is in, else the ground floor; kept within what can be drawn.</summary>
    public int StoreyOf(Place place)
    {
        var at = place;
        for (var depth = 0; depth < 8 && at.Storey is null && at.Parent is { } parent && byName.TryGetValue(parent, out var above); depth++) at = above;
        return Math.Clamp(at.Storey ?? 0, -1, 5);
    }

    private static bool IsRoom(Place place) => !outside.Contains(place.Kind);

    private static IEnumerable<Place> Of(IEnumerable<Place> places, string kind) => places.Where(place => place.Kind == kind);
}
