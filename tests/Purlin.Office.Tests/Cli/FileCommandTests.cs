using System.IO.Compression;
using System.Text.Json.Nodes;

namespace Purlin.Office.Tests.Cli;

/// <summary>The commands that read and write files, typed as at a shell.</summary>
public sealed class FileCommandTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("purlin-cli-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public async Task The_demo_is_written_judged_and_found_whole()
    {
        var file = await DemoAsync();
        var (status, output, _) = await Typed.RunAsync(["check", file]);
        Assert.Equal(0, status);
        Assert.EndsWith("whole in itself\n", output, StringComparison.Ordinal);

        var (judged, json, _) = await Typed.RunAsync(["judge", file, "--json"]);
        Assert.Equal(0, judged);
        var members = JsonNode.Parse(json)!.AsObject();
        foreach (var member in (string[])["findings", "loose_ends", "coverage", "limitations", "workings"]) Assert.NotEmpty(members[member]!.AsArray());
        var words = (await Typed.RunAsync(["judge", file])).Out;
        Assert.Contains("make safe", words, StringComparison.Ordinal);
        Assert.DoesNotContain('\u001b', words);
    }

    [Fact]
    public async Task A_second_visit_names_the_first_and_is_compared_with_it()
    {
        var file = await DemoAsync();
        var again = Path.Combine(folder, "again.purlin");
        Assert.Equal(0, (await Typed.RunAsync(["again", file, "--out", again, "--day", "2026-12-01"])).Status);
        Assert.Equal(0, (await Typed.RunAsync(["check", again])).Status);
        Assert.Contains("is there already", (await Typed.RunAsync(["again", file, "--out", again])).Error, StringComparison.Ordinal);
        Assert.Contains("--earlier", (await Typed.RunAsync(["report", again, "--out", folder, "--paper", "second"])).Error, StringComparison.Ordinal);
        Assert.Equal(0, (await Typed.RunAsync(["report", again, "--out", folder, "--paper", "second", "--earlier", file])).Status);
        Assert.Contains("This visit comes back to the visit of October 14, 2026", await File.ReadAllTextAsync(Path.Combine(folder, "second.html")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_changed_byte_is_found_with_status_one()
    {
        var file = await DemoAsync();
        using (var zip = ZipFile.Open(file, ZipArchiveMode.Update))
        {
            var photo = zip.Entries.First(entry => entry.FullName.StartsWith("photos/", StringComparison.Ordinal));
            await using var bytes = photo.Open();
            bytes.Seek(200, SeekOrigin.Begin);
            bytes.WriteByte(0x55);
            bytes.WriteByte(0xAA);
        }
        var (status, _, error) = await Typed.RunAsync(["check", file]);
        Assert.Equal(1, status);
        Assert.Contains("photos/", error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_journal_cut_off_in_its_last_line_loses_that_line_and_says_so()
    {
        var lines = Path.Combine(folder, "visit.jsonl");
        using (var zip = ZipFile.OpenRead(await DemoAsync())) zip.GetEntry("journal.jsonl")!.ExtractToFile(lines);
        await using (var file = new FileStream(lines, FileMode.Open)) file.SetLength(file.Length - 40);
        var (status, output, _) = await Typed.RunAsync(["check", lines]);
        Assert.Equal(1, status);
        Assert.Contains("cut off", output, StringComparison.Ordinal);
        Assert.Equal(0, (await Typed.RunAsync(["judge", lines])).Status);
    }

    [Fact]
    public async Task What_one_reading_would_settle_and_what_does_not_go_together_is_printed()
    {
        Purlin.Journal.Pen pen = new("visit00001", "phone00001");
        DateTimeOffset now = new(2026, 5, 4, 9, 0, 0, TimeSpan.FromHours(-5));
        List<Purlin.Journal.Entry> entries = [pen.Write(new Purlin.Journal.EntryBody.InspectionOpened { Property = new() { Address = "1 Invented Lane" }, Date = new DateOnly(2026, 5, 4), Standards = [] }, now)];
        void Read(string set, string kind, double degrees) => entries.Add(pen.Write(new Purlin.Journal.EntryBody.ReadingTaken { Kind = kind, Amount = new(degrees, "°F"), Set = set }, now));
        Read("first run", "return dry bulb", 75);
        Read("first run", "return wet bulb", 63);
        // A wet bulb above its dry bulb cannot be.
        Read("second run", "return dry bulb", 63);
        Read("second run", "return wet bulb", 75);
        Read("second run", "supply dry bulb", 55);
        var lines = Path.Combine(folder, "short.jsonl");
        await File.WriteAllLinesAsync(lines, entries.Select(entry => System.Text.Encoding.UTF8.GetString(entry.Line.Span)));
        var words = (await Typed.RunAsync(["judge", lines])).Out;
        Assert.Contains("one reading away (1)\n  Measure the supply dry bulb: then the temperature split can be judged.\n", words, StringComparison.Ordinal);
        Assert.Contains("to look at again (1)\n  temperature-split: ", words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("check")]
    [InlineData("judge")]
    public async Task A_file_that_is_no_archive_is_bad_input(string command)
    {
        var file = Path.Combine(folder, "note.purlin");
        await File.WriteAllTextAsync(file, "not an archive");
        foreach (var path in (string[])[file, Path.Combine(folder, "absent.purlin")])
        {
            var (status, output, error) = await Typed.RunAsync([command, path]);
            Assert.Equal((2, ""), (status, output));
            Assert.StartsWith("purlin: ", error, StringComparison.Ordinal);
        }
    }

    private async Task<string> DemoAsync()
    {
        var (status, output, _) = await Typed.RunAsync(["demo", folder]);
        Assert.Equal(0, status);
        Assert.Contains("invented", output, StringComparison.Ordinal);
        return Path.Combine(folder, "demo.purlin");
    }
}
