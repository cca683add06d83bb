using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;

namespace Purlin.Field.Tests.App;

/// <summary>What every screen must meet, in each of its themes: the rules of access, the size of what is tapped, nothing that scrolls sideways.</summary>
internal static class AccessCheck
{
    public static async Task MeetsAsync(this IPage page, string name)
    {
        foreach (var theme in (string[])["dark", "sun", "day"])
        {
            await page.EvaluateAsync("theme => { document.documentElement.dataset.theme = theme; }", theme);
            var result = await page.RunAxe(new AxeRunOptions { RunOnly = new() { Type = "tag", Values = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"] }, Rules = new() { ["color-contrast-enhanced"] = new() { Enabled = true } } });
            Assert.True(result.Passes.Length > 5, $"{name}: the checker hardly ran");
            Assert.Empty(result.Violations.Where(fault => fault.Impact is "serious" or "critical").SelectMany(fault => fault.Nodes.Select(node => $"{name}, {theme}: {fault.Id}: {node.Html[..Math.Min(160, node.Html.Length)]}")));
        }

        // 44 px is the floor for what is seldom used (Parhi, Karlson, Bederson, MobileHCI 2006: below 9.2 mm errors grow).
        Assert.Empty(await page.EvaluateAsync<string[]>("""
            () => [...document.querySelectorAll('a[href], button, input, textarea, summary')].filter(one => one.offsetParent !== null && !one.closest('#blazor-error-ui'))
              .filter(one => one.getBoundingClientRect().height < 43.5 || one.getBoundingClientRect().width < 43.5).map(one => one.outerHTML.slice(0, 120))
            """));
        Assert.True(await page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth <= innerWidth"), $"{name} scrolls sideways");
    }
}
