using System.Text;
using System.Text.Json;
using Json.Schema;
using Purlin.Journal;
using Purlin.Journal.Archive;
using Purlin.Journal.Merge;
using Purlin.Tests.House;

namespace Purlin.Tests.Journal.Archive;

public sealed class ArchiveTests
{
    private static readonly JsonSchema Manifest = Schema("manifest.schema.json");

    /// <summary>The schema of a line; a document of one id can be read once only.</summary>
    internal static JsonSchema Lines { get; } = Schema("entry.schema.json");

    private static JsonSchema Schema(string file) => JsonSchema.FromText(File.ReadAllText(Path.Combine(Repository.Root, "docs", "schema", file)));

    [Fact]
    public void There_and_back_is_the_same_lines_and_photographs()
    {
        using var archive = Samples.Archive();
        using var opened = ArchiveReader.Open(archive).OrThrow();
        Assert.Equal(Samples.Entries().Select(entry => entry.Hash), opened.Entries.Select(entry => entry.Hash));
        Assert.Equal(Samples.Picture, opened.Photo(Sha.Of(Samples.Picture)));
        Assert.Null(opened.Photo(new string('e', 64)));
        Assert.Equal([new string('e', 64)], opened.Manifest.Missing);
        Assert.Equal(new Dictionary<string, int> { ["k3f9a2x07q"] = 4 }, opened.Manifest.Heads);
        Assert.Equal(Merkle.Root(opened.Entries.Select(entry => entry.Hash)), opened.Manifest.LinesRoot);
    }

    [Fact]
    public void The_same_content_is_the_same_bytes_whatever_order_it_comes_in()
    {
        var entries = Samples.Entries();
        byte[][] pictures = [Samples.Picture, [0xFF, 0xD8, 0xFF, 9], [0xFF, 0xD8, 0xFF, 10]];
        using var one = new MemoryStream();
        using var other = new MemoryStream();
        ArchiveWriter.Write(one, entries, pictures.Select(bytes => ArchivePhoto.Of(bytes, "image/jpeg")));
        ArchiveWriter.Write(other, Enumerable.Reverse(entries).Concat(entries), pictures.Reverse().Select(bytes => ArchivePhoto.Of(bytes, "image/jpeg")));
        Assert.Equal(one.ToArray(), other.ToArray());
    }

    [Fact]
    public void Lines_nobody_here_can_read_are_carried_on()
    {
        var raw = Encoding.UTF8.GetBytes("""{"v":1,"insp":"sample","dev":"k3f9a2x07q","seq":5,"hlc":"01994f3a2c10-0003","type":"observation.made","body":{"outcome":"maybe"}}""");
        var unknown = EntryLine.Read(Encoding.UTF8.GetBytes("""{"v":1,"insp":"sample","dev":"new","seq":1,"hlc":"01994f3a2c10-0003","type":"smell.noticed","body":{"of":"gas"},"sig":"later"}""")).OrThrow();
        using var archive = new MemoryStream();
        ArchiveWriter.Write(archive, [.. Samples.Entries(), unknown], [], [HeldLine.Of(raw, "sample", EntryLine.Read(raw).Refusals)]);
        using var opened = ArchiveReader.Open(archive).OrThrow();
        Assert.Equal(raw, Assert.Single(opened.Held).Raw.ToArray());
        Assert.Equal(5, opened.Manifest.Heads["k3f9a2x07q"]);
        Assert.Contains(opened.Entries, entry => entry.Line.Span.SequenceEqual(unknown.Line.Span));
    }

    [Fact]
    public void Editions_receipts_and_key_travel_along()
    {
        using var archive = new MemoryStream();
        ArchiveExtra[] extras = [new(ArchiveNames.Pdf(2), [1, 2]), new(ArchiveNames.Page(2), [3]), new(ArchiveNames.Receipts, [4]), new(ArchiveNames.Key, [5])];
        ArchiveWriter.Write(archive, Samples.Entries(), [], extras: extras);
        using var opened = ArchiveReader.Open(archive).OrThrow();
        Assert.All(extras, extra => Assert.Equal(extra.Bytes, opened.File(extra.Name)));
    }

    [Fact]
    public void A_photograph_damaged_in_the_store_is_not_archived()
    {
        var damaged = new ArchivePhoto(new string('a', 64), "image/jpeg", () => new MemoryStream([1]));
        Assert.Throws<InvalidDataException>(() => ArchiveWriter.Write(new MemoryStream(), Samples.Entries(), [damaged]));
    }

    [Fact]
    public void Manifest_and_lines_are_as_their_schemas_say()
    {
        foreach (var entry in Samples.Entries()) Valid(Lines, entry.Line);
        using var archive = Samples.Archive();
        using var opened = ArchiveReader.Open(archive).OrThrow();
        Valid(Manifest, opened.File(ArchiveNames.Manifest));
    }

    [Fact]
    public void The_schema_of_lines_refuses_what_is_refused_for_its_envelope()
    {
        using var vectors = JsonDocument.Parse(File.ReadAllText(Path.Combine(Repository.Root, "tests", "vectors", "lines.json")));
        var compared = 0;
        foreach (var one in vectors.RootElement.GetProperty("cases").EnumerateArray())
        {
            var accepted = one.GetProperty("accepted").GetBoolean();
            if (!accepted && one.GetProperty("refuses").GetString() is not ("seq" or "dev" or "insp" or "hlc" or "prev" or "seen" or "type" or "v" or "body" or "outcome" or "hash")) continue;
            using var line = JsonDocument.Parse(one.GetProperty("line").GetString()!);
            Assert.Equal((one.GetProperty("name").GetString(), accepted), (one.GetProperty("name").GetString(), Lines.Evaluate(line.RootElement).IsValid));
            compared++;
        }

        Assert.True(compared > 25);
    }

    private static void Valid(JsonSchema schema, ReadOnlyMemory<byte> json)
    {
        using var document = JsonDocument.Parse(json);
        var result = schema.Evaluate(document.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });
        Assert.True(result.IsValid, string.Join("\n", (result.Details ?? []).Where(detail => detail.Errors is not null).SelectMany(detail => detail.Errors!.Select(error => $"{detail.InstanceLocation}: {error.Value}"))));
    }

    [Fact]
    public void Unpacked_by_any_zip_program_its_files_can_be_read()
    {
        // The high half of a member's external attributes is its Unix mode: APPNOTE.TXT 6.3.10, section 4.4.15.
        using var zip = new System.IO.Compression.ZipArchive(Samples.Archive());
        Assert.All(zip.Entries, entry => Assert.Equal(0x81A4, (entry.ExternalAttributes >> 16) & 0xFFFF));
    }
}
