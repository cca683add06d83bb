using System.Text;
using System.Text.Json.Nodes;
using Purlin.Book;
using Purlin.Journal;
using Purlin.Judgement;
using Purlin.Report;
using Purlin.Report.Fonts;
using Purlin.Report.Pdf;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Annotations;
using UglyToad.PdfPig.Content;

namespace Purlin.Tests.Report;

/// <summary>How much paper the papers take, where their links lead, and what the rows for other programs say.</summary>
public static class PaperTests
{
    private const double Foot = 792 - 746, Head = 792 - 60;

    /// <summary>How far down a page is filled, of what it can hold: from the lowest letter or picture above the foot.</summary>
    private static double Filled(Page page)
    {
        var lowest = page.Letters.Where(letter => letter.Value.Trim().Length > 0).Select(letter => letter.BoundingBox.Bottom).Concat(page.GetImages().Select(image => image.BoundingBox.Bottom))
            .Where(y => y > Foot - 4).DefaultIfEmpty(Head).Min();
        return (Head - lowest) / (Head - Foot);
    }

    private static int FirstOf(PdfDocument pdf, string words) => Enumerable.Range(1, pdf.NumberOfPages).First(page => string.Concat(pdf.GetPage(page).Letters.Select(letter => letter.Value)).Contains(words, StringComparison.Ordinal));

    [Fact]
    public static void The_demo_takes_forty_pages_at_most_and_none_of_its_body_stands_half_empty()
    {
        using var pdf = PdfDocument.Open(PdfTests.demo.Value.Pdf);
        Assert.InRange(pdf.NumberOfPages, 10, 40);
        var annex = FirstOf(pdf, "Annex. Evidence, matter by matter");
        Assert.InRange(annex - 1, 5, 27);
        // The last page of the body and the last of the annex end where there is no more to say.
        for (var page = 1; page < pdf.NumberOfPages; page++)
            if (page != annex - 1) Assert.True(Filled(pdf.GetPage(page)) >= 0.6, $"page {page} of {pdf.NumberOfPages} is filled to {Filled(pdf.GetPage(page)):0%}");
    }

    [Fact]
    public static void A_house_of_three_matters_takes_six_pages_at_most()
    {
        var evidence = SampleReport.Evidence("a few plain words of no great length");
        var kitchen = SampleHouse.Place(evidence, "Kitchen");
        var judged = SampleReport.Judgement(evidence, "a few plain words of no great length");
        judged = judged with { Findings = [.. judged.Findings, SampleHouse.Finding("Outlet cover missing", Weight.PutRight, kitchen)] };
        var paper = SampleReport.Worked(evidence, judged).Paper(PaperKind.Report, SampleReport.Sealed);
        Assert.Equal(3, paper.Matters.Count);
        using var pdf = PdfDocument.Open(PdfWriter.Bytes(paper, SampleReport.Photo));
        Assert.InRange(pdf.NumberOfPages, 2, 6);
    }

    [Fact]
    public static void The_first_page_answers_three_questions_and_names_matters_with_their_pages()
    {
        using var pdf = PdfDocument.Open(PdfTests.demo.Value.Pdf);
        var text = string.Concat(pdf.GetPage(1).Letters.Select(letter => letter.Value));
        foreach (var words in (string[])["Can we live here safely?", "What must be settled before we are bound?", "What comes later?", "By when", "Whom to call"]) Assert.Contains(words, text, StringComparison.Ordinal);
        var heaviest = PdfTests.demo.Value.Model.Matters.Count(matter => matter.Due.By == ByWhen.Today);
        Assert.Contains($"Not before 1 to {heaviest} are made safe.", text, StringComparison.Ordinal);
    }

    [Fact]
    public static void A_picture_beside_a_matter_is_two_and_six_tenths_of_an_inch_wide()
    {
        using var pdf = PdfDocument.Open(PdfTests.demo.Value.Pdf);
        var widest = pdf.GetPages().SelectMany(page => page.GetImages()).Select(image => image.BoundingBox.Width).ToArray();
        Assert.True(widest.Count(width => width >= 2.6 * 72) >= PdfTests.demo.Value.Model.Matters.Count(matter => matter.Pictures.Count > 0), "fewer wide pictures than matters with pictures");
    }

