using Purlin.Field.Tests.App;

namespace Purlin.Field.Tests;

/// <summary>What a person does with the app in a house without a signal.</summary>
public sealed class Offline(Browser browser) : IAsyncLifetime
{
    private TinyHost host = null!;
    private Phone phone = null!;

    public async ValueTask InitializeAsync()
    {
        host = await TinyHost.StartAsync();
        phone = await browser.PhoneAsync(host.Address);
    }

    [Fact]
    public async Task A_few_answers_draw_the_house_and_its_places()
    {
        var page = await phone.OpenReadyAsync("/new");
        await page.GetByLabel("Where is the house?").FillAsync("14 Alder Bend, Harlow Falls");
        foreach (var (question, answer) in ((string, string)[])[("What does it stand on", "crawl space"), ("Attic", "walkable"), ("Garage", "attached")])
            await page.Locator("fieldset", new() { HasText = question }).GetByRole(AriaRole.Button, new() { Name = answer, Exact = true }).TapAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Draw the house" }).TapAsync();
        await Assertions.Expect(page.Locator(".drawing svg [data-place]").First).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator(".places a").First).ToBeVisibleAsync();
        // The drawing has an equal list: as many places in one as in the other.
        Assert.Equal(await page.Locator(".places a").CountAsync(), await page.Locator(".drawing svg [data-place]").CountAsync());
        await page.Locator(".drawing svg [data-place][aria-label^='Crawl space']").TapAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Crawl space", Exact = true })).ToBeVisibleAsync();
    }

    [Fact]
    public async Task The_first_photograph_does_not_wait_for_the_rest_of_the_program()
    {
        await phone.OpenBareAsync();
        var seed = await phone.SeedAsync();
        await phone.Page.EvaluateAsync("async ([insp, place]) => { const d = await import('/device/drafts.js'); d.noteWhere({ url: '/', scroll: 0, insp, place, name: 'Kitchen' }); await d.flush(); }", new[] { seed.Insp, seed.Kitchen });
        await phone.Context.RouteAsync("**/_framework/**", route => route.AbortAsync());
        var page = await phone.OpenAsync(seed.PlaceUrl(seed.Kitchen));
        await page.Locator("#capture .shutter").TapAsync();
        await phone.UntilAsync(seed.Insp, "photo.taken", 1);
        var photo = (await phone.LinesAsync(seed.Insp))[^1];
        Assert.Equal(seed.Kitchen, photo.GetProperty("body").GetProperty("place").GetString());
        await Assertions.Expect(page.Locator("#capture .undo")).ToContainTextAsync("Photograph 1 of Kitchen");
        await page.Locator("#capture .undo button").TapAsync();
        await phone.UntilAsync(seed.Insp, "entry.withdrawn", 1);
        Assert.Null(await page.EvaluateAsync<string?>("() => document.documentElement.dataset.ready ?? null"));
    }

    [Fact]
    public async Task The_camera_page_works_alone()
    {
        await phone.OpenBareAsync();
        var seed = await phone.SeedAsync();
        var page = await phone.OpenAsync("/capture.html");
        await page.Locator("#capture .shutter").TapAsync();
        await phone.UntilAsync(seed.Insp, "photo.taken", 1);
        await page.GetByPlaceholder("Type or dictate a note").FillAsync("hatch painted shut");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep" }).TapAsync();
        await phone.UntilAsync(seed.Insp, "note.written", 1);
    }

    [Fact]
    public async Task After_a_crash_one_is_exactly_where_one_was_with_the_half_typed_words()
    {
        await phone.OpenBareAsync();
        var seed = await phone.SeedAsync();
        var page = await phone.OpenReadyAsync(seed.PlaceUrl(seed.Kitchen));
        await page.Locator(".sayline input").PressSequentiallyAsync("stain below the si");
        await phone.UntilTrueAsync("async key => await (await import('/device/store.js')).get('meta', key) === 'stain below the si'", $"draft:{seed.Insp}/note/{seed.Kitchen}");
        await page.CloseAsync();
        page = await phone.OpenReadyAsync("/");
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Kitchen", Exact = true })).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator(".sayline input")).ToHaveValueAsync("stain below the si");
    }

    [Fact]
    public async Task A_page_that_ends_while_a_picture_is_chosen_names_the_lost_picture()
    {
        await phone.OpenBareAsync();
        var seed = await phone.SeedAsync();
        await phone.Page.EvaluateAsync("([insp, place]) => { import('/device/camera.js').then(camera => camera.choose({ insp, place, at: Date.now() })); }", new[] { seed.Insp, seed.Kitchen });
        await phone.UntilTrueAsync("async () => !!(await (await import('/device/store.js')).get('meta', 'intent'))");
        await phone.Page.CloseAsync();
        var page = await phone.OpenReadyAsync("/");
        await Assertions.Expect(page.Locator(".refused")).ToContainTextAsync("was not kept; everything with a tick is");
    }

    [Fact]
    public async Task What_was_taken_back_can_stand_again()
    {
        await phone.OpenBareAsync();
        var seed = await phone.SeedAsync();
        var page = await phone.OpenReadyAsync(seed.PlaceUrl(seed.Kitchen));
        await page.Locator(".thing").First.TapAsync();
        await page.Locator(".sign").First.TapAsync();
        await page.Locator(".undo button").TapAsync();
        await Assertions.Expect(page.Locator(".sign-answered")).ToHaveCountAsync(0);
        await phone.OpenReadyAsync(seed.Url("/acts"));
        await page.GetByRole(AriaRole.Button, new() { Name = "Restore" }).First.TapAsync();
        await phone.UntilAsync(seed.Insp, "entry.restored", 1);
        Assert.Equal(1, await phone.CountAsync(seed.Insp, "observation.made"));
    }

    [Fact]
    public async Task Pictures_are_made_small_beside_their_originals()
    {
        await phone.OpenBareAsync();
        var seed = await phone.SeedAsync();
        var page = await phone.OpenReadyAsync(seed.PlaceUrl(seed.Kitchen));
        await page.Locator(".thumb .shutter").TapAsync();
        await phone.UntilAsync(seed.Insp, "photo.taken", 1);
        var body = (await phone.LinesAsync(seed.Insp)).Last(line => line.GetProperty("type").GetString() == "photo.taken").GetProperty("body");
        var sizes = await page.EvaluateAsync<int[]>("""
            async sha => {
              const { picture } = await import('/device/derive.js');
              const wide = async size => { const made = await picture(sha, size); return (await createImageBitmap(new Blob([made.bytes], { type: made.type }))).width; };
              return [await wide(320), await wide(2048)];
            }
            """, body.GetProperty("sha").GetString());
        Assert.True(sizes[0] <= 320 && sizes[1] <= 2048 && sizes[1] >= sizes[0], $"thumbnail {sizes[0]}, view {sizes[1]}");
        await Assertions.Expect(page.Locator(".photos img")).ToBeVisibleAsync();
    }

    public async ValueTask DisposeAsync()
    {
        await phone.DisposeAsync();
        await host.DisposeAsync();
    }
}
