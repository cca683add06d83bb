using System.Text.Json;
using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Purlin.Field.Tests.App;

namespace Purlin.Field.Tests;

/// <summary>What standards ask around the visit is answered in a tap or two before issue; a duty closed by hand is closed for every standard that asks for the same thing.</summary>
public sealed class AroundVisit(Browser browser) : IAsyncLifetime
{
    private TinyHost host = null!;
    private Phone phone = null!;

    private IPage Page => phone.Page;

    public async ValueTask InitializeAsync()
    {
        host = await TinyHost.StartAsync();
        phone = await browser.PhoneAsync(host.Address);
    }

    [Fact]
    public async Task What_a_state_asks_before_issue_is_answered_tap_by_tap()
    {
        await phone.OpenBareAsync();
        var seed = await phone.SeedAsync("""["washington"]""");
        await phone.OpenReadyAsync(seed.Url("/issue"));
        await Assertions.Expect(Row("core:V-01")).ToContainTextAsync("Say on which day the client signed the agreement");
        await CheckAsync("before issue");
        await Row("core:V-01").GetByRole(AriaRole.Button, new() { Name = "The day of the visit" }).TapAsync();
        await Assertions.Expect(Row("core:V-01")).ToHaveCountAsync(0);
        await Row("core:V-02").GetByRole(AriaRole.Button, new() { Name = "all that the rule lists" }).TapAsync();
        await Assertions.Expect(Row("core:V-02")).ToHaveCountAsync(0);
        await Row("core:V-05").GetByRole(AriaRole.Button, new() { Name = "nothing to disclose" }).TapAsync();
        await Assertions.Expect(Row("core:V-05")).ToHaveCountAsync(0);

        var facts = (await phone.LinesAsync(seed.Insp)).Where(line => Type(line) == "fact.stated").Select(line => line.GetProperty("body")).ToDictionary(body => Text(body, "fact"));
        Assert.Equal(["agreement signed", "agreement states", "disclosures"], facts.Keys.Order());
        Assert.Matches(@"^\d{4}-\d{2}-\d{2}$", Text(facts["agreement signed"], "value"));
        await Assertions.Expect(Row("core:V-31")).ToContainTextAsync("Agreement, report and record are kept until");
        await CheckAsync("after the answers");

        // What was answered by a slip of the thumb is asked again.
        await Page.Locator(".undo button").TapAsync();
        await Assertions.Expect(Row("core:V-05")).ToHaveCountAsync(1);
        Assert.Empty(phone.PageErrors);
    }

    [Fact]
    public async Task A_day_after_the_visit_closes_nothing_and_says_so()
    {
        await phone.OpenBareAsync();
        var seed = await phone.SeedAsync("""["washington"]""");
        await phone.OpenReadyAsync(seed.Url("/issue"));
        await Row("core:V-01").Locator("input[type=date]").FillAsync("2031-01-02");
        await Row("core:V-01").Locator(".day").GetByRole(AriaRole.Button, new() { Name = "Keep" }).TapAsync();
        await Assertions.Expect(Row("core:V-01")).ToContainTextAsync("January 2, 2031. That is after the day of the visit");
        await Row("core:V-01").GetByRole(AriaRole.Button, new() { Name = "The day before" }).TapAsync();
        await Assertions.Expect(Row("core:V-01")).ToHaveCountAsync(0);
        var stated = (await phone.LinesAsync(seed.Insp)).Where(line => Type(line) == "fact.stated").ToArray();
        Assert.Equal($"{Text(stated[0], "dev")}.{stated[0].GetProperty("seq").GetInt32()}", stated[1].GetProperty("body").GetProperty("replaces")[0].GetString());
    }

    [Fact]
    public async Task A_report_that_is_late_says_by_how_many_days()
    {
        await phone.OpenBareAsync();
        var seed = await phone.SeedAsync("""["north-carolina"]""");
        await phone.OpenReadyAsync(seed.Url("/issue"));
        await Row("core:V-30").GetByRole(AriaRole.Button, new() { Name = "Agreed otherwise" }).TapAsync();
        await Row("core:V-30").Locator("[data-fact='report due'] input").FillAsync("2020-01-02");
        await Row("core:V-30").Locator("[data-fact='report due']").GetByRole(AriaRole.Button, new() { Name = "Keep" }).TapAsync();
        await Assertions.Expect(Row("core:V-30").Locator("h4")).ToContainTextAsync("days overdue");
        await Assertions.Expect(Row("core:V-30")).ToContainTextAsync("Agreed in writing: January 2, 2020.");
    }

