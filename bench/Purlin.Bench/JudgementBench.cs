using Purlin.Journal.Fold;
using Purlin.Judgement;
using Purlin.Judgement.Book;

namespace Purlin.Bench;

/// <summary>Judging an inspection of 2,000 entries beside folding it, and judging again after one more entry.</summary>
internal static class JudgementBench
{
    public static void Run(Results results)
    {
        var entries = Histories.Of(2_000);
        var inspection = Folding.Fold(entries);
        var book = RuleBook.BuiltIn;
        results.Pair("judge an inspection of 2000 entries", () => Judging.Judge(inspection, book, 2026), "fold the same entries", () => Folding.Fold(entries));
        var memory = new JudgingMemory();
        results.Pair("judge it again after one more entry", () => Judging.Judge(inspection, book, 2026, memory), "fold it again", () => Folding.Fold(entries));
    }
}
