using System.Collections.Immutable;
using Purlin.Journal;

namespace Purlin.Reckoning;

/// <summary>One input of a reckoning: how it is called, what it may be, whether it must be there.</summary>
/// <param name="Name">Lower case with underscores.</param>
/// <param name="Means">Key of the line that says what it is.</param>
public abstract record Input(string Name, string Means)
{
    /// <summary>What it is, in one line.</summary>
    public Said Meaning => new(Means);

    /// <summary>Whether the reckoning refuses to start without it.</summary>
    public bool Required { get; init; }

    /// <summary>What is allowed, in words, for help and refusals.</summary>
    public abstract Said Allowed { get; }

    /// <summary>A quantity: a number in the default unit, or a string with its unit.</summary>
    /// <param name="Name">Lower case with underscores.</param>
    /// <param name="Means">Key of the line that says what it is.</param>
    /// <param name="Unit">The default unit; its dimension decides which other units are read.</param>
    /// <param name="Least">Least allowed, in the default unit.</param>
    /// <param name="Most">Most allowed, in the default unit.</param>
    public sealed record Quantity(string Name, string Means, string Unit, double Least, double Most) : Input(Name, Means)
    {
        /// <inheritdoc/>
        public override Said Allowed => Unit.Length == 0
            ? new("allowed.number", ("least", Least), ("most", Most))
            : new("allowed.quantity", ("unit", Unit), ("least", Least), ("most", Most, Unit));
    }

    /// <summary>A whole number.</summary>
    /// <param name="Name">Lower case with underscores.</param>
    /// <param name="Means">Key of the line that says what it is.</param>
    /// <param name="Least">Least allowed.</param>
    /// <param name="Most">Most allowed.</param>
    public sealed record Whole(string Name, string Means, int Least, int Most) : Input(Name, Means)
    {
        /// <inheritdoc/>
        public override Said Allowed => new("allowed.whole", ("least", Least), ("most", Most));
    }

    /// <summary>One word of several.</summary>
    /// <param name="Name">Lower case with underscores.</param>
    /// <param name="Means">Key of the line that says what it is.</param>
    /// <param name="Words">The words.</param>
    public sealed record Choice(string Name, string Means, ImmutableArray<string> Words) : Input(Name, Means)
    {
        /// <summary>
        /// How another spelling of the trade becomes one of the words (<c>12 AWG</c> is <c>12</c>); none where only the words are read.
        /// </summary>
        public Func<string, string>? Plain { get; init; }

        /// <inheritdoc/>
        public override Said Allowed => new("allowed.word", ("words", SaidValue.Of(Words)));
    }

    /// <summary>Free text.</summary>
    /// <param name="Name">Lower case with underscores.</param>
    /// <param name="Means">Key of the line that says what it is.</param>
    /// <param name="Most">Most characters allowed.</param>
    public sealed record Text(string Name, string Means, int Most) : Input(Name, Means)
    {
        /// <inheritdoc/>
        public override Said Allowed => new("allowed.text", ("most", Most));
    }

    /// <summary>Yes or no: <c>true</c> or <c>false</c>.</summary>
    /// <param name="Name">Lower case with underscores.</param>
    /// <param name="Means">Key of the line that says what it is.</param>
    public sealed record Flag(string Name, string Means) : Input(Name, Means)
    {
        /// <inheritdoc/>
        public override Said Allowed => "allowed.flag";
    }

    /// <summary>
    /// A list; each element is an object with the inputs of <see cref="Of"/>, or a bare value when there is one nameless input.
    /// </summary>
    /// <param name="Name">Lower case with underscores.</param>
    /// <param name="Means">Key of the line that says what it is.</param>
    /// <param name="Of">The inputs of one element.</param>
    /// <param name="Least">Fewest elements.</param>
    /// <param name="Most">Most elements.</param>
    public sealed record List(string Name, string Means, ImmutableArray<Input> Of, int Least, int Most) : Input(Name, Means)
    {
        /// <inheritdoc/>
        public override Said Allowed => new("allowed.list", ("least", Least), ("most", Most));
    }

    /// <summary>An object with inputs of its own.</summary>
    /// <param name="Name">Lower case with underscores.</param>
    /// <param name="Means">Key of the line that says what it is.</param>
    /// <param name="Of">Its inputs.</param>
    public sealed record Group(string Name, string Means, ImmutableArray<Input> Of) : Input(Name, Means)
    {
        /// <inheritdoc/>
        public override Said Allowed => new("allowed.group", ("names", SaidValue.Of(Of.Select(input => input.Name))));
    }
}
