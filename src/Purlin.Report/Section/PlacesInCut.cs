using Purlin.Journal;
using Purlin.Journal.Fold;

namespace Purlin.Report.Section;

/// <summary>The places of an inspection sorted by the part of the drawing they belong to; none is left out.</summary>
internal sealed record PlacesInCut
{
    private static readonly HashSet<string> outside = [PlaceKind.Site, PlaceKind.Side, PlaceKind.Roof, PlaceKind.Attic,
        PlaceKind.CrawlSpace, PlaceKind.Basement, PlaceKind.Garage, PlaceKind.Deck, PlaceKind.Outbuilding];
    private readonly Dictionary<EntryName, Place> byName;

    private PlacesInCut(Inspection inspection)
    {
        Place[] everywhere = [.. inspection.Places.OrderBy(place => place.Order)];
        byName = everywhere.ToDictionary(place => place.Id);
        var apart = inspection.Parts.Where(part => part.Side == "apart").Select(part => part.Id).ToHashSet();
        Place[] ordered = [.. everywhere.Where(place => place.Part is not { } part || !apart.Contains(part))];
        var pools = inspection.Components.Where(component => component.Kind == "pool").Select(component =>
            component.Place).OfType<EntryName>().ToHashSet();
        Sites = [.. Of(ordered, PlaceKind.Site)];
        Sides = [.. Of(ordered, PlaceKind.Side)];
        Roofs = [.. Of(ordered, PlaceKind.Roof)];
        Attics = [.. Of(ordered, PlaceKind.Attic)];
        Garages = [.. Of(ordered, PlaceKind.Garage)];
        Decks = [.. Of(ordered, PlaceKind.Deck)];
        // Of several grounds the one that holds a pool is the pool; the only one is the lot, with a pool or without.
        Pools = Sites.Count < 2 ? []
            : [.. Sites.Skip(1).Where(place => pools.Contains(place.Id)
            || place.Name.Contains("pool", StringComparison.OrdinalIgnoreCase))];
        Grounds = [.. Sites.Except(Pools)];
        Elsewhere = [.. Of(ordered, PlaceKind.Outbuilding), .. everywhere.Except(ordered)];
        Below = [.. ordered.Where(place => place.Kind is PlaceKind.Basement or PlaceKind.CrawlSpace || IsRoom(place)
            && LevelOf(place) <= -1)];
        Rooms = [.. ordered.Where(place => IsRoom(place) && LevelOf(place) > -1)];
    }

    public IReadOnlyList<Place> Sites { get; }

    /// <summary>The lot, without its pools.</summary>
    public IReadOnlyList<Place> Grounds { get; }

    /// <summary>Basins open to the sky.</summary>
    public IReadOnlyList<Place> Pools { get; }

    public IReadOnlyList<Place> Sides { get; }

    public IReadOnlyList<Place> Roofs { get; }

    public IReadOnlyList<Place> Attics { get; }

    public IReadOnlyList<Place> Rooms { get; }

    public IReadOnlyList<Place> Below { get; }

    public IReadOnlyList<Place> Garages { get; }

    public IReadOnlyList<Place> Decks { get; }

    public IReadOnlyList<Place> Elsewhere { get; }

    public static PlacesInCut Of(Inspection inspection) => new(inspection);

    /// <summary>
    /// Height of its own floor, else that of the place it is in, else the ground floor; in halves of a storey, kept within what can be
    /// drawn.
    /// </summary>
    public double LevelOf(Place place)
    {
        var at = place;
        for (var depth = 0; depth < 8 && at.Level is null && at.Storey is null && at.Parent is { } parent
            && byName.TryGetValue(parent, out var above); depth++) at = above;
        return Math.Round(Math.Clamp(at.Level ?? at.Storey ?? 0, -1, 5) * 2) / 2;
    }

    private static bool IsRoom(Place place) => !outside.Contains(place.Kind);

    private static IEnumerable<Place> Of(IEnumerable<Place> places, string kind) => places.Where(place => place.Kind == kind);
}
