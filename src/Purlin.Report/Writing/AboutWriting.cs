using Purlin.Journal;
using Purlin.Report.Edition;

namespace Purlin.Report.Writing;

/// <summary>What the report is and is not, and which issues of it there are.</summary>
internal static class AboutWriting
{
    public static IEnumerable<Chapter> Of(ReportModel model)
    {
        var (record, mark, words) = (model.Record, model.Mark, model.Words);
        List<string> lines =
        [
            words.Say("report.about.seen"), words.Say("report.about.promise"), words.Say("report.about.code"), words.Say("report.about.reader"), words.Say("report.about.weight"), words.Say("report.about.hurt"),
            words.Say("report.about.told"),
        ];
        if (record.Judged.Coverage.Count > 0) lines.Insert(1, words.Say("report.about.follows", ("standards", SaidValue.Of(record.Judged.Coverage.Select(coverage => record.Book.Standards.GetValueOrDefault(coverage.Standard)?.Title ?? coverage.Title)))));
        lines.AddRange(StateWriting.Terms(record));
        var left = record.Judged.Findings.Count(finding => finding.LeftOut);
        if (left > 0) lines.Add(words.Say("report.about.left", ("count", left)));
        if (words.Say("language.unconfirmed.words") is { Length: > 0 } unconfirmed) lines.Insert(0, unconfirmed);
        List<Block> blocks = [new Block.Items([.. lines.Select(line => (Prose)line)]), Who(model.Cover, words)];
        if (record.Inspection.Opening?.Body.Demo == true) blocks.Insert(0, new Block.Paragraph(words.Say("report.about.invented")));
        blocks.Add(new Block.Heading(words.Say("report.issues")));
        blocks.AddRange(Issues(record, mark, words));
        blocks.Add(new Block.Paragraph(words.Say("report.about.made", ("book", record.Judged.RuleBook), ("hash", Sealing.InGroups(record.Book.Hash)), ("made", model.Cover.Made), ("count", record.Inspection.Entries), ("id", record.Inspection.Id))) { Aside = true });
        yield return new Chapter("about", words.Say("report.about.title"), "", blocks) { Form = ChapterForm.Reference };
    }

    private static Block.Table Who(Cover cover, Phrase words) => new(words.Say("report.about.who"), ["", ""],
        [.. cover.Cells.Select(cell => (IReadOnlyList<Prose>)[cell.Label, cell.Text]), [words.Say("report.about.signed"), "\n______________________________"]])
    { Shares = [0.32, 0.68], Fine = true };

    private static IEnumerable<Block> Issues(Record record, EditionMark mark, Phrase words)
    {
        if (record.Inspection.Editions.Count > 0)
            yield return new Block.Table(words.Say("report.issues.table"), [words.Say("report.column.edition"), words.Say("report.column.day"), words.Say("report.column.seal")],
                [.. record.Inspection.Editions.OrderBy(edition => edition.Body.Number).Select(edition => (IReadOnlyList<Prose>)[$"{edition.Body.Number}", words.Day(new DateOnly(edition.Body.At.Year, edition.Body.At.Month, edition.Body.At.Day)), Sealing.InGroups(edition.Seal)])])
            { Shares = [0.14, 0.26, 0.6] };
        yield return mark switch
        {
            EditionMark.Sealed issued => new Block.Paragraph(Edition(issued, words)),
            _ => new Block.Paragraph(words.Say("report.about.working")),
        };
    }

    private static string Edition(EditionMark.Sealed issued, Phrase words)
    {
        var said = words.Say("report.about.edition", ("number", issued.Number), ("day", new DateOnly(issued.At.Year, issued.At.Month, issued.At.Day)), ("root", Sealing.InGroups(issued.Root)));
        return issued switch
        {
            { OfficeKey: { } office } => Phrase.Join(said, words.Say("report.about.key", ("print", Sealing.InGroups(office)))),
            { PhoneKey: { } phone } => Phrase.Join(said, words.Say("report.about.key.phone", ("print", Sealing.InGroups(phone)))),
            _ => said,
        };
    }
}
