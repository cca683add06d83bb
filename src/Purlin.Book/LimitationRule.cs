namespace Purlin.Book;

/// <summary>Something that commonly cannot be looked at or tested, with its usual reasons and what the buyer should do.</summary>
public sealed record LimitationRule
{
    /// <summary>Its id.</summary>
    public required string Id { get; init; }

    /// <summary>Kind of component.</summary>
    public required string Component { get; init; }

    /// <summary>Kinds of place; empty for any.</summary>
    public IReadOnlyList<string> Places { get => field ?? []; init; }

    /// <summary>What was not looked at or tested.</summary>
    public required string What { get; init; }

    /// <summary>Usual reasons, four at most.</summary>
    public IReadOnlyList<string> Reasons { get => field ?? []; init; }

    /// <summary>What the buyer should do.</summary>
    public required string Next { get; init; }

    /// <summary>
    /// Things of the common core that were not run or tried because of it: no question asks for what only a run would show.
    /// </summary>
    public IReadOnlyList<string> Closes { get => field ?? []; init; }

    /// <summary>When the program offers it by itself; none when only a person can know.</summary>
    public OfferWhen? When { get; init; }

    /// <summary>Ids of sources, or <c>common practice</c>.</summary>
    public IReadOnlyList<string> Sources { get => field ?? []; init; }
}

/// <summary>A reading beyond a limit, or a fact of a certain value.</summary>
public sealed record OfferWhen
{
    /// <summary>Kind of reading.</summary>
    public string? Reading { get; init; }

    /// <summary>Offered when the reading is below this.</summary>
    public double? Below { get; init; }

    /// <summary>Offered when the reading is above this.</summary>
    public double? Above { get; init; }

    /// <summary>
    /// A setting of the standards whose number stands in for the limit below which it is offered: the strictest of several.
    /// </summary>
    public string? Setting { get; init; }

    /// <summary>
    /// Kinds of reading, each with the size of the setting that it is held against; offered when each standard that has sizes lets it pass.
    /// </summary>
    public IReadOnlyDictionary<string, string> Sizes { get => field ?? new Dictionary<string, string>(); init; }

    /// <summary>Unit of the limit.</summary>
    public string? Unit { get; init; }

    /// <summary>Component kind and fact, <c>utilities/gas</c>.</summary>
    public string? Fact { get; init; }

    /// <summary>The value of the fact, as text.</summary>
    public string? Is { get; init; }
}
