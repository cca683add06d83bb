using System.Runtime.CompilerServices;
using Purlin.Book;
using Purlin.Book.Search;

namespace Purlin.Field.Here;

/// <summary>Conditions that people mean when they type; the index of a book is made when first asked for, and once.</summary>
public static class Recognised
{
    private static readonly ConditionalWeakTable<RuleBook, Spoken> Indexes = [];

    public static IReadOnlyList<Condition> In(RuleBook book, Standpoint from, string typed, int most) => Indexes.GetValue(book, known => new Spoken(known)).Find(typed, from, most);
}
