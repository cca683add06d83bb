using Purlin.Journal;
using Purlin.Judgement;
using Purlin.Book;
using Purlin.Report;
using Purlin.Report.Edition;
using Purlin.Report.Pdf;
using Purlin.Tests.Judgement;
using UglyToad.PdfPig;

namespace Purlin.Tests.Report;

/// <summary>What rules want the report itself to carry, held against the report as it is made.</summary>
public sealed class AroundVisitWritingTests
{
    private readonly SmallHouse house = new() { Standards = ["texas"], Client = "R. Example", Inspector = "A. Sample, licence 0000", Weather = "dry" };

    private Paper Model => Paper(SampleReport.Sealed);

    private Paper Paper(EditionMark mark) => Work.Of(house.Build(), [], RuleBook.BuiltIn, 2026, new JudgingMemory()).Paper(PaperKind.Report, mark);

    private string Words(string chapter) => Words(Model, chapter);

    private static string Words(Paper paper, string chapter) => string.Join('\n', paper.Chapters.Single(one => one.Id == chapter).Blocks.SelectMany(Lines));

    private static IEnumerable<string> Lines(Block block) => block switch
    {
        Block.Paragraph paragraph => [paragraph.Text.ToString()],
        Block.Heading heading => [heading.Text],
        Block.Items items => items.Lines.Select(line => line.ToString()),
        Block.Table table => [table.Caption, .. table.Rows.SelectMany(row => row).Select(cell => cell.ToString())],
        Block.Folded folded => folded.Whole.SelectMany(Lines),
        _ => [],
    };

    // 22 TAC 535.222(b)(2): the property is identified on every page of the report. As long as an address may get.
    [Fact]
    public void Every_page_names_the_property()
    {
        house.Property = house.Property with { Address = "12345 North Invented Meadow Crossing Boulevard, Building 7, Apartment 1204, Nowhere Falls" };
        using var pdf = PdfDocument.Open(PdfWriter.Bytes(Model, _ => null));
        Assert.True(pdf.NumberOfPages > 1);
        Assert.All(pdf.GetPages(), page => Assert.Contains("12345NorthInventedMeadowCrossingBoulevard,Building7,Apartment1204,NowhereFalls", string.Concat(page.Letters.Select(letter => letter.Value).Where(letter => !string.IsNullOrWhiteSpace(letter))), StringComparison.Ordinal));
    }

    // 22 TAC 535.222(b)(1), (3): name and licence number of the inspector, name of the client.
    [Fact]
    public void The_first_page_says_who_inspected_under_which_licence_and_for_whom()
    {
        Assert.Contains(Model.Cover.Cells, cell => cell is { Label: "Prepared for", Text: "R. Example" });
        Assert.Contains(Model.Cover.Cells, cell => cell is { Label: "Inspected by", Text: "A. Sample, licence 0000" });
    }

    // 18VAC15-40-130 B 1, 2 and 4: what the opening left empty and was stated later stands there too, with hours and weather.
    [Fact]
    public void What_was_stated_later_stands_on_the_first_page()
    {
        (house.Client, house.Inspector, house.Weather) = (null, "A. Sample", null);
        foreach (var (fact, value) in new[] { ("client", "S. Other"), ("licence number", "4711"), ("weather", "rain"), ("visit began", "09:05"), ("visit ended", "12:40") })
            house.Fact(SmallHouse.House, fact, FactValue.Of(value), basis: Basis.Seen);
        string Cell(string label) => Model.Cover.Cells.Single(cell => cell.Label == label).Text;
        Assert.Equal(("S. Other", "A. Sample, license 4711", "Rain", "May 4, 2026, 09:05 to 12:40"), (Cell("Prepared for"), Cell("Inspected by"), Cell("Weather"), Cell("Day of the visit")));
        Assert.DoesNotContain(Model.Chapters.Where(chapter => chapter.Id == "systems").SelectMany(chapter => chapter.Blocks).SelectMany(Lines), line => line.Contains("4711", StringComparison.Ordinal));
    }

    // 22 TAC 535.227(f)(2)(B), ASHI 2.2.B.4: why an item was not inspected. The reason is never cut, in neither chapter.
    [Fact]
    public void What_was_closed_by_hand_as_not_inspected_is_named_with_its_whole_reason()
    {
        var reason = "the seller's dogs were loose in the yard the whole morning, barking, and nobody with a key to the gate, the shed, or the kennel came before we had to leave for the day";
        house.Close("core:S-03", DutyClose.NotInspected, reason: reason);
        Assert.Contains(reason[1..], Words("limitations"), StringComparison.Ordinal);
        Assert.Contains(reason, Words("coverage"), StringComparison.Ordinal);
    }

    [Fact]
    public void Days_open_matters_and_conduct_each_have_their_table()
    {
        house.Standards = ["washington", "north-carolina"];
        house.Close("core:V-05", DutyClose.NotInspected, reason: "the form was lost");
        var words = Words("visit");
        Assert.Contains("May 7, 2026", words, StringComparison.Ordinal);
        Assert.Contains("The report is due by May 7, 2026. North Carolina: 3 business days from the visit.", words, StringComparison.Ordinal);
        Assert.Contains("Open. Say on which day the client signed the agreement.", words, StringComparison.Ordinal);
        Assert.Contains("Not done. The form was lost.", words, StringComparison.Ordinal);
        // Conduct is between inspector and state: it stands in the working copy, and the client is spared it.
        Assert.DoesNotContain("Findings are not softened", words, StringComparison.Ordinal);
        Assert.Contains("Findings are not softened", Words(Paper(SampleReport.Working), "visit"), StringComparison.Ordinal);
        Assert.Contains("Taken off to look inside.", words, StringComparison.Ordinal);
        Assert.Contains("North Carolina GS143-151.58(a)", words, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_standard_the_chapter_is_not_there()
    {
        house.Standards = [];
        Assert.DoesNotContain(Model.Chapters, chapter => chapter.Id == "visit");
    }
}
