using System.Text;
using Purlin.Field.Tests.App;
using Purlin.Journal.Archive;
using Purlin.Journal.Merge;
using Purlin.Office.Storage;

namespace Purlin.Field.Tests;

/// <summary>With no office anywhere: an edition is sealed on the phone, opened there, and its archive proves it.</summary>
public sealed class SealingAlone(Browser browser)
{
    [Fact]
    public async Task An_edition_is_sealed_on_the_phone_and_its_archive_proves_it()
    {
        await using var host = await TinyHost.StartAsync();
        await using var phone = await browser.PhoneAsync(host.Address);
        await phone.OpenBareAsync();
        var seed = await phone.SeedAsync();
        var page = await phone.OpenReadyAsync(seed.Url("/issue"));
        // Places that nobody entered bar the edition until it is said why.
        var seal = page.Locator(".phone-seal button");
        await Assertions.Expect(seal).ToBeDisabledAsync();
        await page.Locator(".state-all").TapAsync();
        await page.Locator(".never-entered .reasons button").First.TapAsync();
        await phone.UntilAsync(seed.Insp, "limitation.recorded", 8);
        await Assertions.Expect(seal).ToBeEnabledAsync();
        await seal.TapAsync();
        await phone.UntilAsync(seed.Insp, "edition.sealed", 1);
        await page.Locator(".edition[data-edition='1'] a").First.TapAsync();
        await Assertions.Expect(page.FrameLocator("iframe").Locator("body")).ToContainTextAsync("14 Alder Bend");

        await phone.OpenReadyAsync(seed.Url());
        var saved = page.WaitForDownloadAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Save a copy" }).TapAsync();
        await using var stream = File.OpenRead((await (await saved).PathAsync())!);
        using var archive = ArchiveReader.Open(stream).OrThrow();
        var edition = Purlin.Journal.Fold.Folding.Fold(archive.Entries).Editions.Single().Body;
        Assert.Equal(edition.Page, Purlin.Journal.Sha.Of(archive.File(ArchiveNames.Page(1))!));
        Assert.Equal(edition.Pdf, Purlin.Journal.Sha.Of(archive.File(ArchiveNames.Pdf(1))!));
        Assert.Equal(edition.EntriesRoot,
            Merkle.Root(EntrySet.Of(seed.Insp, archive.Entries).Under(edition.Heads).Select(entry => entry.Hash)));
        var key = Encoding.ASCII.GetString(archive.File(ArchiveNames.Key)!);
        var receipt = Assert.Single(Encoding.UTF8.GetString(archive.File(ArchiveNames.Receipts)!).Split('\n',
            StringSplitOptions.RemoveEmptyEntries));
        Assert.True(ReceiptChain.Verifies(Encoding.UTF8.GetBytes(receipt), key));
        Assert.False(ReceiptChain.Verifies(Encoding.UTF8.GetBytes(receipt.Replace("\"n\":1", "\"n\":2", StringComparison.Ordinal)), key));
        // The paper bears the fingerprint of the key, and the key cannot be had from the phone.
        var print = Purlin.Report.Edition.Sealing.InGroups(ReceiptChain.FingerprintOf(key)!);
        Assert.Contains(print, Encoding.UTF8.GetString(archive.File(ArchiveNames.Page(1))!), StringComparison.Ordinal);
        Assert.False(await page.EvaluateAsync<bool>("async () => (await (await import('/device/store.js')).get('meta', 'phone-key')).privateKey.extractable"));
        Assert.Empty(phone.PageErrors);
    }
}
