namespace Purlin.Field.MyWording;

/// <summary>Finds sentences by words in them or in what they belong to; the headings that fit come first.</summary>
public static class SentenceSearch
{
    public static IReadOnlyList<Purlin.Book.Sentence> Find(IReadOnlyList<Purlin.Book.Sentence> all, string sought)
    {
        var words = sought.Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        if (words.Length == 0) return [];
        return
        [
            .. all.Where(sentence => words.All(word => Has(sentence.Text, word) || Has(sentence.About, word) || Has(sentence.Group, word) || Has(sentence.Part, word)))
                .OrderByDescending(sentence => words.Count(word => Has(sentence.About, word))).ThenBy(sentence => sentence.About, StringComparer.Ordinal).ThenBy(sentence => sentence.Key, StringComparer.Ordinal),
        ];
    }

    private static bool Has(string text, string word) => text.Contains(word, StringComparison.OrdinalIgnoreCase);
}
