using Purlin.Book;
using Purlin.Judgement;
using Purlin.Report.Edition;

namespace Purlin.Report.Writing;

/// <summary>What the standards ask before and after the visit and of the report itself, and the days that follow from it.</summary>
internal static class AroundVisitWriting
{
    public static IEnumerable<Chapter> Of(ReportModel model)
    {
        var (record, words) = (model.Record, model.Words);
        var visit = record.Judged.Visit;
        if (visit.Count == 0) yield break;
        List<Block> blocks = [];
        var dated = visit.Where(duty => duty.Day is not null).OrderBy(duty => duty.Day).ToArray();
        if (dated.Length > 0)
            blocks.Add(new Block.Table(words.Say("report.visit.days"), [words.Say("report.column.day"), words.Say("report.column.what"), words.Say("report.column.counted")], [.. dated.Select(duty => Dated(duty, words))]) { Shares = [0.2, 0.28, 0.52] });
        var settled = visit.Where(duty => duty.Day is null && duty.State != VisitStanding.Listed).ToArray();
        if (settled.Length > 0)
            blocks.Add(new Block.Table(words.Say("report.visit.settled"), [words.Say("report.column.what"), words.Say("report.column.stands"), words.Say("report.column.asked")], [.. settled.Select(duty => (IReadOnlyList<Prose>)[duty.Name, Stands(duty, words), Asked(duty)])]) { Shares = [0.24, 0.48, 0.28], Fine = true });
        // Rules of conduct and what is still open are the inspector's business, not the client's.
        var listed = visit.Where(duty => duty.Day is null && duty.State == VisitStanding.Listed).ToArray();
        if (listed.Length > 0 && model.Mark is EditionMark.WorkingCopy)
            blocks.Add(new Block.Folded(words.Say("report.visit.conduct"), [new Block.Table(words.Say("report.visit.conduct.table"), [words.Say("report.column.rule"), words.Say("report.column.asks"), words.Say("report.column.asked")], [.. listed.Select(duty => (IReadOnlyList<Prose>)[duty.Name, duty.Text, Asked(duty)])]) { Shares = [0.24, 0.48, 0.28], Fine = true }], []));
        // What sets a day stands above, as the day it comes to.
        var set = record.Judged.Wanted.Where(wanted => !record.Book.Settings.TryGetValue(wanted.Setting, out var rule) || rule.Use != SettingUse.Date).ToArray();
        if (set.Length > 0)
            blocks.Add(new Block.Table(words.Say("report.visit.set"), [words.Say("report.column.matter"), words.Say("report.column.standard"), words.Say("report.column.sets")], [.. set.Select(wanted => (IReadOnlyList<Prose>)[wanted.Name, wanted.Standard, Phrase.End(Phrase.Sentence(wanted.Value))])]) { Shares = [0.34, 0.24, 0.42], Fine = true });
        yield return new Chapter("visit", words.Say("report.visit.title"), words.Say("report.visit.lead"), blocks) { Form = ChapterForm.Reference };
    }

    private static IReadOnlyList<Prose> Dated(VisitDuty duty, Phrase words) => [words.Day(duty.Day!.Value), duty.Name, $"{duty.Words}\n{Asked(duty)}"];

    private static string Stands(VisitDuty duty, Phrase words) => duty.State switch
    {
        VisitStanding.Closed => Phrase.End(duty.Words),
        VisitStanding.NotDone => words.Say("report.visit.not-done", ("words", Phrase.End(Phrase.Sentence(duty.Words)))),
        VisitStanding.DoesNotApply => words.Say("report.visit.not-asked", ("words", Phrase.End(Phrase.Sentence(duty.Words)))),
        _ => words.Say("report.visit.open", ("words", duty.Words)),
    };

    private static string Asked(VisitDuty duty) => string.Join('\n', duty.Asked.GroupBy(asked => asked.Standard).Select(group => $"{group.Key} {string.Join(", ", group.Select(asked => asked.Section).Distinct())}"));
}
