using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Judgement;
using Purlin.Book;

namespace Purlin.Field.Here;

/// <summary>What is open in a place, what is not there, and why a thing commonly cannot be seen.</summary>
public static class LookList
{
    private const int MostOwn = 4, MostReasons = 8;
    private static readonly string[] Usual = ["covered or stored against", "locked or no access", "not safe to reach", "off or not running", "too high to reach", "wet or under snow"];

    /// <summary>What says that a kind of component is not in a place, so that it is not asked for there again.</summary>
    public static EntryBody.ComponentAbsent Absent(EntryName place, string component) => new() { Kind = component, Place = place };

    /// <summary>Kinds of component that were said not to be in a place.</summary>
    public static IReadOnlySet<string> AbsentIn(Inspection inspection, EntryName place) =>
        inspection.Absences.Where(absence => absence.Place == place || (absence.Place is null && absence.Part is null)).Select(absence => absence.Kind).ToHashSet(StringComparer.Ordinal);

    /// <summary>Loose ends that can be answered in this place and are not yet.</summary>
    public static IEnumerable<LooseEnd> OpenHere(JudgedInspection? judged, EntryName place) =>
        judged?.LooseEnds.Where(end => end.Tied is null && end.StillToLook.Contains(place)) ?? [];

    /// <summary>Duties that can be closed in this place and are not yet.</summary>
    public static IEnumerable<DutyState> DutiesHere(JudgedInspection? judged, EntryName place) =>
        judged?.Coverage.SelectMany(coverage => coverage.Duties).Where(duty => duty.State == DutyStanding.Open && duty.Places.Contains(place)) ?? [];

    /// <summary>Why a thing commonly cannot be looked at: the rule book's reasons for it, then those that fit most things.</summary>
    public static IReadOnlyList<string> Reasons(RuleBook book, Condition condition, string placeKind)
    {
        var own = book.Limitations.Values.Where(rule => rule.Component == condition.Component && (rule.Places.Count == 0 || rule.Places.Contains(placeKind)))
            .SelectMany(rule => rule.Reasons).Distinct(StringComparer.Ordinal).Take(MostOwn);
        return [.. own.Concat(Usual).Distinct(StringComparer.Ordinal).Take(MostReasons)];
    }
}
