using System.Net;
using System.Net.Http.Json;
using System.Text.Json.Nodes;
using Microsoft.Extensions.Time.Testing;
using Purlin.Journal;
using Purlin.Journal.Archive;
using Purlin.Office.Storage;

namespace Purlin.Office.Tests.Office;

/// <summary>A photograph that the disk lost or spoiled: the office never vouches for it, asks for it again and takes it again.</summary>
public sealed class LostPhotographTests
{
    private const string Visit = "visit1";
    private static readonly DateTimeOffset Noon = new(2026, 11, 25, 12, 0, 0, TimeSpan.Zero);
    private static readonly byte[] Photo = Pictures.Jpeg(800, 600);
    private static readonly string Name = Sha.Of(Photo);

    private readonly FakeTimeProvider clock = new(Noon);

    /// <summary>A visit under no standard with its one photograph, and the photograph spoiled afterwards.</summary>
    private async Task<RunningOffice> Spoiled(string how, bool quietly = false)
    {
        var office = await RunningOffice.Start(with: options => options with { Clock = clock });
        var pen = new Pen(Visit, "aaa");
        Entry Write(EntryBody body) => pen.Write(body, Noon);
        var opened = Write(new EntryBody.InspectionOpened { Property = new Property { Address = "9 Invented Row", YearBuilt = 1962 }, Date = new DateOnly(2026, 11, 25) });
        var place = Write(new EntryBody.PlaceAdded { Kind = PlaceKind.Attic, Name = "Attic" });
        var photo = Write(new EntryBody.PhotoTaken { Sha = Name, Size = Photo.Length, MediaType = "image/jpeg", Place = place.Name });
        await office.Push(Visit, [opened, place, Write(new EntryBody.ObservationMade { Place = place.Name, Words = "a nest", Outcome = Outcome.Clear }), photo, Write(new EntryBody.PhotoPlaced { Photo = photo.Name, Use = PhotoUse.Context })]);
        await office.Patch(Name, Photo, 0, Photo.Length);
        var file = office.FileOf(Name);
        var changed = File.GetLastWriteTimeUtc(file);
        switch (how)
        {
            case "deleted": File.Delete(file); break;
            case "emptied": await File.WriteAllBytesAsync(file, []); break;
            default:
                var bytes = Photo.ToArray();
                bytes[^9] ^= 1;
                await File.WriteAllBytesAsync(file, bytes);
                // Rot leaves the file's time alone; a hand does not.
                File.SetLastWriteTimeUtc(file, quietly ? changed : changed.AddSeconds(5));
                break;
        }

        return office;
    }

    private static async Task<string[]> Missing(RunningOffice office) => (await (await office.Client.PostAsJsonAsync("/blobs/missing", (string[])[Name])).Content.ReadFromJsonAsync<string[]>())!;

    private static Task<HttpResponseMessage> Seal(RunningOffice office) => office.Client.PostAsync($"/office/inspections/{Visit}/editions", null);

    public static TheoryData<string> Ways => new("deleted", "emptied", "one bit");

    [Theory]
    [MemberData(nameof(Ways))]
    public async Task It_is_asked_for_again_taken_again_and_whole_again(string how)
    {
        await using var office = await Spoiled(how);
        Assert.Equal([Name], await Missing(office));
        Assert.Equal((0, false), await office.Head(Name));
        var answer = await office.Patch(Name, Photo, 0, Photo.Length);
        Assert.Equal((HttpStatusCode.NoContent, true), (answer.StatusCode, answer.Headers.Contains("Purlin-Whole")));
        Assert.Equal(Photo, await office.Client.GetByteArrayAsync($"/blobs/{Name}"));
        Assert.Empty(await Missing(office));
    }

    [Theory]
    [MemberData(nameof(Ways))]
    public async Task Other_bytes_are_never_given_out_under_its_hash(string how)
    {
        await using var office = await Spoiled(how, quietly: true);
        Assert.Equal(HttpStatusCode.NotFound, (await office.Client.GetAsync($"/blobs/{Name}")).StatusCode);
        Assert.Equal([Name], await Missing(office));
    }

