using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Purlin.Field.Tests.App;

namespace Purlin.Field.Tests;

/// <summary>Every screen, in three lights: nothing that keeps a person out, nothing too small for a thumb.</summary>
public sealed class Access(Browser browser) : IAsyncLifetime
{
    private TinyHost host = null!;
    private Phone phone = null!;
    private Seed seed = null!;

    public async ValueTask InitializeAsync()
    {
        host = await TinyHost.StartAsync();
        phone = await browser.PhoneAsync(host.Address);
        await phone.OpenBareAsync();
        seed = await phone.SeedAsync("[\"washington\"]");
        await phone.Page.EvaluateAsync("""
            async ([insp, kitchen]) => {
              const { write } = await import('/device/writing.js');
              await write(insp, [
                { type: 'observation.made', body: { place: kitchen, words: 'stain below the sink', outcome: 'seen' } },
                { type: 'limitation.recorded', body: { what: 'North wall not seen', place: kitchen } },
                { type: 'note.written', body: { about: kitchen, part: 'n1', text: 'owner says it is new' } },
              ]);
            }
            """, new[] { seed.Insp, seed.Kitchen });
    }

    // What stands on a screen once it is drawn; a screen that is not named here has at least its title.
    private static readonly Dictionary<string, string> Drawn = new(StringComparer.Ordinal)
    {
        ["/"] = ".visit",
        ["/new"] = "text=Draw the house",
        ["/visit/{Inspection}"] = ".places a",
        ["/visit/{Inspection}/place/{Name}"] = ".place-drawing",
        ["/visit/{Inspection}/list/{Name}"] = ".look",
        ["/visit/{Inspection}/walk"] = ".part",
        ["/visit/{Inspection}/issue"] = ".part",
        ["/visit/{Inspection}/acts"] = ".acts li",
        ["/settings"] = ".choice",
        ["/wording"] = ".bring",
        ["/wording/condition"] = ".choice",
        ["/visit/{Inspection}/wording/{Address}"] = ".sentence",
        ["/sign-in"] = "form",
        ["/capture.html"] = "#capture .shutter",
    };

    /// <summary>Every screen that says <c>@page</c>, and the camera alone: a new one is checked from its first day.</summary>
    private IReadOnlyList<(string Name, string Url, string Wait)> Screens =>
    [
        .. Directory.EnumerateFiles(Path.Combine(PublishedApp.Repository, "src", "Purlin.Field"), "*.razor", SearchOption.AllDirectories)
            .SelectMany(File.ReadLines).Where(line => line.StartsWith("@page \"", StringComparison.Ordinal)).Select(line => line.Split('"')[1]).Append("/capture.html").Order(StringComparer.Ordinal)
            .Select(template => (template, Filled(template), Drawn.GetValueOrDefault(template, "h1"))),
    ];

    private string Filled(string template)
    {
        var url = template.Replace("{Inspection}", seed.Insp, StringComparison.Ordinal).Replace("{Name}", seed.Kitchen.Replace('.', '-'), StringComparison.Ordinal)
            .Replace("{Address}", "water-heater,relief-pipe-missing", StringComparison.Ordinal).Replace("{Number:int}", "1", StringComparison.Ordinal);
        Assert.DoesNotContain("{", url, StringComparison.Ordinal);
        return url;
    }

    [Fact]
    public void Every_screen_is_among_those_that_are_checked()
    {
        Assert.True(Screens.Count >= 17);
        Assert.Empty(Drawn.Keys.Except(Screens.Select(screen => screen.Name)));
    }

