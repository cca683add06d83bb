using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Book;
using Purlin.Judgement.Memory;

namespace Purlin.Judgement.Evidence;

/// <summary>
/// The inspection laid out for asking: by name, by kind. Rules ask here and nowhere else, so that what each result rests on is known; what is
/// fixed for a whole visit (the opening with its property and standards, the book, the year) is not noted, since a change of it forgets everything.
/// </summary>
internal sealed class EvidenceIndex
{
    private readonly Recall recall;
    private readonly Inspection inspection;
    private readonly Dictionary<EntryName, Place> places;
    private readonly Dictionary<EntryName, Component> components;
    private readonly Dictionary<EntryName, int> walk;
    private readonly Dictionary<string, EntryName> firstOfKind;
    private readonly ILookup<string, Place> placesByKind;
    private readonly ILookup<string, Component> componentsByKind;
    private readonly ILookup<string, Reading> readingsByKind;
    private readonly Dictionary<EntryName, List<EntryName>> photosFor;
    private readonly HashSet<EntryName> withdrawn;
    private readonly Dictionary<IReadOnlyList<string>, WalkedPlaces> placesIn = new(ReferenceEqualityComparer.Instance);

    /// <summary>Lays out an inspection.</summary>
    /// <param name="inspection">The evidence.</param>
    /// <param name="book">The rule book.</param>
    /// <param name="yearNow">The year of the visit.</param>
    /// <param name="recall">Is told what is asked for.</param>
    /// <param name="before">The layout before, of which is taken over what did not change.</param>
    public EvidenceIndex(Inspection inspection, RuleBook book, int yearNow, Recall recall, EvidenceIndex? before)
    {
        (this.inspection, Book, YearNow, this.recall) = (inspection, book, yearNow, recall);
        var old = before?.inspection;
        if (before is not null && ReferenceEquals(old!.Places, inspection.Places)) (places, walk, placesByKind) = (before.places, before.walk, before.placesByKind);
        else
        {
            places = inspection.Places.ToDictionary(place => place.Id);
            walk = WalkOrder(inspection.Places);
            placesByKind = inspection.Places.ToLookup(place => place.Kind, StringComparer.Ordinal);
        }
        if (before is not null && ReferenceEquals(old!.Components, inspection.Components)) (components, firstOfKind, componentsByKind) = (before.components, before.firstOfKind, before.componentsByKind);
        else
        {
            components = inspection.Components.ToDictionary(component => component.Id);
            firstOfKind = [];
            foreach (var component in inspection.Components) firstOfKind.TryAdd(component.Kind, component.Id);
            componentsByKind = inspection.Components.ToLookup(component => component.Kind, StringComparer.Ordinal);
        }
        readingsByKind = before is not null && ReferenceEquals(old!.Readings, inspection.Readings) ? before.readingsByKind : inspection.Readings.ToLookup(reading => reading.Body.Kind, StringComparer.Ordinal);
        photosFor = before is not null && ReferenceEquals(old!.Photos, inspection.Photos) ? before.photosFor : ByWhatTheyShow(inspection.Photos);
        withdrawn = before is not null && ReferenceEquals(old!.Withdrawn, inspection.Withdrawn) ? before.withdrawn : [.. inspection.Withdrawn];
    }

    public RuleBook Book { get; }

    public int YearNow { get; }

    /// <summary>The standards chosen, known to the book or not.</summary>
    public IEnumerable<string> Chosen => (inspection.Opening?.Body.Standards ?? []).Select(Standard.IdOf).Distinct(StringComparer.Ordinal);

    /// <summary>The standards chosen that the book has.</summary>
    public IEnumerable<Standard> Standards => Chosen.Where(Book.Standards.ContainsKey).Select(id => Book.Standards[id]);

    public Opening? Opening => inspection.Opening;

    /// <summary>What was issued. Not noted: what rests on it is worked out each time.</summary>
    public IReadOnlyList<SealedEdition> Editions => inspection.Editions;

    public Property? Property => inspection.Opening?.Body.Property;

    public EntryName? House => inspection.Opening?.Id;

    public IReadOnlyList<Limitation> Limitations => Asked(Topic.Of(Subject.Limitations), inspection.Limitations);

    public Place? Place(EntryName? name) => name is { } id ? Asked(Topic.Of(Subject.Place, id), places.GetValueOrDefault(id)) : null;

    public Component? Component(EntryName? name) => name is { } id ? Asked(Topic.Of(Subject.Component, id), components.GetValueOrDefault(id)) : null;

    public IEnumerable<Place> PlacesOf(string kind) => Asked(Topic.Of(Subject.PlacesOf, kind), placesByKind[kind]);

