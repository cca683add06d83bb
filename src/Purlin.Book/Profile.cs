namespace Purlin.Book;

/// <summary>What to expect in a house of certain years and kind, before arriving.</summary>
public sealed record Profile
{
    /// <summary>Its id.</summary>
    public required string Id { get; init; }

    /// <summary>Kind of component.</summary>
    public string Component { get => field ?? ""; init; }

    /// <summary>Material, when it is about one.</summary>
    public string? Material { get; init; }

    /// <summary>First year built that it is about; none for any.</summary>
    public int? From { get; init; }

    /// <summary>Last year built that it is about; none for any.</summary>
    public int? To { get; init; }

    /// <summary>It is about houses older than this many years, so that it ages with the calendar; none for any.</summary>
    public int? OlderThan { get; init; }

    /// <summary>
    /// States it is about; empty for all. Where the state of a house is not on record, only what is about all of them speaks.
    /// </summary>
    public IReadOnlyList<string> States { get => field ?? []; init; }

    /// <summary>Foundation it is about: <c>slab</c>, <c>crawl space</c>, <c>basement</c>, <c>piers</c>; none for any.</summary>
    public string? Foundation { get; init; }

    /// <summary>What.</summary>
    public required string Title { get; init; }

    /// <summary>Why in such a house.</summary>
    public required string Reason { get; init; }

    /// <summary>Where to look.</summary>
    public required string Look { get; init; }

    /// <summary>1 to 100; the highest are listed first.</summary>
    public int Rank { get => field == 0 ? 50 : field; init; }

    /// <summary>Conditions to look for.</summary>
    public IReadOnlyList<string> Conditions { get => field ?? []; init; }

    /// <summary>Ids of sources, or <c>common practice</c>.</summary>
    public IReadOnlyList<string> Sources { get => field ?? []; init; }
}
