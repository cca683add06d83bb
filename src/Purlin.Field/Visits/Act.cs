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
}
