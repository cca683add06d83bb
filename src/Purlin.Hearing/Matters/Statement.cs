using Purlin.Hearing.Talk;

namespace Purlin.Hearing.Matters;

/// <summary>What a stretch of talk is taken to tell.</summary>
/// <param name="Span">The stretch.</param>
/// <param name="Condition">Number of the condition; -1 for none.</param>
/// <param name="Component">Number of the component.</param>
/// <param name="Outcome">Seen, clear or not visible.</param>
/// <param name="Score">How well it fits, above what any talk would fit.</param>
internal readonly record struct Statement(PieceRange Span, int Condition, int Component, string Outcome, double Score)
{
    /// <summary>What says nothing.</summary>
    public static Statement None { get; } = new(default, -1, -1, Journal.Outcome.Seen, 0);
}
