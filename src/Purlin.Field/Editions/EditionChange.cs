using Purlin.Book;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Journal.Merge;
using Purlin.Judgement;
using Purlin.Report;

namespace Purlin.Field.Editions;

/// <summary>One thing that an edition says otherwise than the one before it.</summary>
/// <param name="What">What became of the matter, in words.</param>
/// <param name="Title">The matter.</param>
public sealed record EditionChange(string What, string Title)
{
    /// <summary>What differs between two editions, by the lines that each was made from.</summary>
    public static IReadOnlyList<EditionChange> Between(string inspection, IReadOnlyList<Entry> entries, SealedEdition before,
        SealedEdition after)
    {
        var set = EntrySet.Of(inspection, entries);
        var (then, now) = (Findings(set, before), Findings(set, after));
        return
        [
            .. now.Values.Where(finding => !then.ContainsKey(finding.Id.ToString())).Select(finding =>
                new EditionChange("New:", finding.Title)),
            .. now.Values.Where(finding => then.TryGetValue(finding.Id.ToString(), out var earlier) && earlier.Weight != finding.Weight)
                .Select(finding => new EditionChange($"Now {finding.Weight.Word()}:", finding.Title)),
            .. then.Values.Where(finding => !now.ContainsKey(finding.Id.ToString())).Select(finding =>
                new EditionChange("No longer:", finding.Title)),
        ];
    }

    private static Dictionary<string, Finding> Findings(EntrySet set, SealedEdition edition) =>
        Work.Of([.. set.Under(edition.Body.Heads)], RuleBook.BuiltIn, edition.Body.At.Year).Judged.Findings.Where(finding =>
            !finding.LeftOut).ToDictionary(finding => finding.Id.ToString());
}
