using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Judgement.Book;

namespace Purlin.Judgement.Evidence;

/// <summary>The inspection laid out for asking: by name, by kind, by condition. Made once for a judgement, so that no rule walks all entries.</summary>
internal sealed class EvidenceIndex
{
    private readonly Dictionary<EntryName, Place> places;
    private readonly Dictionary<EntryName, Component> components;
    private readonly Dictionary<EntryName, int> walk;
    private readonly Dictionary<string, EntryName> firstOfKind;
    private readonly ILookup<string, Place> placesByKind;
    private readonly ILookup<string, Component> componentsByKind;
    private readonly ILookup<string, Reading> readingsByKind;

    private Dictionary<EntryName, DateTimeOffset>? moments;

    public EvidenceIndex(Inspection inspection, RuleBook book, int yearNow)
    {
        (Inspection, Book, YearNow) = (inspection, book, yearNow);
        places = inspection.Places.ToDictionary(place => place.Id);
        components = inspection.Components.ToDictionary(component => component.Id);
        walk = WalkOrder(inspection.Places);
        firstOfKind = [];
        foreach (var component in inspection.Components) firstOfKind.TryAdd(component.Kind, component.Id);
        placesByKind = inspection.Places.ToLookup(place => place.Kind, StringComparer.Ordinal);
        componentsByKind = inspection.Components.ToLookup(component => component.Kind, StringComparer.Ordinal);
        readingsByKind = inspection.Readings.ToLookup(reading => reading.Body.Kind, StringComparer.Ordinal);
        Withdrawn = [.. inspection.Withdrawn];
    }

    public Inspection Inspection { get; }

    public RuleBook Book { get; }

    public int YearNow { get; }

    public HashSet<EntryName> Withdrawn { get; }

    /// <summary>The standards chosen that the book has.</summary>
    public IEnumerable<Standard> Standards => (Inspection.Opening?.Body.Standards ?? []).Select(Standard.IdOf).Distinct(StringComparer.Ordinal)
        .Where(Book.Standards.ContainsKey).Select(id => Book.Standards[id]);

    public Property? Property => Inspection.Opening?.Body.Property;

    public EntryName? House => Inspection.Opening?.Id;

    public Place? Place(EntryName? name) => name is { } id ? places.GetValueOrDefault(id) : null;

    public Component? Component(EntryName? name) => name is { } id ? components.GetValueOrDefault(id) : null;

    public IEnumerable<Place> PlacesOf(string kind) => placesByKind[kind];

    public IEnumerable<Component> ComponentsOf(string kind) => componentsByKind[kind];

    public IEnumerable<Reading> ReadingsOf(string kind) => readingsByKind[kind];

    /// <summary>Where a reading was taken: its own place, else that of what it was taken on.</summary>
    public EntryName? PlaceOf(Reading reading) => reading.Body.Place ?? Component(reading.Body.Component)?.Place;

    public string NameOf(EntryName? place) => Place(place)?.Name ?? "the house";

    /// <summary>Where a place stands on the walk; what has no place comes last.</summary>
    public int Walk(EntryName? place) => place is { } id && walk.TryGetValue(id, out var order) ? order : int.MaxValue;

    /// <summary>The component by which a matter is told from its like; none for the first of its kind, so that a name stays when a second one is found.</summary>
    public EntryName? Apart(EntryName? component)
    {
        if (Component(component) is not { } known || !Book.ToldApart.Contains(known.Kind)) return null;
        return firstOfKind[known.Kind] == known.Id ? null : known.Id;
    }

    /// <summary>When an observation or reading was made, as its device believed; the earliest moment for anything else.</summary>
    public DateTimeOffset At(EntryName entry)
    {
        moments ??= Inspection.Observations.Select(observation => (observation.Id, observation.At)).Concat(Inspection.Readings.Select(reading => (reading.Id, reading.At)))
            .ToDictionary(moment => moment.Id, moment => moment.At);
        return moments.GetValueOrDefault(entry, DateTimeOffset.MinValue);
    }

    private static Dictionary<EntryName, int> WalkOrder(IReadOnlyList<Place> places)
    {
        Dictionary<EntryName, int> order = [];
        foreach (var place in places.OrderBy(place => KindOrder(place.Kind)).ThenBy(place => place.Order).ThenBy(place => place.Id)) order[place.Id] = order.Count;
        return order;
    }

    private static int KindOrder(string kind)
    {
        for (var index = 0; index < PlaceKind.All.Count; index++)
            if (PlaceKind.All[index] == kind) return index;
        return PlaceKind.All.Count;
    }
}
