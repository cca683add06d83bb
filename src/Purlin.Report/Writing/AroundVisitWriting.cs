using Purlin.Book;
using Purlin.Judgement;
using Purlin.Report.Edition;

namespace Purlin.Report.Writing;

/// <summary>What the standards ask before and after the visit and of the report itself, and the days that follow from it.</summary>
internal static class AroundVisitWriting
{
    public static IEnumerable<Chapter> Of(ReportModel model)
    {
        var record = model.Record;
        var visit = record.Judged.Visit;
        if (visit.Count == 0) yield break;
        List<Block> blocks = [];
        var dated = visit.Where(duty => duty.Day is not null).OrderBy(duty => duty.Day).ToArray();
        if (dated.Length > 0)
            blocks.Add(new Block.Table("Days that follow from the visit, as the standards set them.", ["Day", "What", "How it is counted"], [.. dated.Select(Dated)]) { Shares = [0.2, 0.28, 0.52] });
        var settled = visit.Where(duty => duty.Day is null && duty.State != VisitStanding.Listed).ToArray();
        if (settled.Length > 0)
            blocks.Add(new Block.Table("Agreement, people, and what the report must carry.", ["What", "How it stands", "Asked by"], [.. settled.Select(duty => (IReadOnlyList<Prose>)[duty.Name, Stands(duty), Asked(duty)])]) { Shares = [0.24, 0.48, 0.28], Fine = true });
        // Rules of conduct and what is still open are the inspector's business, not the client's.
        var listed = visit.Where(duty => duty.Day is null && duty.State == VisitStanding.Listed).ToArray();
        if (listed.Length > 0 && model.Mark is EditionMark.WorkingCopy)
            blocks.Add(new Block.Folded("Rules of conduct", [new Block.Table("Rules of conduct. They are listed here; no program can tell whether they are kept.", ["Rule", "What it asks", "Asked by"], [.. listed.Select(duty => (IReadOnlyList<Prose>)[duty.Name, duty.Text, Asked(duty)])]) { Shares = [0.24, 0.48, 0.28], Fine = true }], []));
        // What sets a day stands above, as the day it comes to.
        var set = record.Judged.Wanted.Where(wanted => !record.Book.Settings.TryGetValue(wanted.Setting, out var rule) || rule.Use != SettingUse.Date).ToArray();
        if (set.Length > 0)
            blocks.Add(new Block.Table("Matters on which standards differ, and what was followed here.", ["Matter", "Standard", "What it sets"], [.. set.Select(wanted => (IReadOnlyList<Prose>)[wanted.Name, wanted.Standard, Phrase.End(Phrase.Sentence(wanted.Value) + Mark(wanted.Mark))])]) { Shares = [0.34, 0.24, 0.42], Fine = true });
        yield return new Chapter("visit", "Before and after the visit", "A standard of practice also asks for an agreement, for a report that shows certain things, and for days to be kept. This is how each stands.", blocks) { Form = ChapterForm.Reference };
    }

    private static IReadOnlyList<Prose> Dated(VisitDuty duty) => [Phrase.Day(duty.Day!.Value), duty.Name, $"{duty.Words}\n{Asked(duty)}"];

    private static string Stands(VisitDuty duty) => duty.State switch
    {
        VisitStanding.Closed => Phrase.End(duty.Words),
        VisitStanding.NotDone => $"Not done. {Phrase.End(Phrase.Sentence(duty.Words))}",
        VisitStanding.DoesNotApply => $"Not asked for here. {Phrase.End(Phrase.Sentence(duty.Words))}",
        _ => $"Open. {duty.Words}",
    };

    private static string Asked(VisitDuty duty) => string.Join('\n', duty.Asked.GroupBy(asked => asked.Standard).Select(group => $"{group.Key} {string.Join(", ", group.Select(asked => asked.Section + Mark(asked.Mark)).Distinct())}"));

    private static string Mark(string mark) => mark.Length > 0 ? $" ({mark})" : "";
}