    [Fact]
    public static void Links_lead_to_every_matter_and_back_and_to_workings_and_sources()
    {
        using var pdf = PdfDocument.Open(PdfTests.demo.Value.Pdf);
        var links = pdf.GetPages().SelectMany(page => page.GetAnnotations().Where(annotation => annotation.Type == AnnotationType.Link).Select(annotation => page.Number)).ToArray();
        var matters = PdfTests.demo.Value.Model.Matters.Count;
        // Two in the list (number, words), and from each matter to its evidence and back to the list.
        Assert.True(links.Count(page => page <= 2) >= 2 * matters, $"{links.Count(page => page <= 2)} links on the first pages");
        Assert.True(links.Length >= 5 * matters, $"{links.Length} links");
    }

    [Fact]
    public static void No_text_of_ours_wants_a_letter_that_the_faces_lack()
    {
        // A second visit is made of two and has its own tests.
        foreach (var kind in Enum.GetValues<PaperKind>().Where(kind => kind != PaperKind.Second))
        {
            using var pdf = PdfDocument.Open(PdfWriter.Bytes(Work.Of(PdfTests.demo.Value.Demo.Entries, RuleBook.BuiltIn, 2026).Paper(kind, SampleReport.Sealed), sha => PdfTests.demo.Value.Demo.Pictures.GetValueOrDefault(sha)));
            var lost = pdf.GetPages().SelectMany(page => page.Letters).SelectMany(letter => letter.Value.EnumerateRunes()).Where(rune => rune.Value > 0x20 && !Faces.Regular.Has(rune.Value) && !Faces.Wide.Has(rune.Value)).Distinct();
            Assert.Empty(lost);
        }
    }

    [Fact]
    public static void Lines_that_go_on_end_with_a_space()
    {
        using var pdf = PdfDocument.Open(PdfTests.demo.Value.Pdf);
        var why = PdfTests.demo.Value.Model.Matters.First(matter => matter.Say(MatterPart.Why).Length > 120);
        // As a reader aloud gets it: the letters in the order of the file, nothing added.
        var text = string.Concat(pdf.GetPages().SelectMany(page => page.Letters).Select(letter => letter.Value == "\u00A0" ? " " : letter.Value));
        Assert.Contains(why.Say(MatterPart.Why), text, StringComparison.Ordinal);
    }

    [Fact]
    public static void The_summary_and_the_call_take_three_pages_each()
    {
        byte[] Print(PaperKind kind) => PdfWriter.Bytes(Work.Of(PdfTests.demo.Value.Demo.Entries, RuleBook.BuiltIn, 2026).Paper(kind, SampleReport.Sealed), sha => PdfTests.demo.Value.Demo.Pictures.GetValueOrDefault(sha));
        using var summary = PdfDocument.Open(Print(PaperKind.Summary));
        Assert.InRange(summary.NumberOfPages, 1, 3);
        using var talk = PdfDocument.Open(Print(PaperKind.Talk));
        Assert.InRange(talk.NumberOfPages, 1, 3);
    }

    [Fact]
    public static void A_paper_is_the_same_whichever_was_made_before_it()
    {
        var work = SampleReport.Worked(SampleReport.Evidence(), SampleReport.Judgement(SampleReport.Evidence()));
        var (late, alone) = (work.Report(SampleReport.Sealed), work.Report(SampleReport.Sealed));
        foreach (var kind in Enum.GetValues<PaperKind>().Where(kind => kind != PaperKind.Second)) late.Paper(kind);
        Assert.Equal(PdfWriter.Bytes(alone.Paper(PaperKind.Summary), SampleReport.Photo), PdfWriter.Bytes(late.Paper(PaperKind.Summary), SampleReport.Photo));
        Assert.NotEmpty(alone.Paper(PaperKind.Summary).Pictures);
    }

