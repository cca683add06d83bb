using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Judgement;
using Purlin.Book;

namespace Purlin.Field.Here;

/// <summary>One thing to look for in a place, and how far one is with it.</summary>
public sealed record Look(Condition Condition, Observation? Last, LooseEnd? AskedBy);

/// <summary>What to look for on one kind of component in a place.</summary>
public sealed record LookGroup(string Component, IReadOnlyList<Look> Looks, bool IsHere)
{
    public int Done => Looks.Count(look => look.Last is not null);

    public int Seen => Looks.Count(look => look.Last?.Body.Outcome == Outcome.Seen);

    public bool IsAsked => Looks.Any(look => look.AskedBy is not null && look.Last is null);

    public bool IsFinished => Done == Looks.Count;
}

/// <summary>What the rule book says to look for here: first what loose ends ask for, then what is known to be here, then the rest.</summary>
public static class LookList
{
    /// <summary>What says that a kind of component is not in a place, so that it is not asked for there again.</summary>
    public static EntryBody.ComponentAbsent Absent(EntryName place, string component) => new() { Kind = component, Place = place };

    public static IReadOnlyList<LookGroup> Of(Inspection inspection, JudgedInspection? judged, RuleBook book, Journal.Fold.Place place, Component? chosen)
    {
        var last = inspection.Observations
            .Where(observation => observation.Body.Place == place.Id && observation.Body.Condition is not null && (chosen is null || observation.Body.Component is null || observation.Body.Component == chosen.Id))
            .GroupBy(observation => observation.Body.Condition!, StringComparer.Ordinal)
            .ToDictionary(group => group.Key, group => group.Last(), StringComparer.Ordinal);
        var asked = OpenHere(judged, place.Id).SelectMany(end => end.Answers.Select(answer => (answer, end)))
            .GroupBy(pair => pair.answer, StringComparer.Ordinal).ToDictionary(group => group.Key, group => group.First().end, StringComparer.Ordinal);
        var here = inspection.Components.Where(component => component.Place == place.Id).Select(component => component.Kind).ToHashSet(StringComparer.Ordinal);
        var absent = AbsentIn(inspection, place.Id);
        var conditions = book.ConditionsIn(place.Kind).Concat(asked.Keys.Select(book.Conditions.GetValueOrDefault).OfType<Condition>()).DistinctBy(condition => condition.Id);
        return
        [
            .. conditions.Where(condition => chosen is null ? !absent.Contains(condition.Component) : condition.Component == chosen.Kind)
                .GroupBy(condition => condition.Component, StringComparer.Ordinal)
                .Select(group => new LookGroup(group.Key, [.. group.Select(condition => new Look(condition, last.GetValueOrDefault(condition.Id), asked.GetValueOrDefault(condition.Id)))], here.Contains(group.Key)))
                .OrderByDescending(group => group.IsAsked).ThenByDescending(group => group.IsHere).ThenBy(group => group.Component, StringComparer.Ordinal),
        ];
    }

    /// <summary>Kinds of component that were said not to be in a place.</summary>
    public static IReadOnlySet<string> AbsentIn(Inspection inspection, EntryName place) =>
        inspection.Absences.Where(absence => absence.Place == place || (absence.Place is null && absence.Part is null)).Select(absence => absence.Kind).ToHashSet(StringComparer.Ordinal);

    /// <summary>Loose ends that can be answered in this place and are not yet.</summary>
    public static IEnumerable<LooseEnd> OpenHere(JudgedInspection? judged, EntryName place) =>
        judged?.LooseEnds.Where(end => end.Tied is null && end.StillToLook.Contains(place)) ?? [];

    /// <summary>Duties that can be closed in this place and are not yet.</summary>
    public static IEnumerable<DutyState> DutiesHere(JudgedInspection? judged, EntryName place) =>
        judged?.Coverage.SelectMany(coverage => coverage.Duties).Where(duty => duty.State == DutyStanding.Open && duty.Places.Contains(place)) ?? [];

    /// <summary>Why a thing commonly cannot be looked at: the rule book's reasons for it, else four that fit most.</summary>
    public static IReadOnlyList<string> Reasons(RuleBook book, Condition condition, string placeKind)
    {
        var own = book.Limitations.Values.Where(rule => rule.Component == condition.Component && (rule.Places.Count == 0 || rule.Places.Contains(placeKind)))
            .SelectMany(rule => rule.Reasons).Distinct(StringComparer.Ordinal).Take(4).ToList();
        return own.Count >= 2 ? own : ["covered or stored against", "locked or no access", "not safe to reach", "off or not running"];
    }
}
