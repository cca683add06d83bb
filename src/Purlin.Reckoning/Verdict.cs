using Purlin.Journal;

namespace Purlin.Reckoning;

/// <summary>What a reckoning says of its inputs.</summary>
public abstract record Verdict
{
    private Verdict() { }

    /// <summary>One plain sentence.</summary>
    public required Said Because { get; init; }

    /// <summary><c>within</c>, <c>outside</c> or <c>cannot say</c>.</summary>
    public abstract string Word { get; }

    /// <summary>Inside what the source allows or expects.</summary>
    public sealed record Within : Verdict
    {
        /// <inheritdoc/>
        public override string Word => "within";
    }

    /// <summary>Outside what the source allows or expects.</summary>
    public sealed record Outside : Verdict
    {
        /// <inheritdoc/>
        public override string Word => "outside";
    }

    /// <summary>The reckoning has nothing to stand on: too cold to test, off the table, a reading missing.</summary>
    public sealed record CannotSay : Verdict
    {
        /// <inheritdoc/>
        public override string Word => "cannot say";
    }
}
