using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Judgement;
using Purlin.Book;

namespace Purlin.Bench;

/// <summary>Judging an inspection of 2,000 entries beside folding it, and judging again after one more entry.</summary>
internal static class JudgementBench
{
    public static void Run(Results results)
    {
        var book = RuleBook.BuiltIn;
        var visit = LivedIn.Of(2_000, book);
        var inspection = Folding.Fold(visit.Entries);
        results.Pair("judge an inspection of 2000 entries", () => Judging.Judge(inspection, book, 2026), "fold the same entries",
            () => Folding.Fold(visit.Entries));
        GrowingFold fold = new();
        JudgingMemory memory = new();
        fold.Add(visit.Entries);
        Judging.Judge(fold.Inspection, book, 2026, memory);
        var conditions = book.Conditions.Keys.Order(StringComparer.Ordinal).ToList();
        results.Pair("look once more, fold and judge again", () =>
        {
            var at = visit.Entries.Count;
            fold.Add([visit.Write(new EntryBody.ObservationMade { Place = visit.Places[at % visit.Places.Count].Name,
                Condition = conditions[at * 7 % conditions.Count], Outcome = Outcome.Seen })]);
            Judging.Judge(fold.Inspection, book, 2026, memory);
        }, "judge everything anew", () => Judging.Judge(fold.Inspection, book, 2026));
    }
}