    [Fact]
    public async Task A_duty_closed_by_hand_is_closed_for_every_standard_that_asks_for_the_same_thing()
    {
        await phone.OpenBareAsync();
        var seed = await phone.SeedAsync("""["washington","texas"]""");
        await phone.OpenReadyAsync(seed.PlaceUrl(seed.Kitchen));
        var (mine, other, core) = await SharedAsync();
        await Duty(mine).GetByRole(AriaRole.Button, new() { Name = "not inspected" }).TapAsync();
        await Assertions.Expect(Duty(mine).Locator(".closes-for .note")).ToHaveCountAsync(2);
        await Duty(mine).GetByLabel("Why not?").FillAsync("stored goods");
        await Duty(mine).GetByRole(AriaRole.Button, new() { Name = "Keep" }).TapAsync();
        await Assertions.Expect(Duty(mine)).ToHaveCountAsync(0);
        await Assertions.Expect(Duty(other)).ToHaveCountAsync(0);
        var bodies = await ClosedAsync(seed.Insp);
        Assert.All(bodies, body => Assert.StartsWith("core:", Text(body, "duty"), StringComparison.Ordinal));
        Assert.Contains(bodies, body => Text(body, "duty") == core && Text(body, "reason") == "stored goods");
    }

    [Fact]
    public async Task Where_standards_differ_it_can_be_closed_for_one_alone()
    {
        await phone.OpenBareAsync();
        var seed = await phone.SeedAsync("""["washington","texas"]""");
        await phone.OpenReadyAsync(seed.PlaceUrl(seed.Kitchen));
        var (mine, other, _) = await SharedAsync();
        await Duty(mine).GetByRole(AriaRole.Button, new() { Name = "not inspected" }).TapAsync();
        await Duty(mine).GetByRole(AriaRole.Button, new() { Name = "only for Washington" }).TapAsync();
        await CheckAsync("the choice");
        await Duty(mine).GetByLabel("Why not?").FillAsync("stored goods");
        await Duty(mine).GetByRole(AriaRole.Button, new() { Name = "Keep" }).TapAsync();
        await Assertions.Expect(Duty(mine)).ToHaveCountAsync(0);
        await Assertions.Expect(Duty(other)).ToHaveCountAsync(1);
        Assert.Contains(mine, (await ClosedAsync(seed.Insp)).Select(body => Text(body, "duty")));
    }

    [Fact]
    public async Task What_each_standard_wants_stands_where_it_applies()
    {
        await phone.OpenBareAsync();
        var seed = await phone.SeedAsync("""["texas","internachi"]""");
        await phone.OpenReadyAsync(seed.PlaceUrl(seed.Kitchen));
        await Assertions.Expect(Page.Locator("[data-setting='appliances']")).ToContainTextAsync("included (Texas)");
        await Assertions.Expect(Page.Locator("[data-setting='appliances']")).ToContainTextAsync("not included (InterNACHI)");
        await Assertions.Expect(Page.Locator("[data-setting='crawl space entry least']")).ToHaveCountAsync(0);
        await phone.OpenReadyAsync(seed.PlaceUrl(seed.CrawlSpace));
        await Assertions.Expect(Page.Locator("[data-setting='crawl space entry least']")).ToContainTextAsync("18 in");
        await CheckAsync("what is wanted");
    }

    private ILocator Row(string id) => Page.Locator($"[data-visit='{id}']");

    private ILocator Duty(string id) => Page.Locator($"[data-duty='{id}']");

    /// <summary>An open duty of Washington here, one of Texas that waits for the same thing, and that thing, as the page offers them.</summary>
    private async Task<(string Mine, string Other, string Core)> SharedAsync()
    {
        await Page.Locator("[data-duty^='washington:']").First.WaitForAsync();
        await Page.Locator("[data-duty^='texas:']").First.WaitForAsync();
        var washington = await Cores("washington");
        var texas = await Cores("texas");
        // One thing alone on both sides, so that closing it closes both.
        var mine = washington.First(one => one.Value.Length == 1 && texas.Values.Any(cores => cores.SequenceEqual(one.Value)));
        return (mine.Key, texas.First(one => one.Value.SequenceEqual(mine.Value)).Key, mine.Value[0]);
    }

    private async Task<Dictionary<string, string[]>> Cores(string standard)
    {
        Dictionary<string, string[]> all = [];
        foreach (var row in await Page.Locator($"[data-duty^='{standard}:']").AllAsync())
            all.TryAdd((await row.GetAttributeAsync("data-duty"))!, (await row.GetAttributeAsync("data-core"))!.Split(' '));
        return all;
    }

    private async Task<JsonElement[]> ClosedAsync(string inspection) => [.. (await phone.LinesAsync(inspection)).Where(line => Type(line) == "duty.met").Select(line => line.GetProperty("body"))];

    private static string Type(JsonElement line) => Text(line, "type");

    private static string Text(JsonElement body, string name) => body.GetProperty(name).GetString()!;

    private async Task CheckAsync(string name)
    {
        var result = await Page.RunAxe(new AxeRunOptions { RunOnly = new() { Type = "tag", Values = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"] } });
        Assert.True(result.Passes.Length > 5, $"{name}: the checker hardly ran");
        Assert.Empty(result.Violations.Where(fault => fault.Impact is "serious" or "critical").SelectMany(fault => fault.Nodes.Select(node => $"{name}: {fault.Id}: {node.Html[..Math.Min(160, node.Html.Length)]}")));
        Assert.True(await Page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth <= innerWidth"), $"{name} scrolls sideways");
    }

    public async ValueTask DisposeAsync()
    {
        await phone.DisposeAsync();
        await host.DisposeAsync();
    }
}
