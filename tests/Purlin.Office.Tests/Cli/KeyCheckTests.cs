using System.Security.Cryptography;
using System.Text;
using System.Text.Json.Nodes;
using Purlin.Journal;
using Purlin.Journal.Archive;
using Purlin.Journal.Merge;
using Purlin.Office.Storage;
using Purlin.Office.Tests.Office;

namespace Purlin.Office.Tests.Cli;

/// <summary>Who vouches for a record: only a key that the reader had from elsewhere.</summary>
public sealed class KeyCheckTests : IDisposable
{
    private const string Visit = "visit1";
    private readonly string folder = Directory.CreateTempSubdirectory("purlin-key-").FullName;
    private readonly ECDsa forger = ECDsa.Create(ECCurve.NamedCurves.nistP256);

    public void Dispose()
    {
        forger.Dispose();
        Directory.Delete(folder, recursive: true);
    }

    private async Task<(string File, string Print, string Key)> FromOffice()
    {
        await using var office = await RunningOffice.Start();
        await office.Push(Visit, Lines.Notes(Visit, "aaa", 4));
        var (file, key) = (Path.Combine(folder, "true.purlin"), Path.Combine(folder, "key.pem"));
        await File.WriteAllBytesAsync(file, await office.Client.GetByteArrayAsync($"/office/inspections/{Visit}/archive"));
        await File.WriteAllTextAsync(key, await office.Client.GetStringAsync("/office/key"));
        return (file, office.App.Services.GetRequiredService<ReceiptChain>().Fingerprint, key);
    }

    /// <summary>Every line written anew by one who has the archive, with a key and a receipt of his own.</summary>
    private string Forged(Func<JsonObject, JsonObject>? receipt = null)
    {
        var pen = new Pen(Visit, "aaa");
        List<Entry> entries = [.. Enumerable.Range(1, 4).Select(number => pen.Write(new EntryBody.NoteWritten { Part = $"n{number}", Text = "FORGED afterwards" }, DateTimeOffset.UnixEpoch.AddSeconds(number)))];
        JsonObject honest = new() { ["n"] = 1, ["insp"] = Visit, ["heads"] = new JsonObject { ["aaa"] = 4 }, ["root"] = Merkle.Root(entries.Select(entry => entry.Hash)), ["at"] = "2026-10-14T09:00:00.000Z", ["prev"] = "" };
        var signed = Encoding.UTF8.GetBytes((receipt?.Invoke(honest) ?? honest).ToJsonString());
        var signature = Convert.ToBase64String(forger.SignData(signed, HashAlgorithmName.SHA256));
        byte[] raw = [.. signed[..^1], .. Encoding.ASCII.GetBytes($",\"signature\":\"{signature}\"}}\n")];
        var path = Path.Combine(folder, $"{Guid.NewGuid():N}.purlin");
        using var file = File.Create(path);
        ArchiveWriter.Write(file, entries, [], extras: [new ArchiveExtra(ArchiveNames.Receipts, raw), new ArchiveExtra(ArchiveNames.Key, Encoding.ASCII.GetBytes(forger.ExportSubjectPublicKeyInfoPem()))]);
        return path;
    }

