namespace Purlin.Report;

/// <summary>A chapter of a paper.</summary>
/// <param name="Id">Address inside the paper.</param>
/// <param name="Title">Its heading; empty for one that goes on from the one before.</param>
/// <param name="Lead">One or two sentences that say what it is for.</param>
/// <param name="Blocks">What it holds.</param>
public sealed record Chapter(string Id, string Title, string Lead, IReadOnlyList<Block> Blocks)
{
    /// <summary>How it is set.</summary>
    public ChapterForm Form { get; init; }
}

/// <summary>How a chapter is set. None but an annex and a sheet begins a page.</summary>
public enum ChapterForm
{
    /// <summary>Across the page.</summary>
    Body,

    /// <summary>For looking up: two columns on paper, folded on the page.</summary>
    Reference,

    /// <summary>First of the annex: as for looking up, on a page of its own, smaller.</summary>
    Annex,

    /// <summary>To be handed on alone: begins a page.</summary>
    Sheet,
}
