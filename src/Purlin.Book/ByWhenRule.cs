namespace Purlin.Book;

/// <summary>
/// One line of the list that says by when a matter wants doing. Each member that is filled in must fit; the first line that fits decides.
/// </summary>
public sealed record ByWhenRule
{
    /// <summary>Its id, which also names the sentence that gives the reason: <c>by-when.ID</c>.</summary>
    public required string Id { get; init; }

    /// <summary>By when.</summary>
    public required ByWhen By { get; init; }

    /// <summary>Weights.</summary>
    public IReadOnlyList<Weight> Weights { get => field ?? []; init; }

    /// <summary>Ids of conditions, the leading one or one that is grouped under it.</summary>
    public IReadOnlyList<string> Conditions { get => field ?? []; init; }

    /// <summary>Consequences of the leading condition.</summary>
    public IReadOnlyList<Consequence> Consequences { get => field ?? []; init; }

    /// <summary>Timings of the leading condition.</summary>
    public IReadOnlyList<Timing> Timings { get => field ?? []; init; }

    /// <summary>Building systems.</summary>
    public IReadOnlyList<string> Systems { get => field ?? []; init; }

    /// <summary>Trades that deal with it.</summary>
    public IReadOnlyList<string> Trades { get => field ?? []; init; }

    /// <summary>Ids of sources, or <c>common practice</c>. Never empty.</summary>
    public IReadOnlyList<string> Sources { get => field ?? []; init; }
}
