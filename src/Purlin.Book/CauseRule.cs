namespace Purlin.Book;

/// <summary>A cause that explains several conditions at once, so that a reader meets one matter and not three.</summary>
public sealed record CauseRule
{
    /// <summary>Its id.</summary>
    public required string Id { get; init; }

    /// <summary>Heading of the matter.</summary>
    public required string Title { get; init; }

    /// <summary>Conditions it explains, the leading one first. A condition belongs to one cause at most.</summary>
    public required IReadOnlyList<string> Conditions { get; init; }

    /// <summary>How many of them must have been seen.</summary>
    public int AtLeast { get => field == 0 ? 2 : field; init; }

    /// <summary>Of which at least one must have been seen, or the cause is not the cause; none when any of them will do.</summary>
    public IReadOnlyList<string> Needs { get => field ?? []; init; }

    /// <summary>Those that belong to it only where the others were seen: wet wood in a damp crawl space, not in the attic.</summary>
    public IReadOnlyList<string> SamePlace { get => field ?? []; init; }

    /// <summary>What they mean together.</summary>
    public required string Means { get; init; }

    /// <summary>What to do about all of them; what each says when none.</summary>
    public string? Do { get; init; }

    /// <summary>Who deals with it; the trade of the heaviest when none.</summary>
    public string? Trade { get; init; }

    /// <summary>Ids of sources, or <c>common practice</c>.</summary>
    public IReadOnlyList<string> Sources { get => field ?? []; init; }
}

/// <summary>A condition that matters one step more when another was seen with it.</summary>
public sealed record Escalation
{
    /// <summary>Its id.</summary>
    public required string Id { get; init; }

    /// <summary>What matters more.</summary>
    public required string Condition { get; init; }

    /// <summary>With any of these.</summary>
    public required IReadOnlyList<string> With { get; init; }

    /// <summary>How near they must be to each other.</summary>
    public Within Within { get; init; }

    /// <summary>Why, in a sentence.</summary>
    public required string Because { get; init; }

    /// <summary>Ids of sources, or <c>common practice</c>.</summary>
    public IReadOnlyList<string> Sources { get => field ?? []; init; }
}
