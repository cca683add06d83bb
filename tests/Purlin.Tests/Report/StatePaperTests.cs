using Purlin.Book;
using Purlin.Demo;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Judgement;
using Purlin.Report;

namespace Purlin.Tests.Report;

/// <summary>Where the law sets a notice and words of its own, the papers print them.</summary>
public sealed class StatePaperTests
{
    // North Carolina General Statutes 143-151.58(a1), as the Department of Insurance of the state publishes it.
    private const string Notice = "This summary page is not the entire report. The complete report may include additional information of interest or concern to you. It is strongly recommended that you promptly read the complete report. For information regarding the negotiability of any item in this report under the real estate purchase contract, contact your North Carolina real estate agent or an attorney.";

    [Theory]
    [InlineData(PaperKind.Report)]
    [InlineData(PaperKind.Summary)]
    public void North_Carolina_has_its_summary_page_letter_by_letter(PaperKind kind)
    {
        var chapter = Model("north-carolina").Paper(kind).Chapters.Single(chapter => chapter.Id == "state-north-carolina");
        Assert.Equal(Notice, ((Block.Paragraph)chapter.Blocks[0]).Text.ToString());
    }

    [Fact]
    public void The_notice_stays_in_the_words_of_the_law_in_another_language()
    {
        var model = Model("north-carolina", Tongue.BuiltIn("es-US"));
        Assert.Equal(Notice, ((Block.Paragraph)model.Paper(PaperKind.Summary).Chapters.Single(chapter =>
            chapter.Id == "state-north-carolina").Blocks[0]).Text.ToString());
    }

    // G.S. 143-151.58(a1): what does not function as intended must be on the page, what poses a safety concern may be; all else belongs in
    // the body.
    [Fact]
    public void The_page_lists_what_the_law_asks_for_and_nothing_else()
    {
        var model = Model("north-carolina");
        var rows = model.Paper(PaperKind.Summary).Chapters.Single(chapter => chapter.Id == "state-north-carolina")
            .Blocks.OfType<Block.Table>().SelectMany(table => table.Rows).ToList();
        Assert.Equal(model.Matters.Where(matter => matter.Weight >= Weight.PutRight).Select(matter => matter.Number).Order(),
            rows.Select(row => int.Parse(row[0].ToString().Split('.')[0], System.Globalization.CultureInfo.InvariantCulture)).Order());
        // 11 NCAC 08 .1103(b)(3)(D): described, how it is defective, what it implies, and a course of action.
        Assert.All(rows, row => Assert.All(row, cell => Assert.NotEmpty(cell.ToString())));
    }

    [Fact]
    public void A_state_without_a_notice_has_no_summary_page() => Assert.DoesNotContain(Model("washington").Paper(PaperKind.Summary)
        .Chapters, chapter => chapter.Id.StartsWith("state-", StringComparison.Ordinal));

    [Theory]
    [InlineData("internachi", "material defect")]
    [InlineData("florida", "significantly deficient")]
    [InlineData("maryland", "significantly deficient")]
    public void Words_of_a_standard_are_mapped_to_weights(string standard, string term)
    {
        var about = Model(standard).Paper(PaperKind.Report).Chapters.Single(chapter => chapter.Id == "about");
        var lines = about.Blocks.OfType<Block.Items>().SelectMany(items => items.Lines).Select(line => line.ToString());
        Assert.Contains(lines, line => line.Contains($"“{term}”", StringComparison.Ordinal) && line.Contains("make safe",
            StringComparison.Ordinal));
    }

    private static ReportModel Model(string standard, Tongue? tongue = null)
    {
        var demo = DemoInspection.Write();
        var folded = Folding.Fold(demo.Entries);
        var inspection = folded with { Opening = folded.Opening! with { Body = folded.Opening.Body with { Standards = [standard] } } };
        var book = tongue is null ? RuleBook.BuiltIn : RuleBook.BuiltIn.In(tongue);
        var work = Work.Of(inspection, [.. demo.Entries], book, 2026, new JudgingMemory());
        return work.Report(work.Copy);
    }
}
