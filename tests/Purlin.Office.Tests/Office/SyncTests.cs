using System.IO.Compression;
using System.Net;
using System.Text;
using System.Text.Json.Nodes;
using Purlin.Journal;
using Purlin.Journal.Merge;
using Purlin.Office.Storage;

namespace Purlin.Office.Tests.Office;

/// <summary>Entries over the wire: docs/SYNC.md, section 4.</summary>
public sealed class SyncTests
{
    private const string Visit = "visit1";

    [Fact]
    public async Task A_push_repeated_any_number_of_times_arrives_once()
    {
        await using var office = await RunningOffice.Start();
        var lines = Lines.Notes(Visit, "aaa", 20);
        Assert.Equal(20, (int)(await office.Push(Visit, lines))["taken"]!);
        for (var again = 0; again < 3; again++) Assert.Equal(0, (int)(await office.Push(Visit, lines))["taken"]!);
        Assert.Equal(lines.Select(entry => entry.Hash), (await Pull(office, Visit)).Select(entry => entry.Hash));
    }

    [Fact]
    public async Task A_push_whose_every_first_answer_is_lost_arrives_once()
    {
        await using var office = await RunningOffice.Start();
        var lines = Lines.Notes(Visit, "aaa", 40);
        foreach (var part in lines.Chunk(7))
        {
            using (var lost = await office.PushRaw(Visit, RunningOffice.Bytes(part))) Assert.True(lost.IsSuccessStatusCode);
            await office.Push(Visit, part);
        }

        Assert.Equal(40, (await Pull(office, Visit)).Count);
        Assert.Equal(40, (await office.Heads(Visit))["aaa"]);
    }

    [Fact]
    public async Task A_gap_stops_that_device_only()
    {
        await using var office = await RunningOffice.Start();
        var (one, other) = (Lines.Notes(Visit, "aaa", 5), Lines.Notes(Visit, "bbb", 3));
        var answer = await office.Push(Visit, [one[0], one[2], one[3], .. other]);
        Assert.Equal(new Dictionary<string, int> { ["aaa"] = 1, ["bbb"] = 3 }, RunningOffice.HeadsOf(answer));
        Assert.Equal(["aaa.3", "aaa.4"], answer["waiting"]!.AsArray().Select(name => (string)name!));
        Assert.Equal(5, RunningOffice.HeadsOf(await office.Push(Visit, one))["aaa"]);
    }

    [Fact]
    public async Task A_held_line_is_named_and_blocks_none_behind_it()
    {
        await using var office = await RunningOffice.Start();
        var lines = Lines.Notes(Visit, "aaa", 3);
        var spoiled = Encoding.UTF8.GetBytes(Encoding.UTF8.GetString(lines[1].Line.Span).Replace("\"text\"", "\"txet\"", StringComparison.Ordinal));
        byte[] body = [.. RunningOffice.Bytes([lines[0]]), .. spoiled, (byte)'\n', .. RunningOffice.Bytes([lines[2]])];
        var answer = await RunningOffice.Read(await office.PushRaw(Visit, body));
        Assert.Equal("aaa.2", (string)answer["held"]![0]!["name"]!);
        Assert.StartsWith("text: nothing", (string)answer["held"]![0]!["why"]!, StringComparison.Ordinal);
        Assert.Equal(3, RunningOffice.HeadsOf(answer)["aaa"]);
        Assert.Equal(1, (int)(await office.Get($"/sync/{Visit}/heads"))["held"]!);
        await using var db = office.Db();
        Assert.Equal(spoiled, db.Held.Single().Raw);
        Assert.Equal(2, (await Pull(office, Visit)).Count);
    }

    [Fact]
    public async Task A_line_cut_off_loses_only_itself_and_is_said()
    {
        await using var office = await RunningOffice.Start();
        var body = RunningOffice.Bytes(Lines.Notes(Visit, "aaa", 3));
        var answer = await RunningOffice.Read(await office.PushRaw(Visit, body[..^30]));
        Assert.True((bool)answer["torn"]!);
        Assert.Equal(2, RunningOffice.HeadsOf(answer)["aaa"]);
    }

