using System.Globalization;
using Purlin.Field.Tests.App;
using UglyToad.PdfPig;

namespace Purlin.Field.Tests;

/// <summary>The main job: evidence tapped on site without a network becomes an issued report that says it.</summary>
public sealed class EndToEnd(Browser browser) : IAsyncLifetime
{
    private const string Address = "14 Alder Bend, Harlow Falls";
    private OfficeAtHand office = null!;
    private Phone phone = null!;

    private IPage Page => phone.Page;

    public async ValueTask InitializeAsync() => office = await OfficeAtHand.StartAsync();

    [Fact]
    public async Task What_was_tapped_without_a_network_stands_in_the_sealed_report()
    {
        phone = await browser.PhoneAsync(office.Address, worker: true);
        await phone.OpenReadyAsync("/");
        await OfficeAtHand.SignInAsync(phone);
        Assert.True(await Page.EvaluateAsync<bool>("async () => { await navigator.serviceWorker.ready; return true; }"));
        await Page.ReloadAsync();
        await phone.ReadyAsync();
        await office.StopAsync();

        var inspection = await OpenTheHouseAsync();
        var seen = await WalkAsync(inspection);
        await SettleAsync(inspection);
        await WorkingCopyAsync(inspection);

        await office.StartAgainAsync();
        var number = await SealAsync(inspection);
        await CheckPaperAsync(inspection, number, seen);
        await office.StopAsync();
        await HandOnAsync(inspection);
        Assert.Empty(phone.PageErrors);
    }

    private async Task<string> OpenTheHouseAsync()
    {
        await Page.GetByText("New inspection").TapAsync();
        await Page.GetByLabel("Where is the house?").FillAsync(Address);
        foreach (var (question, answer) in ((string, string)[])[("What does it stand on", "crawl space"), ("Garage", "none")])
            await Page.Locator("fieldset", new() { HasText = question }).GetByRole(AriaRole.Button, new() { Name = answer, Exact = true }).TapAsync();
        await Page.GetByRole(AriaRole.Button, new() { Name = "Draw the house" }).TapAsync();
        await Page.Locator(".places a").First.WaitForAsync();
        return Page.Url.Split('/')[^1];
    }

    /// <summary>A walk through two places; gives what must be found on paper.</summary>
    private async Task<IReadOnlyList<string>> WalkAsync(string inspection)
    {
        await Page.Locator(".drawing svg [data-place][aria-label^='Mech']").TapAsync();
        await Page.Locator(".place-drawing svg [data-place][aria-label^='water heater']").TapAsync();
        var sign = Page.Locator(".sign[data-condition='water-heater.relief-pipe-missing']");
        var title = (await sign.Locator("span").InnerTextAsync()).Trim();
        await sign.TapAsync();
        await Page.Locator(".aim").WaitForAsync();
        await Page.Locator(".thumb .shutter").TapAsync();
        await phone.UntilAsync(inspection, "photo.taken", 1);

        await Page.Locator(".sheet-acts button", new() { HasText = "Measure" }).TapAsync();
        await Page.Locator(".slip .pick button", new() { HasText = "Hot water temperature" }).TapAsync();
        foreach (var figure in (string[])["1", "4", "8"]) await Page.Locator(".pad-keys button", new() { HasText = figure }).First.TapAsync();
        await Page.Locator(".pad .done").TapAsync();
        await phone.UntilAsync(inspection, "reading.taken", 1);

        await Page.Locator(".sheet-head button").First.TapAsync();
        await Page.Locator(".head .back").TapAsync();
        await Page.Locator(".places a", new() { HasText = "Crawl space" }).TapAsync();
        await Page.GetByText("+ Something else could not be looked at").TapAsync();
        await Page.GetByLabel("What was not looked at?").FillAsync("The north third of the crawl space");
        await Page.GetByLabel("Why?").FillAsync("ducts block the way");
        await Page.GetByLabel("What should be done?").FillAsync("Have it looked at once the ducts are lifted.");
        await Page.Locator(".limits .big").TapAsync();
        await phone.UntilAsync(inspection, "limitation.recorded", 1);
        return [Address, title, "148", "The north third of the crawl space", "ducts block the way", "once the ducts are lifted"];
    }

    /// <summary>Solves, in place, whatever the page names as standing in the way.</summary>
    private async Task SettleAsync(string inspection)
    {
        await phone.OpenReadyAsync($"/visit/{inspection}/issue");
        for (var turn = 0; turn < 40; turn++)
        {
            await Page.Locator(".figures").WaitForAsync();
            await Task.Delay(400, TestContext.Current.CancellationToken);
            if ((await Page.Locator(".figures").InnerTextAsync()).StartsWith("Nothing stands in the way", StringComparison.Ordinal)) return;
            var before = (await phone.LinesAsync(inspection)).Count;
            if (await Page.Locator(".state-all").CountAsync() > 0)
            {
                await Page.Locator(".state-all").TapAsync();
                await Page.Locator(".never-entered .reasons button").First.TapAsync();
            }
            else if (await Page.Locator(".knot-row .out").CountAsync() > 0) await Page.Locator(".knot-row .out").First.TapAsync();
            else if (await Page.GetByText("Shows where we are").CountAsync() > 0) await Page.GetByText("Shows where we are").First.TapAsync();
            else Assert.Fail("Something stands in the way that this walk did not expect: " + await Page.Locator("main").InnerTextAsync());
            for (var wait = 0; (await phone.LinesAsync(inspection)).Count == before && wait < 100; wait++) await Task.Delay(100, TestContext.Current.CancellationToken);
        }

        Assert.Fail("Forty acts did not settle what stands in the way: " + await Page.Locator("main").InnerTextAsync());
    }

