using Purlin.Journal;
using Purlin.Journal.Fold;

namespace Purlin.Report.Writing;

internal static class ReadingWriting
{
    public static IEnumerable<Chapter> Of(ReportModel model)
    {
        var (record, words) = (model.Record, model.Words);
        var readings = record.Inspection.Readings;
        if (readings.Count == 0) yield break;
        List<Block> blocks = [];
        var loose = readings.Where(reading => reading.Body.Point is null).ToArray();
        if (loose.Length > 0) blocks.Add(Table(record, loose));
        foreach (var survey in readings.Where(reading => reading.Body.Point is not null).GroupBy(reading => (reading.Body.Set, reading.Body.Kind)))
            blocks.AddRange(SurveyWriting.Of(record, [.. survey]));
        if (Instruments(readings, words) is { Count: > 0 } instruments) blocks.Add(new Block.Items(instruments) { Fine = true });
        yield return new Chapter("readings", words.Say("report.readings.title"), words.Say("report.readings.lead"), blocks) { Form = ChapterForm.Reference };
    }

    private static Block.Table Table(Record record, IReadOnlyList<Reading> readings) => new(record.Words.Say("report.readings.table"), [record.Words.Say("report.column.what"), record.Words.Say("report.column.reading"), record.Words.Say("report.column.where-when")],
        [.. readings.Select(reading => (IReadOnlyList<Prose>)[
            Phrase.Sentence(record.Words.Word(reading.Body.Kind)) + (reading.Body.Label is { Length: > 0 } label ? $" ({label})" : ""), record.Words.Amount(reading.Body.Amount),
            string.Join(", ", new[] { record.PlaceName(reading.Body.Place), record.ComponentName(reading.Body.Component), record.Words.Moment(reading.At) }.Where(part => part.Length > 0))])])
    { Shares = [0.42, 0.2, 0.38], Fine = true };

    private static List<Prose> Instruments(IReadOnlyList<Reading> readings, Phrase words) =>
        [.. readings.Where(reading => reading.Body.Instrument is { Length: > 0 }).GroupBy(reading => reading.Body.Instrument!).OrderBy(group => group.Key, StringComparer.Ordinal)
            .Select(group => words.Linked("report.readings.with", "instrument", new Prose(new Run(group.Key, Strong: true)), ("kinds", SaidValue.Of(group.Select(reading => words.Word(reading.Body.Kind)).Distinct()))))];
}