    [Fact]
    public async Task Gzip_is_taken_and_a_bomb_is_not()
    {
        await using var office = await RunningOffice.Start();
        var answer = await RunningOffice.Read(await office.PushRaw(Visit, Gzip(RunningOffice.Bytes(Lines.Notes(Visit, "aaa", 100))), "gzip"));
        Assert.Equal(100, (int)answer["taken"]!);
        var bomb = await office.PushRaw(Visit, Gzip(new byte[400 * 1024 * 1024]), "gzip");
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, bomb.StatusCode);
        var many = await office.PushRaw(Visit, Gzip(Encoding.ASCII.GetBytes(new string('\n', 6_000))), "gzip");
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, many.StatusCode);
    }

    [Fact]
    public async Task Pages_bring_everything_and_end()
    {
        await using var office = await RunningOffice.Start();
        var lines = Lines.Notes(Visit, "aaa", 4_500);
        await office.Push(Visit, lines);
        var here = new EntrySet(Visit);
        var pages = 0;
        for (var more = true; more; pages++)
        {
            var answer = await office.Client.GetAsync($"/sync/{Visit}/entries?have={string.Join(',', here.Heads().Select(head => $"{head.Key}:{head.Value}"))}");
            foreach (var entry in LineBlock.Read(await answer.Content.ReadAsByteArrayAsync(), Visit).Entries) here.Add(entry);
            more = answer.Headers.Contains("Purlin-More");
        }

        Assert.Equal((3, 4_500), (pages, here.Count));
    }

    [Fact]
    public async Task Both_branches_of_a_fork_are_kept_and_sent()
    {
        await using var office = await RunningOffice.Start();
        var (one, copy) = (Lines.Notes(Visit, "aaa", 4), new Pen(Visit, "aaa"));
        var now = new DateTimeOffset(2026, 11, 25, 10, 0, 0, TimeSpan.Zero);
        Entry[] other = [one[0], copy.Write(new EntryBody.NoteWritten { Text = "copied" }, now)];
        await office.Push(Visit, one);
        await office.Push(Visit, other[1..]);
        var pulled = await Pull(office, Visit);
        Assert.Equal(5, pulled.Count);
        Assert.Equal(2, pulled.Count(entry => entry.Name == EntryName.Parse("aaa.1")));
        Assert.Equal(new Dictionary<string, int> { ["aaa"] = 4, ["aaa~2"] = 1 }, await office.Heads(Visit));
    }

    [Fact]
    public async Task Receipts_are_signed_chained_and_cover_what_is_held()
    {
        await using var office = await RunningOffice.Start();
        var lines = Lines.Notes(Visit, "aaa", 6);
        await office.Push(Visit, lines[..3]);
        var latest = (await office.Push(Visit, lines))["receipt"]!;
        var key = await office.Client.GetStringAsync("/office/key");
        await using var db = office.Db();
        var chain = db.Receipts.OrderBy(row => row.N).Select(row => row.Raw).ToList();
        Assert.Equal(2, chain.Count);
        Assert.All(chain, receipt => Assert.True(ReceiptChain.Verifies(receipt, key)));
        Assert.Equal(Sha.Of(chain[0]), (string)JsonNode.Parse(chain[1])!["prev"]!);
        Assert.Equal(Merkle.Root(lines.Select(entry => entry.Hash)), (string)latest["root"]!);
        Assert.Equal(6, (int)latest["heads"]!["aaa"]!);
        var altered = chain[1].ToArray();
        altered[Encoding.UTF8.GetString(altered).IndexOf("\"aaa\":6", StringComparison.Ordinal) + 6]++;
        Assert.False(ReceiptChain.Verifies(altered, key));
    }

    [Theory]
    [InlineData("before insert", 0)]
    [InlineData("after insert", 0)]
    [InlineData("after commit", 30)]
    public async Task An_office_that_dies_at_a_step_has_all_or_nothing_and_takes_the_repeat(string step, int there)
    {
        var folder = RunningOffice.NewFolder();
        var lines = Lines.Notes(Visit, "aaa", 30);
        await using (var dying = await RunningOffice.Start(folder, options => options with { At = at => _ = at == step ? throw new IOException("the power went") : 0 }))
        {
            var answer = await dying.PushRaw(Visit, RunningOffice.Bytes(lines));
            Assert.Equal(HttpStatusCode.InternalServerError, answer.StatusCode);
        }

        await using var office = await RunningOffice.Start(folder);
        Assert.Equal(there, (await office.Heads(Visit)).GetValueOrDefault("aaa"));
        Assert.Equal(30 - there, (int)(await office.Push(Visit, lines))["taken"]!);
        Assert.Equal(30, (await Pull(office, Visit)).Count);
    }

    [Fact]
    public async Task What_was_acknowledged_is_there_after_a_restart()
    {
        var folder = RunningOffice.NewFolder();
        var lines = Lines.Notes(Visit, "aaa", 12);
        await using (var before = await RunningOffice.Start(folder)) await before.Push(Visit, lines);
        await using var after = await RunningOffice.Start(folder);
        Assert.Equal(lines.Select(entry => entry.Hash), (await Pull(after, Visit)).Select(entry => entry.Hash));
    }

    [Fact]
    public async Task A_line_held_by_an_older_program_is_taken_by_one_that_can_read_it()
    {
        var folder = RunningOffice.NewFolder();
        var lines = Lines.Notes(Visit, "aaa", 3);
        await using (var before = await RunningOffice.Start(folder))
        {
            await before.Push(Visit, lines[0]);
            await using var db = before.Db();
            db.Held.Add(new HeldRow { Tenant = "own", Insp = Visit, Hash = lines[1].Hash, Name = "aaa.2", Raw = lines[1].Line.ToArray(), Why = "body: too new", ReceivedAt = 1, Position = 2 });
            // What an older program worked out with that line held.
            var shown = db.Inspections.Single();
            (shown.Held, shown.Position, shown.Root) = (1, 2, Merkle.Root([lines[0].Hash, lines[1].Hash]));
            await db.SaveChangesAsync(TestContext.Current.CancellationToken);
        }

        await using var office = await RunningOffice.Start(folder);
        Assert.Equal(["aaa.1", "aaa.2"], (await Pull(office, Visit)).Select(entry => entry.Name.ToString()));
        Assert.Equal(3, RunningOffice.HeadsOf(await office.Push(Visit, lines))["aaa"]);
        Assert.Equal(3, (await Pull(office, Visit)).Count);
    }

    [Fact]
    public async Task Lines_of_another_inspection_are_held()
    {
        await using var office = await RunningOffice.Start();
        var answer = await office.Push(Visit, Lines.Notes("elsewhere", "aaa", 1));
        Assert.Contains("elsewhere", (string)answer["held"]![0]!["why"]!, StringComparison.Ordinal);
        Assert.Empty(await office.Heads("elsewhere"));
    }

    private static async Task<List<Entry>> Pull(RunningOffice office, string inspection) =>
        [.. LineBlock.Read(await office.Client.GetByteArrayAsync($"/sync/{inspection}/entries"), inspection).Entries];

    private static byte[] Gzip(byte[] bytes)
    {
        using var packed = new MemoryStream();
        using (var gzip = new GZipStream(packed, CompressionLevel.Fastest)) gzip.Write(bytes);
        return packed.ToArray();
    }
}