    [Theory]
    [MemberData(nameof(Ways))]
    public async Task No_edition_is_sealed_over_it(string how)
    {
        await using var office = await Spoiled(how, quietly: true);
        var answer = await Seal(office);
        Assert.Equal(HttpStatusCode.Conflict, answer.StatusCode);
        Assert.Equal([Name], JsonNode.Parse(await answer.Content.ReadAsStringAsync())!["missingPhotos"]!.AsArray().Select(sha => (string)sha!));
        await office.Patch(Name, Photo, 0, Photo.Length);
        Assert.Equal(HttpStatusCode.Created, (await Seal(office)).StatusCode);
    }

    [Theory]
    [MemberData(nameof(Ways))]
    public async Task The_archive_names_it_as_missing_and_carries_the_rest(string how)
    {
        await using var office = await Spoiled(how, quietly: true);
        using var opened = ArchiveReader.Open(new MemoryStream(await office.Client.GetByteArrayAsync($"/office/inspections/{Visit}/archive"))).OrThrow();
        Assert.Equal([Name], opened.Manifest.Missing);
        Assert.Equal(5, opened.Entries.Count);
    }

    [Fact]
    public async Task The_list_no_longer_counts_it()
    {
        await using var office = await Spoiled("deleted");
        await Missing(office);
        var listed = (await office.Get("/office/inspections"))[0]!;
        Assert.Equal((1, 0), ((int)listed["photos"]!, (int)listed["photosHere"]!));
    }

    [Fact]
    public async Task Files_are_looked_at_a_day_after_the_last_look_however_often_the_office_is_closed()
    {
        await using var office = await Spoiled("one bit", quietly: true);
        var folder = office.Folder;
        await office.DisposeAsync();
        // Open for an hour a day, as on a laptop.
        clock.Advance(TimeSpan.FromHours(23));
        await using (var evening = await RunningOffice.Start(folder, options => options with { Clock = clock })) Assert.Empty(await Missing(evening));
        clock.Advance(TimeSpan.FromHours(2));
        await using var next = await RunningOffice.Start(folder, options => options with { Clock = clock });
        for (var wait = 0; wait < 200 && (await Missing(next)).Length == 0; wait++) await Task.Delay(50, TestContext.Current.CancellationToken);
        Assert.Equal([Name], await Missing(next));
        Assert.True(File.Exists(Path.Combine(folder, "damaged", Name)));
        JsonNode state;
        for (var wait = 0; ; wait++)
        {
            state = await next.Get("/office/state");
            if ((int)state["damaged"]! == 1 || wait > 100) break;
            await Task.Delay(50, TestContext.Current.CancellationToken);
        }

        Assert.Equal(("2026-11-26T13:00:00Z", "2026-11-25T12:00:00Z"), ((string)state["filesLookedAt"]!, (string)state["filesLastAllGood"]!));
    }

    [Fact]
    public async Task What_uploads_and_kills_left_behind_is_cleared_or_taken()
    {
        await using var office = await RunningOffice.Start(with: options => options with { Clock = clock });
        var other = Pictures.Jpeg(70, 50);
        await office.Patch(Name, Photo.AsMemory(0, 100), 0, Photo.Length);
        await office.Patch(Sha.Of(other), other.AsMemory(0, 100), 0, other.Length);
        var parts = Path.Combine(office.Folder, "blobs", "own", "part");
        File.SetLastWriteTimeUtc(Path.Combine(parts, Name), Noon.AddDays(-8).UtcDateTime);
        File.SetLastWriteTimeUtc(Path.Combine(parts, Sha.Of(other)), Noon.AddDays(-1).UtcDateTime);
        // Killed between rename and row: one file that is what its name says, one that is not.
        var orphan = Pictures.Jpeg(80, 50);
        foreach (var (sha, bytes) in ((string, byte[])[])[(Sha.Of(orphan), orphan), (new string('e', 64), [1, 2, 3])])
        {
            Directory.CreateDirectory(Path.GetDirectoryName(office.FileOf(sha))!);
            await File.WriteAllBytesAsync(office.FileOf(sha), bytes);
            File.SetLastWriteTimeUtc(office.FileOf(sha), Noon.AddHours(-2).UtcDateTime);
        }

        await office.App.Services.GetRequiredService<Scrub>().Once(CancellationToken.None);
        Assert.Equal([Sha.Of(other)], Directory.EnumerateFiles(parts).Select(file => Path.GetFileName(file)));
        Assert.Equal(orphan, await office.Client.GetByteArrayAsync($"/blobs/{Sha.Of(orphan)}"));
        Assert.False(File.Exists(office.FileOf(new string('e', 64))));
    }
}
