using System.Diagnostics;
using System.Globalization;
using Microsoft.Playwright;

namespace Purlin.Bench;

/// <summary>
/// A new browser with the server stopped: how long until the first entry is on the disk, and until the whole program is there, beside the
/// empty template app of the SDK started the same way. Chromium of Debian; both apps published, both from their service workers.
/// </summary>
internal static class ColdStartBench
{
    private const int Runs = 5;

    private const string Seed = """
        async () => {
          const { newVisit, write } = await import('/device/writing.js');
          const insp = await newVisit('1 Bench Street (invented)', '2026-10-14', true);
          await write(insp, [{ type: 'inspection.opened', body: { property: { address: '1 Bench Street (invented)' }, date: '2026-10-14', standards: [] } }, { type: 'place.added', body: { kind: 'site', name: 'Site' } }]);
          return insp;
        }
        """;

    public static void Run(Results results) => RunAsync(results).GetAwaiter().GetResult();

    private static async Task RunAsync(Results results)
    {
        var folder = Directory.CreateTempSubdirectory("purlin-bench-").FullName;
        try
        {
            var ours = Path.Combine(folder, "ours");
            var template = Path.Combine(folder, "template");
            var plain = Path.Combine(folder, "plain");
            await BrowserApps.DotnetAsync("publish", "src/Purlin.Field", "-c", "Release", "-o", ours, "-v", "quiet", "--nologo");
            await BrowserApps.DotnetAsync("new", "blazorwasm", "--pwa", "-n", "Plain", "-o", plain);
            await BrowserApps.DotnetAsync("publish", plain, "-c", "Release", "-o", template, "-v", "quiet", "--nologo");
            using var playwright = await Playwright.CreateAsync();
            var peer = await OfflineAsync(playwright, Path.Combine(template, "wwwroot"), Path.Combine(folder, "profile-template"), null,
                "/", page => page.Locator("h1").WaitForAsync(Long));
            var whole = await OfflineAsync(playwright, Path.Combine(ours, "wwwroot"), Path.Combine(folder, "profile-ours"), Seed, "/",
                page => page.Locator("html[data-ready=yes]")
                .WaitForAsync(new() { State = WaitForSelectorState.Attached, Timeout = Long.Timeout }));
            var entry = await OfflineAsync(playwright, Path.Combine(ours, "wwwroot"), Path.Combine(folder, "profile-ours"), null,
                "/capture.html", FirstEntryAsync);
            results.Add(entry with { Name = "offline, new browser: first entry on the disk" },
                peer with { Name = "empty template app, first page" }, entry.Milliseconds / peer.Milliseconds);
            results.Add(whole with { Name = "offline, new browser: whole program there" },
                peer with { Name = "empty template app, first page" }, whole.Milliseconds / peer.Milliseconds);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static LocatorWaitForOptions Long { get; } = new() { Timeout = 120_000 };

    private static async Task FirstEntryAsync(IPage page)
    {
        await page.Locator("#cap-text").FillAsync("first words", new() { Timeout = Long.Timeout });
        await page.Locator("[data-part=form] button").ClickAsync();
        await page.Locator("[data-part=undo]").WaitForAsync(Long);
    }

    /// <summary>One visit with the server up, so that the worker caches the app; then new browsers with the server gone.</summary>
    private static async Task<Measured> OfflineAsync(IPlaywright playwright, string files, string profile, string? seed, string path,
        Func<IPage, Task> arrived)
    {
        const int Port = 5377;
        var address = string.Create(CultureInfo.InvariantCulture, $"http://127.0.0.1:{Port}");
        await using (var server = BrowserApps.Serve(files, address))
        {
            await server.StartAsync();
            await using var context = await LaunchAsync(playwright, profile);
            var page = context.Pages[0];
            await page.GotoAsync(address + "/");
            await page.EvaluateAsync("async () => { await navigator.serviceWorker.ready; }");
            if (seed is not null) await page.EvaluateAsync<string>(seed);
            await page.ReloadAsync();
            await page.WaitForFunctionAsync("() => navigator.serviceWorker.controller !== null", null, new() { Timeout = Long.Timeout });
        }
        var times = new double[Runs];
        for (var run = 0; run < Runs; run++)
        {
            await using var context = await LaunchAsync(playwright, profile);
            var clock = Stopwatch.StartNew();
            await context.Pages[0].GotoAsync(address + path, new() { WaitUntil = WaitUntilState.Commit });
            await arrived(context.Pages[0]);
            times[run] = clock.Elapsed.TotalMilliseconds;
        }
        Array.Sort(times);
        return new Measured(path, times[Runs / 2], times[0], times[^1]);
    }

    private static Task<IBrowserContext> LaunchAsync(IPlaywright playwright, string profile) =>
        playwright.Chromium.LaunchPersistentContextAsync(profile, new()
        {
            ExecutablePath = "/usr/bin/chromium",
            ViewportSize = new() { Width = 390, Height = 844 },
            Args = ["--no-sandbox", "--disable-gpu", "--no-first-run", "--disable-background-networking", "--disable-component-update",
            "--disable-sync", "--use-fake-device-for-media-stream", "--use-fake-ui-for-media-stream"],
        });
}
