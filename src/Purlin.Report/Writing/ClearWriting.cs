using Purlin.Journal;

namespace Purlin.Report.Writing;

/// <summary>What was looked for and not seen: negative evidence is evidence.</summary>
internal static class ClearWriting
{
    public static IEnumerable<Chapter> Of(Record record)
    {
        var clear = record.Inspection.Observations.Where(observation => observation.Body.Outcome == Outcome.Clear).ToArray();
        if (clear.Length == 0) yield break;
        var order = record.Inspection.Places.Select((place, index) => (place.Id, index)).ToDictionary(pair => pair.Id, pair => pair.index);
        var rows = clear.GroupBy(observation => observation.Body.Place).OrderBy(group => order.GetValueOrDefault(group.Key, int.MaxValue))
            .Select(group => (IReadOnlyList<string>)[record.PlaceName(group.Key) is { Length: > 0 } place ? place : "House", string.Join(' ', group.Select(observation => Line(record, observation.Body)).Distinct())]);
        yield return new Chapter("clear", "Looked for and not seen", "On the day, where we could look, there was no sign of these. That is not a promise for other days or hidden parts.",
            [new Block.Table("Place by place.", ["Place", "Looked for and not seen"], [.. rows]) { Shares = [0.2, 0.8], Fine = true }]);
    }

    private static string Line(Record record, EntryBody.ObservationMade body)
    {
        var what = Phrase.Join(record.ConditionName(body.Condition), body.Words is { Length: > 0 } words ? Phrase.Sentence(words) : null);
        return body.Sample is { } sample ? $"{Phrase.End(what)} {Phrase.Count(sample)}" : Phrase.End(what);
    }
}
