using Purlin.Book;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Judgement.Evidence;

namespace Purlin.Judgement.FollowUp;

/// <summary>A question that only a run or a look would answer is not asked once it is on record that there was none.</summary>
internal sealed class ClosedByLimitation(EvidenceIndex evidence, Looks looks)
{
    /// <summary>How a recorded limitation ties it off; none when none does.</summary>
    public Tied? Tie(Inquiry question, IReadOnlyList<EntryName> still)
    {
        foreach (var limitation in evidence.Limitations)
            if (RulesOut(limitation).Any(core => AsksOnly(question.Follow, core))) return Told(limitation);
        if (still.Count == 0) return null;
        var over = still.Select(place => evidence.Limitations.FirstOrDefault(limitation => IsOfWhole(limitation, place))).ToList();
        return over.TrueForAll(one => one is not null) ? Told(over[0]!, [.. over.Select(one => one!.Id).Distinct()]) : null;
    }

    private Tied Told(Limitation limitation, IReadOnlyList<EntryName>? by = null) => new(Journal.Tie.Limitation, by ?? [limitation.Id],
        evidence.Book.Words.Say("loose-end.tied.closed", ("what", limitation.Body.What), ("cause", limitation.Cause ?? limitation.Body.Cause
            ?? "")));

    /// <summary>What was not run because of it: as its rule says, else what is run of the thing that it names.</summary>
    private IEnumerable<CoreDuty> RulesOut(Limitation limitation)
    {
        if (limitation.Body.Rule is { } id && evidence.Book.Limitations.TryGetValue(id, out var rule))
            return rule.Closes.Where(evidence.Book.Core.ContainsKey).Select(core => evidence.Book.Core[core]);
        if (evidence.Component(limitation.Body.Component) is not { } thing) return [];
        return evidence.Book.Core.Values.Where(core => core.Readings.Count > 0 && core.Verbs.Contains(Verb.Operate)
            && core.Components.Contains(thing.Kind));
    }

    private bool AsksOnly(Follow follow, CoreDuty core) =>
        follow.Readings.Count > 0 && follow.Facts.Count == 0 && follow.Readings.All(name => IsOf(name, core))
        && follow.Answers.All(id => evidence.Book.Conditions.TryGetValue(id, out var condition)
            && core.Components.Contains(condition.Component));

    private bool IsOf(string reading, CoreDuty core) =>
        core.Readings.Contains(reading) || evidence.Book.Feeds.Any(feed => feed.Answers.Contains(reading)
            && feed.ReadingKinds.Any(core.Readings.Contains));

    /// <summary>Whether nobody was in the place at all: a limitation of the place itself, with nothing looked at there.</summary>
    private bool IsOfWhole(Limitation limitation, EntryName place)
    {
        if (limitation.Body.Place != place || limitation.Body.Component is not null || looks.LookedIn(place)) return false;
        return limitation.Body.Rule is not { } id || !evidence.Book.Limitations.TryGetValue(id, out var rule) || rule.Component == evidence
            .Place(place)?.Kind;
    }
}
