using Purlin.Journal.Fold;
using Purlin.Report.Plans;

namespace Purlin.Report.Writing;

/// <summary>A set of readings with places on a plan: a floor survey.</summary>
internal static class SurveyWriting
{
    public static IEnumerable<Block> Of(Record record, IReadOnlyList<Reading> survey)
    {
        var names = survey.Select(reading => reading.Id).ToHashSet();
        var working = record.Judged.Workings.FirstOrDefault(done => done.Working.Name == "floor-survey" && done.Evidence.Any(names.Contains))?.Working;
        yield return new Block.Heading($"{Phrase.Sentence(survey[0].Body.Kind)}: {survey.Count} points");
        if (working is not null) yield return new Block.Paragraph(Phrase.End(record.Book.Words.Say(working.Verdict.Because)));
        if (working is not null && FloorPlan.Draw(working.Result, 340) is { } plan)
            yield return new Block.Figure(plan, "Crosses: where the floor was read, with its height. Thin lines: equal height. Dash and dot: the line along which the floor bends most.");
        yield return new Block.Folded("As they were read", [Raw(record, survey)],
            [new Block.Items([string.Join("; ", survey.Select(reading => $"{Point(reading)}: {Phrase.Amount(reading.Body.Amount)}")) + "."]) { Fine = true }]);
    }

    private static Block.Table Raw(Record record, IReadOnlyList<Reading> survey) => new("Raw values.", ["Point", "Reading", "Where"],
        [.. survey.Select(reading => (IReadOnlyList<Prose>)[Point(reading), Phrase.Amount(reading.Body.Amount), record.PlaceName(reading.Body.Place)])])
    { Fine = true };

    private static string Point(Reading reading) => reading.Body.Label ?? $"{Phrase.Number(reading.Body.Point!.X)}, {Phrase.Number(reading.Body.Point!.Y)} {reading.Body.Point!.Unit}";
}
