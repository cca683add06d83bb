using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Book;
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
    /// <param name="yearUnopened">The year to judge by while no opening has arrived. Once it has, the year of the visit counts, whoever judges and whenever.</param>
    /// <param name="memory">Remembers what was worked out from one judgement to the next; none works everything out anew.</param>
    public static JudgedInspection Judge(Inspection inspection, RuleBook book, int yearUnopened, JudgingMemory? memory = null)
    {
        ArgumentNullException.ThrowIfNull(inspection);
        ArgumentNullException.ThrowIfNull(book);
        memory ??= new JudgingMemory();
        (book, var conflicts) = memory.Laid.Of(book, inspection);
        (inspection, var again) = memory.Renaming.Of(inspection, book);
        var year = inspection.Opening?.Body.Date.Year ?? yearUnopened;
        var evidence = memory.LayOut(inspection, book, year);
        var (recall, looks, index) = (memory.Recall, memory.Looks, memory.Book);
        var readings = new ReadingJudging(evidence, memory);
        looks.Update([.. memory.Observing.Look(inspection, evidence).Where(new Possible(evidence, index.Fits).Is), .. readings.Judge()]);

        var matters = new Gathering(evidence, looks, recall).Matters();
        NoteSpeaking speaking = new(inspection, evidence);
        var notes = speaking.Speak();
        var findings = Find(inspection, evidence, memory, matters, readings.Workings).Concat(OfNotes(inspection, book, speaking.Matters(notes))).ToList();
        var leftOut = findings.Where(finding => finding.LeftOut).Select(finding => finding.Id).ToHashSet();
        var judged = new JudgedInspection
        {
            RuleBook = book.Edition,
            Year = year,
            Words = book.Words,
            Findings = InOrder(evidence, book, findings),
            LooseEnds = new FollowingUp(evidence, looks, new Measured(evidence, memory), recall).Follow(matters.Where(matter => !leftOut.Contains(matter.Id))),
            Coverage = new Covering(evidence, new CoreCovering(evidence, looks, recall), recall).Cover(),
            Limitations = recall.Once("limitations", "", null, () => new Limiting(evidence, looks).Write()),
            Workings = readings.Workings,
            Refused = readings.Refused,
            Asks = [.. readings.Asks.DistinctBy(ask => (ask.Reading, ask.Fact, ask.Component, ask.Place))],
            Again = again,
            Notes = notes,
            Photos = PhotoSpeaking.Speak(inspection, evidence, looks, findings),
            Alerts = recall.Once("alerts", "", null, () => Alerting.List(evidence)),
            Offers = recall.Once("offers", "", null, () => Offering.List(evidence, index.Offered)),
            WordingConflicts = conflicts,
            Obstacles = [],
        };
        judged = judged with { Visit = AroundVisit.List(evidence, judged), Wanted = recall.Once("wanted", "", null, () => StandardLimits.Shown(evidence)) };
        judged = judged with { Obstacles = Obstacles.List(inspection, book.Words, judged) };
        memory.Keep(inspection, evidence);
        return judged;
    }

    private static List<Finding> Find(Inspection inspection, EvidenceIndex evidence, JudgingMemory memory, List<Concern> matters, List<JudgedWorking> workings)
    {
        Dictionary<JudgedWorking, int> numbers = new(ReferenceEqualityComparer.Instance);
        foreach (var working in workings) numbers.TryAdd(working, numbers.Count);
        var writing = new FindingWriting(evidence);
        var years = new Years(evidence, memory);
        List<Finding> written = [.. matters.Select(matter => memory.Recall.Once("finding", matter.Id.ToString(), matter, () => writing.Write(matter, years.Of(matter))).Numbered(numbers))];
        List<Finding> single = [.. Escalating.Apply(memory.Book, written, matters).Select(finding => Overruled.Apply(inspection, evidence.Book.Words, finding))];
        var grouped = new Grouping(memory.Book, matters, writing, memory.Recall).Apply(single).Select(finding => finding.Grouped.Count == 0 ? finding : Overruled.ApplyToGroup(inspection, evidence, finding));
        return [.. grouped.Select(finding => Dating.Apply(evidence.Book, finding))];
    }

    private static IEnumerable<Finding> OfNotes(Inspection inspection, RuleBook book, IEnumerable<Finding> matters) =>
        matters.Select(finding => Dating.Apply(book, Overruled.Apply(inspection, book.Words, finding)));

    private static List<Finding> InOrder(EvidenceIndex evidence, RuleBook book, IEnumerable<Finding> findings) =>
    [
        .. findings.OrderByDescending(finding => finding.Weight).ThenBy(finding => Urgency(book, finding))
            .ThenBy(finding => finding.Places.Count == 0 ? int.MaxValue : finding.Places.Min(place => evidence.Walk(place)))
            .ThenBy(finding => finding.Id),
    ];

    /// <summary>What is dealt with first among matters of one weight; a group by the most urgent of its members.</summary>
    private static int Urgency(RuleBook book, Finding finding) => finding.Grouped.Append(finding.Condition)
        .Select(id => book.Conditions.GetValueOrDefault(id)?.Weight).OfType<WeightRule>().Select(rule => rule.Urgency()).DefaultIfEmpty(3).Min();
}
