using Purlin.Field.Tests.App;

namespace Purlin.Field.Tests;

/// <summary>Notes on the phone: shown where they were made, also of a thing, and spoken for in a tap or two before issue.</summary>
public sealed class Notes(Browser browser) : IAsyncLifetime
{
    private TinyHost host = null!;
    private Phone phone = null!;

    private IPage Page => phone.Page;

    public async ValueTask InitializeAsync()
    {
        host = await TinyHost.StartAsync();
        phone = await browser.PhoneAsync(host.Address, worker: true);
    }

    public async ValueTask DisposeAsync()
    {
        await phone.DisposeAsync();
        await host.DisposeAsync();
    }

    [Fact]
    public async Task A_note_on_a_thing_is_shown_where_it_was_made_and_becomes_a_matter_in_two_taps()
    {
        await phone.OpenBareAsync();
        var seed = await phone.SeedAsync();
        await phone.OpenReadyAsync(seed.PlaceUrl(seed.Mechanical));
        await Page.Locator(".thing[data-thing='water heater']").TapAsync();
        await Page.Locator(".sayline input").FillAsync("smell of gas");
        await Page.Locator(".proposals .as-said").TapAsync();
        await phone.UntilAsync(seed.Insp, "note.written", 1);
        var note = (await phone.LinesAsync(seed.Insp))[^1].GetProperty("body");
        Assert.Equal(seed.WaterHeater, note.GetProperty("about").GetString());
        Assert.Equal(17, note.GetProperty("part").GetString()!.Length);
        await Assertions.Expect(Page.Locator(".notes .note")).ToContainTextAsync("smell of gas");
        await Page.Locator(".sheet-head button").First.TapAsync();
        await Assertions.Expect(Page.Locator(".notes .note")).ToContainTextAsync("Water heater");

        await phone.OpenReadyAsync(seed.Url("/issue"));
        var row = Page.Locator(".speak[data-speak]");
        await row.GetByRole(AriaRole.Button, new() { Name = "A matter of its own" }).TapAsync();
        await row.Locator(".weights button").First.TapAsync();
        await phone.UntilAsync(seed.Insp, "note.fated", 1);
        var fate = (await phone.LinesAsync(seed.Insp))[^1].GetProperty("body");
        Assert.Equal(("matter", "smell of gas", "make safe"), (fate.GetProperty("how").GetString(), fate.GetProperty("title").GetString(), fate.GetProperty("weight").GetString()));
        await Assertions.Expect(row).ToHaveCountAsync(0);

        await phone.OpenReadyAsync(seed.Url("/report"));
        await Assertions.Expect(Page.FrameLocator("iframe").Locator("body")).ToContainTextAsync("Smell of gas");
    }
}