    /// <summary>Places of several kinds in the order of the walk. A change of one of them is a change of its kind, so that alone is noted.</summary>
    public WalkedPlaces PlacesIn(IReadOnlyList<string> kinds)
    {
        foreach (var kind in kinds) recall.Ask(Topic.Of(Subject.PlacesOf, kind));
        if (!placesIn.TryGetValue(kinds, out var found)) placesIn[kinds] = found = new WalkedPlaces([.. kinds.SelectMany(kind => placesByKind[kind]).Select(place => place.Id).Distinct().OrderBy(place => walk[place])]);
        return found;
    }

    public IEnumerable<Component> ComponentsOf(string kind) => Asked(Topic.Of(Subject.ComponentsOf, kind), componentsByKind[kind]);

    public IEnumerable<Reading> ReadingsOf(string kind) => Asked(Topic.Of(Subject.ReadingsOf, kind), readingsByKind[kind]);

    public IReadOnlyList<EntryName> PhotosFor(EntryName entry) => Asked(Topic.Of(Subject.PhotosFor, entry), photosFor.TryGetValue(entry, out var photos) ? photos : []);

    public bool IsWithdrawn(EntryName entry) => Asked(Topic.Of(Subject.Withdrawn, entry), withdrawn.Contains(entry));

    /// <summary>How the inspector tied off a loose end.</summary>
    public Slot<EntryBody.LooseEndTied>? Tie(LooseEndId looseEnd)
    {
        var name = looseEnd.ToString();
        return Asked(Topic.Of(Subject.Tie, name), inspection.Ties.GetValueOrDefault(name));
    }

    /// <summary>How the inspector closed a duty.</summary>
    public Slot<EntryBody.DutyMet>? DutyMet(DutyId duty)
    {
        var name = duty.ToString();
        return Asked(Topic.Of(Subject.Duty, name), inspection.DutiesMet.GetValueOrDefault(name));
    }

    /// <summary>Whether it was looked for and is not there: said for the whole house, or for each place of these kinds that the house has.</summary>
    public bool IsAbsent(string component, IReadOnlyList<string> kinds)
    {
        recall.Ask(Topic.Of(Subject.Absent, component));
        var absences = inspection.Absences.Where(absence => absence.Kind == component).ToList();
        if (absences.Count == 0) return false;
        if (absences.Exists(absence => absence.Place is null && absence.Part is null)) return true;
        var those = PlacesIn(kinds).InOrder;
        return those.Count > 0 && those.TrueForAll(place => absences.Exists(absence => absence.Place == place));
    }

    /// <summary>Whether this kind was said not to be in this place, or nowhere in the house.</summary>
    public bool IsAbsentIn(string component, EntryName place)
    {
        recall.Ask(Topic.Of(Subject.Absent, component));
        return inspection.Absences.Any(absence => absence.Kind == component && (absence.Place == place || (absence.Place is null
            && absence.Part is null)));
    }

    /// <summary>Parts of the house.</summary>
    public IReadOnlyList<Part> Parts => Asked(Topic.Of(Subject.Parts), inspection.Parts);

    /// <summary>The part of the house that a place belongs to; none for the main part, and for the ground around all of it.</summary>
    public EntryName? PartOf(EntryName? place) => Place(place)?.Part;

    /// <summary>Where a reading was taken: its own place, else that of what it was taken on.</summary>
    public EntryName? PlaceOf(Reading reading) => reading.Body.Place ?? Component(reading.Body.Component)?.Place;

    public string NameOf(EntryName? place) => Place(place)?.Name ?? Book.Words.Say("where.the-house");

    /// <summary>Where a place stands on the walk, beside others; what has no place comes last. Only to put places in order by.</summary>
    public int Walk(EntryName? place)
    {
        if (place is not { } id) return int.MaxValue;
        recall.Ask(Topic.Of(Subject.Place, id));
        return walk.TryGetValue(id, out var order) ? order : int.MaxValue;
    }

    /// <summary>The component by which a matter is told from its like; none for the first of its kind, so that a name stays when a second one is found.</summary>
    public EntryName? Apart(EntryName? component)
    {
        if (Component(component) is not { } known || !Book.ToldApart.Contains(known.Kind)) return null;
        recall.Ask(Topic.Of(Subject.ComponentsOf, known.Kind));
        return firstOfKind[known.Kind] == known.Id ? null : known.Id;
    }

    private T Asked<T>(Topic topic, T answer)
    {
        recall.Ask(topic);
        return answer;
    }

    private static Dictionary<EntryName, List<EntryName>> ByWhatTheyShow(IReadOnlyList<Photo> photos)
    {
        Dictionary<EntryName, List<EntryName>> all = [];
        foreach (var photo in photos)
        {
            if (photo.For is not { } shown) continue;
            if (!all.TryGetValue(shown, out var list)) all[shown] = list = [];
            list.Add(photo.Id);
        }
        return all;
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
