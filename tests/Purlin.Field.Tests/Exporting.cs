using System.Diagnostics;
using Purlin.Field.Tests.App;
using Purlin.Journal.Archive;

namespace Purlin.Field.Tests;

/// <summary>Everything of an inspection in one file, made on the phone with the server gone, read by the rooms, and taken in by another phone.</summary>
public sealed class Exporting(Browser browser)
{
    [Fact]
    public async Task An_archive_made_offline_is_whole_and_another_phone_takes_it_in()
    {
        await using var host = await TinyHost.StartAsync();
        await using var phone = await browser.PhoneAsync(host.Address);
        await phone.OpenBareAsync();
        var seed = await phone.SeedAsync();
        var page = await phone.OpenReadyAsync(seed.PlaceUrl(seed.Kitchen));
        await page.Locator(".thumb .shutter").TapAsync();
        await phone.UntilAsync(seed.Insp, "photo.taken", 1);
        await page.Locator(".head .back").TapAsync();
        await Assertions.Expect(page.Locator(".places a").First).ToBeVisibleAsync();
        await host.StopAsync();
        var file = await SaveAsync(page);

        await using (var stream = File.OpenRead(file))
        {
            using var archive = Opened(stream);
            Assert.Equal((await phone.LinesAsync(seed.Insp)).Count, archive.Entries.Count);
            Assert.Empty(archive.Held);
            Assert.Empty(archive.Manifest.Missing);
            var sha = Assert.Single(archive.Blobs);
            Assert.Equal(sha, Purlin.Journal.Sha.Of(archive.Photo(sha)!));
        }

        await host.StartAgainAsync();
        await using var other = await browser.PhoneAsync(host.Address);
        await other.OpenReadyAsync("/");
        // One byte of the picture turned: nothing is taken, not even the lines.
        var damaged = await DamagedAsync(file);
        await ChooseAsync(other, damaged);
        await Assertions.Expect(other.Page.GetByText("was altered or damaged")).ToBeVisibleAsync();
        Assert.Empty(await other.LinesAsync(seed.Insp));
        Assert.Equal(0, await other.Page.EvaluateAsync<int>(BlobCount));

        await ChooseAsync(other, file);
        await Assertions.Expect(other.Page.Locator(".places a").First).ToBeVisibleAsync();
        Assert.Equal((await phone.LinesAsync(seed.Insp)).Count, (await other.LinesAsync(seed.Insp)).Count);
        Assert.Equal(1, await other.Page.EvaluateAsync<int>(BlobCount));
        Assert.Empty(other.PageErrors);
    }

    private const string BlobCount = "async () => (await import('/device/store.js')).transact(['blobs'], 'readonly', tx => { const request = tx.objectStore('blobs').count(); return () => request.result; })";

    private static async Task ChooseAsync(Phone phone, string file)
    {
        var chooser = await phone.Page.RunAndWaitForFileChooserAsync(() => phone.Page.GetByRole(AriaRole.Button, new() { Name = "Open an archive" }).TapAsync());
        await chooser.SetFilesAsync(file);
    }

    private static async Task<string> DamagedAsync(string file)
    {
        var bytes = await File.ReadAllBytesAsync(file, TestContext.Current.CancellationToken);
        bytes[bytes.AsSpan().IndexOf("photos/"u8) + 300] ^= 1;
        var damaged = Path.GetTempFileName();
        await File.WriteAllBytesAsync(damaged, bytes, TestContext.Current.CancellationToken);
        return damaged;
    }

    private static async Task<string> SaveAsync(IPage page)
    {
        var saved = page.WaitForDownloadAsync(new() { Timeout = 300_000 });
        await page.GetByRole(AriaRole.Button, new() { Name = "Save a copy" }).TapAsync();
        var download = await saved;
        Assert.EndsWith(".purlin", download.SuggestedFilename, StringComparison.Ordinal);
        return (await download.PathAsync())!;
    }

    private static OpenedArchive Opened(Stream stream)
    {
        var opened = ArchiveReader.Open(stream);
        Assert.True(opened.IsAccepted, string.Join('\n', opened.Refusals));
        return opened.OrThrow();
    }

