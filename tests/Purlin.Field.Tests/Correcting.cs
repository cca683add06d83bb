using System.Text.Json;
using Purlin.Field.Tests.App;

namespace Purlin.Field.Tests;

/// <summary>What was entered stands as it was entered, without a second button, and is put right where it is listed.</summary>
public sealed class Correcting(Browser browser) : IAsyncLifetime
{
    private TinyHost host = null!;
    private Phone phone = null!;
    private Seed seed = null!;

    private IPage Page => phone.Page;

    public async ValueTask InitializeAsync()
    {
        host = await TinyHost.StartAsync();
        phone = await browser.PhoneAsync(host.Address);
        await phone.OpenBareAsync();
        seed = await phone.SeedAsync();
    }

    [Fact]
    public async Task A_reading_is_put_right_where_it_is_listed_and_keeps_its_point()
    {
        await phone.OpenReadyAsync(seed.PlaceUrl(seed.Site));
        await TapAsync(".thing[data-thing='grading']", "[data-reading='ground level']");
        foreach (var level in (string[])["0", "64"])
        {
            foreach (var figure in level) await TapAsync($".slip .pad-keys button >> text={figure}");
            await TapAsync(".slip .pad .done");
        }
        await phone.UntilAsync(seed.Insp, "reading.taken", 2);
        await TapAsync(".slip header .quiet");
        var wrong = Page.Locator(".taken", new() { HasText = "at 2 ft" });
        await Assertions.Expect(wrong).ToContainTextAsync("64 in");
        await wrong.GetByRole(AriaRole.Button, new() { Name = "Change" }).TapAsync();
        // Six and three sixteenths, as the tape shows it.
        await TapAsync(".slip .pad-keys button >> text=6", ".slip .pad-parts button >> text=1/8", ".slip .pad-parts button >> text=+1/16");
        await Assertions.Expect(Page.Locator(".slip .pad-figure")).ToContainTextAsync("6 3/16 in");
        await TapAsync(".slip .pad .done");
        await phone.UntilAsync(seed.Insp, "reading.taken", 3);
        await Assertions.Expect(Page.Locator(".taken", new() { HasText = "at 2 ft" })).ToContainTextAsync("6 3/16 in");
        var body = (await BodiesAsync("reading.taken"))[^1];
        Assert.Equal(6.1875, body.GetProperty("amount").GetProperty("value").GetDouble());
        Assert.Equal(2, body.GetProperty("point").GetProperty("x").GetDouble());
        Assert.Equal(1, await phone.CountAsync(seed.Insp, "entry.withdrawn"));
        Assert.Empty(phone.PageErrors);
    }

    [Fact]
    public async Task Where_exactly_is_kept_when_one_goes_on_and_its_photograph_goes_with_it()
    {
        await phone.OpenReadyAsync(seed.PlaceUrl(seed.Mechanical));
        var row = Page.Locator(".sign-answered[data-condition='water-heater.relief-pipe-missing']");
        await TapAsync(".thing[data-thing='water heater']", ".sign[data-condition='water-heater.relief-pipe-missing']");
        await TapAsync(".thumb .shutter");
        await phone.UntilAsync(seed.Insp, "photo.taken", 1);
        await row.Locator(".spot input").FillAsync("left of the flue");
        // No second button: the next thing one does is enough.
        await TapAsync(".sheet-head button", ".head .next");
        await phone.UntilAsync(seed.Insp, "observation.made", 2);
        var seen = (await LinesOfAsync("observation.made"))[^1];
        Assert.Equal("left of the flue", seen.GetProperty("body").GetProperty("spot").GetString());
        var placed = (await BodiesAsync("photo.placed"))[^1];
        Assert.Equal($"{seen.GetProperty("dev").GetString()}.{seen.GetProperty("seq").GetInt32()}", placed.GetProperty("for").GetString());
        // What was done on the last screen is not undone on this one.
        await Assertions.Expect(Page.Locator(".undo")).ToHaveCountAsync(0);
        Assert.Empty(phone.PageErrors);
    }

    [Fact]
    public async Task Counts_stand_as_they_were_dialled()
    {
        await phone.OpenReadyAsync(seed.PlaceUrl(seed.Kitchen));
        // One that the book takes samples of.
        await TapAsync(".thing[data-thing='receptacle']", ".sign[data-condition='receptacle.no-gfci']");
        var counts = Page.Locator(".counts").First;
        await counts.Locator(".figure-key", new() { HasText = "tried" }).TapAsync();
        foreach (var figure in "18") await TapAsync($".counts .pad-keys button >> text={figure}");
        await TapAsync(".counts .pad .done");
        await counts.GetByRole(AriaRole.Button, new() { Name = "one more, of" }).TapAsync();
        // Gone on before it had come to rest: it is kept all the same, once.
        await TapAsync(".sheet-head button");
        await phone.UntilAsync(seed.Insp, "observation.made", 2);
        var sample = (await BodiesAsync("observation.made"))[^1].GetProperty("sample");
        Assert.Equal([18, 19], [sample.GetProperty("tried").GetInt32(), sample.GetProperty("of").GetInt32()]);
        Assert.Empty(phone.PageErrors);
    }

