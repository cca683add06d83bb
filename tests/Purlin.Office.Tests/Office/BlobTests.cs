using System.Net;
using System.Net.Http.Json;
using System.Text;
using Purlin.Journal;
using Purlin.Journal.Archive;
using Purlin.Office.Storage;
using SkiaSharp;

namespace Purlin.Office.Tests.Office;

/// <summary>Photographs over the wire: resumable at any byte, kept only when whole and what they claim to be.</summary>
public sealed class BlobTests
{
    private static readonly byte[] Photo = Pictures.Jpeg(1600, 1200);

    [Fact]
    public async Task An_upload_cut_anywhere_goes_on_from_there_and_ends_whole()
    {
        await using var office = await RunningOffice.Start();
        var sha = Sha.Of(Photo);
        var chance = new Random(20261125);
        var sent = 0L;
        for (var rounds = 0; !(await office.Head(sha)).Whole; rounds++)
        {
            Assert.True(rounds < 500);
            var offset = (int)(await office.Head(sha)).Offset;
            var part = Photo.AsMemory(offset, Math.Min(Photo.Length - offset, 1 + chance.Next(Photo.Length / 20)));
            sent += part.Length;
            Assert.Equal(HttpStatusCode.NoContent, (await office.Patch(sha, part, offset, Photo.Length)).StatusCode);
        }

        Assert.Equal(Photo.Length, sent);
        Assert.Equal(Photo, await office.Client.GetByteArrayAsync($"/blobs/{sha}"));
    }

    [Fact]
    public async Task A_connection_that_breaks_in_the_middle_keeps_what_arrived()
    {
        await using var office = await RunningOffice.Start();
        var sha = Sha.Of(Photo);
        using (var socket = await Begin(office, sha, 10_000)) await Task.Delay(300, TestContext.Current.CancellationToken);

        var rest = await office.Head(sha);
        for (var wait = 0; wait < 50 && rest.Offset == 0; wait++)
        {
            await Task.Delay(100, TestContext.Current.CancellationToken);
            rest = await office.Head(sha);
        }

        Assert.InRange(rest.Offset, 1, 10_000);
        Assert.Equal(HttpStatusCode.NoContent, (await office.Patch(sha, Photo.AsMemory((int)rest.Offset), rest.Offset, Photo.Length)).StatusCode);
        Assert.True((await office.Head(sha)).Whole);
    }

    [Fact]
    public async Task A_newer_request_takes_over_from_one_that_hangs()
    {
        await using var office = await RunningOffice.Start();
        var sha = Sha.Of(Photo);
        using var hanging = await Begin(office, sha, 10_000);
        for (var wait = 0; wait < 100 && (await office.Head(sha)).Offset < 10_000; wait++) await Task.Delay(50, TestContext.Current.CancellationToken);
        var offset = (await office.Head(sha)).Offset;
        Assert.Equal(HttpStatusCode.NoContent, (await office.Patch(sha, Photo.AsMemory((int)offset), offset, Photo.Length)).StatusCode);
        Assert.Equal(Photo, await office.Client.GetByteArrayAsync($"/blobs/{sha}"));
    }

    /// <summary>Announces the whole photograph, sends only so many bytes, and leaves the connection open.</summary>
    private static async Task<System.Net.Sockets.TcpClient> Begin(RunningOffice office, string sha, int bytes)
    {
        var socket = new System.Net.Sockets.TcpClient();
        await socket.ConnectAsync(office.Address.Host, office.Address.Port);
        var cookie = await Cookie(office);
        var head = $"PATCH /blobs/{sha} HTTP/1.1\r\nHost: {office.Address.Authority}\r\nX-Field: 1\r\nCookie: {cookie}\r\nContent-Type: application/offset+octet-stream\r\nUpload-Offset: 0\r\nUpload-Length: {Photo.Length}\r\nContent-Length: {Photo.Length}\r\n\r\n";
        await socket.GetStream().WriteAsync(Encoding.ASCII.GetBytes(head));
        await socket.GetStream().WriteAsync(Photo.AsMemory(0, bytes));
        return socket;
    }

