using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;

namespace Purlin.Field.Tests.App;

/// <summary>What every screen must meet, in each light and with gloves: the rules of access, the size of what is tapped, nothing that scrolls sideways.</summary>
internal static class AccessCheck
{
    private static readonly AxeRunOptions Rules = new() { Iframes = false, RunOnly = new() { Type = "tag", Values = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"] }, Rules = new() { ["color-contrast-enhanced"] = new() { Enabled = true } } };

    // What a light changes is its colors; all other rules were tried in the first.
    private static readonly AxeRunOptions Contrast = new() { Iframes = false, RunOnly = new() { Type = "rule", Values = ["color-contrast", "color-contrast-enhanced", "link-in-text-block"] } };

    // The report stands in a frame without any rights, so no checker can run inside it and would wait for ever; its page has tests of its own.
    private static readonly AxeRunContext NoFrames = new() { Exclude = [new AxeSelector("iframe")] };

    public static async Task MeetsAsync(this IPage page, string name) => Assert.Empty(await page.FaultsAsync(name));

    /// <summary>The faults of the screen that is open, in words; it is dressed for the day again afterwards.</summary>
    public static async Task<IReadOnlyList<string>> FaultsAsync(this IPage page, string name)
    {
        List<string> faults = [.. await page.SeriousAsync(name, "day", Rules), .. await page.SeriousAsync(name, "dark", Contrast), .. await page.SeriousAsync(name, "sun", Contrast)];
        // 44 px is the floor for what is seldom used, 64 for capture, 96 with gloves (Parhi, Karlson, Bederson, MobileHCI 2006: below 9.2 mm errors grow).
        foreach (var (glove, capture) in ((string, int)[])[("yes", 96), ("no", 64)])
        {
            await page.DressAsync("day", glove);
            faults.AddRange((await page.SmallAsync(44, capture)).Select(small => $"{name}, gloves {glove}: {small}"));
            if (!await page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth <= innerWidth")) faults.Add($"{name}, gloves {glove}: scrolls sideways");
        }

        return faults;
    }

    private static Task DressAsync(this IPage page, string theme, string glove) =>
        page.EvaluateAsync("([theme, glove]) => { document.documentElement.dataset.theme = theme; document.documentElement.dataset.glove = glove; }", new[] { theme, glove });

    private static async Task<IEnumerable<string>> SeriousAsync(this IPage page, string name, string theme, AxeRunOptions rules)
    {
        await page.DressAsync(theme, "no");
        var result = await page.RunAxe(NoFrames, rules);
        Assert.True(result.Passes.Length > (rules == Rules ? 5 : 0), $"{name}, {theme}: the checker hardly ran");
        return result.Violations.Where(fault => fault.Impact is "serious" or "critical").SelectMany(fault => fault.Nodes.Select(node => $"{name}, {theme}: {fault.Id}: {node.Html[..Math.Min(160, node.Html.Length)]}"));
    }

    private static Task<string[]> SmallAsync(this IPage page, int floor, int capture) => page.EvaluateAsync<string[]>("""
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
}
