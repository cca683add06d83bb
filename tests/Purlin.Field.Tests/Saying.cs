using Purlin.Field.Tests.App;

namespace Purlin.Field.Tests;

/// <summary>What an inspector says in plain words is found in the rule book, and stays their own words when it is not.</summary>
public sealed class Saying(Browser browser) : IAsyncLifetime
{
    private TinyHost host = null!;
    private Phone phone = null!;

    private IPage Page => phone.Page;

    public async ValueTask InitializeAsync()
    {
        host = await TinyHost.StartAsync();
        phone = await browser.PhoneAsync(host.Address, worker: false);
    }

    // "Double tapped breaker" and "hot water tank" are words of the trade (common practice).
    [Fact]
    public async Task Plain_words_lead_to_the_condition_and_other_words_stay_as_they_are()
    {
        await phone.OpenBareAsync();
        var seed = await phone.SeedAsync();
        await phone.OpenReadyAsync(seed.PlaceUrl(seed.Mechanical));
        await SayAsync("double tapped brea");
        var meant = Page.Locator(".proposals [data-recognised='panelboard.breaker-doubled']");
        await Assertions.Expect(meant).ToContainTextAsync("panelboard, new here");
        Assert.InRange(await Page.Locator(".proposals [data-recognised]").CountAsync(), 1, 5);
        await meant.TapAsync();
        await phone.UntilAsync(seed.Insp, "observation.made", 1);
        // Its thing is in hand now, so more is said of that.
        await Assertions.Expect(Page.Locator(".sheet h2")).ToHaveTextAsync("Panelboard");
        await SayAsync("bees hum behind the plaster");
        await Page.Locator(".proposals .as-said").TapAsync();
        await phone.UntilAsync(seed.Insp, "note.written", 1);
        await Assertions.Expect(Page.Locator(".sayline input")).ToHaveValueAsync("");

        var lines = await phone.LinesAsync(seed.Insp);
        var panel = lines.Last(line => line.GetProperty("type").GetString() == "component.added");
        var name = $"{panel.GetProperty("dev").GetString()}.{panel.GetProperty("seq").GetInt32()}";
        var seen = lines.Single(line => line.GetProperty("type").GetString() == "observation.made").GetProperty("body");
        Assert.Equal(("panelboard.breaker-doubled", "seen", seed.Mechanical, name), (seen.GetProperty("condition").GetString(), seen.GetProperty("outcome").GetString(), seen.GetProperty("place").GetString(), seen.GetProperty("component").GetString()));
        var note = lines.Single(line => line.GetProperty("type").GetString() == "note.written").GetProperty("body");
        Assert.Equal(("bees hum behind the plaster", name), (note.GetProperty("text").GetString(), note.GetProperty("about").GetString()));
        Assert.Empty(phone.PageErrors);
    }

    public async ValueTask DisposeAsync()
    {
        await phone.DisposeAsync();
        await host.DisposeAsync();
    }

    private Task SayAsync(string words) => Page.Locator(".sayline input").FillAsync(words);
}
