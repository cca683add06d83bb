using System.Collections.Immutable;

namespace Purlin.Hearing;

/// <summary>What a stretch of talk is taken to say of the house, for the inspector to take, change or drop.</summary>
public sealed record HeardProposal
{
    /// <summary>When its first word was said, in seconds; none where no time is known.</summary>
    public double? From { get; init; }

    /// <summary>When its last word ended.</summary>
    public double? To { get; init; }

    /// <summary>Kind of place it is about; none when nothing told.</summary>
    public string? Place { get; init; }

    /// <summary>Kind of component.</summary>
    public required string Component { get; init; }

    /// <summary>Id of the condition; none for a reading, a fact, or a thing that could not be looked at.</summary>
    public string? Condition { get; init; }

    /// <summary>How the look turned out, as the journal writes it.</summary>
    public required string Outcome { get; init; }

    /// <summary>Readings and facts, each one said.</summary>
    public ImmutableArray<HeardAmount> Amounts { get; init; } = [];

    /// <summary>Whom the speaker hands it to, one of the trades of the book.</summary>
    public string? Trade { get; init; }

    /// <summary>Whether the speaker would not swear to it, or has it from others.</summary>
    public bool Hedged { get; init; }

    /// <summary>Where on the thing, in the speaker's words.</summary>
    public string? Spot { get; init; }

    /// <summary>How far it goes, in the speaker's words.</summary>
    public string? Spread { get; init; }

    /// <summary>How sure the reading of the words is, 0 to 1.</summary>
    public double Confidence { get; init; }

    /// <summary>Stretches of words it rests on: first word, and the word after the last.</summary>
    public ImmutableArray<WordRange> Words { get; init; } = [];

    /// <summary>Photographs that were taken around these words, by the SHA-256 of their bytes.</summary>
    public ImmutableArray<string> Photos { get; init; } = [];
}

/// <summary>A stretch of spoken words.</summary>
/// <param name="Start">The first word, counted from 0.</param>
/// <param name="End">The word after the last.</param>
public readonly record struct WordRange(int Start, int End);

/// <summary>A figure that was said.</summary>
/// <param name="Kind">Name of a kind of reading or of a fact, as the rule book has it.</param>
/// <param name="Value">The figure in that unit.</param>
/// <param name="Unit">Unit as the rule book writes it; empty for years and counts.</param>
public sealed record HeardAmount(string Kind, double Value, string Unit);
