using System.Text.Json;
using Purlin.Field.Tests.App;

namespace Purlin.Field.Tests;

/// <summary>What a reckoning needs is asked for on the phone, in the order in which a person comes to it; the one thing still missing is one tap away.</summary>
public sealed class Facts(Browser browser) : IAsyncLifetime
{
    private TinyHost host = null!;
    private Phone phone = null!;
    private Seed seed = null!;

    public async ValueTask InitializeAsync() => host = await TinyHost.StartAsync();

    public ValueTask DisposeAsync() => host.DisposeAsync();

    [Fact]
    public async Task A_gas_pipe_is_judged_from_seven_answers_and_asks_for_the_one_that_is_missing()
    {
        phone = await browser.PhoneAsync(host.Address, 390, 844);
        await phone.OpenBareAsync();
        seed = await phone.SeedAsync();
        await phone.OpenReadyAsync(seed.PlaceUrl(seed.Mechanical));

        await AddAsync("gas piping");
        // After each answer the next question stands ready: no tap between them.
        await TapAsync("[data-answer='black steel']", "[data-answer='3/4 in']", ".fact-entry .pad-keys button >> text=6", ".fact-entry .pad-keys button >> text=0", ".fact-entry .pad .done");
        await phone.UntilAsync(seed.Insp, "fact.stated", 3);
        Assert.Equal(["material black steel ", "pipe size 3/4 in ", "longest run 60 ft"], await StatedAsync());

        await TapAsync(".sheet-head button", ".thing[data-thing='water heater']", ".add-fact", "[data-fact='fuel']", "[data-answer='natural gas']");
        await phone.UntilAsync(seed.Insp, "fact.stated", 4);
        await TapAsync(".sheet-head button");
        // The pipe's sum now lacks one number alone.
        await Assertions.Expect(phone.Page.Locator(".ask[data-asks='gas-pipe']")).ToContainTextAsync("Record the input of the water heater: then the gas pipe size can be judged.");
        await TapAsync(".ask[data-asks='gas-pipe'] button");
        await Assertions.Expect(phone.Page.Locator(".fact-entry h3")).ToHaveTextAsync("Input");
        foreach (var figure in "199000") await TapAsync($".fact-entry .pad-keys button >> text={figure}");
        await TapAsync(".fact-entry .pad .done");
        await phone.UntilAsync(seed.Insp, "fact.stated", 5);
        await TapAsync(".sheet-head button");
        Assert.Equal("input 199000 Btu/h", (await StatedAsync())[^1]);
        await Assertions.Expect(phone.Page.Locator(".ask[data-asks='gas-pipe']")).ToHaveCountAsync(0);

        // 199 ft³/h are more than the 137 that 3/4 in carries over 60 ft (IFGC 2018, Table 402.4(2)).
        await phone.OpenReadyAsync(seed.Url("/matters"));
        await Assertions.Expect(phone.Page.GetByText("Gas pipe looks too small").First).ToBeVisibleAsync();
        Assert.Empty(phone.PageErrors);
    }

    [Fact]
    public async Task What_holds_for_the_whole_house_is_recorded_on_its_ground()
    {
        phone = await browser.PhoneAsync(host.Address, 390, 844);
        await phone.OpenBareAsync();
        seed = await phone.SeedAsync();
        await phone.OpenReadyAsync(seed.PlaceUrl(seed.Site));
        await TapAsync(".thing[data-thing='house']", ".add-fact", "[data-answer='4 marine']");
        await phone.UntilAsync(seed.Insp, "fact.stated", 1);
        Assert.Equal(["climate zone 4 marine "], await StatedAsync());
        Assert.Empty(phone.PageErrors);
    }

    [Fact]
    public async Task A_line_of_levels_is_taken_without_closing_the_keys_and_judged()
    {
        phone = await browser.PhoneAsync(host.Address, 390, 844);
        await phone.OpenBareAsync();
        seed = await phone.SeedAsync();
        await phone.OpenReadyAsync(seed.PlaceUrl(seed.Site));
        await TapAsync(".thing[data-thing='grading']", "[data-reading='ground level']");
        // Level at the wall, then 2, 4 ... 10 ft out: the ground rises by 5 in, so it falls toward the house (IRC R401.3).
        foreach (var level in "012345") await TapAsync($".slip .pad-keys button >> text={level}", ".slip .pad .done");
        await phone.UntilAsync(seed.Insp, "reading.taken", 6);
        var points = (await phone.LinesAsync(seed.Insp)).Where(line => line.GetProperty("type").GetString() == "reading.taken").Select(line => line.GetProperty("body").GetProperty("point").GetProperty("x").GetDouble());
        Assert.Equal([0, 2, 4, 6, 8, 10], points);
        await phone.OpenReadyAsync(seed.Url("/matters"));
        await Assertions.Expect(phone.Page.GetByText("Ground slopes toward the house").First).ToBeVisibleAsync();
        Assert.Empty(phone.PageErrors);
    }

    private async Task AddAsync(string kind)
    {
        await phone.Page.Locator(".more-things input").FillAsync(kind);
        await TapAsync($".token[data-kind='{kind}']", ".add-fact");
    }

    private async Task TapAsync(params string[] selectors)
    {
        foreach (var selector in selectors) await phone.Page.Locator(selector).First.TapAsync();
    }

    private async Task<IReadOnlyList<string>> StatedAsync() =>
        [.. (await phone.LinesAsync(seed.Insp)).Where(line => line.GetProperty("type").GetString() == "fact.stated").Select(line => Said(line.GetProperty("body")))];

    private static string Said(JsonElement body) => $"{body.GetProperty("fact").GetString()} {body.GetProperty("value")} {(body.TryGetProperty("unit", out var unit) ? unit.GetString() : "")}";
}
