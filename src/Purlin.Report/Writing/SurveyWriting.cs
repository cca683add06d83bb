using Purlin.Journal.Fold;
using Purlin.Report.Plans;

namespace Purlin.Report.Writing;

/// <summary>A set of readings with places on a plan: a floor survey.</summary>
internal static class SurveyWriting
{
    public static IEnumerable<Block> Of(Record record, IReadOnlyList<Reading> survey)
    {
        var words = record.Words;
        var names = survey.Select(reading => reading.Id).ToHashSet();
        var working = record.Judged.Workings.FirstOrDefault(done => done.Working.Name == "floor-survey" && done.Evidence.Any(names.Contains))?.Working;
        yield return new Block.Heading(words.Say("report.survey.title", ("kind", words.Word(survey[0].Body.Kind)), ("count", survey.Count)));
        if (working is not null) yield return new Block.Paragraph(Phrase.End(words.Say(working.Verdict.Because)));
        if (working is not null && FloorPlan.Draw(working.Result, 340, words.Tongue) is { } plan)
            yield return new Block.Figure(plan, words.Say("report.survey.caption"));
        yield return new Block.Folded(words.Say("report.survey.raw"), [Raw(record, survey)],
            [new Block.Items([string.Join("; ", survey.Select(reading => $"{Point(reading, words)}: {words.Amount(reading.Body.Amount)}")) + "."]) { Fine = true }]);
    }

    private static Block.Table Raw(Record record, IReadOnlyList<Reading> survey) => new(record.Words.Say("report.survey.table"), [record.Words.Say("report.column.point"), record.Words.Say("report.column.reading"), record.Words.Say("report.column.where")],
        [.. survey.Select(reading => (IReadOnlyList<Prose>)[Point(reading, record.Words), record.Words.Amount(reading.Body.Amount), record.PlaceName(reading.Body.Place)])])
    { Fine = true };

    private static string Point(Reading reading, Phrase words) => reading.Body.Label ?? $"{words.Number(reading.Body.Point!.X)}, {words.WithUnit(words.Number(reading.Body.Point!.Y), reading.Body.Point!.Unit)}";
}
