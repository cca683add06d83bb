using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Book;
using Purlin.Book.Takings;
using Purlin.Judgement.Evidence;

namespace Purlin.Judgement.Readings;

/// <summary>Sorts readings into what one working is made for.</summary>
internal static class FeedGroups
{
    public static IEnumerable<FeedGroup> Of(Feed feed, EvidenceIndex evidence)
    {
        var readings = feed.ReadingKinds.SelectMany(evidence.ReadingsOf)
            .Where(reading => feed.Places.Count == 0 || feed.Places.Contains(evidence.Place(evidence.PlaceOf(reading))?.Kind ?? "") || evidence.Book.IsOfHouse(reading.Body.Kind)).ToList();
        return feed.By switch
        {
            FeedBy.Component => ByComponent(feed, evidence, readings),
            FeedBy.Reading => readings.Select(reading => Group(feed, evidence, [reading])),
            FeedBy.Place => readings.Where(reading => evidence.PlaceOf(reading) is not null).GroupBy(reading => evidence.PlaceOf(reading)).Select(group => Group(feed, evidence, [.. group])),
            FeedBy.Set => BySet(feed, evidence, readings),
            _ => [Group(feed, evidence, readings)],
        };
    }

    /// <summary>Readings without a set belong together when they were taken on the same thing, or in the same place.</summary>
    private static IEnumerable<FeedGroup> BySet(Feed feed, EvidenceIndex evidence, List<Reading> readings) =>
        readings.Where(reading => !evidence.Book.IsOfHouse(reading.Body.Kind))
            .GroupBy(reading => reading.Body.Set is { } set ? "set " + set : reading.Body.Component is { } on ? $"on {on}" : $"in {evidence.PlaceOf(reading)}", StringComparer.Ordinal)
            .Select(group => Group(feed, evidence, [.. group]));

    private static IEnumerable<FeedGroup> ByComponent(Feed feed, EvidenceIndex evidence, List<Reading> readings)
    {
        foreach (var kind in feed.Components)
        {
            var all = evidence.ComponentsOf(kind).ToList();
            foreach (var component in all)
            {
                // A reading that names no component speaks of the only one there is.
                List<Reading> own = [.. readings.Where(reading => reading.Body.Component == component.Id || (reading.Body.Component is null && all.Count == 1 && feed.Components.Count == 1))];
                yield return new FeedGroup(own, component, component.Place);
            }
        }
    }

    private static FeedGroup Group(Feed feed, EvidenceIndex evidence, IReadOnlyList<Reading> readings)
    {
        var component = readings.Select(reading => evidence.Component(reading.Body.Component)).FirstOrDefault(known => known is not null)
            ?? feed.Components.SelectMany(evidence.ComponentsOf).FirstOrDefault();
        var place = readings.Select(evidence.PlaceOf).FirstOrDefault(known => known is not null) ?? component?.Place;
        return new FeedGroup(readings, component, place);
    }
}
