using Purlin.Report.Edition;
using Purlin.Report.Writing;

namespace Purlin.Report;

/// <summary>What the model is made into.</summary>
public enum PaperKind
{
    /// <summary>The whole report.</summary>
    Report,

    /// <summary>Two pages: the answers and one line a matter.</summary>
    Summary,

    /// <summary>One sheet a trade, ready to be priced.</summary>
    Trades,

    /// <summary>What to say in the call to the client.</summary>
    Talk,

    /// <summary>What became of each matter of an earlier visit. It is made of two visits.</summary>
    Second,

    /// <summary>What to look at, place by place, to be carried and ticked where no screen can be.</summary>
    Walk,
}

/// <summary>One paper made from the model: a head and chapters. Page and PDF take any.</summary>
public sealed record Paper
{
    /// <summary>Which.</summary>
    public required PaperKind Kind { get; init; }

    /// <summary>Turns of phrase in its language.</summary>
    internal Phrase Words { get; init; } = null!;

    /// <summary>Its language as the standards name it.</summary>
    public string Language => Words.Language;

    /// <summary>What it is called: Inspection report, Summary.</summary>
    public required string Title { get; init; }

    /// <summary>Whose house, for whom, when.</summary>
    public required Cover Cover { get; init; }

    /// <summary>Which issue it is.</summary>
    public required EditionMark Mark { get; init; }

    /// <summary>In the order of reading.</summary>
    public required IReadOnlyList<Chapter> Chapters { get; init; }

    /// <summary>Every matter it names, for the filters of the page.</summary>
    public required IReadOnlyList<Matter> Matters { get; init; }

    /// <summary>Photographs it shows, in the order of their numbers, each once.</summary>
    public IReadOnlyList<Picture> Pictures => [.. Chapters.SelectMany(chapter => chapter.Blocks).SelectMany(Shown).DistinctBy(picture => picture.Number).OrderBy(picture => picture.Number)];

    private static IEnumerable<Picture> Shown(Block block) => block switch
    {
        Block.Card card => card.Matter.Pictures,
        Block.Pictures pictures => pictures.Shown,
        Block.Jobs jobs => jobs.Lines.Select(job => job.Picture).OfType<Picture>(),
        Block.Folded folded => folded.Whole.Concat(folded.Short).SelectMany(Shown),
        _ => [],
    };
}
