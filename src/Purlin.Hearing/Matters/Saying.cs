namespace Purlin.Hearing.Matters;

/// <summary>One way in which a condition is told.</summary>
internal sealed record Saying
{
    /// <summary>Number of the condition.</summary>
    public required int Condition { get; init; }

    /// <summary>Its concepts.</summary>
    public required PhraseWord[] Needs { get; init; }

    /// <summary>Weight of all its concepts.</summary>
    public required double Mass { get; init; }

    /// <summary>
    /// Which of its concepts it denies, one bit each: a phrase that denies something is not met where nothing is said of that.
    /// </summary>
    public required ulong Denied { get; init; }

    /// <summary>How far it is trusted: a heading more than a sign.</summary>
    public required double Counts { get; init; }

    /// <summary>
    /// Whether it only says that a thing is not there: what tells against it is that the thing is said to be there, not that it is
    /// named.
    /// </summary>
    public required bool IsAbsence { get; init; }

    /// <summary>Whether it tells that the condition is not there.</summary>
    public required bool IsClear { get; init; }
}

/// <summary>A concept of a phrase.</summary>
/// <param name="Concept">Number in the vocabulary.</param>
/// <param name="Weight">How much it tells.</param>
/// <param name="Sign">The sign it has in the phrase; 0 where the sign says nothing, as that of the thing itself.</param>
/// <param name="IsThing">Whether it names the component or a part of it.</param>
internal readonly record struct PhraseWord(int Concept, double Weight, int Sign, bool IsThing);
