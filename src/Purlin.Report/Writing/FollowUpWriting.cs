using Purlin.Judgement;

namespace Purlin.Report.Writing;

/// <summary>Symptoms that were followed to their end on the day; what was handed on stands with its matter.</summary>
internal static class FollowUpWriting
{
    private const int Most = 70;

    public static IEnumerable<Chapter> Of(ReportModel model)
    {
        var record = model.Record;
        LooseEnd[] settled = [.. record.Judged.LooseEnds.Where(end => !Record.IsHandedOn(end))];
        if (settled.Length == 0) yield break;
        var groups = settled.GroupBy(end => record.MatterOf(end)).OrderBy(group => group.Key ?? int.MaxValue).ToArray();
        yield return new Chapter("follow-up", "Symptoms that were followed", "What a matter made us look for, and what came of it.",
        [
            new Block.Folded("Every question with what came of it",
                [new Block.Table("By matter.", ["Matter", "Looked for, and what came of it"], [.. groups.Select(group => (IReadOnlyList<Prose>)[Head(group.Key), string.Join('\n', group.Select(end => Answered(end, whole: true)))])]) { Shares = [0.16, 0.84], Fine = true }],
                [new Block.Items([.. groups.Select(group => Head(group.Key).Then(": ").Then(string.Join(' ', group.Select(end => Answered(end, whole: false)))))]) { Fine = true }]),
        ])
        { Form = ChapterForm.Reference };
    }

    private static Prose Head(int? matter) => matter is { } number ? Prose.Link($"{number}", $"matter-{number}") : "Other";

    private static string Answered(LooseEnd end, bool whole)
    {
        var came = Readings.Gathered(Phrase.End(Phrase.Sentence(end.Tied!.Words)));
        return whole ? $"{Phrase.End(end.Question)} {came}" : $"{Phrase.End(Cut(end.Question))} {Phrase.End(Cut(came))}";
    }

    private static string Cut(string words)
    {
        if (words.Length <= Most) return words;
        var at = words.LastIndexOf(' ', Most);
        return words[..(at > Most / 2 ? at : Most)].TrimEnd(',', ';', ':') + " …";
    }
}
