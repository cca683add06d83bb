using Purlin.Journal;

namespace Purlin.Field.Visits;

/// <summary>An act of this phone that can be taken back.</summary>
/// <param name="Entries">Its entries in the inspection.</param>
/// <param name="Words">What it was, in words.</param>
public sealed record Act(IReadOnlyList<EntryName> Entries, string Words)
{
    /// <summary>Whether it took another act back.</summary>
    public bool IsUndo { get; init; }

    /// <summary>Its entries in the inspector's own book, where it was written there too.</summary>
    public IReadOnlyList<EntryName> InOwnBook { get; init; } = [];

    /// <summary>What takes it back in the inspection, the last entry first. What undoes a withdrawal is a restoring, so that a change of mind brings back what stood before.</summary>
    public IReadOnlyList<EntryBody> Undoing(IReadOnlyList<Entry> known) =>
    [
        .. Entries.Reverse().Select(name => known.FirstOrDefault(entry => entry.Name == name)?.Body is EntryBody.EntryWithdrawn withdrawn
            ? (EntryBody)new EntryBody.EntryRestored { Entry = withdrawn.Entry }
            : new EntryBody.EntryWithdrawn { Entry = name }),
    ];

    /// <summary>What turns it in the inspector's own book, where the same entries are taken back and put back in turn.</summary>
    public IReadOnlyList<EntryBody> TurningInOwnBook() =>
        [.. InOwnBook.Reverse().Select(name => IsUndo ? (EntryBody)new EntryBody.EntryRestored { Entry = name } : new EntryBody.EntryWithdrawn { Entry = name })];
}
