using Purlin.Field.Tests.App;

namespace Purlin.Field.Tests;

/// <summary>The drawn place: touching a thing, its signs, and what exactly is kept.</summary>
public sealed class Drawn(Browser browser) : IAsyncLifetime
{
    private TinyHost host = null!;
    private Phone phone = null!;
    private Seed seed = null!;

    private IPage Page => phone.Page;

    public async ValueTask InitializeAsync()
    {
        host = await TinyHost.StartAsync();
        phone = await browser.PhoneAsync(host.Address, 390, 844);
        await phone.OpenBareAsync();
        seed = await phone.SeedAsync();
        await phone.OpenReadyAsync(seed.PlaceUrl(seed.Bathroom));
        await Page.Locator(".place-drawing svg [data-place]").First.WaitForAsync();
    }

    [Fact]
    public async Task A_usual_thing_that_is_sound_takes_two_taps_and_keeps_exactly_what_was_shown()
    {
        await Page.Locator(".place-drawing svg [data-place][aria-label^='toilet']").TapAsync();
        var shown = await Page.Locator(".sign").EvaluateAllAsync<string[]>("rows => rows.map(row => row.dataset.condition)");
        Assert.InRange(shown.Length, 3, 8);
        await Page.Locator(".rest-sound").TapAsync();
        await phone.UntilAsync(seed.Insp, "observation.made", shown.Length);
        var kept = (await phone.LinesAsync(seed.Insp)).Where(line => line.GetProperty("type").GetString() == "observation.made").Select(line => line.GetProperty("body")).ToList();
        Assert.Equal(shown.Order(), kept.Select(body => body.GetProperty("condition").GetString()!).Order());
        Assert.All(kept, body => Assert.Equal("clear", body.GetProperty("outcome").GetString()));
        await Assertions.Expect(Page.Locator(".thing.sound[data-thing='toilet']")).ToBeVisibleAsync();
        Assert.Empty(phone.PageErrors);
    }

    [Fact]
    public async Task A_sign_seen_is_kept_at_once_and_the_next_photograph_shows_it()
    {
        await Page.Locator(".place-drawing svg [data-place][aria-label^='toilet']").TapAsync();
        await Page.Locator(".sign[data-condition='toilet.loose']").TapAsync();
        await phone.UntilAsync(seed.Insp, "observation.made", 1);
        await Page.Locator(".sign-answered.seen[data-condition='toilet.loose']").WaitForAsync();
        await Page.Locator(".thumb .shutter").TapAsync();
        await phone.UntilAsync(seed.Insp, "photo.taken", 1);
        var lines = await phone.LinesAsync(seed.Insp);
        var seen = lines.Last(line => line.GetProperty("type").GetString() == "observation.made");
        var photo = lines.Last(line => line.GetProperty("type").GetString() == "photo.taken").GetProperty("body");
        Assert.Equal($"{seen.GetProperty("dev").GetString()}.{seen.GetProperty("seq").GetInt32()}", photo.GetProperty("for").GetString());
        Assert.Equal(seen.GetProperty("body").GetProperty("component").GetString(), photo.GetProperty("component").GetString());
    }

    [Fact]
    public async Task What_is_not_here_is_said_in_two_taps_and_leaves_the_drawing()
    {
        await Page.Locator(".thing[data-thing='window']").TapAsync();
        await Page.Locator(".sheet-head button", new() { HasText = "not here" }).TapAsync();
        await Assertions.Expect(Page.Locator(".thing[data-thing='window']")).ToHaveCountAsync(0);
        await Assertions.Expect(Page.Locator(".place-drawing svg [data-place][aria-label^='window']")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task A_place_that_was_not_entered_takes_two_taps_and_is_a_limitation()
    {
        await Page.GetByText("Could not enter or look at this place").TapAsync();
        await Page.Locator(".not-entered .reasons button", new() { HasText = "locked" }).TapAsync();
        await phone.UntilAsync(seed.Insp, "limitation.recorded", 1);
    }

    [Fact]
    public async Task Another_thing_is_found_by_its_name()
    {
        await Page.GetByPlaceholder("Another thing", new() { Exact = false }).FillAsync("skyl");
        await Page.Locator(".token[data-kind='skylight']").TapAsync();
        await phone.UntilAsync(seed.Insp, "component.added", 2);
        await Assertions.Expect(Page.Locator(".sheet h2")).ToHaveTextAsync("Skylight");
    }

    public async ValueTask DisposeAsync()
    {
        if (phone is not null) await phone.DisposeAsync();
        await host.DisposeAsync();
    }
}
