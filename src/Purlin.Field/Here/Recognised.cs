using Purlin.Judgement.Book;

namespace Purlin.Field.Here;

/// <summary>Conditions that people mean when they type: by name, by the other words people use, by signs. One's own come first.</summary>
public static class Recognised
{
    public static IReadOnlyList<Condition> In(RuleBook book, string placeKind, string typed, int most)
    {
        var words = typed.Split([' ', ',', '.', ';'], StringSplitOptions.RemoveEmptyEntries);
        if (words.Length == 0) return [];
        return
        [
            .. book.Conditions.Values.Where(condition => (placeKind.Length == 0 || condition.Places.Contains(placeKind)) && words.All(word => Has(condition, word)))
                .OrderByDescending(condition => condition.Own).ThenByDescending(condition => words.Count(word => Has(condition.Name, word))).ThenBy(condition => condition.Id, StringComparer.Ordinal).Take(most),
        ];
    }

    private static bool Has(Condition condition, string word) =>
        Has(condition.Name, word) || Has(condition.Component, word) || condition.Words.Any(other => Has(other, word)) || condition.Signs.Any(sign => Has(sign, word));

    private static bool Has(string text, string word) => text.Contains(word, StringComparison.OrdinalIgnoreCase);
}