    /// <summary>A real visit: what the page holds of it while it is written must not grow with it. PURLIN_PICTURES sets another count; the promise is 300 of 4 MB.</summary>
    [Fact]
    public async Task Many_large_pictures_pass_through_little_memory()
    {
        var count = int.TryParse(Environment.GetEnvironmentVariable("PURLIN_PICTURES"), out var given) ? given : 40;
        await using var host = await TinyHost.StartAsync();
        await using var phone = await browser.PhoneAsync(host.Address);
        await phone.OpenBareAsync();
        var seed = await phone.SeedAsync();
        await phone.Page.EvaluateAsync("""
            async ([insp, count]) => {
              const { write } = await import('/device/writing.js');
              const { sha256 } = await import('/device/chain.js');
              const bytes = new Uint8Array(4 * 1024 * 1024);
              for (let at = 0; at < bytes.length; at += 65536) crypto.getRandomValues(bytes.subarray(at, at + 65536));
              for (let turn = 0; turn < count; turn++) {
                bytes[0] = turn & 255; bytes[1] = turn >> 8;
                const sha = await sha256(bytes);
                await write(insp, [{ type: 'photo.taken', body: { sha, size: bytes.length, mediaType: 'image/jpeg' } }], [{ bytes: bytes.slice().buffer, type: 'image/jpeg', sha }]);
              }
            }
            """, new object[] { seed.Insp, count });
        // A fresh page, so that what was written above is not in its memory.
        var page = await phone.OpenReadyAsync(seed.Url());
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "Save a copy" })).ToBeVisibleAsync();
        var session = await phone.Context.NewCDPSessionAsync(page);
        var before = await HeldAsync(session);
        var most = 0.0;
        using var done = new CancellationTokenSource();
        var watching = WatchAsync(session, held => most = Math.Max(most, held), done.Token);
        var file = await SaveAsync(page);
        await done.CancelAsync();
        await watching;
        Assert.True(most - before <= 50 * 1024 * 1024, $"{count} pictures of 4 MB: what the page holds grew by {(most - before) / 1048576:0} MB");
        TestContext.Current.TestOutputHelper?.WriteLine($"{count} pictures: growth {(most - before) / 1048576:0.0} MB of {before / 1048576:0.0} MB");
        await using var stream = File.OpenRead(file);
        using var archive = Opened(stream);
        Assert.Equal(count, archive.Blobs.Count);
    }

    /// <summary>Bytes of the page's heap and of the buffers outside it.</summary>
    private static async Task<double> HeldAsync(ICDPSession session)
    {
        var usage = (await session.SendAsync("Runtime.getHeapUsage"))!.Value;
        return usage.GetProperty("usedSize").GetDouble() + (usage.TryGetProperty("backingStorageSize", out var buffers) ? buffers.GetDouble() : 0);
    }

    private static async Task WatchAsync(ICDPSession session, Action<double> tell, CancellationToken until)
    {
        while (!until.IsCancellationRequested)
        {
            tell(await HeldAsync(session));
            await Task.Delay(50, CancellationToken.None);
        }
    }

    [Fact]
    public async Task An_archive_beyond_four_gigabytes_is_read_by_the_rooms()
    {
        var file = Path.Combine(Directory.CreateTempSubdirectory("purlin-large-").FullName, "large.purlin");
        try
        {
            var start = new ProcessStartInfo("node", [Path.Combine(PublishedApp.Repository, "tests", "device", "large-archive.js"), file]) { RedirectStandardError = true, RedirectStandardOutput = true, UseShellExecute = false };
            using var process = Process.Start(start)!;
            var said = await process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken) + await process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
            await process.WaitForExitAsync(TestContext.Current.CancellationToken);
            Assert.True(process.ExitCode == 0, said);
            await using var stream = File.OpenRead(file);
            Assert.True(stream.Length > uint.MaxValue);
            using var archive = Opened(stream);
            Assert.Equal(172, archive.Blobs.Count);
            // The last picture lies where 32 bits do not reach.
            Assert.Equal(25 * 1024 * 1024, archive.Photo(archive.Blobs.Order(StringComparer.Ordinal).Last())!.Length);
        }
        finally
        {
            Directory.Delete(Path.GetDirectoryName(file)!, recursive: true);
        }
    }
}
