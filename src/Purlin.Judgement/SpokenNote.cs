using Purlin.Journal;

namespace Purlin.Judgement;

/// <summary>A note or sound note and what becomes of it.</summary>
/// <param name="Id">The entry that first wrote it, or the sound.</param>
/// <param name="IsSound">Whether it was spoken and not written.</param>
/// <param name="Text">The words as they go into the report; empty for a sound nobody has written down.</param>
public sealed record SpokenNote(EntryName Id, bool IsSound, string Text)
{
    /// <summary>See <see cref="Journal.Fate"/>; none while nothing was said.</summary>
    public string? Fate { get; init; }

    /// <summary>The finding it became.</summary>
    public FindingId? Finding { get; init; }

    /// <summary>The thing or place it goes under in the report.</summary>
    public EntryName? Under { get; init; }

    /// <summary>Why it is kept out of the report.</summary>
    public string? Reason { get; init; }

    /// <summary>What it was made about.</summary>
    public EntryName? About { get; init; }

    /// <summary>Where it was made.</summary>
    public EntryName? Place { get; init; }

    /// <summary>Whether it still stands in the way of issue: words or a sound that nobody has spoken for, or that goes into the report without words.</summary>
    public bool IsSilent => Fate is null ? IsSound || Text.Length > 0 : IsSound && Text.Length == 0 && Fate == Journal.Fate.Under;
}
