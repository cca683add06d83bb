using Purlin.Journal.Fold;

namespace Purlin.Report.Writing;

internal static class ReadingWriting
{
    public static IEnumerable<Chapter> Of(Record record)
    {
        var readings = record.Inspection.Readings;
        if (readings.Count == 0) yield break;
        List<Block> blocks = [];
        var loose = readings.Where(reading => reading.Body.Point is null).ToArray();
        if (loose.Length > 0) blocks.Add(Table(record, "In the order in which they were taken.", loose));
        foreach (var survey in readings.Where(reading => reading.Body.Point is not null).GroupBy(reading => (reading.Body.Set, reading.Body.Kind)))
            blocks.AddRange(SurveyWriting.Of(record, [.. survey]));
        yield return new Chapter("readings", "What was measured", "Numbers are as they were read. A reading holds for the place and the hour.", blocks);
    }

    private static Block.Table Table(Record record, string caption, IReadOnlyList<Reading> readings) => new(caption, ["What", "Reading", "Where", "With"],
        [.. readings.Select(reading => (IReadOnlyList<string>)[
            Phrase.Sentence(reading.Body.Kind) + (reading.Body.Label is { Length: > 0 } label ? $" ({label})" : ""), Phrase.Amount(reading.Body.Amount),
            string.Join(", ", new[] { record.PlaceName(reading.Body.Place), record.ComponentName(reading.Body.Component) }.Where(part => part.Length > 0)), reading.Body.Instrument ?? ""])])
    { Shares = [0.34, 0.17, 0.27, 0.22], Fine = true };
}
