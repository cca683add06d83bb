using Purlin.Book;
using Purlin.Judgement.Evidence;

namespace Purlin.Judgement.Duties;

/// <summary>Closes the duties that the report meets by itself, where what it prints is all there.</summary>
internal sealed class ReportProof(EvidenceIndex evidence, JudgedInspection judged)
{
    private const int Named = 3;

    public VisitDuty Close(VisitRule rule, VisitDuty duty)
    {
        List<string> lacking = rule.Proof switch
        {
            VisitProof.Property => string.IsNullOrWhiteSpace(evidence.Property?.Address) ? [rule.Name] : [],
            VisitProof.Matters => [.. judged.Findings.Where(IsUnsaid).Select(finding => finding.Title)],
            VisitProof.Reasons => [.. judged.Limitations.Where(limitation => limitation.Cause is null).Select(limitation => limitation.What), .. Duties(duty).Where(state => state is { State: DutyStanding.Limited, Words: "" }).Select(state => state.Text)],
            VisitProof.Descriptions => [.. Duties(duty).Where(state => state is { State: DutyStanding.Open, Verb: Verb.Describe }).Select(state => state.Text)],
            _ => [],
        };
        return lacking.Count == 0
            ? duty with { State = VisitStanding.Closed, Words = rule.Where }
            : duty with { State = VisitStanding.Open, Words = rule.Open.Replace("{which}", Some(lacking), StringComparison.Ordinal), BarsIssue = rule.Proof is VisitProof.Property or VisitProof.Matters };
    }

    /// <summary>Words of the inspector's own carry no reason of the book's; some standards want one.</summary>
    private bool IsUnsaid(Finding finding) => !finding.LeftOut &&
        (string.IsNullOrWhiteSpace(finding.Matters) || string.IsNullOrWhiteSpace(finding.Do) || finding.Matters == evidence.Book.Words.Say("own.means"));

    private IEnumerable<DutyState> Duties(VisitDuty duty) => judged.Coverage.Where(coverage => duty.Asked.Any(asked => asked.Duty.Standard == coverage.Standard)).SelectMany(coverage => coverage.Duties);

    private static string Some(List<string> all) =>
        string.Join("; ", all.Take(Named).Select(text => text.TrimEnd('.'))) + (all.Count > Named ? $"; {all.Count - Named} more" : "");
}
