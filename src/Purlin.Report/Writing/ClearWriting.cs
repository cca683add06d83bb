using Purlin.Journal;

namespace Purlin.Report.Writing;

/// <summary>What was looked for and not seen: negative evidence is evidence.</summary>
internal static class ClearWriting
{
    public static IEnumerable<Chapter> Of(ReportModel model)
    {
        var (record, words) = (model.Record, model.Words);
        var clear = record.Inspection.Observations.Where(observation => observation.Body.Outcome == Outcome.Clear).ToArray();
        if (clear.Length == 0) yield break;
        var order = record.Inspection.Places.Select((place, index) => (place.Id, index)).ToDictionary(pair => pair.Id, pair => pair.index);
        var lines = clear.GroupBy(observation => observation.Body.Place).OrderBy(group => order.GetValueOrDefault(group.Key, int.MaxValue))
            .Select(group => new Prose(new Run(record.PlaceName(group.Key) is { Length: > 0 } place ? place : words.Say("report.house"), Strong: true), new Run(". " + string.Join(' ', group.Select(observation => Line(record, observation.Body)).Distinct()))));
        yield return new Chapter("clear", words.Say("report.clear.title"), words.Say("report.clear.lead"), [new Block.Items([.. lines]) { Fine = true }]) { Form = ChapterForm.Reference };
    }

    private static string Line(Record record, EntryBody.ObservationMade body)
    {
        var what = Phrase.Join(record.ConditionName(body.Condition), body.Words is { Length: > 0 } said ? Phrase.Sentence(said) : null);
        return body.Sample is { } sample ? $"{Phrase.End(what)} {record.Words.Count(sample)}" : Phrase.End(what);
    }
}
