using Purlin.Book;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Judgement.Evidence;

namespace Purlin.Judgement.Duties;

/// <summary>How many of the places or things that a duty is about were looked at.</summary>
/// <param name="Words">2 of 4 sides, and which are left or could not be seen.</param>
/// <param name="Left">Places still to be looked at.</param>
internal sealed record Counted(string Words, IReadOnlyList<EntryName> Left);

/// <summary>Counts the sides, rooms or like things of one duty: a look at one of them is no look at the others.</summary>
internal sealed class EachOne(
    EvidenceIndex evidence, CoreDuty core, IReadOnlyList<Sighting> found, IReadOnlyList<Reading> readings, IReadOnlyDictionary<EntryName,
        string> unseen)
{
    /// <summary>The count; none where there is one of it, or one look will do for all.</summary>
    public Counted? Count() => core.Sample ? null : core.Each.Count > 0 ? OfPlaces() : OfThings();

    private Counted? OfPlaces()
    {
        var places = core.Each.SelectMany(evidence.PlacesOf).OrderBy(place => evidence.Walk(place.Id)).ToList();
        if (places.Count < 2) return null;
        var seen = found.Select(look => look.Place).Concat(readings.Select(evidence.PlaceOf)).OfType<EntryName>().ToHashSet();
        var left = places.Where(place => !seen.Contains(place.Id) && !IsAbsentIn(place.Id)).ToList();
        var sides = core.Each is [PlaceKind.Side];
        return Told(sides ? "duty.count.side" : "duty.count.room", places.Count, [.. left.Select(place => (place.Id, (EntryName?)place.Id,
            place.Name))]);
    }

    /// <summary>Things of which each is a matter of its own: the second water heater is not looked at by a look at the first.</summary>
    private Counted? OfThings()
    {
        List<Component> all = [], left = [];
        foreach (var kind in core.Components.Where(evidence.Book.ToldApart.Contains))
        {
            var things = evidence.ComponentsOf(kind).Where(IsInPlace).ToList();
            var unlooked = things.FindAll(thing => !found.Any(look => IsAt(look.Component, look.Place, thing, things))
                && !readings.Any(reading => IsAt(reading.Body.Component, evidence.PlaceOf(reading), thing, things)));
            // A run of the cooling is seen at the outdoor unit or at the coil: a kind that nobody looked at was looked at by another.
            if (things.Count < 2 || unlooked.Count == things.Count) continue;
            all.AddRange(things);
            left.AddRange(unlooked);
        }
        return all.Count == 0 ? null : Told("duty.count.thing", all.Count, [.. left.Select(thing => (thing.Id, thing.Place, Name(thing)))]);
    }

    private bool IsInPlace(Component thing) => core.Places.Count == 0 || thing.Place is null || core.Places.Contains(evidence
        .Place(thing.Place)?.Kind ?? "");

    /// <summary>A look that names no thing is at the only one in its place.</summary>
    private static bool IsAt(EntryName? component, EntryName? place, Component thing, List<Component> things) =>
        component is { } named ? named == thing.Id || !things.Exists(other => other.Id == named) && IsAlone(place, thing,
            things) : place is null || IsAlone(place, thing, things);

    private static bool IsAlone(EntryName? place, Component thing, List<Component> things) =>
        thing.Place is null || (thing.Place == place && things.Count(other => other.Place == place && other.Kind == thing.Kind) == 1);

    private string Name(Component thing) => $"{thing.Name ?? thing.Kind}, {evidence.NameOf(thing.Place)}";

    private bool IsAbsentIn(EntryName place) => core.Components.Any(kind => evidence.IsAbsentIn(kind, place));

    private Counted Told(string key, int of, IReadOnlyList<(EntryName Id, EntryName? Place, string Name)> left)
    {
        var hidden = left.Where(one => unseen.ContainsKey(one.Id) || (one.Place is { } place && unseen.ContainsKey(place))).ToList();
        var open = left.Except(hidden).ToList();
        var words = evidence.Book.Words.Say(key, ("done", of - left.Count), ("of", of));
        if (hidden.Count > 0) words = $"{words} {evidence.Book.Words.Say("duty.count.hidden", ("places", SaidValue.Of(hidden.Select(one => one.Name))))}";
        if (open.Count > 0) words = $"{words} {evidence.Book.Words.Say("duty.count.left", ("places", SaidValue.Of(open.Select(one => one.Name))))}";
        return new Counted(words, [.. open.Select(one => one.Place).OfType<EntryName>()]);
    }
}