    private async Task WorkingCopyAsync(string inspection)
    {
        await phone.OpenReadyAsync($"/visit/{inspection}/report");
        var paper = Page.GetByRole(AriaRole.Button, new() { Name = "Save as PDF" });
        await Assertions.Expect(paper).ToBeEnabledAsync(new() { Timeout = 90_000 });
        var saved = Page.WaitForDownloadAsync(new() { Timeout = 90_000 });
        await paper.TapAsync();
        using var document = PdfDocument.Open((await (await saved).PathAsync())!);
        Assert.Contains("Workingcopy", Text(document), StringComparison.OrdinalIgnoreCase);
        Assert.Contains(Squeeze(Address), Text(document), StringComparison.Ordinal);
    }

    private async Task<int> SealAsync(string inspection)
    {
        await phone.OpenReadyAsync($"/visit/{inspection}/issue");
        var ask = Page.GetByRole(AriaRole.Button, new() { Name = "Ask the office to seal" });
        await Assertions.Expect(ask).ToBeEnabledAsync();
        await ask.TapAsync();
        await Assertions.Expect(Page.GetByText("Edition 1 is sealed")).ToBeVisibleAsync(new() { Timeout = 60_000 });
        await phone.UntilAsync(inspection, "edition.sealed", 1);
        // Its papers come along at once, since the way home may have no signal.
        await Assertions.Expect(Page.Locator(".steps")).ToHaveCountAsync(0);
        await Assertions.Expect(Page.Locator("[data-edition='1']")).ToBeVisibleAsync();
        return (await phone.LinesAsync(inspection)).First(line => line.GetProperty("type").GetString() == "edition.sealed").GetProperty("body").GetProperty("number").GetInt32();
    }

    private async Task CheckPaperAsync(string inspection, int number, IReadOnlyList<string> expected)
    {
        using var client = await office.ClientAsync();
        var bytes = await client.GetByteArrayAsync(string.Create(CultureInfo.InvariantCulture, $"/office/inspections/{inspection}/editions/{number}/pdf"), TestContext.Current.CancellationToken);
        using var document = PdfDocument.Open(bytes);
        var text = Text(document);
        Assert.All(expected, words => Assert.Contains(Squeeze(words), text, StringComparison.OrdinalIgnoreCase));
        Assert.DoesNotContain("Workingcopy", text, StringComparison.OrdinalIgnoreCase);
        Assert.True(document.GetPages().Sum(page => page.GetImages().Count()) >= 1, "the photograph is not in the report");
    }

    /// <summary>What was issued is in hand where the inspector stands: opened and handed on with the office out of reach, byte for byte as sealed.</summary>
    private async Task HandOnAsync(string inspection)
    {
        var sealedAs = (await phone.LinesAsync(inspection)).First(line => line.GetProperty("type").GetString() == "edition.sealed").GetProperty("body");
        await phone.OpenReadyAsync($"/visit/{inspection}");
        var edition = Page.Locator("[data-edition='1']");
        var saved = Page.WaitForDownloadAsync(new() { Timeout = 90_000 });
        await edition.GetByRole(AriaRole.Button, new() { Name = "Share PDF" }).TapAsync();
        var download = await saved;
        Assert.StartsWith("14-alder-bend-harlow-falls-", download.SuggestedFilename, StringComparison.Ordinal);
        Assert.EndsWith("-edition-1.pdf", download.SuggestedFilename, StringComparison.Ordinal);
        Assert.Equal(sealedAs.GetProperty("pdf").GetString(), Purlin.Journal.Sha.Of(await File.ReadAllBytesAsync((await download.PathAsync())!, TestContext.Current.CancellationToken)));
        await edition.GetByRole(AriaRole.Link, new() { Name = "Open" }).TapAsync();
        await Assertions.Expect(Page.FrameLocator("iframe").GetByText(Address).First).ToBeAttachedAsync();
        await Page.MeetsAsync("an edition");
    }

    // Kerned letters come without reliable spaces: both sides are compared without any.
    private static string Text(PdfDocument document) => Squeeze(string.Concat(document.GetPages().SelectMany(page => page.Letters).Select(letter => letter.Value)));

    private static string Squeeze(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));

    public async ValueTask DisposeAsync()
    {
        if (phone is not null) await phone.DisposeAsync();
        await office.DisposeAsync();
    }
}
