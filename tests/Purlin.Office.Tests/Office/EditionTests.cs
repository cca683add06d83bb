using System.Net;
using System.Text;
using System.Text.Json.Nodes;
using Microsoft.Extensions.Time.Testing;
using Purlin.Journal;
using Purlin.Journal.Archive;
using Purlin.Journal.Fold;
using Purlin.Journal.Merge;
using Purlin.Book;
using UglyToad.PdfPig;

namespace Purlin.Office.Tests.Office;

/// <summary>Working copies and sealed editions: docs/SYNC.md, section 6.</summary>
public sealed class EditionTests
{
    private const string Visit = "visit1";
    private static readonly DateTimeOffset Noon = new(2026, 11, 25, 12, 0, 0, TimeSpan.Zero);
    private static readonly byte[] Photo = Pictures.Jpeg(800, 600);

    private readonly FakeTimeProvider clock = new(Noon);
    private readonly Pen pen = new(Visit, "aaa");

    private Task<RunningOffice> Start() => RunningOffice.Start(with: options => options with { Clock = clock });

    private Entry Write(EntryBody body) => pen.Write(body, clock.GetUtcNow());

    /// <summary>A visit under no standard, so that no duty is open: an observation with its photograph, which is spoken for.</summary>
    private List<Entry> SmallVisit()
    {
        var opened = Write(new EntryBody.InspectionOpened { Property = new Property { Address = "9 Invented Row", YearBuilt = 1962 }, Date = new DateOnly(2026, 11, 25) });
        var place = Write(new EntryBody.PlaceAdded { Kind = PlaceKind.Attic, Name = "Attic" });
        var seen = Write(new EntryBody.ObservationMade { Place = place.Name, Words = "a bird's nest in the corner", Outcome = Outcome.Clear });
        var photo = Write(new EntryBody.PhotoTaken { Sha = Sha.Of(Photo), Size = Photo.Length, MediaType = "image/jpeg", Place = place.Name });
        return [opened, place, seen, photo, Write(new EntryBody.PhotoPlaced { Photo = photo.Name, Use = PhotoUse.Context })];
    }

    private static Task<HttpResponseMessage> Seal(RunningOffice office) => office.Client.PostAsync($"/office/inspections/{Visit}/editions", null);

