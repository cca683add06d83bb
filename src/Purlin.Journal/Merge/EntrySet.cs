using Purlin.Journal.Fold;

namespace Purlin.Journal.Merge;

/// <summary>
/// The lines of one inspection that are here. A merge is a union: a line is its bytes, so the same line twice is one, and nothing is ever
/// taken out.
/// </summary>
public sealed class EntrySet(string inspection)
{
    private readonly Dictionary<string, Entry> byHash = new(StringComparer.Ordinal);
    private readonly Dictionary<string, HeldLine> held = new(StringComparer.Ordinal);
    private List<Strand>? strands;

    /// <summary>The inspection.</summary>
    public string Inspection { get; } = inspection;

    /// <summary>Number of entries.</summary>
    public int Count => byHash.Count;

    /// <summary>The entries, in no order of meaning.</summary>
    public IReadOnlyCollection<Entry> Entries => byHash.Values;

    /// <summary>Lines held back.</summary>
    public IReadOnlyCollection<HeldLine> Held => held.Values;

    /// <summary>A set of these lines.</summary>
    public static EntrySet Of(string inspection, IEnumerable<Entry> entries, IEnumerable<HeldLine>? held = null)
    {
        ArgumentNullException.ThrowIfNull(entries);
        var set = new EntrySet(inspection);
        foreach (var entry in entries) set.Add(entry);
        foreach (var line in held ?? []) set.Hold(line);
        return set;
    }

    /// <summary>Whether a line of this hash is here, held or not.</summary>
    public bool Has(string hash) => byHash.ContainsKey(hash) || held.ContainsKey(hash);

    /// <summary>Adds a line; false when it was here.</summary>
    /// <exception cref="ArgumentException">It is of another inspection.</exception>
    public bool Add(Entry entry)
    {
        ArgumentNullException.ThrowIfNull(entry);
        if (entry.Inspection != Inspection)
            throw new ArgumentException($"a line of {entry.Inspection} in the set of {Inspection}", nameof(entry));
        if (!byHash.TryAdd(entry.Hash, entry)) return false;
        held.Remove(entry.Hash);
        strands = null;
        return true;
    }

    /// <summary>Keeps a line that failed a check; false when it was here.</summary>
    public bool Hold(HeldLine line)
    {
        ArgumentNullException.ThrowIfNull(line);
        return !byHash.ContainsKey(line.Hash) && held.TryAdd(line.Hash, line);
    }

    /// <summary>The entries in causal order under the names they bear once forks are told apart.</summary>
    public IReadOnlyList<(EntryName Name, Entry Entry)> InOrder()
    {
        // Threading fills the strands, so a fresh set is sorted each time.
        return [.. CausalOrder.Sort(Fold.Strands.Of(byHash.Values), out _).Select(line => (line.Name, line.Entry))];
    }

    /// <summary>
    /// Each device's highest sequence up to which nothing is missing, held lines counted; forks apart. What goes out as <c>heads</c> or
    /// <c>have</c>: a gap above it is asked for again.
    /// </summary>
    public IReadOnlyDictionary<string, int> Heads()
    {
        SortedDictionary<string, int> heads = new(StringComparer.Ordinal);
        var heldOf = held.Values.Where(line => line.Name is not null)
            .ToLookup(line => line.Name!.Value.Device, line => line.Name!.Value.Seq, StringComparer.Ordinal);
        foreach (var strand in Told())
        {
            HashSet<int> there = [.. strand.Entries.Select(entry => entry.Name.Seq), .. heldOf[strand.Device]];
            var head = strand.From - 1;
            while (there.Contains(head + 1)) head++;
            if (head >= strand.From) heads[strand.Device] = head;
        }

        foreach (var device in heldOf.Where(device => !heads.ContainsKey(device.Key)))
        {
            HashSet<int> there = [.. device];
            var head = 0;
            while (there.Contains(head + 1)) head++;
            if (head > 0) heads[device.Key] = head;
        }

        return heads;
    }

    /// <summary>What the other side lacks, in causal order; lines of forked devices from the split on come last, whatever is had.</summary>
    /// <param name="have">The other side's heads.</param>
    public IReadOnlyList<(EntryName Name, Entry Entry)> Lacking(IReadOnlyDictionary<string, int> have)
    {
        var (lacking, forked) = Split(have);
        return [.. lacking, .. forked];
    }

    /// <summary>
    /// One page of what the other side lacks. Lines of a forked device from the split on are sent whole with the last page, because one
    /// number cannot tell which branch the other side means; so every page before it brings something new.
    /// </summary>
    /// <param name="have">The other side's heads.</param>
    /// <param name="size">Lines of a page, forked ones not counted.</param>
    public (IReadOnlyList<Entry> Lines, bool More) Page(IReadOnlyDictionary<string, int> have, int size)
    {
        var (lacking, forked) = Split(have);
        var more = lacking.Count > size;
        return ([.. (more ? lacking.Take(size) : lacking.Concat(forked)).Select(line => line.Entry)], more);
    }

    private (List<(EntryName Name, Entry Entry)> Lacking,
        List<(EntryName Name, Entry Entry)> Forked) Split(IReadOnlyDictionary<string, int> have)
    {
        ArgumentNullException.ThrowIfNull(have);
        var splits = Told().Where(strand => strand.Parent is not null)
            .GroupBy(strand => strand.Stem, StringComparer.Ordinal)
            .ToDictionary(group => group.Key, group => group.Min(strand => strand.From), StringComparer.Ordinal);
        List<(EntryName, Entry)> lacking = [];
        List<(EntryName, Entry)> forked = [];
        foreach (var (name, entry) in InOrder())
        {
            if (splits.TryGetValue(entry.Name.Device, out var split) && entry.Name.Seq >= split) forked.Add((name, entry));
            else if (entry.Name.Seq > have.GetValueOrDefault(name.Device)) lacking.Add((name, entry));
        }

        return (lacking, forked);
    }

    /// <summary>The entries that these heads cover.</summary>
    public IReadOnlyList<Entry> Under(IReadOnlyDictionary<string, int> heads)
    {
        ArgumentNullException.ThrowIfNull(heads);
        return [.. InOrder().Where(line => line.Name.Seq <= heads.GetValueOrDefault(line.Name.Device)).Select(line => line.Entry)];
    }

    /// <summary>Branches of all devices together; a device that was never copied is one.</summary>
    public int Branches => Told().Count;

    private List<Strand> Told() => strands ??= Fold.Strands.Of(byHash.Values);
}
