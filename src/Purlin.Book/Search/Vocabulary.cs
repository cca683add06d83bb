namespace Purlin.Book.Search;

/// <summary>All words that the conditions know, numbered (an inverted index), and what an unknown one may have been meant to be.</summary>
internal sealed class Vocabulary
{
    private const double Begun = 0.75, SoundsLike = 0.8, OneSlip = 0.75, TwoSlips = 0.4;
    private const int ShortestBegun = 3, ShortestSlip = 5, ShortestTwoSlips = 8, ShortestSound = 3, MostLonger = 2;

    private readonly Dictionary<string, int> numbers = new(StringComparer.Ordinal);
    private readonly List<string> words = [];
    private readonly Dictionary<string, List<int>> sounds = new(StringComparer.Ordinal);
    private readonly Dictionary<char, List<int>> beginnings = [];

    public int Count => words.Count;

    /// <summary>The number of a word, given one if it has none yet.</summary>
    public int Learn(string word)
    {
        if (numbers.TryGetValue(word, out var number)) return number;
        numbers[word] = number = words.Count;
        words.Add(word);
        Put(sounds, WordSound.Of(word), number);
        Put(beginnings, word[0], number);
        return number;
    }

    /// <summary>The number of a word; none for one that no condition knows.</summary>
    public int? Number(string word) => numbers.TryGetValue(word, out var number) ? number : null;

    /// <summary>
    /// What an unknown word may have been meant to be, and how far to trust that: only begun, or misspelled, or written by its sound.
    /// </summary>
    /// <param name="word">The word in its one form.</param>
    /// <param name="begun">As it was typed, when more may follow; else none.</param>
    public (IReadOnlyList<int> Words, double Trust) Meant(string word, string? begun)
    {
        var alike = beginnings.GetValueOrDefault(word[0]) ?? [];
        if (begun is { Length: >= ShortestBegun }
            && alike.Where(number => words[number].StartsWith(begun, StringComparison.Ordinal))
            .ToList() is { Count: > 0 } longer) return (longer, Begun);
        if (word.Length >= ShortestSlip
            && alike.Where(number => Slips.Between(word, words[number], 1) <= 1).ToList() is { Count: > 0 } slipped) return (slipped,
            OneSlip);
        if (word.Length >= ShortestSlip && WordSound.Of(word) is { Length: >= ShortestSound } sound
            && sounds.GetValueOrDefault(sound)?.Where(number => Math.Abs(words[number].Length - word.Length) <= MostLonger)
            .ToList() is { Count: > 0 } sounding) return (sounding, SoundsLike);
        if (word.Length >= ShortestTwoSlips
            && alike.Where(number => words[number].Length >= ShortestSlip && words[number][1] == word[1]
            && Slips.Between(word, words[number], 2) <= 2).ToList() is { Count: > 0 } twice) return (twice, TwoSlips);
        return ([], 0);
    }

    private static void Put<T>(Dictionary<T, List<int>> into, T key, int number) where T : notnull
    {
        if (!into.TryGetValue(key, out var list)) into[key] = list = [];
        list.Add(number);
    }
}