    [Fact]
    public async Task A_working_copy_says_so_on_page_and_paper()
    {
        await using var office = await Start();
        await office.Push(Visit, SmallVisit());
        await office.Patch(Sha.Of(Photo), Photo, 0, Photo.Length);
        var page = await office.Client.GetAsync($"/office/inspections/{Visit}/report");
        Assert.Contains("9 Invented Row", await page.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.Contains("Working copy", await page.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.Contains("default-src 'none'", page.Headers.GetValues("Content-Security-Policy").Single(), StringComparison.Ordinal);
        using var pdf = PdfDocument.Open(await office.Client.GetByteArrayAsync($"/office/inspections/{Visit}/report.pdf"));
        Assert.Contains("Working copy", string.Concat(pdf.GetPage(1).GetWords().Select(word => word.Text + " ")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Nothing_is_sealed_while_a_photograph_is_missing_or_unspoken_for()
    {
        await using var office = await Start();
        var lines = SmallVisit();
        await office.Push(Visit, lines[..^1]);
        var answer = await Seal(office);
        Assert.Equal(HttpStatusCode.Conflict, answer.StatusCode);
        var why = JsonNode.Parse(await answer.Content.ReadAsStringAsync())!;
        Assert.Equal([Sha.Of(Photo)], why["missingPhotos"]!.AsArray().Select(sha => (string)sha!));
        Assert.Contains(why["obstacles"]!.AsArray(), obstacle => (string)obstacle!["kind"]! == "PhotoUnspoken");
        Assert.Empty((await office.Get($"/office/inspections/{Visit}/editions")).AsArray());
    }

    [Fact]
    public async Task Nothing_is_sealed_over_an_open_divergence_or_an_unknown_entry()
    {
        await using var office = await Start();
        await office.Push(Visit, SmallVisit());
        await office.Patch(Sha.Of(Photo), Photo, 0, Photo.Length);
        await office.Push(Visit, new Pen(Visit, "bbb").Write(new EntryBody.PlaceNamed { Place = EntryName.Parse("aaa.2"), Name = "Loft" }, Noon));
        await office.Push(Visit, Write(new EntryBody.PlaceNamed { Place = EntryName.Parse("aaa.2"), Name = "Roof space" }));
        await office.PushRaw(Visit, RunningOffice.Text("""{"v":1,"insp":"visit1","dev":"zzz","seq":1,"hlc":"01994f3a2c10-0000","type":"smell.noticed","body":{}}""" + "\n"));
        var kinds = (await office.Get($"/office/inspections/{Visit}/obstacles"))["obstacles"]!.AsArray().Select(obstacle => (string)obstacle!["kind"]!).ToList();
        Assert.Equal(["UnknownEntries", "Unsettled"], kinds.Order());
        Assert.Equal(HttpStatusCode.Conflict, (await Seal(office)).StatusCode);
    }

    [Fact]
    public async Task An_edition_is_sealed_chained_and_kept_and_a_change_gives_the_next()
    {
        await using var office = await Start();
        var lines = SmallVisit();
        await office.Push(Visit, lines);
        await office.Patch(Sha.Of(Photo), Photo, 0, Photo.Length);
        var first = await RunningOffice.Read(await Seal(office));
        Assert.Equal((1, Merkle.Root(lines.Select(entry => entry.Hash))), ((int)first["number"]!, (string)first["root"]!));
        var page = await office.Client.GetByteArrayAsync($"/office/inspections/{Visit}/editions/1/page");
        Assert.Equal((string)first["page"]!, Sha.Of(page));
        Assert.Contains(((string)first["root"]!)[..8], Encoding.UTF8.GetString(page), StringComparison.Ordinal);

        var unchanged = await Seal(office);
        Assert.Equal(HttpStatusCode.Conflict, unchanged.StatusCode);
        Assert.Contains("since edition 1", await RunningOffice.Words(unchanged), StringComparison.Ordinal);

        clock.Advance(TimeSpan.FromHours(1));
        var note = Write(new EntryBody.NoteWritten { About = lines[2].Name, Text = "the nest is old and empty" });
        await office.Push(Visit, note);
        var silent = await Seal(office);
        Assert.Equal(HttpStatusCode.Conflict, silent.StatusCode);
        await office.Push(Visit, Write(new EntryBody.NoteFated { Note = note.Name, About = lines[2].Name, How = Fate.Under, Under = lines[2].Name }));
        var second = await RunningOffice.Read(await Seal(office));
        Assert.Equal(2, (int)second["number"]!);
        Assert.Equal(page, await office.Client.GetByteArrayAsync($"/office/inspections/{Visit}/editions/1/page"));

        var pulled = LineBlock.Read(await office.Client.GetByteArrayAsync($"/sync/{Visit}/entries"), Visit).Entries;
        var editions = Folding.Fold(pulled).Editions;
        Assert.Equal([(string)first["seal"]!, (string)second["seal"]!], editions.Select(edition => edition.Seal));
        Assert.Equal(((string?)null, (string?)first["seal"]), (editions[0].Body.PreviousEdition, editions[1].Body.PreviousEdition));
        Assert.Equal([Sha.Of(Photo)], editions[0].Body.Photos);
    }

    [Fact]
    public async Task The_archive_carries_what_was_issued_and_it_agrees_with_the_seal()
    {
        await using var office = await Start();
        await office.Push(Visit, SmallVisit());
        await office.Patch(Sha.Of(Photo), Photo, 0, Photo.Length);
        await RunningOffice.Read(await Seal(office));
        using var archive = ArchiveReader.Open(new MemoryStream(await office.Client.GetByteArrayAsync($"/office/inspections/{Visit}/archive"))).OrThrow();
        var edition = Assert.Single(Folding.Fold(archive.Entries).Editions).Body;
        Assert.Equal(edition.Page, Sha.Of(archive.File(ArchiveNames.Page(1))));
        Assert.Equal(edition.Pdf, Sha.Of(archive.File(ArchiveNames.Pdf(1))));
        Assert.Equal(edition.EntriesRoot, Merkle.Root(EntrySet.Of(Visit, archive.Entries).Under(edition.Heads).Select(entry => entry.Hash)));
        using var pdf = PdfDocument.Open(archive.File(ArchiveNames.Pdf(1))!);
        Assert.Contains("Edition 1", string.Concat(pdf.GetPages().SelectMany(one => one.GetWords()).Select(word => word.Text + " ")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_visit_of_December_sealed_in_January_says_what_the_command_line_says_of_it()
    {
        FakeTimeProvider january = new(new(2026, 1, 2, 9, 0, 0, TimeSpan.Zero));
        await using var office = await RunningOffice.Start(with: options => options with { Clock = january });
        var visit = new DateTimeOffset(2025, 12, 30, 10, 0, 0, TimeSpan.Zero);
        List<Entry> lines = [pen.Write(new EntryBody.InspectionOpened { Property = new Property { Address = "3 Invented Close", YearBuilt = 1998 }, Date = new DateOnly(2025, 12, 30) }, visit)];
        lines.Add(pen.Write(new EntryBody.PlaceAdded { Kind = PlaceKind.Room, Name = "Hall" }, visit));
        lines.Add(pen.Write(new EntryBody.ComponentAdded { Kind = "smoke alarm", Place = lines[1].Name }, visit));
        lines.Add(pen.Write(new EntryBody.FactStated { Component = lines[2].Name, Fact = "year", Value = FactValue.Of(2015), Basis = Basis.Nameplate }, visit));
        lines.Add(pen.Write(new EntryBody.ObservationMade { Place = lines[1].Name, Words = "a stain", Outcome = Outcome.Clear }, visit));
        await office.Push(Visit, lines);
        Assert.Equal(HttpStatusCode.Created, (await Seal(office)).StatusCode);
        var page = await office.Client.GetStringAsync($"/office/inspections/{Visit}/editions/1/page");
        var file = Path.Combine(office.Folder, "visit.jsonl");
        await File.WriteAllBytesAsync(file, RunningOffice.Bytes(lines));
        // NFPA 72, 2022, section 14.4.7: ten years; in the year of the visit the alarm is not beyond them, in the year of the seal it is.
        var judged = (await Cli.Typed.RunAsync(["judge", file], clock: new FakeTimeProvider(new(2027, 3, 1, 9, 0, 0, TimeSpan.Zero)))).Out;
        Assert.DoesNotContain("Smoke alarm more than", page, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("Smoke alarm more than", judged, StringComparison.OrdinalIgnoreCase);
        await File.WriteAllTextAsync(file, Encoding.UTF8.GetString(RunningOffice.Bytes(lines[1..])));
        Assert.Contains("Smoke alarm more than", (await Cli.Typed.RunAsync(["judge", file], clock: new FakeTimeProvider(new(2027, 3, 1, 9, 0, 0, TimeSpan.Zero)))).Out, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task Markup_in_what_was_typed_stays_text()
    {
        await using var office = await Start();
        var place = Write(new EntryBody.PlaceAdded { Kind = PlaceKind.Attic, Name = "<img src=x onerror=alert(1)>" });
        await office.Push(Visit, [place, Write(new EntryBody.ObservationMade { Place = place.Name, Words = "</script><script>alert(2)</script>", Outcome = Outcome.Seen })]);
        var page = await office.Client.GetStringAsync($"/office/inspections/{Visit}/report");
        Assert.DoesNotContain("<img src=x", page, StringComparison.Ordinal);
        Assert.DoesNotContain("<script>alert", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_edition_says_what_the_journal_says_in_the_inspectors_own_words()
    {
        Condition nests = new()
        {
            Id = "own.nests",
            Name = "Nests under the eaves",
            Component = "attic framing",
            System = "attic",
            Places = [PlaceKind.Attic],
            Means = "Birds come in by the vent.",
            Do = "Have a screen put over the vent once the brood has flown.",
            Weight = new WeightRule { Consequence = Consequence.Upkeep },
            Trade = "handy person",
        };
        await using var office = await Start();
        var lines = SmallVisit();
        lines.Add(Write(OwnWording.Write(Folding.Fold([]), nests)!));
        lines.Add(Write(OwnWording.Say(Folding.Fold([]), "words/where.house", "The house as a whole", "All of the house")!));
        lines.Add(Write(new EntryBody.ObservationMade { Place = lines[1].Name, Condition = nests.Id, Outcome = Outcome.Seen }));
        await office.Push(Visit, lines);
        await office.Patch(Sha.Of(Photo), Photo, 0, Photo.Length);
        Assert.Equal(HttpStatusCode.Created, (await Seal(office)).StatusCode);
        var page = await office.Client.GetStringAsync($"/office/inspections/{Visit}/editions/1/page");
        Assert.Contains("Nests under the eaves", page, StringComparison.Ordinal);
        Assert.Contains("Have a screen put over the vent once the brood has flown.", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_inspectors_own_book_is_kept_like_an_inspection_and_listed_as_none()
    {
        await using var office = await Start();
        var own = new Pen(OwnWording.Journal, "aaa");
        var said = own.Write(OwnWording.Say(Folding.Fold([]), "cautions/scald", "was", "Hot water burns.")!, Noon);
        await office.Push(OwnWording.Journal, [said]);
        Assert.Equal("[]", await office.Client.GetStringAsync("/office/inspections"));
        Assert.Contains("Hot water burns.", await office.Client.GetStringAsync($"/sync/{OwnWording.Journal}/entries"), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.NotFound, (await office.Client.PostAsync($"/office/inspections/{OwnWording.Journal}/editions", null)).StatusCode);
    }
}
