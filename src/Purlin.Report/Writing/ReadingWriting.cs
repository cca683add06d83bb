using Purlin.Journal.Fold;

namespace Purlin.Report.Writing;

internal static class ReadingWriting
{
    public static IEnumerable<Chapter> Of(ReportModel model)
    {
        var record = model.Record;
        var readings = record.Inspection.Readings;
        if (readings.Count == 0) yield break;
        List<Block> blocks = [];
        var loose = readings.Where(reading => reading.Body.Point is null).ToArray();
        if (loose.Length > 0) blocks.Add(Table(record, loose));
        foreach (var survey in readings.Where(reading => reading.Body.Point is not null).GroupBy(reading => (reading.Body.Set, reading.Body.Kind)))
            blocks.AddRange(SurveyWriting.Of(record, [.. survey]));
        if (Instruments(readings) is { Count: > 0 } instruments) blocks.Add(new Block.Items(instruments) { Fine = true });
        yield return new Chapter("readings", "What was measured", "Numbers are as they were read. A reading holds for the place and the hour (UTC).", blocks) { Form = ChapterForm.Reference };
    }

    private static Block.Table Table(Record record, IReadOnlyList<Reading> readings) => new("In the order in which they were taken.", ["What", "Reading", "Where, when"],
        [.. readings.Select(reading => (IReadOnlyList<Prose>)[
            Phrase.Sentence(reading.Body.Kind) + (reading.Body.Label is { Length: > 0 } label ? $" ({label})" : ""), Phrase.Amount(reading.Body.Amount),
            string.Join(", ", new[] { record.PlaceName(reading.Body.Place), record.ComponentName(reading.Body.Component), Phrase.Moment(reading.At) }.Where(part => part.Length > 0))])])
    { Shares = [0.42, 0.2, 0.38], Fine = true };

    private static List<Prose> Instruments(IReadOnlyList<Reading> readings) =>
        [.. readings.Where(reading => reading.Body.Instrument is { Length: > 0 }).GroupBy(reading => reading.Body.Instrument!).OrderBy(group => group.Key, StringComparer.Ordinal)
            .Select(group => new Prose(new Run("With " + group.Key, Strong: true), new Run($": {string.Join(", ", group.Select(reading => reading.Body.Kind).Distinct())}.")))];
}
