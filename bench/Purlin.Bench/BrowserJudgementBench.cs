using System.Globalization;
using Microsoft.Playwright;

namespace Purlin.Bench;

/// <summary>
/// One more act on an inspection of 2,000 entries inside the browser, where nothing is compiled ahead: fold and judgement after it, beside
/// folding and judging everything anew in the same page. Chromium of Debian.
/// </summary>
internal static class BrowserJudgementBench
{
    private const string Address = "http://127.0.0.1:5378";
    private const int Entries = 2_000;

    public static void Run(Results results) => RunAsync(results).GetAwaiter().GetResult();

    private static async Task RunAsync(Results results)
    {
        var folder = Directory.CreateTempSubdirectory("purlin-bench-").FullName;
        try
        {
            await BrowserApps.DotnetAsync("publish", "bench/Purlin.Bench.Browser", "-c", "Release", "-o", folder, "-v", "quiet",
                "--nologo");
            await using var server = BrowserApps.Serve(Path.Combine(folder, "wwwroot"), Address);
            await server.StartAsync();
            using var playwright = await Playwright.CreateAsync();
            await using var browser = await playwright.Chromium.LaunchAsync(new()
            {
                ExecutablePath = "/usr/bin/chromium",
                Args = ["--no-sandbox", "--disable-gpu"]
            });
            var page = await browser.NewPageAsync();
            await page.GotoAsync(Address);
            await page.Locator("html[data-ready=yes]").WaitForAsync(new() { State = WaitForSelectorState.Attached, Timeout = 120_000 });
            var rows = (await page.EvaluateAsync<string[]>("length => DotNet.invokeMethodAsync('Purlin.Bench.Browser', 'Measure', length)",
                Entries)).Select(Read).ToList();
            var (fold, judge) = (rows[0], rows[1]);
            foreach (var row in rows.Skip(2))
            {
                var peer = row.Name.StartsWith("fold", StringComparison.Ordinal) ? fold : judge;
                results.Add(row, peer, row.Milliseconds / peer.Milliseconds);
            }
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>A row as the page gives it: name, least, median, most.</summary>
    private static Measured Read(string row)
    {
        var parts = row.Split('|');
        double At(int index) => double.Parse(parts[index], CultureInfo.InvariantCulture);
        return new Measured(parts[0], At(2), At(1), At(3));
    }
}
