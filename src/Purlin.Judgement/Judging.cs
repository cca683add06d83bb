using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Judgement.Book;
using Purlin.Judgement.Causes;
using Purlin.Judgement.Duties;
using Purlin.Judgement.Evidence;
using Purlin.Judgement.Findings;
using Purlin.Judgement.FollowUp;
using Purlin.Judgement.Readings;
using Purlin.Judgement.ThenAndNow;

namespace Purlin.Judgement;

/// <summary>Applies the rule book to the evidence.</summary>
public static class Judging
{
    /// <summary>Judges the whole inspection.</summary>
    /// <param name="inspection">The evidence.</param>
    /// <param name="book">The rule book; the own wording that the inspection holds is laid over it here.</param>
    /// <param name="yearNow">The year of the visit or of issue.</param>
    /// <param name="memory">Remembers reckonings from one judgement to the next; none reckons everything anew.</param>
    public static JudgedInspection Judge(Inspection inspection, RuleBook book, int yearNow, JudgingMemory? memory = null)
    {
        ArgumentNullException.ThrowIfNull(inspection);
        ArgumentNullException.ThrowIfNull(book);
        memory ??= new JudgingMemory();
        (book, var conflicts) = memory.Laid.Of(book, inspection);
        var evidence = new EvidenceIndex(inspection, book, yearNow);
        var photosFor = inspection.Photos.Where(photo => photo.For is not null).ToLookup(photo => photo.For!.Value, photo => photo.Id);

        var readings = new ReadingJudging(evidence, memory);
        List<Sighting> looks = [.. Gathering.Observed(evidence), .. readings.Judge()];
        var matters = Gathering.Matters(evidence, looks);
        var writing = new FindingWriting(evidence, photosFor);
        var years = new Years(evidence, memory);
        List<Finding> written = [.. matters.Select(matter => writing.Write(matter) with { ThenAndNow = years.Of(matter) })];
        List<Finding> single = [.. Escalating.Apply(book, written, matters).Select(finding => Overruled.Apply(inspection, finding))];
        List<Finding> findings = [.. new Grouping(book, matters, writing).Apply(single).Select(finding => finding.Grouped.Count == 0 ? finding : Overruled.ApplyToGroup(evidence, finding))];
        var leftOut = findings.Where(finding => finding.LeftOut).Select(finding => finding.Id).ToHashSet(StringComparer.Ordinal);
        var limitations = new LimitationWriting(evidence, photosFor).Write(looks);

        var judged = new JudgedInspection
        {
            RuleBook = book.Edition,
            Findings = InOrder(evidence, findings),
            LooseEnds = new FollowingUp(evidence, looks, new Measured(evidence, readings)).Follow(matters.Where(matter => !leftOut.Contains(matter.Id))),
            Coverage = new Covering(evidence, new CoreCovering(evidence, looks)).Cover(),
            Limitations = limitations,
            Workings = readings.Workings,
            Refused = readings.Refused,
            Asks = [.. readings.Asks.DistinctBy(ask => (ask.Reading, ask.Fact, ask.Component, ask.Place))],
            Photos = PhotoSpeaking.Speak(evidence, findings, looks, limitations),
            Alerts = Alerting.List(evidence),
            Offers = Offering.List(evidence),
            WordingConflicts = conflicts,
            Obstacles = [],
        };
        judged = judged with { Visit = AroundVisit.List(evidence, judged), Wanted = StandardLimits.Shown(evidence) };
        return judged with { Obstacles = Obstacles.List(evidence, judged) };
    }

    private static List<Finding> InOrder(EvidenceIndex evidence, IEnumerable<Finding> findings) =>
    [
        .. findings.OrderByDescending(finding => finding.Weight)
            .ThenBy(finding => finding.Places.Count == 0 ? int.MaxValue : finding.Places.Min(place => evidence.Walk(place)))
            .ThenBy(finding => finding.Id, StringComparer.Ordinal),
    ];
}
