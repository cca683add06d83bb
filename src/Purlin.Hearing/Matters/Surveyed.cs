using Purlin.Hearing.Talk;

namespace Purlin.Hearing.Matters;

/// <summary>A narration taken apart: its words, what they mean, what they name, and where the speaker stands at each.</summary>
internal sealed class Surveyed
{
    public required List<MendedWord> Pieces { get; init; }

    public required List<string> Texts { get; init; }

    /// <summary>Concepts in the order of the words.</summary>
    public required List<Sense> Marks { get; init; }

    public required List<Thing> Things { get; init; }

    /// <summary>Kind of place the speaker stands in at each piece; none while nothing told it.</summary>
    public required string?[] Place { get; init; }

    /// <summary>Kind of place that is named at a piece without going there; none for most.</summary>
    public required string?[] Named { get; init; }

    /// <summary>Stretches that say that something could not be looked at.</summary>
    public required List<PieceRange> Unseen { get; init; }

    /// <summary>Stretches that say that something is there.</summary>
    public required List<PieceRange> Exists { get; init; }

    /// <summary>Stretches of lessons, jokes and other people.</summary>
    public required List<PieceRange> Lessons { get; init; }

    /// <summary>Where a statement may begin, ascending; the last one is the end.</summary>
    public required int[] Openings { get; init; }

    /// <summary>By piece: the last thing that was named before it as what is spoken of; -1 for none.</summary>
    public required int[] Before { get; init; }

    /// <summary>By piece: index of the first mark that starts at it or later.</summary>
    public required int[] MarkAt { get; init; }

    /// <summary>By piece: index of the first thing that starts at it or later.</summary>
    public required int[] ThingAt { get; init; }
}
