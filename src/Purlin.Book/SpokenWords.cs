using System.Collections.Frozen;
using System.Text;

namespace Purlin.Book;

/// <summary>Takes a sentence apart into the words that tell something, each brought to one form: "dripping faucets" and "tap drips" meet.</summary>
internal sealed class SpokenWords(FrozenDictionary<string, string> sameAs)
{
    private const int LongestPhrase = 3;

    // Most words begin no phrase: only those that do are worth putting together.
    private readonly FrozenSet<string> beginnings = sameAs.Keys.Where(key => key.Contains(' ', StringComparison.Ordinal)).Select(key => key[..key.IndexOf(' ', StringComparison.Ordinal)]).ToFrozenSet(StringComparer.Ordinal);
    private readonly Dictionary<string, string> stems = new(StringComparer.Ordinal);

    private static readonly FrozenSet<string> Empty = new[]
    {
        "a", "an", "and", "are", "as", "at", "be", "been", "but", "by", "do", "does", "for", "from", "has", "have", "here", "i", "in", "into", "is", "it", "its", "my", "of", "off",
        "on", "one", "or", "our", "over", "see", "seen", "so", "some", "than", "that", "the", "their", "there", "they", "this", "to", "up", "very", "was", "we", "were", "with",
    }.ToFrozenSet(StringComparer.Ordinal);

    public List<string> Of(string said)
    {
        var raw = Split(said);
        List<string> words = [];
        for (var at = 0; at < raw.Count; at++)
        {
            var taken = Phrase(raw, at, words);
            if (taken > 0) at += taken - 1;
            else if (!Empty.Contains(raw[at])) words.Add(Root(raw[at]));
        }
        return words;
    }

    /// <summary>Words that together mean one thing: "ground fault", "pop corn". The longest wins.</summary>
    private int Phrase(List<string> raw, int at, List<string> into)
    {
        for (var length = beginnings.Contains(raw[at]) ? Math.Min(LongestPhrase, raw.Count - at) : 1; length > 0; length--)
        {
            if (!sameAs.TryGetValue(length == 1 ? raw[at] : string.Join(' ', raw.GetRange(at, length)), out var same)) continue;
            into.AddRange(Split(same).Select(Stem));
            return length;
        }
        return 0;
    }

    private string Root(string word)
    {
        if (stems.TryGetValue(word, out var known)) return known;
        var stem = Stem(word);
        return stems[word] = sameAs.TryGetValue(stem, out var same) ? Stem(same) : stem;
    }

    private static List<string> Split(string said)
    {
        List<string> parts = [];
        var word = new StringBuilder();
        foreach (var letter in said)
        {
            if (letter is '\'' or '’') continue;
            if (char.IsLetterOrDigit(letter)) word.Append(char.ToLowerInvariant(letter));
            else Close();
        }
        Close();
        return parts;

        void Close()
        {
            if (word.Length > 0) parts.Add(word.ToString());
            word.Clear();
        }
    }

    /// <summary>Takes the usual endings off; good enough to meet, not for print.</summary>
    internal static string Stem(string word)
    {
        if (word.Length > 4 && word.EndsWith("ies", StringComparison.Ordinal)) return word[..^3] + "y";
        if (word.Length > 4 && (word.EndsWith("sses", StringComparison.Ordinal) || word.EndsWith("xes", StringComparison.Ordinal) || word.EndsWith("ches", StringComparison.Ordinal) || word.EndsWith("shes", StringComparison.Ordinal))) return word[..^2];
        if (word.Length > 3 && word[^1] == 's' && word[^2] is not ('s' or 'u' or 'i')) word = word[..^1];
        if (word.Length > 5 && word.EndsWith("ing", StringComparison.Ordinal)) word = Undouble(word[..^3]);
        else if (word.Length > 4 && word.EndsWith("ed", StringComparison.Ordinal)) word = Undouble(word[..^2]);
        else if (word.Length > 6 && word.EndsWith("ly", StringComparison.Ordinal)) word = word[..^2];
        return word.Length > 4 && word[^1] == 'e' ? word[..^1] : word;
    }

    private static string Undouble(string word) => word.Length > 3 && word[^1] == word[^2] && word[^1] is not ('l' or 's' or 'z') ? word[..^1] : word;
}