    /// <summary>
    /// Each screen is opened once, as a person comes to it, and looked at in every light and with gloves: to start the program anew for each
    /// light would take ten times as long and show nothing more.
    /// </summary>
    [Fact]
    public async Task No_screen_has_a_serious_fault_in_any_light_or_a_target_too_small_for_a_thumb()
    {
        List<string> faults = [];
        foreach (var (name, url, wait) in Screens)
        {
            await OpenAsync(url, wait);
            faults.AddRange(await SeriousAsync(name, "day", Rules));
            faults.AddRange(await SeriousAsync(name, "dark", Contrast));
            faults.AddRange(await SeriousAsync(name, "sun", Contrast));
            await DressAsync("day", "no");
            faults.AddRange((await SmallAsync(44, 64)).Select(small => $"{name}: {small}"));
            await DressAsync("day", "yes");
            faults.AddRange((await SmallAsync(44, 96)).Select(small => $"{name}, gloved: {small}"));
            if (!await phone.Page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth <= innerWidth")) faults.Add($"{name} scrolls sideways");
            await DressAsync("day", "no");
        }

        Assert.Empty(faults);
    }

    private Task DressAsync(string theme, string glove) =>
        phone.Page.EvaluateAsync("([theme, glove]) => { document.documentElement.dataset.theme = theme; document.documentElement.dataset.glove = glove; }", new[] { theme, glove });

    private static readonly AxeRunOptions Rules = new() { Iframes = false, RunOnly = new() { Type = "tag", Values = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"] }, Rules = new() { ["color-contrast-enhanced"] = new() { Enabled = true } } };

    // What a light changes is its colors; all other rules were tried in the first.
    private static readonly AxeRunOptions Contrast = new() { Iframes = false, RunOnly = new() { Type = "rule", Values = ["color-contrast", "color-contrast-enhanced", "link-in-text-block"] } };

    private async Task<IEnumerable<string>> SeriousAsync(string name, string theme, AxeRunOptions rules)
    {
        await DressAsync(theme, "no");
        // The report stands in a frame without any rights, so no checker can run inside it; its page has tests of its own.
        var result = await phone.Page.RunAxe(NoFrames, rules);
        Assert.True(result.Passes.Length > (rules == Rules ? 5 : 0), $"{name}, {theme}: the checker hardly ran");
        return result.Violations.Where(fault => fault.Impact is "serious" or "critical").SelectMany(fault => fault.Nodes.Select(node => $"{name}, {theme}: {fault.Id}: {node.Html[..Math.Min(160, node.Html.Length)]}"));
    }

    private static readonly AxeRunContext NoFrames = new() { Exclude = [new AxeSelector("iframe")] };

    private async Task OpenAsync(string url, string wait)
    {
        if (url.EndsWith(".html", StringComparison.Ordinal)) await phone.OpenAsync(url);
        else await phone.GoAsync(url);
        await phone.Page.Locator(wait).First.WaitForAsync();
    }

    // Parhi, Karlson, Bederson, MobileHCI 2006: below 9.2 mm errors grow; 44 px is the floor for what is seldom used, 64 for capture, 96 with gloves.
    private Task<string[]> SmallAsync(int floor, int capture) => phone.Page.EvaluateAsync<string[]>("""
        ([floor, capture]) => {
          const small = [];
          for (const one of document.querySelectorAll('a[href], button, input, textarea, summary, [role=button]')) {
            const box = one.getBoundingClientRect();
            if (box.width === 0 || box.height === 0 || getComputedStyle(one).visibility === 'hidden' || one.closest('#blazor-error-ui, iframe')) continue;
            const least = one.matches('.out, .reasons button, .rest, .thumb .act, .shutter, .cap-bar button') ? capture : floor;
            if (box.height < least - 0.5 || box.width < Math.min(least, 68) - 0.5) small.push(`${Math.round(box.width)} x ${Math.round(box.height)} ${one.outerHTML.slice(0, 120)}`);
          }
          return small;
        }
        """, new[] { floor, capture });

    [Fact]
    public async Task What_is_frequent_lies_in_the_lower_part_under_the_thumb()
    {
        foreach (var (width, height) in ((int, int)[])[(360, 640), (390, 844), (768, 1024)])
        {
            await phone.Page.SetViewportSizeAsync(width, height);
            await phone.OpenReadyAsync(seed.PlaceUrl(seed.Kitchen));
            await phone.Page.Locator(".look").First.WaitForAsync();
            foreach (var button in await phone.Page.Locator(".thumb button, .sayline input").AllAsync())
            {
                var box = (await button.BoundingBoxAsync())!;
                Assert.True(box.Y >= height * 0.4 && box.Y + box.Height <= height + 1, $"{width} x {height}: {box.Y} to {box.Y + box.Height}");
            }
        }
    }

    [Fact]
    public async Task Nothing_moves_for_a_person_who_asked_for_stillness()
    {
        await phone.Page.EmulateMediaAsync(new() { ReducedMotion = ReducedMotion.Reduce });
        await phone.OpenReadyAsync(seed.PlaceUrl(seed.Kitchen));
        await phone.Page.Locator(".chips .add").TapAsync();
        await phone.Page.Locator(".slip").WaitForAsync();
        Assert.Equal(0, await phone.Page.EvaluateAsync<int>("() => document.getAnimations().length"));
    }

    public async ValueTask DisposeAsync()
    {
        await phone.DisposeAsync();
        await host.DisposeAsync();
    }
}
