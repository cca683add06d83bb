using System.Collections.Concurrent;
using System.Text;
using Purlin.Journal.Tongues;

namespace Purlin.Journal;

/// <summary>
/// A language as sentences by key, with its rules for numbers, lists, plurals and days. It turns what is <see cref="Said"/> into words. Own
/// wording lies over it, and a language lies over <see cref="Standard"/>, so that what is not yet translated still reads.
/// </summary>
public sealed class Tongue
{
    /// <summary>The language that has every sentence.</summary>
    public const string Standard = "en-US";

    private readonly Tongue? beneath;
    private readonly IReadOnlyDictionary<string, string> own;
    private readonly ConcurrentDictionary<string, Template> read = new(StringComparer.Ordinal);
    private readonly Lazy<LanguageRules> rules;

    private Tongue(string language, IReadOnlyDictionary<string, string> own, Tongue? beneath)
    {
        Language = language;
        this.own = own;
        this.beneath = beneath;
        rules = new(() => new LanguageRules(Find));
    }

    /// <summary>No sentences at all: each key reads as itself.</summary>
    public static Tongue Empty { get; } = new(Standard, new Dictionary<string, string>(), null);

    /// <summary>The language as the standards name it, <c>en-US</c>; also the <c>lang</c> of a page.</summary>
    public string Language { get; }

    /// <summary>All keys and sentences, those of one's own instead of what they cover.</summary>
    public IEnumerable<KeyValuePair<string, string>> Sentences =>
        beneath is null ? own : own.Concat(beneath.Sentences.Where(line => !own.ContainsKey(line.Key)));

    /// <summary>A language that was built into this program, read once.</summary>
    /// <exception cref="ArgumentException">There is no such language.</exception>
    public static Tongue BuiltIn(string language) => BuiltInWords.Of(language);

    /// <summary>The languages that were built into this program.</summary>
    public static IReadOnlyList<string> Languages => BuiltInWords.Languages;

    /// <summary>A language of its own, with nothing beneath it.</summary>
    public static Tongue Of(string language, IReadOnlyDictionary<string, string> sentences) => new(language, sentences, null);

    /// <summary>These sentences laid over this language; the rest stays.</summary>
    public Tongue Under(IReadOnlyDictionary<string, string> sentences, string? language = null) =>
        new(language ?? Language, sentences, this);

    /// <summary>The sentence of a key as it is written, places open; none when there is no such sentence.</summary>
    public string? Find(string key) => own.TryGetValue(key, out var sentence) ? sentence : beneath?.Find(key);

    /// <summary>
    /// In words. A key without a sentence shows itself and its values: nothing is lost, and nobody in an attic sees an exception.
    /// </summary>
    public string Say(Said said)
    {
        ArgumentNullException.ThrowIfNull(said);
        return Say(said.Key, said.With.AsSpan());
    }

    /// <summary>In words, by key and values.</summary>
    public string Say(string key, params ReadOnlySpan<Filled> with)
    {
        ArgumentNullException.ThrowIfNull(key);
        var words = new StringBuilder();
        if (Template(key) is { } template) template.Write(words, with, this);
        else Without(words, key, with);
        return words.ToString();
    }

    internal LanguageRules Rules => rules.Value;

    private Template? Template(string key)
    {
        if (key.Length == 0) return null;
        if (read.TryGetValue(key, out var known)) return known;
        return Find(key) is { } sentence ? read[key] = Tongues.Template.Read(sentence) : null;
    }

    private void Without(StringBuilder words, string key, ReadOnlySpan<Filled> with)
    {
        if (with is [{ Name: Said.Itself }])
        {
            Rules.Write(words, with[0].Value, "", this);
            return;
        }
        words.Append(key);
        foreach (var filled in with) Rules.Write(words.Append(' '), filled.Value, "", this);
    }
}
