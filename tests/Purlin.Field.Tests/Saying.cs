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
        await Page.Locator(".own [data-recognised='panelboard.breaker-doubled']").TapAsync();
        await phone.UntilAsync(seed.Insp, "observation.made", 1);
        await SayAsync("bees hum behind the plaster");
        await Page.Locator(".own button[type=submit]").TapAsync();
        await phone.UntilAsync(seed.Insp, "observation.made", 2);

        var said = (await phone.LinesAsync(seed.Insp)).Where(line => line.GetProperty("type").GetString() == "observation.made").Select(line => line.GetProperty("body")).ToArray();
        Assert.Equal(("panelboard.breaker-doubled", "seen", seed.Mechanical), (said[0].GetProperty("condition").GetString(), said[0].GetProperty("outcome").GetString(), said[0].GetProperty("place").GetString()));
        Assert.Equal("bees hum behind the plaster", said[1].GetProperty("words").GetString());
        Assert.False(said[1].TryGetProperty("condition", out var none) && none.ValueKind == System.Text.Json.JsonValueKind.String);
        Assert.Empty(phone.PageErrors);
    }

    public async ValueTask DisposeAsync()
    {
        await phone.DisposeAsync();
        await host.DisposeAsync();
    }

    private async Task SayAsync(string words)
    {
        await Page.GetByText("Something else seen here").TapAsync();
        await Page.GetByLabel("What do you see?").FillAsync(words);
    }
}
