namespace Purlin.Journal.Fold;

/// <summary>
/// Entries to the state of an inspection. Pure and deterministic: the same set gives the same state whatever the order, repetition and
/// splitting of its delivery, and no line is ever left out of account because of a clock.
/// </summary>
public static class Folding
{
    /// <summary>Number of this way of folding; a cached state of another number is thrown away.</summary>
    public const int Version = 1;

    /// <summary>Folds the entries of one inspection.</summary>
    /// <exception cref="ArgumentException">The entries are of several inspections.</exception>
    public static Inspection Fold(IEnumerable<Entry> entries)
    {
        ArgumentNullException.ThrowIfNull(entries);
        var distinct = CausalOrder.Distinct(entries);
        if (distinct.Count == 0) return new Inspection { Id = "" };
        var id = distinct[0].Inspection;
        if (distinct.Exists(entry => entry.Inspection != id))
            throw new ArgumentException("entries of one inspection are folded at a time", nameof(entries));

        return new Folded(id, distinct).Inspection;
    }
}
