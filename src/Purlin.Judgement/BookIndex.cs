using Purlin.Book;

namespace Purlin.Judgement;

/// <summary>The book laid out for judging: which rules speak of what. Made once for a book, so that no judgement walks all rules for one thing.</summary>
internal sealed class BookIndex
{
    public BookIndex(RuleBook book)
    {
        Book = book;
        Fits = book.Fits.SelectMany(fit => fit.Conditions.Select(condition => (condition, fit))).ToLookup(pair => pair.condition, pair =>
            pair.fit, StringComparer.Ordinal);
        NumbersThatRaise = [.. book.ReadingKinds.Values.Where(kind => kind.Raises.Count > 0).OrderBy(kind => kind.Kind, StringComparer.Ordinal)];
        FactRules = book.FactRules.GroupBy(rule => rule.Component, StringComparer.Ordinal).Select(group => (group.Key, (IReadOnlyList<FactRule>)[.. group])).ToList();
        Escalations = book.Escalations.ToLookup(rule => rule.Condition, StringComparer.Ordinal);
        Causes = book.Causes.SelectMany((cause, order) => cause.Conditions.Distinct(StringComparer.Ordinal).Select(condition => (condition, order))).ToLookup(pair => pair.condition, pair => pair.order, StringComparer.Ordinal);
        Offered = [.. book.Limitations.Values.Where(rule => rule.When is not null).OrderBy(rule => rule.Id, StringComparer.Ordinal)];
    }

    public RuleBook Book { get; }

    /// <summary>What only some materials can show, by condition.</summary>
    public ILookup<string, Book.Looking.Fit> Fits { get; }

    /// <summary>Kinds of reading whose number alone raises a condition.</summary>
    public IReadOnlyList<ReadingKind> NumbersThatRaise { get; }

    /// <summary>Rules on facts, by kind of component.</summary>
    public IReadOnlyList<(string Component, IReadOnlyList<FactRule> Rules)> FactRules { get; }

    /// <summary>Escalations, by the condition they lift.</summary>
    public ILookup<string, Escalation> Escalations { get; }

    /// <summary>Places of causes in the book's order, by the conditions they explain.</summary>
    public ILookup<string, int> Causes { get; }

    /// <summary>Limitations that a reading or fact calls for, by id.</summary>
    public IReadOnlyList<LimitationRule> Offered { get; }
}
