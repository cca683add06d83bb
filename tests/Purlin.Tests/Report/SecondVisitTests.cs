using Purlin.Book;
using Purlin.Demo;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Report;
using Purlin.Report.Page;
using Purlin.Report.Pdf;

namespace Purlin.Tests.Report;

/// <summary>A second visit is a record of its own that names the first; what became of each matter follows from what was looked for
/// again.</summary>
public sealed class SecondVisitTests
{
    private static readonly Lazy<(Work First, DemoInspection Demo)> first = new(() =>
    {
        var demo = DemoInspection.Write();
        return (Work.Of(demo.Entries, RuleBook.BuiltIn, 2026), demo);
    });

    [Fact]
    public void The_second_record_has_the_house_and_nothing_that_was_found_there()
    {
        var second = new Visit();
        var now = second.Work().Inspection;
        Assert.Equal(first.Value.First.Inspection.Places.Select(place => (place.Kind, place.Name)), now.Places.Select(place => (place.Kind,
            place.Name)));
        Assert.Equal(first.Value.First.Inspection.Components.Count, now.Components.Count);
        Assert.Empty(now.Observations);
        Assert.Empty(now.Readings);
        Assert.All(now.Components.Where(component => component.Kind != "house"), component => Assert.Empty(component.Facts));
        Assert.Equal(DemoInspection.Id, now.Opening!.Body.Earlier!.Inspection);
        Assert.Equal(new DateOnly(2026, 10, 14), now.Opening.Body.Earlier.Date);
    }

    // common practice: work is called done when it was looked for again where it was and is not there; what was not looked at is never
    // called done.
    [Fact]
    public void What_became_of_a_matter_follows_from_what_was_looked_for_again()
    {
        var second = new Visit();
        second.Looked("deck.ledger-nailed", "Deck", Outcome.Clear);
        second.Looked("deck.flashing-missing", "Deck", Outcome.Seen);
        second.Looked("water-heater.relief-pipe-missing", "Garage", Outcome.Clear);
        second.Looked("toilet.loose", null, Outcome.Seen);
        second.Looked("roof-covering.asphalt-worn", "Roof", Outcome.NotVisible);
        var table = second.Table();
        Assert.Equal("Partly done", table("The deck is not held to the house as it should be"));
        Assert.Equal("Done", table("Relief valve without a discharge pipe"));
        Assert.Equal("Not done", table("Toilet loose at the floor"));
        Assert.Equal("Could not be seen", table("The shingle roof is wearing out"));
        Assert.Equal("Not looked at this time", table("Cracked or missing pane"));
    }

    [Theory]
    [InlineData(115, "Done")]
    [InlineData(139, "Not done")]
    public void A_reading_taken_again_settles_what_rested_on_one(double fahrenheit, string became)
    {
        var second = new Visit();
        var kind = first.Value.First.Inspection.Readings.First(reading => reading.Body.Amount.Value == 138).Body;
        var heater = second.Now.Components.First(component => component.Kind == "water heater");
        second.Write(new EntryBody.ReadingTaken
        {
            Kind = kind.Kind,
            Amount = new Amount(fahrenheit, "°F"),
            Place = second.Place(first.Value.First.Inspection.Places.First(place => place.Id == kind.Place).Name),
            Component = kind.Component is null ? null : heater.Id
        });
        Assert.Equal(became, second.Table()("Hot water hot enough to scald"));
    }

