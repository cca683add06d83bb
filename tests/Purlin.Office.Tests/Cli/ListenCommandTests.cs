using System.Globalization;
using System.Text;
using System.Text.Json;

namespace Purlin.Office.Tests.Cli;

/// <summary>
/// <c>purlin listen</c>: files in, proposals out. Exif tags: CIPA DC-008-2019, 0x9003 DateTimeOriginal and 0x9011 OffsetTimeOriginal.
/// </summary>
public sealed class ListenCommandTests
{
    [Fact]
    public async Task A_narration_becomes_proposals_in_words_and_in_json()
    {
        var file = Written("WEBVTT\n\n00:10.000 --> 00:12.000\nkitchen gutter is packed with leaves\n");
        var (status, words, error) = await Typed.RunAsync(["listen", file]);
        Assert.Equal((0, ""), (status, error));
        Assert.Contains("gutter.full", words, StringComparison.Ordinal);
        Assert.Contains("packed with leaves", words, StringComparison.Ordinal);
        using var json = JsonDocument.Parse((await Typed.RunAsync(["listen", file, "--json"])).Out);
        Assert.Equal("gutter", json.RootElement.GetProperty("proposals")[0].GetProperty("component").GetString());
    }

    [Fact]
    public async Task The_place_one_begins_in_carries_on()
    {
        using var json = JsonDocument.Parse((await Typed.RunAsync(["listen", Written("the filter is filthy"), "--place", "attic",
            "--json"])).Out);
        Assert.Equal("attic", json.RootElement.GetProperty("proposals")[0].GetProperty("place").GetString());
    }

    [Fact]
    public async Task A_photograph_is_put_by_its_tag()
    {
        var folder = Directory.CreateTempSubdirectory("purlin-listen-").FullName;
        await File.WriteAllBytesAsync(Path.Combine(folder, "a.jpg"), Tagged("2026:04:02 09:15:13"));
        var file = Written("WEBVTT\n\n00:10.000 --> 00:12.000\ngutter is packed with leaves\n");
        using var json = JsonDocument.Parse((await Typed.RunAsync(["listen", file, "--photos", folder, "--began",
            "2026-04-02T09:15:00+00:00", "--json"])).Out);
        Assert.Equal(64, json.RootElement.GetProperty("proposals")[0].GetProperty("photos")[0].GetString()!.Length);
    }

    [Theory]
    [InlineData("--place", "loft", "crawl space")]
    [InlineData("--photos", "/no/such/folder", "a folder with the photographs")]
    public async Task What_is_refused_says_what_may_be(string option, string value, string allowed)
    {
        var (status, _, error) = await Typed.RunAsync(["listen", Written("gutter is packed with leaves"), option, value]);
        Assert.Equal(2, status);
        Assert.Contains(allowed, error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Times_that_cannot_be_read_are_told()
    {
        var (status, output, error) = await Typed.RunAsync(["listen",
            Written("WEBVTT\n\n00:99:00.000 --> 1\ngutter is packed with leaves\n")]);
        Assert.Equal(0, status);
        Assert.Contains("gutter.full", output, StringComparison.Ordinal);
        Assert.Contains("1 times cannot be read", error, StringComparison.Ordinal);
    }

    private static string Written(string text)
    {
        var file = Path.Combine(Directory.CreateTempSubdirectory("purlin-listen-").FullName, "said.vtt");
        File.WriteAllText(file, text);
        return file;
    }

    /// <summary>The least file with an Exif block: one directory that points to one with the time in it.</summary>
    private static byte[] Tagged(string taken) =>
    [
        0xFF, 0xD8, 0xFF, 0xE1, 0x00, 0x50, .. "Exif\0\0"u8, .. "MM\0\x2a"u8, 0, 0, 0, 8,
        0, 1, 0x87, 0x69, 0, 4, 0, 0, 0, 1, 0, 0, 0, 26, 0, 0, 0, 0,
        0, 1, 0x90, 0x03, 0, 2, 0, 0, 0, 20, 0, 0, 0, 44, 0, 0, 0, 0,
        .. Encoding.ASCII.GetBytes(string.Create(CultureInfo.InvariantCulture, $"{taken}\0")), 0xFF, 0xD9,
    ];
}
