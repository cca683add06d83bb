using Purlin.Judgement;

namespace Purlin.Report.Writing;

/// <summary>Symptoms that were followed to their end on the day; what was handed on stands with its matter.</summary>
internal static class FollowUpWriting
{
    private const int Most = 70;

    public static IEnumerable<Chapter> Of(ReportModel model)
    {
        var (record, words) = (model.Record, model.Words);
        LooseEnd[] settled = [.. record.Judged.LooseEnds.Where(end => !Record.IsHandedOn(end))];
        if (settled.Length == 0) yield break;
        var groups = settled.GroupBy(end => record.MatterOf(end)).OrderBy(group => group.Key ?? int.MaxValue).ToArray();
        yield return new Chapter("follow-up", words.Say("report.followed.title"), words.Say("report.followed.lead"),
        [
            new Block.Folded(words.Say("report.followed.each"),
                [new Block.Table(words.Say("report.followed.table"), [words.Say("report.column.matter"), words.Say("report.column.came")], [.. groups.Select(group => (IReadOnlyList<Prose>)[Head(group.Key, words), string.Join('\n', group.Select(end => Answered(end, words, whole: true)))])]) { Shares = [0.16, 0.84], Fine = true }],
                [new Block.Items([.. groups.Select(group => Head(group.Key, words).Then(": ").Then(string.Join(' ', group.Select(end => Answered(end, words, whole: false)))))]) { Fine = true }]),
        ])
        { Form = ChapterForm.Reference };
    }

    private static Prose Head(int? matter, Phrase words) => matter is { } number ? Prose.Link($"{number}", $"matter-{number}") : words.Say("report.other");

    private static string Answered(LooseEnd end, Phrase words, bool whole)
    {
        var came = Readings.Gathered(words, Phrase.End(Phrase.Sentence(end.Tied!.Words)));
        return whole ? $"{Phrase.End(end.Question)} {came}" : $"{Phrase.End(Cut(end.Question))} {Phrase.End(Cut(came))}";
    }

    private static string Cut(string said)
    {
        if (said.Length <= Most) return said;
        var at = said.LastIndexOf(' ', Most);
        return said[..(at > Most / 2 ? at : Most)].TrimEnd(',', ';', ':') + " …";
    }
}
