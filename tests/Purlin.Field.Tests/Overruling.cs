using Purlin.Field.Tests.App;

namespace Purlin.Field.Tests;

/// <summary>The inspector decides: what was put otherwise stands with its reason, without a network, and can be taken back.</summary>
public sealed class Overruling(Browser browser) : IAsyncLifetime
{
    private const string Condition = "water-heater.relief-pipe-missing";
    private const string Reason = "a pipe is on order, and nobody uses the closet";
    private TinyHost host = null!;
    private Phone phone = null!;

    private IPage Page => phone.Page;

    public async ValueTask InitializeAsync()
    {
        host = await TinyHost.StartAsync();
        phone = await browser.PhoneAsync(host.Address, worker: true);
    }

    [Fact]
    public async Task A_weight_put_otherwise_stands_offline_with_its_reason_and_can_be_taken_back()
    {
        var seed = await SeenAsync();
        await phone.OpenReadyAsync(seed.Url());
        Assert.True(await Page.EvaluateAsync<bool>("async () => { await navigator.serviceWorker.ready; return true; }"));
        await Page.ReloadAsync();
        await phone.ReadyAsync();
        await host.StopAsync();

        await NumbersFitTheirBalloonsAsync();
        await Page.GetByText("The matters, heaviest first").TapAsync();
        await Assertions.Expect(Page.Locator(".matter-row")).ToHaveCountAsync(2);
        Assert.Equal(Condition, await Page.Locator(".matter-row").First.GetAttributeAsync("data-finding"));
        await Page.MeetsAsync("the list");
        await Page.Locator($"[data-finding='{Condition}']").TapAsync();
        await ExpectWeightAsync("make safe");
        await Page.MeetsAsync("the matter");

        await Page.GetByRole(AriaRole.Button, new() { Name = "Change the weight" }).TapAsync();
        var keep = Page.Locator(".overrule .big");
        await Page.Locator(".weights button", new() { HasText = "Keep up" }).TapAsync();
        await Assertions.Expect(keep).ToBeDisabledAsync();
        await Page.GetByLabel("Why? One line").FillAsync(Reason);
        await Page.MeetsAsync("the sheet");
        await keep.TapAsync();
        await phone.UntilAsync(seed.Insp, "judgement.overruled", 1);

        await Page.ReloadAsync();
        await phone.ReadyAsync();
        await ExpectWeightAsync("keep up");
        await Assertions.Expect(Page.Locator("[data-overruled='weight']")).ToContainTextAsync(Reason);
        await Assertions.Expect(Page.Locator("[data-overruled='weight']")).ToContainTextAsync("Before: make safe");
        await Assertions.Expect(Page.Locator(".why li").Last).ToContainTextAsync(Reason);
        var body = (await phone.LinesAsync(seed.Insp)).Last(line => line.GetProperty("type").GetString() == "judgement.overruled").GetProperty("body");
        Assert.Equal((Condition, "weight", "keep up", Reason), (Text(body, "finding"), Text(body, "part"), Text(body, "value"), Text(body, "reason")));
        await Page.MeetsAsync("the overruled matter");

        await Page.GetByRole(AriaRole.Button, new() { Name = "Take back" }).TapAsync();
        await ExpectWeightAsync("make safe");
        await Assertions.Expect(Page.Locator("[data-overruled]")).ToHaveCountAsync(0);
        await phone.UntilAsync(seed.Insp, "entry.withdrawn", 1);
        Assert.Empty(phone.PageErrors);
    }

    /// <summary>The styles of other screens must not reach the drawing: a number keeps the size it was drawn with, and stays in its circle.</summary>
    private async Task NumbersFitTheirBalloonsAsync()
    {
        var numbers = Page.Locator("svg .balloon text");
        await Assertions.Expect(numbers).Not.ToHaveCountAsync(0);
        Assert.Empty(await numbers.EvaluateAllAsync<string[]>("all => all.filter(one => parseFloat(getComputedStyle(one).fontSize) !== parseFloat(one.getAttribute('font-size'))).map(one => one.textContent)"));
    }

