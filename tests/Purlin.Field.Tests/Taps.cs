using Purlin.Field.Tests.App;

namespace Purlin.Field.Tests;

/// <summary>
/// The ten commonest acts and what each may cost, counted tap by tap from the capture screen. Taps are the currency: a needless gloved tap
/// a photograph is minutes a visit.
/// </summary>
public sealed class Taps(Browser browser) : IAsyncLifetime
{
    private TinyHost host = null!;
    private Phone phone = null!;
    private Seed seed = null!;
    private int taps;
    private const string Heater = ".thing[data-thing='water heater']";

    public async ValueTask InitializeAsync() => host = await TinyHost.StartAsync();

    [Theory]
    [InlineData(390, 844, "day", "no")]
    [InlineData(390, 844, "dark", "no")]
    [InlineData(360, 780, "sun", "yes")]
    [InlineData(768, 1024, "day", "no")]
    public async Task The_ten_commonest_acts_keep_their_budget(int width, int height, string theme, string glove)
    {
        phone = await browser.PhoneAsync(host.Address, width, height);
        await phone.OpenBareAsync();
        seed = await phone.SeedAsync();
        await phone.Page.EvaluateAsync("([theme, glove]) => { localStorage.setItem('purlin-theme', theme); localStorage.setItem('purlin-glove', glove); }", new[] { theme, glove });
        await phone.OpenReadyAsync(seed.PlaceUrl(seed.Mechanical));
        await Assertions.Expect(phone.Page.Locator(".thing").First).ToBeVisibleAsync();

        await ActAsync("photo of this place", 1, "photo.taken", [".thumb .shutter"]);
        Assert.Equal(seed.Mechanical, await LastAsync("photo.taken", "place"));
        await ActAsync("photo of a thing", 2, "photo.taken", [Heater, ".thumb .shutter"]);
        Assert.Equal(seed.WaterHeater, await LastAsync("photo.taken", "component"));
        await ActAsync("could not see, with a reason", 2, "observation.made", [".could-not", ".reasons button"], isMany: true);
        Assert.Equal("not visible", await LastAsync("observation.made", "outcome"));
        Assert.NotNull(await LastAsync("observation.made", "reason"));
        await ActAsync("a usual thing, sound", 2, "observation.made", [".thing.usual", ".rest-sound"], isMany: true);
        Assert.Equal("clear", await LastAsync("observation.made", "outcome"));
        await ActAsync("reading of three figures", 5, "reading.taken", ["[data-reading='hot water temperature']", ".pad-keys button >> text=1", ".pad-keys button >> text=2", ".pad-keys button >> text=4", ".pad .done"]);
        Assert.Contains("\"value\":124", (await BodyAsync("reading.taken")).GetRawText(), StringComparison.Ordinal);
        await ActAsync("nameplate, read later", 1, "photo.placed", [".thumb .act >> text=plate"]);
        Assert.Equal("nameplate", await LastAsync("photo.placed", "use"));
        await ActAsync("sound note, started and stopped", 2, "sound.taken", [".sound-note[aria-pressed=false]", ".sound-note[aria-pressed=true]"]);
        await ActAsync("undo", 1, "entry.withdrawn", [".undo button"]);
        await ActAsync("sign seen, with a photo", 3, "photo.taken", [".thing.usual", ".sign", ".thumb .shutter"]);
        Assert.NotNull(await LastAsync("photo.taken", "for"));
        await TapAsync(".sheet-head button");
        await WayAsync("next place, neighbour", 1, [".head .next"], "Site");
        await WayAsync("next place, any, on the drawing", 2, [".head .back", ".drawing svg [data-place][aria-label^='Attic']"], "Attic");
        Assert.Empty(phone.PageErrors);
    }

    private async Task ActAsync(string act, int budget, string type, string[] steps, bool isMany = false)
    {
        var before = await phone.CountAsync(seed.Insp, type);
        taps = 0;
        foreach (var step in steps) await TapAsync(step);
        await phone.UntilAsync(seed.Insp, type, before + 1);
        Assert.True(taps <= budget, $"{act} took {taps} taps; {budget} are allowed");
        // One act may keep several signs; else it keeps one thing and no more.
        if (!isMany) Assert.Equal(before + 1, await phone.CountAsync(seed.Insp, type));
    }

    private async Task WayAsync(string act, int budget, string[] steps, string place)
    {
        taps = 0;
        foreach (var step in steps) await TapAsync(step);
        await Assertions.Expect(phone.Page.GetByRole(AriaRole.Heading, new() { Name = place, Exact = true, Level = 1 })).ToBeVisibleAsync();
        Assert.True(taps <= budget, $"{act} took {taps} taps; {budget} are allowed");
    }

    private async Task TapAsync(string selector)
    {
        taps++;
        await phone.Page.Locator(selector).First.TapAsync();
    }

    private async Task<System.Text.Json.JsonElement> BodyAsync(string type) => (await phone.LinesAsync(seed.Insp)).Last(line => line.GetProperty("type").GetString() == type).GetProperty("body");

    private async Task<string?> LastAsync(string type, string member) => (await BodyAsync(type)).TryGetProperty(member, out var value) ? value.GetString() : null;

    public async ValueTask DisposeAsync()
    {
        if (phone is not null) await phone.DisposeAsync();
        await host.DisposeAsync();
    }
}
