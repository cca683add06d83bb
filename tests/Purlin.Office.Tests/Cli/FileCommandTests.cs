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
        Assert.EndsWith("whole\n", output, StringComparison.Ordinal);

        var (judged, json, _) = await Typed.RunAsync(["judge", file, "--json"]);
        Assert.Equal(0, judged);
        var members = JsonNode.Parse(json)!.AsObject();
        foreach (var member in (string[])["findings", "loose_ends", "coverage", "limitations", "workings"]) Assert.NotEmpty(members[member]!.AsArray());
        var words = (await Typed.RunAsync(["judge", file])).Out;
        Assert.Contains("make safe", words, StringComparison.Ordinal);
        Assert.DoesNotContain('\u001b', words);
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
