using System.Collections.Immutable;

namespace Purlin.Reckoning;

/// <summary>One input of a reckoning: how it is called, what it may be, whether it must be there.</summary>
/// <param name="Name">Lower case with underscores.</param>
/// <param name="Meaning">One line.</param>
public abstract record Input(string Name, string Meaning)
{
    /// <summary>Whether the reckoning refuses to start without it.</summary>
    public bool Required { get; init; }

    /// <summary>What is allowed, in words, for help and refusals.</summary>
    public abstract string Allowed { get; }

    /// <summary>A quantity: a number in the default unit, or a string with its unit.</summary>
    /// <param name="Name">Lower case with underscores.</param>
    /// <param name="Meaning">One line.</param>
    /// <param name="Unit">The default unit; its dimension decides which other units are read.</param>
    /// <param name="Least">Least allowed, in the default unit.</param>
    /// <param name="Most">Most allowed, in the default unit.</param>
    public sealed record Quantity(string Name, string Meaning, string Unit, double Least, double Most) : Input(Name, Meaning)
    {
        /// <inheritdoc/>
        public override string Allowed => Unit.Length == 0 ? $"a number from {Least:0.####} to {Most:0.####}" : $"a number in {Unit} or text with a unit, from {Least:0.####} to {Most:0.####} {Unit}";
    }

    /// <summary>A whole number.</summary>
    /// <param name="Name">Lower case with underscores.</param>
    /// <param name="Meaning">One line.</param>
    /// <param name="Least">Least allowed.</param>
    /// <param name="Most">Most allowed.</param>
    public sealed record Whole(string Name, string Meaning, int Least, int Most) : Input(Name, Meaning)
    {
        /// <inheritdoc/>
        public override string Allowed => $"a whole number from {Least} to {Most}";
    }

    /// <summary>One word of several.</summary>
    /// <param name="Name">Lower case with underscores.</param>
    /// <param name="Meaning">One line.</param>
    /// <param name="Words">The words.</param>
    public sealed record Choice(string Name, string Meaning, ImmutableArray<string> Words) : Input(Name, Meaning)
    {
        /// <summary>How another spelling of the trade becomes one of the words (<c>12 AWG</c> is <c>12</c>); none where only the words are read.</summary>
        public Func<string, string>? Plain { get; init; }

        /// <inheritdoc/>
        public override string Allowed => $"one of {string.Join(", ", Words)}";
    }

    /// <summary>Free text.</summary>
    /// <param name="Name">Lower case with underscores.</param>
    /// <param name="Meaning">One line.</param>
    /// <param name="Most">Most characters allowed.</param>
    public sealed record Text(string Name, string Meaning, int Most) : Input(Name, Meaning)
    {
        /// <inheritdoc/>
        public override string Allowed => $"text of 1 to {Most} characters";
    }

    /// <summary>Yes or no: <c>true</c> or <c>false</c>.</summary>
    /// <param name="Name">Lower case with underscores.</param>
    /// <param name="Meaning">One line.</param>
    public sealed record Flag(string Name, string Meaning) : Input(Name, Meaning)
    {
        /// <inheritdoc/>
        public override string Allowed => "true or false";
    }

    /// <summary>A list; each element is an object with the inputs of <see cref="Of"/>, or a bare value when there is one nameless input.</summary>
    /// <param name="Name">Lower case with underscores.</param>
    /// <param name="Meaning">One line.</param>
    /// <param name="Of">The inputs of one element.</param>
    /// <param name="Least">Fewest elements.</param>
    /// <param name="Most">Most elements.</param>
    public sealed record List(string Name, string Meaning, ImmutableArray<Input> Of, int Least, int Most) : Input(Name, Meaning)
    {
        /// <inheritdoc/>
        public override string Allowed => $"a list of {Least} to {Most}";
    }

    /// <summary>An object with inputs of its own.</summary>
    /// <param name="Name">Lower case with underscores.</param>
    /// <param name="Meaning">One line.</param>
    /// <param name="Of">Its inputs.</param>
    public sealed record Group(string Name, string Meaning, ImmutableArray<Input> Of) : Input(Name, Meaning)
    {
        /// <inheritdoc/>
        public override string Allowed => $"an object with {string.Join(", ", Of.Select(input => input.Name))}";
    }
}
