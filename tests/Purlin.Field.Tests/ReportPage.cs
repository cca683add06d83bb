using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Purlin.Demo;
using Purlin.Field.Tests.App;
using Purlin.Book;
using Purlin.Report;
using Purlin.Report.Page;

namespace Purlin.Field.Tests;

/// <summary>The report's page of the whole demo in a real browser: no fault of access, nothing wider than the screen, nothing asked for.</summary>
public sealed class ReportPage(Browser browser)
{
    private static readonly Lazy<Task<string>> page = new(async () =>
    {
        var demo = DemoInspection.Write();
        var work = Work.Of(demo.Entries, RuleBook.BuiltIn, 2026);
        var paper = work.Paper(PaperKind.Report, work.Copy);
        var file = Path.Combine(Directory.CreateTempSubdirectory("purlin-page-").FullName, "report.html");
        await File.WriteAllTextAsync(file, await PageWriter.WriteAsync(paper, sha => demo.Pictures.GetValueOrDefault(sha)));
        return file;
    });

    [Theory]
    [InlineData(1280, 900)]
    [InlineData(320, 640)]
    public async Task No_fault_of_access_and_nothing_wider_than_the_screen(int width, int height)
    {
        var address = new Uri(await page.Value).AbsoluteUri;
        await using var context = await browser.Chromium.NewContextAsync(new() { ViewportSize = new() { Width = width, Height = height } });
        var opened = await context.NewPageAsync();
        List<string> asked = [];
        opened.Request += (_, request) => { if (!request.Url.StartsWith("data:", StringComparison.Ordinal)) asked.Add(request.Url); };
        await opened.GotoAsync(address);
        Assert.True(await opened.EvaluateAsync<int>("document.documentElement.scrollWidth - innerWidth") <= 0, "the page is wider than the screen");
        // WCAG 2.2 through axe-core's rules, with 1.4.6 (contrast 7:1) and 2.5.8 (size of targets) switched on.
        var result = await opened.RunAxe(new AxeRunOptions { Rules = new() { ["color-contrast-enhanced"] = new() { Enabled = true }, ["target-size"] = new() { Enabled = true } } });
        Assert.True(result.Passes.Length > 20, "the checker hardly ran");
        Assert.Empty(result.Violations.SelectMany(fault => fault.Nodes.Select(node => $"{fault.Id}: {node.Html[..Math.Min(160, node.Html.Length)]}")));
        Assert.Equal([address], asked);
    }
}
