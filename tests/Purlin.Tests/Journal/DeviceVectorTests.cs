using System.Reflection;
using System.Text;
using System.Text.Json.Nodes;
using Purlin.Journal;
using Purlin.Journal.Archive;
using Purlin.Journal.Fold;
using Purlin.Journal.Merge;
using Purlin.Report.Photos;
using Purlin.Tests.House;

namespace Purlin.Tests.Journal;

/// <summary>What the phone's own modules work out without the rooms, held for both to values that a third program worked out: tests/vectors.</summary>
public sealed class DeviceVectorTests
{
    private static JsonObject Vectors(string file) => JsonNode.Parse(File.ReadAllText(Path.Combine(Repository.Root, "tests", "vectors", file)))!.AsObject();

    private static List<JsonObject> Cases(string file, string list = "cases") => [.. Vectors(file)[list]!.AsArray().Select(one => one!.AsObject())];

    private static Entry[] ReadAll(JsonNode? lines) => [.. lines!.AsArray().Select(line => EntryLine.Read(Encoding.UTF8.GetBytes((string)line!)).OrThrow())];

    [Fact]
    public void Places_stand_and_are_named_alike()
    {
        var cases = Cases("places.json");
        Assert.True(cases.Count >= 50);
        Assert.All(cases, one => Assert.Equal(
            one["places"]!.AsArray().Select(place => ((string)place!["place"]!, (string)place["kind"]!, (string)place["name"]!)),
            Folding.Fold(ReadAll(one["lines"])).Places.Select(place => (place.Id.ToString(), place.Kind, place.Name))));
    }

    [Fact]
    public void Files_are_named_alike()
    {
        Assert.All(Cases("archive.json", "names"), one => Assert.Equal((string?)one["name"], ArchiveNames.OfBlob((string)one["sha"]!, (string)one["mediaType"]!)));
        Assert.All(Cases("archive.json", "types"), one => Assert.Equal((string?)one["mediaType"], ArchiveNames.MediaType((string)one["name"]!)));
    }

    [Fact]
    public void The_same_lines_and_pictures_give_the_same_manifest()
    {
        foreach (var one in Cases("archive.json", "manifests"))
        {
            var blobs = one["blobs"]!.AsArray().Select(blob => ArchivePhoto.Of(Convert.FromBase64String((string)blob!["base64"]!), (string)blob["mediaType"]!));
            var made = ArchiveWriter.Write(Stream.Null, ReadAll(one["lines"]), blobs);
            var expected = one["manifest"]!;
            Assert.Equal(
                [(string)expected["format"]!, (string)expected["inspection"]!, (string)expected["journal"]!, (string)expected["linesRoot"]!, $"{expected["version"]} {expected["entries"]} {expected["held"]}"],
                [made.Format, made.Inspection, made.Journal, made.LinesRoot, $"{made.Version} {made.Entries} {made.Held}"]);
            Assert.Equal(expected["heads"]!.AsObject().ToDictionary(head => head.Key, head => (int)head.Value!), made.Heads);
            Assert.Equal(expected["missing"]!.AsArray().Select(sha => (string)sha!), made.Missing);
            Assert.Equal(
                expected["files"]!.AsArray().Select(file => new ArchivedFile((string)file!["name"]!, (string)file["sha256"]!, (long)file["size"]!, (string)file["mediaType"]!)),
                made.Files);
        }
    }

    /// <summary>Each limit of the vectors is a constant of the rooms, spelled in the phone's way.</summary>
    [Fact]
    public void Limits_are_the_same_figures()
    {
        static string Plain(string name) => name.Replace("_", "", StringComparison.Ordinal).Replace("MILLISECONDS", "MS", StringComparison.Ordinal);
        var here = typeof(Limits).GetFields(BindingFlags.Public | BindingFlags.Static).ToDictionary(field => Plain(field.Name.ToUpperInvariant()), field => Convert.ToDouble(field.GetValue(null), System.Globalization.CultureInfo.InvariantCulture));
        var given = Vectors("limits.json")["limits"]!.AsObject();
        Assert.True(given.Count >= 11);
        Assert.All(given, limit => Assert.Equal((double)limit.Value!, here[Plain(limit.Key)]));
    }

    [Theory]
    [InlineData(1599, 2000, false)]
    [InlineData(1600, 2000, true)]
    [InlineData(15_999, 20_000, false)]
    [InlineData(16_000, 20_000, true)]
    public void A_limit_is_told_at_four_fifths_of_it(int held, int most, bool isTold) => Assert.Equal(isTold, Limits.IsNear(held, most));

    [Fact]
    public void Pictures_have_the_same_size()
    {
        var cases = Cases("pictures.json");
        Assert.True(cases.Count >= 12);
        Assert.All(cases, one =>
        {
            var read = PhotoBytes.Read(Convert.FromBase64String((string)one["base64"]!));
            Assert.Equal(((int?)one["width"], (int?)one["height"]), (read?.Width, read?.Height));
        });
    }

    [Fact]
    public void Lines_and_manifest_of_another_day_do_not_go_together()
    {
        var one = Cases("archive.json", "manifests")[0];
        using MemoryStream journal = new();
        LineBlock.Write(journal, CausalOrder.Of(ReadAll(one["lines"])).Select(entry => entry.Line));
        var manifest = Encoding.UTF8.GetBytes(one["manifest"]!.ToJsonString());
        Assert.Equal(5, ArchivedLines.Read(manifest, journal.ToArray()).OrThrow().Entries.Count);
        Assert.False(ArchivedLines.Read(manifest, journal.ToArray()[..^1]).IsAccepted);
        Assert.False(ArchivedLines.Read(Encoding.UTF8.GetBytes("{}"), journal.ToArray()).IsAccepted);
        var twice = one["manifest"]!.DeepClone();
        twice["files"]!.AsArray().Add(twice["files"]![0]!.DeepClone());
        Assert.Contains(ArchivedLines.Read(Encoding.UTF8.GetBytes(twice.ToJsonString()), journal.ToArray()).Refusals, why => why.ToString().Contains("twice", StringComparison.Ordinal));
    }
}
