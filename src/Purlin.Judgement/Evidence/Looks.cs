using Purlin.Journal;
using Purlin.Judgement.Memory;

namespace Purlin.Judgement.Evidence;

/// <summary>All looks of an inspection, by condition, by matter, by kind of component; kept from one judgement to the next.</summary>
internal sealed class Looks(Recall recall)
{
    // Beyond this many changes it is quicker to lay all of them out anew.
    private const int Few = 64;

    private static readonly List<Sighting> None = [];

    private readonly Dictionary<string, List<Sighting>> byCondition = new(StringComparer.Ordinal);
    private readonly Dictionary<FindingId, List<Sighting>> byMatter = [];
    private readonly Dictionary<string, List<Sighting>> byKind = new(StringComparer.Ordinal);
    private readonly Dictionary<EntryName, List<Sighting>> byEntry = [];
    private readonly Dictionary<EntryName, int> looked = [];
    private List<Sighting> all = [];
    private List<Sighting>? hidden;

    /// <summary>Names of matters for which somebody looked.</summary>
    public IEnumerable<FindingId> Matters => byMatter.Keys;

    public IReadOnlyList<Sighting> For(string condition)
    {
        recall.Ask(Topic.Of(Subject.Looks, condition));
        return byCondition.GetValueOrDefault(condition, None);
    }

    /// <summary>Not noted: a matter is made from this very list, which is another object when it changes.</summary>
    public IReadOnlyList<Sighting> OfMatter(FindingId matter) => byMatter.GetValueOrDefault(matter, None);

    public IReadOnlyList<Sighting> At(string kind)
    {
        recall.Ask(Topic.Of(Subject.LooksAt, kind));
        return byKind.GetValueOrDefault(kind, None);
    }

    /// <summary>Not noted: photographs are spoken for each time.</summary>
    public IReadOnlyList<Sighting> By(EntryName entry) => byEntry.GetValueOrDefault(entry, None);

    public bool LookedIn(EntryName place)
    {
        recall.Ask(Topic.Of(Subject.LookedIn, place));
        return looked.ContainsKey(place);
    }

    public IReadOnlyList<Sighting> Hidden()
    {
        recall.Ask(Topic.Of(Subject.Hidden));
        return hidden ??= all.FindAll(look => look.Outcome == Outcome.NotVisible);
    }

    /// <summary>Takes the looks of a new judgement in place of the last one's.</summary>
    public void Update(List<Sighting> now)
    {
        var before = all;
        all = now;
        var (first, ends) = Window.Of(before.Count, now.Count, (one, other) => ReferenceEquals(before[one], now[other]));
        List<Sighting> gone = before[first..^ends], come = now[first..^ends];
        if (gone.Count + come.Count == 0) return;
        foreach (var look in gone) Tell(look, -1);
        foreach (var look in come) Tell(look, +1);
        if (gone.Count + come.Count > Few) Anew();
        else foreach (var look in (List<Sighting>)[.. gone, .. come]) Again(look);
    }

    private void Tell(Sighting look, int change)
    {
        recall.Changed(Topic.Of(Subject.Looks, look.Condition));
        foreach (var kind in look.Kinds) recall.Changed(Topic.Of(Subject.LooksAt, kind));
        if (look.Outcome == Outcome.NotVisible)
        {
            recall.Changed(Topic.Of(Subject.Hidden));
            hidden = null;
        }
        if (!look.Looked || look.Place is not { } place) return;
        var times = looked.GetValueOrDefault(place) + change;
        if (times > 0) looked[place] = times;
        else looked.Remove(place);
        if (times == 0 || times == change) recall.Changed(Topic.Of(Subject.LookedIn, place));
    }

    private void Anew()
    {
        byCondition.Clear();
        byMatter.Clear();
        byKind.Clear();
        byEntry.Clear();
        foreach (var look in all)
        {
            Into(byCondition, look.Condition, look);
            Into(byMatter, look.Matter, look);
            foreach (var kind in look.Kinds) Into(byKind, kind, look);
            foreach (var entry in look.Entries) Into(byEntry, entry, look);
        }
    }

    /// <summary>The lists that one look stands in, each in the order of all looks.</summary>
    private void Again(Sighting look)
    {
        Put(byCondition, look.Condition, all.FindAll(other => other.Condition == look.Condition));
        Put(byMatter, look.Matter, all.FindAll(other => other.Matter == look.Matter));
        foreach (var kind in look.Kinds) Put(byKind, kind, all.FindAll(other => other.Kinds.Contains(kind)));
        foreach (var entry in look.Entries) Put(byEntry, entry, all.FindAll(other => other.Entries.Contains(entry)));
    }

    private static void Put<TKey>(Dictionary<TKey, List<Sighting>> index, TKey key, List<Sighting> looks)
        where TKey : notnull
    {
        if (looks.Count == 0) index.Remove(key);
        else index[key] = looks;
    }

    private static void Into<TKey>(Dictionary<TKey, List<Sighting>> index, TKey key, Sighting look)
        where TKey : notnull
    {
        if (!index.TryGetValue(key, out var looks)) index[key] = looks = [];
        looks.Add(look);
    }
}