    [Fact]
    public async Task A_second_answer_replaces_the_first_and_what_is_left_out_is_listed_with_its_reason()
    {
        var seed = await SeenAsync();
        await phone.OpenReadyAsync(seed.Url($"/matter/{Condition.Replace('.', ',')}"));
        await PutAsync("Change the weight", "Act now", "the pipe was found in the garage");
        await PutAsync("Change the weight", "Put right", "it only waits for the plumber");
        await Assertions.Expect(Page.Locator("[data-overruled='weight']")).ToHaveCountAsync(1);
        await ExpectWeightAsync("put right");
        var lines = (await phone.LinesAsync(seed.Insp)).Where(line => line.GetProperty("type").GetString() == "judgement.overruled").ToArray();
        Assert.Equal($"{Text(lines[0], "dev")}.{lines[0].GetProperty("seq").GetInt32()}", lines[1].GetProperty("body").GetProperty("replaces")[0].GetString());
        await Page.Locator(".undo button").TapAsync();
        await ExpectWeightAsync("act now");

        await PutAsync("Leave it out", null, "seen again on the second visit");
        await Assertions.Expect(Page.GetByRole(AriaRole.Heading, new() { Name = "Left out", Exact = true })).ToBeVisibleAsync();
        await Page.Locator(".head .back").TapAsync();
        var left = Page.Locator("section", new() { HasText = "Left out, with the reason" });
        await Assertions.Expect(left.Locator(".matter-row")).ToContainTextAsync("seen again on the second visit");
        Assert.Equal(Condition, await left.Locator(".matter-row").GetAttributeAsync("data-finding"));
    }

    // Two devices that wrote apart: neither line names the other in what it replaces, so both stand.
    [Fact]
    public async Task Two_answers_given_apart_are_both_shown_until_one_is_kept()
    {
        var seed = await SeenAsync();
        await Page.EvaluateAsync("""
            async ([insp, finding]) => {
              const { write } = await import('/device/writing.js');
              const put = (value, reason) => ({ type: 'judgement.overruled', body: { finding, part: 'weight', value, reason, replaces: [] } });
              await write(insp, [put('act now', 'first reason')]);
              await write(insp, [put('know about', 'second reason')]);
            }
            """, new[] { seed.Insp, Condition });
        await phone.OpenReadyAsync(seed.Url($"/matter/{Condition.Replace('.', ',')}"));
        await Assertions.Expect(Page.Locator("[data-overruled='weight']")).ToHaveCountAsync(2);
        await Page.Locator("[data-overruled='weight']", new() { HasText = "second reason" }).GetByRole(AriaRole.Button, new() { Name = "Keep this one" }).TapAsync();
        await Assertions.Expect(Page.Locator("[data-overruled='weight']")).ToHaveCountAsync(1);
        await ExpectWeightAsync("know about");
    }

    private async Task<Seed> SeenAsync()
    {
        await phone.OpenBareAsync();
        var seed = await phone.SeedAsync();
        await Page.EvaluateAsync("""
            async ([insp, kitchen, closet, component, condition]) => {
              const { write } = await import('/device/writing.js');
              await write(insp, [
                { type: 'observation.made', body: { place: closet, component, condition, outcome: 'seen', spot: 'left side' } },
                { type: 'observation.made', body: { place: kitchen, words: 'stain below the sink', outcome: 'seen' } },
              ]);
            }
            """, new[] { seed.Insp, seed.Kitchen, seed.Mechanical, seed.WaterHeater, Condition });
        return seed;
    }

    private async Task PutAsync(string button, string? weight, string reason)
    {
        await Page.GetByRole(AriaRole.Button, new() { Name = button }).TapAsync();
        if (weight is not null) await Page.Locator(".weights button", new() { HasText = weight }).TapAsync();
        await Page.GetByLabel("Why? One line").FillAsync(reason);
        await Page.Locator(".overrule .big").TapAsync();
        await Assertions.Expect(Page.Locator(".slip")).ToHaveCountAsync(0);
    }

    private Task ExpectWeightAsync(string word) => Assertions.Expect(Page.Locator(".matter-top")).ToHaveAttributeAsync("data-weight", word);

    private static string? Text(System.Text.Json.JsonElement body, string name) => body.GetProperty(name).GetString();

    public async ValueTask DisposeAsync()
    {
        await phone.DisposeAsync();
        await host.DisposeAsync();
    }
}
