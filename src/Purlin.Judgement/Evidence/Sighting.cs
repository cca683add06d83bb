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

    /// <summary>The working that judged it.</summary>
    public JudgedWorking? Working { get; init; }

    /// <summary>The matter it belongs to: its condition, and the component where those are told apart.</summary>
    public FindingId Matter { get; init; }

    /// <summary>Kinds of component it is a look at: what it was made on, and what its condition is about.</summary>
    public IReadOnlyList<string> Kinds { get; init; } = [];

    public bool IsSeen => Outcome == Journal.Outcome.Seen;

    public bool Looked => Outcome is Journal.Outcome.Seen or Journal.Outcome.Clear;

    /// <summary>The same look, put where it belongs.</summary>
    public Sighting Placed(EvidenceIndex evidence)
    {
        var on = evidence.Component(Component)?.Kind;
        var about = evidence.Book.Conditions.TryGetValue(Condition, out var condition) && condition.Component != on ? condition.Component : null;
        var alone = FindingId.Parse(Condition);
        var matter = alone.IsOwn ? alone : new FindingId(Condition, evidence.Apart(Component));
        return this with { Matter = matter, Kinds = (on, about) switch { (null, null) => [], (null, _) => [about], (_, null) => [on], _ => [on, about] } };
    }
}
