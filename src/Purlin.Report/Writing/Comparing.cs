using Purlin.Journal;
using Purlin.Judgement;

namespace Purlin.Report.Writing;

/// <summary>What became of a matter by the second visit.</summary>
internal enum Became
{
    /// <summary>Still there.</summary>
    NotDone,

    /// <summary>Still there in part, or done as far as could be seen.</summary>
    Partly,

    /// <summary>Looked for again and not there.</summary>
    Done,

    /// <summary>It could not be seen.</summary>
    NotSeen,

    /// <summary>Nobody looked for it.</summary>
    NotLooked,
}

/// <summary>A matter of the first visit beside what the second found.</summary>
internal sealed record Compared(Became Became, IReadOnlyList<EntryName> Evidence, IReadOnlyList<EntryName> Photos);

/// <summary>
/// Holds two visits of one house against each other. A matter is done when what it rests on was looked for, measured or read again in its
/// places
/// and does not raise it any more; what nobody looked at stays open. Places are the same by their names.
/// </summary>
internal sealed class Comparing(Record earlier, Record now)
{
    public Compared Of(Finding finding)
    {
        HashSet<string> conditions = [finding.Condition, .. finding.Grouped];
        HashSet<string> places = new(earlier.Inspection.Places.Where(place => finding.Places.Contains(place.Id)).Select(place =>
            place.Name), StringComparer.OrdinalIgnoreCase);
        HashSet<EntryName> here = [.. now.Inspection.Places.Where(place => places.Count == 0 || places.Contains(place.Name)).Select(place =>
            place.Id)];
        var looked = now.Inspection.Observations.Where(observation => observation.Body.Condition is { } condition
            && conditions.Contains(condition) && here.Contains(observation.Body.Place)).ToArray();
        var kinds = earlier.Inspection.Readings.Where(reading => finding.Evidence.Contains(reading.Id)).Select(reading =>
            reading.Body.Kind).ToHashSet(StringComparer.Ordinal);
        var measured = now.Inspection.Readings.Where(reading => kinds.Contains(reading.Body.Kind) && (reading.Body.Place is not { } place
            || here.Contains(place))).Select(reading => reading.Id).ToArray();
        var read = Facts(finding).ToArray();
        var still = now.Matters.Where(matter => conditions.Contains(matter.Condition) || matter.Grouped.Any(conditions.Contains))
            .Where(matter => matter.Places.Count == 0 || matter.Places.Any(here.Contains)).ToArray();
        EntryName[] evidence = [.. looked.Select(observation => observation.Id), .. measured, .. read];
        var photos = now.Inspection.Photos.Where(photo => photo.Use != PhotoUse.HeldBack && photo.For is { } of && evidence.Contains(of))
            .Select(photo => photo.Id).Concat(still.SelectMany(matter => matter.Photos)).Distinct().ToArray();
        var outcomes = looked.Select(observation => observation.Body.Outcome).ToHashSet();
        var gone = outcomes.Contains(Outcome.Clear) || still.Length == 0 && measured.Length + read.Length > 0;
        return new Compared(Standing(still.Length > 0 || outcomes.Contains(Outcome.Seen), gone, outcomes.Contains(Outcome.NotVisible)),
            evidence, photos);
    }

    private static Became Standing(bool still, bool gone, bool hidden) => (still, gone, hidden) switch
    {
        (true, true, _) => Became.Partly,
        (true, _, _) => Became.NotDone,
        (_, true, true) => Became.Partly,
        (_, true, _) => Became.Done,
        (_, _, true) => Became.NotSeen,
        _ => Became.NotLooked,
    };

    // Facts of the same kind of thing, read anew: a new plate says a new year.
    private IEnumerable<EntryName> Facts(Finding finding)
    {
        var rested = earlier.Inspection.Components.SelectMany(component => component.Facts.Where(fact => fact.Value.Standing.Any(stated =>
            finding.Evidence.Contains(stated.By))).Select(fact => (component.Kind, fact.Key))).ToHashSet();
        return now.Inspection.Components.SelectMany(component => component.Facts.Where(fact => rested.Contains((component.Kind, fact.Key)))
            .SelectMany(fact => fact.Value.Standing.Select(stated => stated.By)));
    }
}
