using Purlin.Journal;

namespace Purlin.Judgement.Evidence;

/// <summary>
/// One look for one condition in one place, whatever it came from: an observation, a reading that a reckoning judged, a fact.
/// Everything downstream speaks of these alone.
/// </summary>
internal sealed record Sighting
{
    public required string Condition { get; init; }

    /// <summary>See <see cref="Journal.Outcome"/>.</summary>
    public required string Outcome { get; init; }

    /// <summary>The entries it rests on; never empty.</summary>
    public required IReadOnlyList<EntryName> Entries { get; init; }

    public EntryName? Place { get; init; }

    public EntryName? Component { get; init; }

    public string? Spot { get; init; }

    public string? Words { get; init; }

    public string? Reason { get; init; }

    public Sample? Sample { get; init; }

    /// <summary>Index of the working that judged it.</summary>
    public int? Working { get; init; }

    public bool IsSeen => Outcome == Journal.Outcome.Seen;

    public bool Looked => Outcome is Journal.Outcome.Seen or Journal.Outcome.Clear;
}
