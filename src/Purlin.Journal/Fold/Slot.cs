namespace Purlin.Journal.Fold;

/// <summary>A value with the entry that stated it.</summary>
/// <typeparam name="T">What is stated.</typeparam>
/// <param name="Value">The value.</param>
/// <param name="By">The entry that stated it.</param>
/// <param name="At">When, as its device believed.</param>
public sealed record Stated<T>(T Value, EntryName By, DateTimeOffset At)
{
    internal Line? Line { get; init; }

    /// <summary>Whether the one who stated it had that entry in hand, by cause and not by any clock.</summary>
    public bool Saw(EntryName entry) => Line?.Saw(entry) == true;
}

/// <summary>
/// A slot that state entries give a value (a multi-value register). Values nobody has replaced all stand: more than one is a divergence,
/// shown to a person; the tie-break only picks the one drawn first.
/// </summary>
/// <typeparam name="T">What the slot holds.</typeparam>
public sealed record Slot<T>
{
    /// <summary>Every value that stands, the one to draw first at index 0. Never empty.</summary>
    public required IReadOnlyList<Stated<T>> Standing { get; init; }

    /// <summary>The value to draw first.</summary>
    public T Value => Standing[0].Value;

    /// <summary>True when several values stand.</summary>
    public bool Diverges => Standing.Count > 1;
}
