namespace Purlin.Journal;

/// <summary>
/// Finds what somebody most likely meant to write: the known word with the fewest letters wrong (edit distance, Levenshtein 1966).
/// </summary>
public static class Nearest
{
    // Beyond a third of the letters it is another word, not a slip.
    private const int LettersForOneSlip = 3;
    private const int LongestWord = 64;

    /// <summary>The known word that is nearest; none when nothing is near enough.</summary>
    public static string? To(string given, IEnumerable<string> known)
    {
        ArgumentNullException.ThrowIfNull(given);
        ArgumentNullException.ThrowIfNull(known);
        if (given.Length is 0 or > LongestWord) return null;
        var (best, least) = ((string?)null, (Math.Max(given.Length, LettersForOneSlip) / LettersForOneSlip) + 1);
        foreach (var word in known)
        {
            if (Math.Abs(word.Length - given.Length) >= least) continue;
            var distance = Between(given, word);
            if (distance < least) (best, least) = (word, distance);
        }
        return best;
    }

    /// <summary>
    /// Known words with the number of letters wrong, the nearest first; words too far off to be meant are not among them.
    /// </summary>
    public static IReadOnlyList<(string Word, int Wrong)> Ranked(string given, IEnumerable<string> known)
    {
        ArgumentNullException.ThrowIfNull(given);
        ArgumentNullException.ThrowIfNull(known);
        if (given.Length is 0 or > LongestWord) return [];
        var most = Math.Max(given.Length, LettersForOneSlip) / LettersForOneSlip;
        return
        [
            .. known.Where(word => Math.Abs(word.Length - given.Length) <= most).Select(word => (word, Wrong: Between(given,
                word))).Where(pair => pair.Wrong <= most)
                .OrderBy(pair => pair.Wrong).ThenBy(pair => pair.word, StringComparer.Ordinal),
        ];
    }

    /// <summary>What is allowed, in words for a refusal: all of a short list, the nearest of a long one.</summary>
    public static string InWords(string given, IReadOnlyCollection<string> allowed, string what)
    {
        ArgumentNullException.ThrowIfNull(allowed);
        const int Few = 40;
        var list = allowed.Count <= Few ? $"one of {string.Join(", ", allowed)}" : $"a {what} that the book has";
        return To(given, allowed) is { } nearest ? $"{list}; perhaps {nearest}" : list;
    }

    /// <summary>How many letters must be changed, added or left out; case does not count.</summary>
    private static int Between(string one, string other)
    {
        Span<int> row = stackalloc int[LongestWord * 4];
        if (other.Length >= row.Length) return int.MaxValue;
        for (var at = 0; at <= other.Length; at++) row[at] = at;
        for (var i = 1; i <= one.Length; i++)
        {
            var (corner, letter) = (row[0], char.ToLowerInvariant(one[i - 1]));
            row[0] = i;
            for (var j = 1; j <= other.Length; j++)
            {
                var changed = corner + (letter == char.ToLowerInvariant(other[j - 1]) ? 0 : 1);
                corner = row[j];
                row[j] = Math.Min(changed, 1 + Math.Min(row[j], row[j - 1]));
            }
        }
        return row[other.Length];
    }
}
