using Purlin.Journal;
using Purlin.Book;
using Purlin.Judgement.Evidence;

namespace Purlin.Judgement.Duties;

/// <summary>
/// Says how the duties around the visit stand: the agreement before it, what the report carries, the days to keep after it. One for each thing that any of
/// the chosen standards asks; they stand apart from the duties of the walk, whose counts keep their meaning.
/// </summary>
internal sealed class AroundVisit
{
    private readonly EvidenceIndex evidence;
    private readonly FactClosing facts;
    private readonly DayCounting days;
    private readonly ReportProof proof;
    private readonly JudgedInspection judged;

    private AroundVisit(EvidenceIndex evidence, JudgedInspection judged)
    {
        var stated = new VisitFacts(evidence);
        (this.evidence, this.judged) = (evidence, judged);
        (facts, days, proof) = (new FactClosing(evidence, stated), new DayCounting(evidence, stated), new ReportProof(evidence, judged));
    }

    public static List<VisitDuty> List(EvidenceIndex evidence, JudgedInspection judged)
    {
        if (evidence.Opening is null) return [];
        var around = new AroundVisit(evidence, judged);
        return [.. evidence.Book.Visit.Select(around.Of).OfType<VisitDuty>()];
    }

    private VisitDuty? Of(VisitRule rule)
    {
        List<VisitAsked> asked = [.. evidence.Standards.SelectMany(standard => Asked(rule, standard))];
        if (asked.Count == 0) return null;
        var duty = new VisitDuty { Id = DutyId.OfCore(rule.Id), Name = rule.Name, Text = rule.Text, Close = rule.Close, Asked = asked };
        if (ByHand(duty) is { } closed) return closed;
        if (rule.When == "limited" && judged.Limitations.Count == 0 && judged.Coverage.All(coverage => coverage.Duties.All(state => state.State != DutyStanding.Limited)))
            return duty with { State = VisitStanding.DoesNotApply, Words = evidence.Book.Words.Say("visit.nothing-limited") };
        return rule.Close switch
        {
            VisitClose.Program => proof.Close(rule, duty),
            VisitClose.Fact => facts.Close(rule, duty),
            VisitClose.Date => days.Count(rule, duty),
            _ => duty with { State = VisitStanding.Listed, Words = evidence.Book.Words.Say("visit.word") },
        };
    }

    /// <summary>A setting without a duty beside it asks too: who sets how long a record is kept wants it kept.</summary>
    private IEnumerable<VisitAsked> Asked(VisitRule rule, Standard standard)
    {
        var any = false;
        foreach (var duty in standard.Duties.Where(duty => duty.Coverage == DutyCounts.ReportRule && duty.Core.Contains(rule.Id)))
        {
            any = true;
            var id = new DutyId(standard.Id, duty.Id);
            yield return new VisitAsked(id, standard.Short, duty.Id, duty.Text, duty.Mark) { IsClosed = evidence.DutyMet(id) is not null };
        }
        if (!any && rule.Date is { } date && standard.Settings.TryGetValue(date.Setting, out var setting))
            yield return new VisitAsked(new DutyId(standard.Id, date.Setting), standard.Short, date.Setting, rule.Text, setting.Mark);
    }

    private VisitDuty? ByHand(VisitDuty duty)
    {
        if (evidence.DutyMet(duty.Id) is { } slot) return Closed(duty, [(slot.Value, slot.Standing[0].By)]);
        if (!duty.Asked.All(asked => asked.IsClosed)) return null;
        return Closed(duty, [.. duty.Asked.Select(asked => evidence.DutyMet(asked.Duty)!).Select(one => (one.Value, one.Standing[0].By))]);
    }

    private VisitDuty Closed(VisitDuty duty, IReadOnlyList<(EntryBody.DutyMet Body, EntryName By)> hands)
    {
        var words = string.Join(' ', hands.Select(hand => hand.Body.Text ?? hand.Body.Reason).Where(text => !string.IsNullOrWhiteSpace(text)).Distinct(StringComparer.Ordinal));
        var state = hands.Any(hand => hand.Body.How == DutyClose.NotInspected) ? VisitStanding.NotDone
            : hands.All(hand => hand.Body.How == DutyClose.NotPresent) ? VisitStanding.DoesNotApply : VisitStanding.Closed;
        return duty with { State = state, Evidence = [.. hands.Select(hand => hand.By)], Words = words.Length > 0 ? words : evidence.Book.Words.Say("visit.by-hand") };
    }
}
