namespace Purlin.Journal.Fold;

/// <summary>
/// The fold of an inspection that is being written (an incremental fold): an entry that comes after all others, as each act of the
/// inspector's own hand does, costs what it touches; anything else folds everything anew. The state is the same as that of
/// <see cref="Folding.Fold"/>, and things that did not change are the same objects in it. For one inspection and one thread.
/// </summary>
public sealed class GrowingFold
{
    private readonly List<Entry> entries = [];
    private readonly HashSet<string> hashes = new(StringComparer.Ordinal);
    private Folded? folded;

    /// <summary>The state.</summary>
    public Inspection Inspection => folded?.Inspection ?? Folding.Fold([]);

    /// <summary>Every entry taken, each once, in the order in which they came.</summary>
    public IReadOnlyList<Entry> Entries => entries;

    /// <summary>Takes entries in; those it has already are passed over.</summary>
    /// <returns>Whether there was anything new.</returns>
    /// <exception cref="ArgumentException">An entry is of another inspection.</exception>
    public bool Add(IEnumerable<Entry> more)
    {
        ArgumentNullException.ThrowIfNull(more);
        var added = 0;
        foreach (var entry in more)
        {
            if (hashes.Contains(entry.Hash)) continue;
            if (entries.Count > 0 && entries[0].Inspection != entry.Inspection)
                throw new ArgumentException("entries of one inspection are folded at a time", nameof(more));
            hashes.Add(entry.Hash);
            entries.Add(entry);
            added++;
        }

        if (added == 0) return false;
        // A whole journal at once is quicker folded as such.
        if (folded is null || added > 50 || !entries[^added..].TrueForAll(folded.TryAdd))
            folded = new Folded(entries[0].Inspection, entries);
        return true;
    }
}