    [Fact]
    public async Task With_the_key_from_elsewhere_the_office_vouches()
    {
        var (file, print, key) = await FromOffice();
        var grouped = string.Join(' ', print.Chunk(8).Select(group => new string(group)));
        foreach (var named in (string[])[print, grouped.ToUpperInvariant(), key])
        {
            var (status, output, _) = await Typed.RunAsync(["check", file, "--key", named]);
            Assert.Equal(0, status);
            Assert.Contains("The office of the key that was named held these lines on", output, StringComparison.Ordinal);
            Assert.EndsWith("; whole\n", output, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Without_a_key_it_says_that_nobody_outside_vouches()
    {
        var (file, print, _) = await FromOffice();
        foreach (var path in (string[])[file, Forged()])
        {
            var (status, output, _) = await Typed.RunAsync(["check", path]);
            Assert.Equal(0, status);
            Assert.Contains("Nobody outside this file vouches for it", output, StringComparison.Ordinal);
            Assert.EndsWith("; whole in itself\n", output, StringComparison.Ordinal);
        }

        Assert.Contains(print[..8], (await Typed.RunAsync(["check", file])).Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_forgery_with_a_key_of_its_own_is_found()
    {
        var (_, print, _) = await FromOffice();
        var (status, output, _) = await Typed.RunAsync(["check", Forged(), "--key", print]);
        Assert.Equal(1, status);
        Assert.Contains("and not of the one that was named", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task So_is_one_with_its_receipts_left_out()
    {
        var (_, print, _) = await FromOffice();
        var path = Path.Combine(folder, "bare.purlin");
        await using (var file = File.Create(path)) ArchiveWriter.Write(file, Lines.Notes(Visit, "aaa", 2), []);
        var (status, output, _) = await Typed.RunAsync(["check", path, "--key", print]);
        Assert.Equal(1, status);
        Assert.Contains("no receipt of the office", output, StringComparison.Ordinal);
        Assert.Contains("not that nothing was rewritten", (await Typed.RunAsync(["check", path])).Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("no such file")]
    [InlineData("1234")]
    public async Task A_key_that_is_none_is_bad_input(string key)
    {
        var (status, _, error) = await Typed.RunAsync(["check", Forged(), "--key", key]);
        Assert.Equal(2, status);
        Assert.StartsWith("purlin: --key: ", error, StringComparison.Ordinal);
    }

    public static TheoryData<string, string> Odd => new()
    {
        { "n", "absent" }, { "n", "\"seven\"" }, { "n", "1e30" }, { "heads", "absent" }, { "heads", "[]" }, { "heads", "{\"aaa\":\"4\"}" }, { "heads", "{\"aaa\":null}" },
        { "heads", "{\"aaa\":2000000000}" }, { "root", "7" }, { "at", "\"yesterday\"" }, { "prev", "absent" },
    };

    [Theory]
    [MemberData(nameof(Odd))]
    public async Task An_odd_receipt_is_told_and_never_a_trace(string member, string value)
    {
        var path = Forged(honest =>
        {
            honest.Remove(member);
            if (value != "absent") honest[member] = JsonNode.Parse(value);
            return honest;
        });
        var (status, output, error) = await Typed.RunAsync(["check", path]);
        Assert.Equal((1, ""), (status, error));
        Assert.Contains("amiss: ", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_photograph_that_is_no_picture_is_found()
    {
        var svg = "<svg xmlns=\"http://www.w3.org/2000/svg\"/>"u8.ToArray();
        var line = new Pen(Visit, "aaa").Write(new EntryBody.PhotoTaken { Sha = Sha.Of(svg), Size = svg.Length, MediaType = "image/jpeg" }, DateTimeOffset.UnixEpoch);
        var path = Path.Combine(folder, "svg.purlin");
        await using (var file = File.Create(path)) ArchiveWriter.Write(file, [line], [ArchivePhoto.Of(svg, "image/jpeg")]);
        var (status, output, _) = await Typed.RunAsync(["check", path]);
        Assert.Equal(1, status);
        Assert.Contains("is no picture", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_office_whose_clock_was_put_back_says_so_itself()
    {
        var clock = new Microsoft.Extensions.Time.Testing.FakeTimeProvider(new DateTimeOffset(2026, 11, 25, 9, 0, 0, TimeSpan.Zero));
        var data = RunningOffice.NewFolder();
        await using (var before = await RunningOffice.Start(data, options => options with { Clock = clock })) await before.Push(Visit, Lines.Notes(Visit, "aaa", 1));
        var back = new Microsoft.Extensions.Time.Testing.FakeTimeProvider(new DateTimeOffset(2016, 11, 25, 9, 0, 0, TimeSpan.Zero));
        await using var office = await RunningOffice.Start(data, options => options with { Clock = back });
        await office.Push(Visit, Lines.Notes(Visit, "aaa", 2));
        var path = Path.Combine(folder, "back.purlin");
        await File.WriteAllBytesAsync(path, await office.Client.GetByteArrayAsync($"/office/inspections/{Visit}/archive"));
        var (status, output, _) = await Typed.RunAsync(["check", path]);
        Assert.Equal(0, status);
        Assert.Contains("clock had been put back when it gave receipt 2", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Two_million_lines_of_junk_are_refused_in_one_sentence()
    {
        var path = Path.Combine(folder, "junk.jsonl");
        await File.WriteAllTextAsync(path, string.Concat(Enumerable.Repeat("{}\n", 2_000_000)));
        var (status, output, error) = await Typed.RunAsync(["check", path]);
        Assert.Equal((2, ""), (status, output));
        Assert.Single(error.Split('\n', StringSplitOptions.RemoveEmptyEntries));
    }
}
