using Purlin.Field.Tests.App;
using Purlin.Journal.Archive;

namespace Purlin.Field.Tests;

/// <summary>Everything of an inspection in one file, made on the phone with the server gone, and read by the rooms.</summary>
public sealed class Exporting(Browser browser)
{
    [Fact]
    public async Task An_archive_made_offline_is_whole()
    {
        await using var host = await TinyHost.StartAsync();
        await using var phone = await browser.PhoneAsync(host.Address);
        await phone.OpenBareAsync();
        var seed = await phone.SeedAsync();
        var page = await phone.OpenReadyAsync(seed.PlaceUrl(seed.Kitchen));
        await page.Locator(".thumb .shutter").TapAsync();
        await phone.UntilAsync(seed.Insp, "photo.taken", 1);
        await page.Locator(".head .back").TapAsync();
        await host.StopAsync();

        var saved = page.WaitForDownloadAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Save a copy" }).TapAsync();
        var download = await saved;
        Assert.EndsWith(".purlin", download.SuggestedFilename, StringComparison.Ordinal);
        await using var stream = File.OpenRead((await download.PathAsync())!);
        var opened = ArchiveReader.Open(stream);
        Assert.True(opened.IsAccepted, string.Join('\n', opened.Refusals));
        using var archive = opened.OrThrow();
        Assert.Equal((await phone.LinesAsync(seed.Insp)).Count, archive.Entries.Count);
        Assert.Empty(archive.Held);
        Assert.Empty(archive.Manifest.Missing);
        var sha = Assert.Single(archive.Blobs);
        Assert.Equal(sha, Purlin.Journal.Sha.Of(archive.Photo(sha)!));
    }
}
