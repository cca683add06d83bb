using System.Collections.Frozen;

namespace Purlin.Book.Search;

/// <summary>One thing that was said: the words that stand for it together.</summary>
/// <param name="Words">Each in one form.</param>
/// <param name="Said">How many words of the sentence it took.</param>
/// <param name="Raw">The word as it was said, its end perhaps still to come; none for a phrase.</param>
internal readonly record struct Term(string[] Words, int Said, string? Raw = null)
{
    /// <summary>How much it counts beside others: several words made of one count for less than as many that were said.</summary>
    public double Size => Words.Length <= Said ? Words.Length : (Words.Length + Said) / 2.0;
}

/// <summary>
/// Takes a sentence apart into the things that tell something: what dictation misheard is put right, words written apart are joined as the
/// book writes them, words that mean the same become the same, and what tells nothing is left out.
/// </summary>
internal sealed class SaidWords
{
    private const int ShortestJoined = 5, LongestJoined = 24, ShortestSplit = 6, ShortestPart = 3;

    private readonly HashSet<string> known = new(StringComparer.Ordinal);
    private readonly HashSet<string>.AlternateLookup<ReadOnlySpan<char>> whole;
    private readonly HashSet<string> pairs = new(StringComparer.Ordinal);
    private readonly Phrases misheard;
    private readonly Phrases same;
    private readonly FrozenSet<string> filler;
    private readonly Dictionary<string, Term> singles = new(StringComparer.Ordinal);

    /// <summary>Reads the lists of a book, and how the texts of the book write their words: joined or apart.</summary>
    public SaidWords(RuleBook book, IEnumerable<string> texts)
    {
        foreach (var text in texts) Learn(Stems.Split(text));
        foreach (var (key, means) in book.SameWords)
        {
            Learn(Stems.Split(key));
            Learn(Stems.Split(means));
        }
        whole = known.GetAlternateLookup<ReadOnlySpan<char>>();
        filler = book.FillerWords;
        misheard = new Phrases(book.Misheard.Select(line => (Stems.Split(line.Key), Stems.Split(line.Value).ToArray())));
        same = new Phrases(book.SameWords.Select(line => (Together(Stems.Split(line.Key)), Together(Stems.Split(line.Value))
            .Select(Stems.Of).Distinct(StringComparer.Ordinal).ToArray())));

        void Learn(List<string> parts)
        {
            for (var at = 0; at < parts.Count; at++)
            {
                known.Add(parts[at]);
                if (at > 0) pairs.Add($"{parts[at - 1]} {parts[at]}");
            }
        }
    }

    /// <summary>What a person said or typed: it may be misheard and written as ears write.</summary>
    public List<Term> Heard(string said) => Terms(Together(misheard.Replaced(Stems.Split(said))));

    /// <summary>What the book says: nothing in it is misheard.</summary>
    public IEnumerable<string> Written(string text) => Terms(Together(Stems.Split(text))).SelectMany(term => term.Words);

    private List<Term> Terms(List<string> raw)
    {
        List<Term> terms = [];
        for (var at = 0; at < raw.Count; at++)
        {
            if (same.At(raw, at) is var (taken, means))
            {
                terms.Add(new Term(means, taken));
                at += taken - 1;
            }
            else if (!filler.Contains(raw[at])) terms.Add(Single(raw[at]));
        }
        return terms;
    }

    private Term Single(string word)
    {
        if (singles.TryGetValue(word, out var known)) return known;
        var stem = Stems.Of(word);
        return singles[word] = new Term(same.Of(stem) ?? [stem], 1, word);
    }

    /// <summary>"sub panel" as the book writes it, "subpanel"; "airgap" as "air gap".</summary>
    private List<string> Together(List<string> raw)
    {
        List<string> words = new(raw.Count);
        for (var at = 0; at < raw.Count; at++)
        {
            if (at + 1 < raw.Count && Joined(raw[at], raw[at + 1]) is { } joined)
            {
                words.Add(joined);
                at++;
            }
            else if (Apart(raw[at]) is var (first, second)) words.AddRange([first, second]);
            else words.Add(raw[at]);
        }
        return words;
    }

    private string? Joined(string first, string second)
    {
        var length = first.Length + second.Length;
        if (length is < ShortestJoined or > LongestJoined) return null;
        Span<char> joined = stackalloc char[length];
        first.CopyTo(joined);
        second.CopyTo(joined[first.Length..]);
        return whole.TryGetValue(joined, out var word) ? word : null;
    }

    private (string, string)? Apart(string word)
    {
        if (word.Length < ShortestSplit || known.Contains(word)) return null;
        for (var cut = ShortestPart; cut <= word.Length - ShortestPart; cut++)
            if (pairs.Contains($"{word[..cut]} {word[cut..]}")) return (word[..cut], word[cut..]);
        return null;
    }
}
