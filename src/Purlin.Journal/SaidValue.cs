using System.Collections.Immutable;

namespace Purlin.Journal;

/// <summary>What may fill a place of a sentence.</summary>
public abstract record SaidValue
{
    private SaidValue() { }

    /// <summary>Words of a person, a name, a size of the trade: the same in every language.</summary>
    /// <param name="Written">As they stand.</param>
    public sealed record Text(string Written) : SaidValue
    {
        /// <inheritdoc/>
        public override string ToString() => Written;
    }

    /// <summary>A number, unrounded; the sentence says how it is rounded.</summary>
    /// <param name="Value">The number.</param>
    /// <param name="Unit">Its unit, written behind it; empty for a count, a ratio or where the sentence names the unit itself.</param>
    public sealed record Number(double Value, string Unit = "") : SaidValue
    {
        /// <inheritdoc/>
        public override string ToString() => new Amount(Value, Unit).ToString();
    }

    /// <summary>A day.</summary>
    /// <param name="Value">The day.</param>
    public sealed record Day(DateOnly Value) : SaidValue
    {
        /// <inheritdoc/>
        public override string ToString() => Value.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
    }

    /// <summary>Another saying.</summary>
    /// <param name="Value">The saying.</param>
    public sealed record Sentence(Said Value) : SaidValue
    {
        /// <inheritdoc/>
        public override string ToString() => Value.ToString();
    }

    /// <summary>Several values, joined as the language joins them.</summary>
    /// <param name="Values">The values.</param>
    public sealed record List(ImmutableArray<SaidValue> Values) : SaidValue
    {
        /// <inheritdoc/>
        public bool Equals(List? other) => other is not null && Values.SequenceEqual(other.Values);

        /// <inheritdoc/>
        public override int GetHashCode() => Values.Length;

        /// <inheritdoc/>
        public override string ToString() => $"[{string.Join(", ", Values)}]";
    }

    /// <summary>Several texts.</summary>
    public static SaidValue Of(IEnumerable<string> texts) => new List([.. texts.Select(text => (SaidValue)new Text(text))]);

    /// <summary>Several sayings.</summary>
    public static SaidValue Of(IEnumerable<Said> sayings) => new List([.. sayings.Select(said => (SaidValue)new Sentence(said))]);
}

/// <summary>A place of a sentence and what fills it. Written as a tuple where a <see cref="Said"/> is made.</summary>
/// <param name="Name">The place: lower case letters and hyphens.</param>
/// <param name="Value">What fills it.</param>
public readonly record struct Filled(string Name, SaidValue Value)
{
    /// <summary>Words as they stand.</summary>
    public static implicit operator Filled((string Name, string Words) one) => new(one.Name, new SaidValue.Text(one.Words));

    /// <summary>A number without a unit.</summary>
    public static implicit operator Filled((string Name, double Number) one) => new(one.Name, new SaidValue.Number(one.Number));

    /// <summary>A count.</summary>
    public static implicit operator Filled((string Name, int Count) one) => new(one.Name, new SaidValue.Number(one.Count));

    /// <summary>A number with its unit.</summary>
    public static implicit operator Filled((string Name, double Number, string Unit) one) =>
        new(one.Name, new SaidValue.Number(one.Number, one.Unit));

    /// <summary>A day.</summary>
    public static implicit operator Filled((string Name, DateOnly Day) one) => new(one.Name, new SaidValue.Day(one.Day));

    /// <summary>Another saying.</summary>
    public static implicit operator Filled((string Name, Said Said) one) => new(one.Name, new SaidValue.Sentence(one.Said));

    /// <summary>Any value, a list among them.</summary>
    public static implicit operator Filled((string Name, SaidValue Value) one) => new(one.Name, one.Value);

    /// <inheritdoc/>
    public override string ToString() => $"{Name}: {Value}";
}