    [Fact]
    public async Task A_wrong_offset_is_answered_with_the_right_one()
    {
        await using var office = await RunningOffice.Start();
        var sha = Sha.Of(Photo);
        await office.Patch(sha, Photo.AsMemory(0, 1000), 0, Photo.Length);
        var answer = await office.Patch(sha, Photo.AsMemory(5000, 1000), 5000, Photo.Length);
        Assert.Equal(HttpStatusCode.Conflict, answer.StatusCode);
        Assert.Equal("1000", answer.Headers.GetValues("Upload-Offset").Single());
    }

    [Fact]
    public async Task Bytes_of_another_hash_are_thrown_away_and_the_file_starts_again()
    {
        await using var office = await RunningOffice.Start();
        var sha = Sha.Of(Photo);
        var damaged = Photo.ToArray();
        damaged[500] ^= 1;
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await office.Patch(sha, damaged, 0, damaged.Length)).StatusCode);
        Assert.Equal((0, false), await office.Head(sha));
        Assert.Equal(HttpStatusCode.NoContent, (await office.Patch(sha, Photo, 0, Photo.Length)).StatusCode);
    }

    [Fact]
    public async Task A_whole_file_is_never_taken_twice()
    {
        await using var office = await RunningOffice.Start();
        var sha = Sha.Of(Photo);
        var missing = await Missing(office, sha);
        Assert.Equal([sha], missing);
        await office.Patch(sha, Photo, 0, Photo.Length);
        Assert.Empty(await Missing(office, sha));
        var again = await office.Patch(sha, Photo.AsMemory(0, 10), 0, Photo.Length);
        Assert.Equal((HttpStatusCode.NoContent, $"{Photo.Length}"), (again.StatusCode, again.Headers.GetValues("Upload-Offset").Single()));
    }

    public static TheoryData<string, byte[]> Hostile => new()
    {
        { "a PNG that claims 1 x 500,000,000 pixels", Pictures.PngHeader(1, 500_000_000) },
        { "a JPEG that claims 64,250 x 64,250 pixels", Pictures.JpegClaiming(Pictures.Jpeg(64, 64), 64_250, 64_250) },
        { "a picture with no pixels", Pictures.PngHeader(0, 0) },
        { "markup that calls itself a picture", "<svg xmlns=\"http://www.w3.org/2000/svg\"><script>alert(1)</script></svg>"u8.ToArray() },
        { "a page", "<!doctype html><script>alert(1)</script>"u8.ToArray() },
        { "a program", [0x7F, (byte)'E', (byte)'L', (byte)'F', .. new byte[60]] },
        { "the first bytes of a JPEG and nothing more", [0xFF, 0xD8, 0xFF] },
        { "one byte", [0] },
    };

    [Theory]
    [MemberData(nameof(Hostile))]
    public async Task Not_kept(string what, byte[] bytes)
    {
        await using var office = await RunningOffice.Start();
        var answer = await office.Patch(Sha.Of(bytes), bytes, 0, bytes.Length);
        Assert.True(answer.StatusCode == HttpStatusCode.UnsupportedMediaType, what);
        Assert.Equal((0, false), await office.Head(Sha.Of(bytes)));
        Assert.Empty(Directory.EnumerateFiles(Path.Combine(office.Folder, "blobs"), "*", SearchOption.AllDirectories));
    }

    [Theory]
    [InlineData("..%2f..%2fetc%2fpasswd")]
    [InlineData("%252e%252e")]
    [InlineData("C:%5cwindows")]
    [InlineData("abc")]
    [InlineData("ABCDEF0123456789ABCDEF0123456789ABCDEF0123456789ABCDEF0123456789")]
    public async Task Names_that_are_no_hash_lead_nowhere(string name)
    {
        await using var office = await RunningOffice.Start();
        Assert.Equal(HttpStatusCode.NotFound, (await office.Client.GetAsync($"/blobs/{name}")).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await office.Patch(name, new byte[] { 1 }, 0, 1)).StatusCode);
    }

    [Fact]
    public async Task More_than_a_photograph_may_hold_is_refused_before_it_is_sent()
    {
        await using var office = await RunningOffice.Start();
        var answer = await office.Patch(new string('a', 64), new byte[10], 0, Limits.PhotoBytes + 1);
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, answer.StatusCode);
        Assert.Contains("25 MiB", await RunningOffice.Words(answer), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("before rename")]
    [InlineData("after rename")]
    public async Task An_office_that_dies_while_a_file_settles_asks_for_it_again_and_ends_whole(string step)
    {
        var folder = RunningOffice.NewFolder();
        var sha = Sha.Of(Photo);
        await using (var dying = await RunningOffice.Start(folder, options => options with { At = at => _ = at == step ? throw new IOException("the power went") : 0 }))
        {
            Assert.Equal(HttpStatusCode.InternalServerError, (await dying.Patch(sha, Photo, 0, Photo.Length)).StatusCode);
            Assert.Equal([sha], await Missing(dying, sha));
        }

        await using var office = await RunningOffice.Start(folder);
        Assert.False((await office.Head(sha)).Whole);
        var offset = (await office.Head(sha)).Offset;
        Assert.Equal(HttpStatusCode.NoContent, (await office.Patch(sha, Photo.AsMemory((int)offset), offset, Photo.Length)).StatusCode);
        Assert.Equal(Photo, await office.Client.GetByteArrayAsync($"/blobs/{sha}"));
    }

    [Fact]
    public async Task Views_are_upright_smaller_and_without_the_place_of_the_camera()
    {
        await using var office = await RunningOffice.Start();
        var turned = Pictures.WithExif(Pictures.Jpeg(3000, 2000), orientation: 6);
        Assert.True(turned.AsSpan().IndexOf("GPS 47.6"u8) > 0);
        var sha = Sha.Of(turned);
        await office.Patch(sha, turned, 0, turned.Length);
        foreach (var (size, width, height) in ((string, int, int)[])[("view", 1365, 2048), ("thumb", 213, 320)])
        {
            var view = await office.Client.GetByteArrayAsync($"/office/pictures/{sha}?size={size}");
            using var codec = SKCodec.Create(new MemoryStream(view));
            Assert.Equal((width, height), (codec.Info.Width, codec.Info.Height));
            Assert.True(view.AsSpan().IndexOf("GPS"u8) < 0 && view.AsSpan().IndexOf("Exif"u8) < 0);
        }

        Assert.Equal(turned, await office.Client.GetByteArrayAsync($"/blobs/{sha}"));
    }

    [Fact]
    public async Task The_archive_of_the_office_opens_and_carries_receipts_and_key()
    {
        const string visit = "visit1";
        await using var office = await RunningOffice.Start();
        await office.Patch(Sha.Of(Photo), Photo, 0, Photo.Length);
        var pen = new Pen(visit, "aaa");
        await office.Push(visit, pen.Write(new EntryBody.PhotoTaken { Sha = Sha.Of(Photo), Size = Photo.Length, MediaType = "image/jpeg" }, DateTimeOffset.UnixEpoch));
        using var opened = ArchiveReader.Open(new MemoryStream(await office.Client.GetByteArrayAsync($"/office/inspections/{visit}/archive"))).OrThrow();
        Assert.Equal(Photo, opened.Photo(Sha.Of(Photo)));
        var receipt = opened.File(ArchiveNames.Receipts)!;
        Assert.True(ReceiptChain.Verifies(receipt.AsSpan(0, receipt.Length - 1), Encoding.ASCII.GetString(opened.File(ArchiveNames.Key)!)));
        // Nothing of it was written to the office's own disk on the way.
        Assert.DoesNotContain(Directory.EnumerateFiles(office.Folder, "*", SearchOption.AllDirectories), file => file.EndsWith(".purlin", StringComparison.Ordinal));
    }

    private static async Task<string[]> Missing(RunningOffice office, params string[] hashes) =>
        (await (await office.Client.PostAsJsonAsync("/blobs/missing", hashes)).Content.ReadFromJsonAsync<string[]>())!;

    private static async Task<string> Cookie(RunningOffice office)
    {
        var answer = await office.NewClient().PostAsJsonAsync("/office/session", new { code = RunningOffice.Code });
        return answer.Headers.GetValues("Set-Cookie").Single().Split(';')[0];
    }
}
