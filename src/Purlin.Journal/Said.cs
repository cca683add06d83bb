using System.Collections.Immutable;

namespace Purlin.Journal;

/// <summary>
/// A sentence for a person, by key with its values. It is no text: only a <see cref="Tongue"/> turns it into words, late and in the
/// language asked for. Values keep their full precision and unit. Code compares keys, never words.
/// </summary>
public sealed record Said
{
    /// <summary>The name of a value that stands for the words themselves where no sentence does.</summary>
    internal const string Itself = "";

    /// <summary>A sentence by key, with the values that fill its places.</summary>
    /// <param name="key">Lower case: whose it is, a dot, which one (<c>gas-pipe.because.carries</c>).</param>
    /// <param name="with">Named values, each a tuple: <c>("size", size)</c>, <c>("rise", rise, "°F")</c>.</param>
    public Said(string key, params ReadOnlySpan<Filled> with)
    {
        Key = key;
        With = [.. with];
    }

    /// <summary>Which sentence.</summary>
    public string Key { get; }

    /// <summary>What fills its places.</summary>
    public ImmutableArray<Filled> With { get; }

    /// <summary>A sentence without values.</summary>
    public static implicit operator Said(string key) => new(key);

    /// <summary>Words of a person or of a document: the same in every language.</summary>
    public static Said Verbatim(string words) => new("", new Filled(Itself, new SaidValue.Text(words)));

    /// <summary>Words that stand in the data of the rule book: as they stand there, unless a language has a sentence of that key.</summary>
    public static Said InData(string key, string words) => new(key, new Filled(Itself, new SaidValue.Text(words)));

    /// <summary>Two sayings are one when key and values are.</summary>
    public bool Equals(Said? other) => other is not null && Key == other.Key && With.SequenceEqual(other.With);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Key, With.Length);

    /// <summary>Key and values, for whoever looks for a fault; never shown to a person.</summary>
    public override string ToString() => With.IsEmpty ? Key : $"{Key} ({string.Join(", ", With)})";
}
