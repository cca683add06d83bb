using Purlin.Journal;
using Purlin.Book;
using Purlin.Judgement.Evidence;
using Purlin.Judgement.Findings;
using Purlin.Judgement.Memory;

namespace Purlin.Judgement.FollowUp;

/// <summary>
/// Opens the questions that the evidence raises and ties off those that it answers. A question is never answered by the very look that
/// opened it: two like looks in two places answer each other, one alone answers nothing.
/// </summary>
internal sealed class FollowingUp(EvidenceIndex evidence, Looks looks, Measured measured, Recall recall)
{
    private static readonly HashSet<EntryName> NoPlaces = [];

    public List<LooseEnd> Follow(IEnumerable<Concern> matters)
    {
        List<LooseEnd> ends = [];
        foreach (var matter in matters) ends.AddRange(recall.Once<List<LooseEnd>>("loose ends", matter.Id.ToString(), matter, () => Of(matter)));
        return [.. ends.OrderBy(end => end.Tied is not null).ThenByDescending(end => end.Blocks).ThenBy(end => end.Id.ToString(), StringComparer.Ordinal)];
    }

    private List<LooseEnd> Of(Concern matter)
    {
        List<LooseEnd> ends = [];
        var opening = recall.Once("opening", matter.Id.ToString(), matter, () => Opening(matter));
        foreach (var follow in matter.Condition.Look)
        {
            Inquiry question = new(new LooseEndId(matter.Condition.Id, follow.Id, matter.Id.Of), matter.Condition, follow, matter.Seen, opening);
            if (Judge(question) is { } end) ends.Add(end);
        }
        return ends;
    }

    private LooseEnd? Judge(Inquiry question)
    {
        var walked = new AnswerPlaces(evidence, question).Of();
        var places = walked.InOrder;
        if (places.Count == 0 && question.Follow.In.Count > 0 && question.Follow.In.All(IsAbsent)) return null;
        var openedIn = question.Opening.Places;
        // "Look at the others" has no meaning where there are no others.
        if (question.AsksForTheSame && question.Follow.Readings.Count == 0 && question.Follow.Answers.Count == 1 && question.Follow.In.Count > 0
            && places.All(openedIn.Contains) && openedIn.Count <= 1) return null;

        var answers = new Answers(evidence, looks, measured, question, walked);
        var spots = question.Follow.Here ? places.FindAll(openedIn.Contains) : [];
        var still = spots.Count == 0 ? answers.StillToLook(openedIn) : answers.StillToLook(NoPlaces).FindAll(openedIn.Contains);
        return new LooseEnd
        {
            Id = question.Id,
            Question = question.Follow.Ask,
            Because = question.Opening.Because,
            OpenedBy = question.Opening.Entries,
            LookIn = spots.Count == 0 ? places : spots,
            StillToLook = still,
            Answers = question.Follow.Answers,
            Readings = question.Follow.Readings,
            Tied = ByHand(question) ?? answers.Tied(still) ?? new ClosedByLimitation(evidence, looks).Tie(question, still),
            Blocks = question.Follow.Block,
            Referral = question.Follow.Refer,
            Trade = question.Follow.Trade,
        };
    }

    /// <summary>A house on a slab has nothing below it to look at, as far as its facts are known.</summary>
    private bool IsAbsent(string kind) => kind switch
    {
        PlaceKind.CrawlSpace or PlaceKind.Basement => evidence.Property?.Foundation is { } foundation && foundation != kind,
        PlaceKind.Attic => evidence.Property?.Attic == "none",
        PlaceKind.Garage => evidence.Property?.Garage == "none",
        PlaceKind.Deck => evidence.Property?.Deck == false,
        _ => false,
    };

    private OpenedBy Opening(Concern matter)
    {
        var where = string.Join(", ", matter.Seen.Select(opener => opener.Place).Distinct().OrderBy(place => evidence.Walk(place)).Select(evidence.NameOf));
        return new OpenedBy(evidence.Book.Words.Say("loose-end.because", ("what", matter.Condition.Name), ("where", where)), [.. matter.Seen.SelectMany(opener => opener.Entries).Distinct()], [.. matter.Places]);
    }

    /// <summary>A tie by hand holds while the evidence it names stands; the look that opened a question is no evidence for its answer.</summary>
    private Tied? ByHand(Inquiry question)
    {
        if (evidence.Tie(question.Id) is not { } slot) return null;
        var tie = slot.Value;
        var by = slot.Standing[0].By;
        if (tie.How == Tie.Evidence && tie.Evidence.Count > 0)
        {
            var openers = question.Openers.SelectMany(opener => opener.Entries).ToHashSet();
            var stands = tie.Evidence.Where(entry => !evidence.IsWithdrawn(entry) && (openers.Count > 1 || !openers.Contains(entry))).ToList();
            return stands.Count == 0 ? null : new Tied(Tie.Evidence, [.. stands, by], tie.Reason ?? evidence.Book.Words.Say("loose-end.tied.evidence"));
        }
        var words = tie.How switch
        {
            Tie.Referral => FindingWriting.Join(evidence.Book.Words.Say("loose-end.tied.referral", ("trade", tie.Trade ?? question.Follow.Trade)), tie.Reason ?? ""),
            Tie.Limitation => tie.Reason ?? evidence.Book.Words.Say("loose-end.tied.limitation"),
            _ => tie.Reason ?? evidence.Book.Words.Say("loose-end.tied.evidence"),
        };
        return new Tied(tie.How, [by], words);
    }
}