    [Fact]
    public async Task What_was_kept_unseen_without_a_reason_is_asked_for_one_there_and_before_issue()
    {
        // Another phone, or an older version, may have kept it without one.
        await Page.EvaluateAsync("""
            async ([insp, place, component]) => {
              const { write } = await import('/device/writing.js');
              await write(insp, [{ type: 'observation.made', body: { place, component, condition: 'water-heater.relief-pipe-missing', outcome: 'not visible' } }]);
            }
            """, new[] { seed.Insp, seed.Mechanical, seed.WaterHeater });
        await phone.OpenReadyAsync(seed.PlaceUrl(seed.Mechanical));
        await TapAsync(".thing[data-thing='water heater']");
        await Assertions.Expect(Page.Locator(".sign-answered[data-condition='water-heater.relief-pipe-missing']")).ToContainTextAsync("could not see: why?");
        await phone.OpenReadyAsync(seed.Url("/issue"));
        var open = Page.Locator(".duty", new() { Has = Page.GetByLabel("Why could it not be looked at?") }).First;
        await open.GetByLabel("Why could it not be looked at?").FillAsync("boxes in front of it");
        await open.GetByRole(AriaRole.Button, new() { Name = "Keep" }).TapAsync();
        await phone.UntilAsync(seed.Insp, "observation.made", 2);
        Assert.Equal("boxes in front of it", (await BodiesAsync("observation.made"))[^1].GetProperty("reason").GetString());
        await Assertions.Expect(Page.GetByLabel("Why could it not be looked at?")).ToHaveCountAsync(0);
        Assert.Empty(phone.PageErrors);
    }

    [Fact]
    public async Task Undo_says_what_it_took_back_and_puts_it_back()
    {
        await phone.OpenReadyAsync(seed.PlaceUrl(seed.Kitchen));
        await TapAsync(".thing", ".sign");
        await phone.UntilAsync(seed.Insp, "observation.made", 1);
        await TapAsync(".undo button");
        await Assertions.Expect(Page.Locator(".undo")).ToContainTextAsync("Taken back:");
        await Assertions.Expect(Page.Locator(".sign-answered")).ToHaveCountAsync(0);
        await Page.Locator(".undo button", new() { HasText = "Put back" }).TapAsync();
        await Assertions.Expect(Page.Locator(".sign-answered")).ToHaveCountAsync(1);
        await phone.OpenReadyAsync(seed.Url("/acts"));
        Assert.Empty(phone.PageErrors);
    }

    [Fact]
    public async Task A_choice_pressed_again_stays_chosen()
    {
        await phone.OpenReadyAsync(seed.PlaceUrl(seed.Mechanical));
        await TapAsync(".thing[data-thing='water heater']", ".add-fact");
        var chosen = Page.Locator(".fact-entry .choice button[aria-pressed=true]");
        var word = await chosen.InnerTextAsync();
        await chosen.TapAsync();
        await Assertions.Expect(chosen).ToHaveTextAsync(word);
    }

    [Fact]
    public async Task After_a_kill_the_thing_in_hand_and_the_scroll_are_as_they_were()
    {
        await phone.OpenReadyAsync(seed.PlaceUrl(seed.Mechanical));
        await TapAsync(".thing[data-thing='water heater']");
        await Page.Locator(".sign").First.WaitForAsync();
        await phone.UntilTrueAsync("() => { scrollTo(0, 300); return Math.abs(scrollY - 300) < 5; }");
        await phone.UntilTrueAsync("async () => { const where = await (await import('/device/store.js')).get('meta', 'where'); return where?.scroll > 250 && !!where.component; }");
        await Page.CloseAsync();
        await phone.OpenReadyAsync("/");
        await Assertions.Expect(Page.Locator(".sheet h2")).ToHaveTextAsync("Water heater");
        await phone.UntilTrueAsync("() => Math.abs(scrollY - 300) < 5");
    }

    private async Task TapAsync(params string[] selectors)
    {
        foreach (var selector in selectors) await Page.Locator(selector).First.TapAsync();
    }

    private async Task<IReadOnlyList<JsonElement>> LinesOfAsync(string type) => [.. (await phone.LinesAsync(seed.Insp)).Where(line => line.GetProperty("type").GetString() == type)];

    private async Task<IReadOnlyList<JsonElement>> BodiesAsync(string type) => [.. (await LinesOfAsync(type)).Select(line => line.GetProperty("body"))];

    public async ValueTask DisposeAsync()
    {
        await phone.DisposeAsync();
        await host.DisposeAsync();
    }
}
