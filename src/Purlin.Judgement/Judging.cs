using Purlin.Judgement.Book;
using Purlin.Journal.Fold;

namespace Purlin.Judgement;

/// <summary>Applies the rule book to the evidence.</summary>
public static class Judging
{
    /// <summary>Judges the whole inspection.</summary>
    /// <param name="inspection">The evidence.</param>
    /// <param name="book">The rule book with the inspector's overlay.</param>
    /// <param name="yearNow">The year of the visit or of issue.</param>
    public static JudgedInspection Judge(Inspection inspection, RuleBook book, int yearNow)
    {
        ArgumentNullException.ThrowIfNull(inspection);
        ArgumentNullException.ThrowIfNull(book);
        return new JudgedInspection
        {
            RuleBook = book.Edition,
            Findings = [],
            LooseEnds = [],
            Coverage = [],
            Limitations = [],
            Workings = [],
            Photos = [],
            Alerts = [],
            Obstacles = [],
        };
    }
}