    [Fact]
    public static void Each_trade_has_a_sheet_that_asks_all_that_is_asked_of_it()
    {
        var model = Work.Of(PdfTests.demo.Value.Demo.Entries, RuleBook.BuiltIn, 2026).Report(SampleReport.Sealed);
        var chapters = model.Paper(PaperKind.Trades).Chapters;
        var sheets = chapters.Where(chapter => chapter.Form == ChapterForm.Sheet).ToArray();
        Assert.Equal(sheets.Select(sheet => sheet.Title), chapters[0].Blocks.OfType<Block.Table>().Single().Rows.Select(row => row[0].ToString()));
        var asked = sheets.SelectMany(sheet => sheet.Blocks.OfType<Block.Jobs>().Single().Lines.Select(job => (sheet.Title, job))).ToArray();
        foreach (var matter in model.Matters)
        {
            Assert.Contains(asked, one => one.job.Matter.Number == matter.Number && one.Title.Equals(matter.Trade, StringComparison.OrdinalIgnoreCase) && one.job.Asked.Contains(matter.Say(MatterPart.Do), StringComparison.Ordinal));
            Assert.All(matter.Questions, question => Assert.Contains(asked, one => one.job.Matter.Number == matter.Number && one.Title.Equals(question.Trade, StringComparison.OrdinalIgnoreCase) && one.job.Asked.Contains(question.Ask, StringComparison.Ordinal)));
        }
        // The most pressing trade comes first.
        Assert.Equal(ByWhen.Today, sheets[0].Blocks.OfType<Block.Jobs>().Single().Lines.Min(job => job.Matter.Due.By));
    }

    [Fact]
    public static void Every_question_handed_on_stands_with_its_matter_or_after_the_limitations()
    {
        var work = Work.Of(PdfTests.demo.Value.Demo.Entries, RuleBook.BuiltIn, 2026);
        var paper = work.Paper(PaperKind.Report, SampleReport.Sealed);
        var questions = paper.Matters.SelectMany(matter => matter.Questions).Select(question => question.Ask).ToHashSet();
        var table = paper.Chapters.Single(chapter => chapter.Id == "limitations").Blocks.OfType<Block.Table>().SelectMany(one => one.Rows).SelectMany(row => row).Select(cell => cell.ToString()).ToHashSet();
        foreach (var end in work.Judged.LooseEnds.Where(end => end.Tied is null || end.Tied.How == Tie.Referral))
            Assert.True(questions.Any(ask => ask.StartsWith(end.Referral.TrimEnd('.'), StringComparison.Ordinal)) || table.Any(cell => cell.StartsWith(end.Referral.TrimEnd('.'), StringComparison.Ordinal)), end.Referral);
    }

    [Fact]
    public static void Rows_for_a_spreadsheet_stay_rows_whatever_was_typed()
    {
        var model = SampleReport.Model("=HYPERLINK(\"http://x\"), \"quoted\"\r\nsecond line");
        var csv = Encoding.UTF8.GetString(FindingsFile.Csv(model).AsSpan(3));
        var rows = Read(csv);
        Assert.Equal(model.Matters.Count + 1, rows.Count);
        Assert.All(rows, row => Assert.Equal(rows[0].Count, row.Count));
        Assert.All(rows.SelectMany(row => row), cell => Assert.False(cell.StartsWith('='), cell));
        var json = FindingsFile.Json(model);
        Assert.Equal(model.Matters.Count, json["findings"]!.AsArray().Count);
        Assert.Equal(rows[0], json["findings"]![0]!.AsObject().Select(member => member.Key));
        Assert.Equal((int)model.Matters[0].Due.By, (int)json["findings"]![0]!["by_when_order"]!);
    }

    // RFC 4180: quotes doubled inside quotes, records end with CR LF outside them.
    private static List<List<string>> Read(string csv)
    {
        List<List<string>> rows = [[]];
        StringBuilder cell = new();
        var quoted = false;
        for (var at = 0; at < csv.Length; at++)
        {
            if (quoted && csv[at] == '"' && at + 1 < csv.Length && csv[at + 1] == '"') cell.Append(csv[at++]);
            else if (csv[at] == '"') quoted = !quoted;
            else if (!quoted && csv[at] == ',') (rows[^1], _) = ([.. rows[^1], cell.ToString()], cell.Clear());
            else if (!quoted && csv[at] == '\r') continue;
            else if (!quoted && csv[at] == '\n')
            {
                rows[^1].Add(cell.ToString());
                cell.Clear();
                rows.Add([]);
            }
            else cell.Append(csv[at]);
        }
        rows.RemoveAt(rows.Count - 1);
        return rows;
    }
}
