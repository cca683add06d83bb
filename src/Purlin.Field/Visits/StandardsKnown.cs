using Purlin.Book;

namespace Purlin.Field.Visits;

/// <summary>The standards of practice the rule book holds, by title.</summary>
public static class StandardsKnown
{
    public static IReadOnlyList<(string Id, string Title)> All => field ??= [.. RuleBook.BuiltIn.Standards.Values.OrderBy(standard => standard.Title, StringComparer.Ordinal).Select(standard => (standard.Id, standard.Title))];
}
