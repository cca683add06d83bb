using System.Collections.Frozen;

namespace Purlin.Book;

/// <summary>Sentences for people, by key, with places in braces that are filled in.</summary>
public sealed class Wording(FrozenDictionary<string, string> sentences)
{
    /// <summary>No sentences at all: each key reads as itself.</summary>
    public static Wording Empty { get; } = new(FrozenDictionary<string, string>.Empty);

    /// <summary>All keys and sentences.</summary>
    public FrozenDictionary<string, string> Sentences { get; } = sentences;

    /// <summary>The sentence of a key with its places filled in; the key and its values when the book has no such sentence.</summary>
    public string Say(string key, params ReadOnlySpan<(string Name, string Value)> filled)
    {
        if (!Sentences.TryGetValue(key, out var sentence))
        {
            sentence = key;
            foreach (var (_, value) in filled) sentence += " " + value;
            return sentence;
        }
        foreach (var (name, value) in filled) sentence = sentence.Replace("{" + name + "}", value, StringComparison.Ordinal);
        return sentence;
    }
}