    [Fact]
    public async Task New_evidence_stands_beside_old_on_page_and_paper()
    {
        var second = new Visit();
        var seen = second.Looked("deck.ledger-nailed", "Deck", Outcome.Clear);
        var picture = first.Value.Demo.Pictures.First();
        second.Write(new EntryBody.PhotoTaken
        {
            Sha = picture.Key,
            Size = picture.Value.Length,
            MediaType = "image/jpeg",
            Place = second.Place("Deck"),
            For = seen
        });
        var work = second.Work();
        var paper = work.Report(work.Copy).SecondVisit(first.Value.First.Report(first.Value.First.Copy));
        var shown = paper.Chapters.SelectMany(chapter => chapter.Blocks).OfType<Block.Pictures>().First(pictures => pictures.Shown.Any(one =>
            one.Caption.StartsWith("Now:", StringComparison.Ordinal)));
        Assert.StartsWith("Then:", shown.Shown[0].Caption, StringComparison.Ordinal);
        Assert.Equal(picture.Key, shown.Shown[1].Sha);
        var page = await PageWriter.WriteAsync(paper, sha => first.Value.Demo.Pictures.GetValueOrDefault(sha));
        Assert.Contains("of which no edition was sealed", page);
        Assert.Equal(PdfWriter.Bytes(paper, sha => first.Value.Demo.Pictures.GetValueOrDefault(sha)), PdfWriter.Bytes(paper, sha =>
            first.Value.Demo.Pictures.GetValueOrDefault(sha)));
    }

    [Fact]
    public async Task The_walk_sheet_has_each_place_with_its_looks_and_what_is_still_asked()
    {
        var work = new Visit().Work();
        var paper = work.Paper(PaperKind.Walk, work.Copy);
        foreach (var place in (string[])["Deck", "Attic", "Crawl space", "Kitchen"]) Assert.Contains(paper.Chapters, chapter =>
            chapter.Title == place);
        Assert.All(paper.Chapters.Where(chapter => chapter.Id.Length > 5 && char.IsDigit(chapter.Id[^1])), chapter =>
            Assert.InRange(((Block.Table)chapter.Blocks[0]).Rows.Count, 1, 8));
        Assert.Contains(paper.Chapters, chapter => chapter.Lead.Contains("still open", StringComparison.Ordinal));
        Assert.Contains("Could not look", await PageWriter.WriteAsync(paper, _ => null));
        Assert.NotEmpty(PdfWriter.Bytes(paper, _ => null));
    }

    /// <summary>A second visit to the demo house, written entry by entry.</summary>
    private sealed class Visit
    {
        private readonly Pen pen = new("second1", "secondphone1");
        private readonly List<Entry> lines = [];
        private DateTimeOffset at = new(2026, 12, 1, 17, 0, 0, TimeSpan.Zero);

        public Visit()
        {
            var opening = Write(SecondVisit.Opening(first.Value.First.Inspection, new DateOnly(2026, 12, 1)));
            SecondVisit.Furnish(first.Value.First.Inspection, first.Value.Demo.Entries, opening, Write);
        }

        public Inspection Now => Folding.Fold(lines);

        public EntryName Write(EntryBody body)
        {
            lines.Add(pen.Write(body, at = at.AddSeconds(30)));
            return lines[^1].Name;
        }

        public EntryName Place(string name) => Now.Places.First(place => place.Name == name).Id;

        /// <summary>Looks for a condition again; where no place is named, where it was.</summary>
        public EntryName Looked(string condition, string? place, string outcome)
        {
            var before = first.Value.First.Inspection.Observations.First(observation => observation.Body.Condition == condition
                && observation.Body.Outcome == Outcome.Seen).Body.Place;
            return Write(new EntryBody.ObservationMade
            {
                Place = Place(place ?? first.Value.First.Inspection.Places.First(one =>
                one.Id == before).Name),
                Condition = condition,
                Outcome = outcome,
                Reason = outcome == Outcome.NotVisible ? "snow"
                : null
            });
        }

        public Work Work() => Purlin.Report.Work.Of(lines, RuleBook.BuiltIn, 2026);

        /// <summary>What the first table says of a matter.</summary>
        public Func<string, string> Table()
        {
            var work = Work();
            var table = (Block.Table)work.Report(work.Copy).SecondVisit(first.Value.First.Report(first.Value.First.Copy))
                .Chapters[0].Blocks[0];
            return title => table.Rows.First(row => row[0].ToString().EndsWith(title, StringComparison.Ordinal))[1].ToString();
        }
    }
}
