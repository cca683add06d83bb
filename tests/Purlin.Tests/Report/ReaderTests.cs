using System.Text.RegularExpressions;
using Purlin.Report;
using Purlin.Report.Pdf;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Outline;

namespace Purlin.Tests.Report;

/// <summary>
/// What three readers ask, and the page on which the answer stands: a buyer has the first two pages, a contractor one sheet, a lawyer the
/// whole.
/// An answer that moves or goes fails here. The questions are ours; that these readers have them is common practice.
/// </summary>
public sealed partial class ReaderTests
{
    private static readonly Lazy<PdfDocument> report = new(() => PdfDocument.Open(PdfTests.demo.Value.Pdf));
    private static readonly Lazy<PdfDocument> sheets = new(() =>
    {
        var demo = PdfTests.demo.Value.Demo;
        var work = Work.Of(demo.Entries, Purlin.Book.RuleBook.BuiltIn, 2026);
        return PdfDocument.Open(PdfWriter.Bytes(work.Paper(PaperKind.Trades, work.Copy), sha => demo.Pictures.GetValueOrDefault(sha)));
    });

    [Theory]
    [InlineData("Can I live here safely?", 1, "Not before 1 to 5 are made safe.")]
    [InlineData("How many things can hurt someone?", 1, "Five matters by which someone can be hurt.")]
    [InlineData("What must I settle before I am bound?", 1, "Twelve things: 6 to 15, 32, 49.")]
    [InlineData("Is the sewer among them?", 1, "Drain of old cast iron")]
    [InlineData("What can wait, and until when?", 1, "each by its date.")]
    [InlineData("What is the worst outside?", 1, "The deck is not held to the house as it should be")]
    [InlineData("Whom do I call about the roof?", 1, "roofing")]
    [InlineData("Whose house is this, how old and how large?", 1, "Built 1968, two stories, 1,860 ft²")]
    [InlineData("Who looked, and on which day?", 1, "Inspected by A. Sample")]
    [InlineData("Is this the issued report, and which edition?", 1, "edition 2")]
    [InlineData("What could nobody look at?", 2, "The upper slopes were not walked.")]
    [InlineData("Why not, and what do I do about it?", 2,
        "Have the roofing contractor who mends the flashing look at the upper slopes too.")]
    public void A_buyer_finds_it_within_two_pages(string question, int page, string answer) => Stands(report.Value, page, answer, question);

    [Theory]
    [InlineData("Which house is it?", "14 Alder Lane, Fernhollow")]
    [InlineData("How much work is it?", "3 pieces of work, 2 of them before the buyer is bound")]
    [InlineData("What am I asked to do?", "Asked: Have a roofing contractor repair what is open now")]
    [InlineData("Where is it?", "Roof (south slope; rear slope, near the ridge).")]
    [InlineData("What was seen there?", "Granules thin on the south slope; corners curl.")]
    [InlineData("By when is it wanted?", "Before you are bound")]
    [InlineData("Where do I write my price?", "Price")]
    [InlineData("Where do I write that it is done?", "Done on")]
    public void A_contractor_finds_it_on_the_sheet(string question, string answer) => Stands(sheets.Value, PageOf(sheets.Value,
        "Roofing contractor"), answer, question);

    [Theory]
    [InlineData("What does the report not promise?", "What this report is, and is not", 0,
        "It is not a promise about the future, about hidden parts")]
    [InlineData("By which standard was it made?", "What this report is, and is not", 0, "It follows: Washington standards of practice")]
    [InlineData("For whom was it made, and who may rely on it?", "What this report is, and is not", 1,
        "It was made for the person it is prepared for.")]
    [InlineData("On which record does it rest?", "What this report is, and is not", 1, "inspection demoalder1")]
    [InlineData("Which facts were only told?", "The house at a glance", 0, "(told, not checked)")]
    [InlineData("What was written down on site, and when?", "Annex. Evidence, matter by matter", 0, "[demophone1.")]
    [InlineData("What was not looked at, and why?", "What could not be looked at or tested", 0,
        "No walkway, and insulation hides the joists.")]
    [InlineData("What does a number rest on?", "Workings", 0, "By S")]
    public void A_lawyer_finds_it_in_its_chapter(string question, string chapter, int after, string answer) => Stands(report.Value,
        PageOf(report.Value, chapter) + after, answer, question);

    private static void Stands(PdfDocument pdf, int page, string answer, string question)
    {
        var wanted = Space().Replace(answer, "");
        var where = Enumerable.Range(1, pdf.NumberOfPages).Where(number => Space().Replace(pdf.GetPage(number).Text, "").Contains(wanted,
            StringComparison.Ordinal)).ToArray();
        var stands = where.Length == 0 ? "none" : string.Join(", ", where.Take(5));
        Assert.True(where.Contains(page), $"{question} The answer, “{answer}”, should stand on page {page} and stands on {stands}.");
    }

    private static int PageOf(PdfDocument pdf, string chapter)
    {
        Assert.True(pdf.TryGetBookmarks(out var bookmarks));
        return bookmarks.GetNodes().OfType<DocumentBookmarkNode>().First(node => node.Title == chapter).PageNumber;
    }

    [GeneratedRegex(@"\s+")]
    private static partial Regex Space();
}
