using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using Purlin.Field.Tests.App;

namespace Purlin.Field.Tests;

/// <summary>The worker that keeps the program on the phone: whole or not at all, and never under a working thumb.</summary>
public sealed partial class Worker(Browser browser) : IAsyncLifetime
{
    private TinyHost host = null!;

    public async ValueTask InitializeAsync() => host = await TinyHost.StartAsync();

    private const string WaitForControl = "async () => { await navigator.serviceWorker.ready; return !!(await navigator.serviceWorker.getRegistration()).active; }";

    [Fact]
    public async Task With_the_server_gone_the_app_opens_reloads_and_records()
    {
        await using var phone = await browser.PhoneAsync(host.Address, worker: true);
        var page = await phone.OpenReadyAsync("/");
        Assert.True(await page.EvaluateAsync<bool>(WaitForControl));
        var seed = await phone.SeedAsync();
        await host.StopAsync();

        await page.ReloadAsync();
        await phone.ReadyAsync();
        await Assertions.Expect(page.Locator(".visit")).ToContainTextAsync("14 Alder Bend");

        await phone.OpenReadyAsync(seed.PlaceUrl(seed.Kitchen));
        await page.Locator(".thing").First.TapAsync();
        await page.Locator(".rest-sound").TapAsync();
        await phone.UntilAsync(seed.Insp, "observation.made", 1);
        await page.Locator(".thumb .shutter").TapAsync();
        await phone.UntilAsync(seed.Insp, "photo.taken", 1);

        // A new tab, a deep address, and the font: everything comes from the phone.
        await phone.Page.CloseAsync();
        page = await phone.OpenReadyAsync(seed.Url());
        await Assertions.Expect(page.Locator(".drawing svg")).ToBeVisibleAsync();
        Assert.True(await page.EvaluateAsync<bool>("async () => (await document.fonts.load('700 18px \"Atkinson Hyperlegible Next\"')).length > 0"));
        Assert.Empty(phone.PageErrors);
    }

    [Fact]
    public async Task A_newer_version_waits_and_the_older_one_goes_on_whole()
    {
        await using var phone = await browser.PhoneAsync(host.Address, worker: true);
        var page = await phone.OpenReadyAsync("/settings");
        Assert.True(await page.EvaluateAsync<bool>(WaitForControl));
        await page.ReloadAsync();
        await phone.ReadyAsync();
        await page.EvaluateAsync("() => { window.sameDocument = true; }");
        PutNewer("/look/parts.css", "/* newer */", isHashRight: true);
        await page.EvaluateAsync("async () => { await (await navigator.serviceWorker.getRegistration()).update(); }");
        await phone.UntilTrueAsync("async () => !!(await navigator.serviceWorker.getRegistration()).waiting");
        Assert.True(await page.EvaluateAsync<bool>("() => window.sameDocument"));
        Assert.DoesNotContain("newer", await page.EvaluateAsync<string>("async () => (await fetch('/look/parts.css')).text()"), StringComparison.Ordinal);

        // Said where it belongs, and used when the person says so.
        await phone.OpenReadyAsync("/settings");
        await page.EvaluateAsync("() => { window.olderDocument = true; }");
        await page.GetByRole(AriaRole.Button, new() { Name = "Use it now" }).TapAsync();
        // Asking for files meanwhile would keep the older worker busy, and a busy worker does not give way.
        await phone.UntilTrueAsync("() => !window.olderDocument");
        await phone.UntilTrueAsync("async () => (await (await fetch('/look/parts.css')).text()).includes('newer')");
    }

    [Fact]
    public async Task A_broken_newer_version_is_not_installed_at_all()
    {
        await using var phone = await browser.PhoneAsync(host.Address, worker: true);
        var page = await phone.OpenReadyAsync("/");
        Assert.True(await page.EvaluateAsync<bool>(WaitForControl));
        PutNewer("/look/parts.css", "/* spoiled */", isHashRight: false);
        var states = await page.EvaluateAsync<string[]>("""
            async () => {
              const registration = await navigator.serviceWorker.getRegistration();
              const seen = new Promise(resolve => registration.addEventListener('updatefound', () => { const worker = registration.installing; worker.addEventListener('statechange', () => { if (worker.state === 'redundant' || worker.state === 'installed') resolve(worker.state); }); }));
              await registration.update().catch(() => undefined);
              return [await seen, String(!!registration.waiting), (await caches.keys()).length + ' kept'];
            }
            """);
        Assert.Equal(["redundant", "false", "1 kept"], states);
        await host.StopAsync();
        await page.ReloadAsync();
        await phone.ReadyAsync();
        await Assertions.Expect(page.GetByText("New inspection")).ToBeVisibleAsync();
    }

    private void PutNewer(string path, string addition, bool isHashRight)
    {
        byte[] bytes = [.. host.Read(path), .. Encoding.UTF8.GetBytes(addition)];
        host.Put(path, bytes);
        var manifest = Encoding.UTF8.GetString(host.Read("/service-worker-assets.js"));
        var hash = isHashRight ? "sha256-" + Convert.ToBase64String(SHA256.HashData(bytes)) : "sha256-AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA=";
        var entry = new Regex("\"hash\": \"[^\"]*\",\\s*\"url\": \"" + Regex.Escape(path.TrimStart('/')) + "\"", RegexOptions.None, TimeSpan.FromSeconds(5));
        Assert.Matches(entry, manifest);
        manifest = entry.Replace(manifest, $"\"hash\": \"{hash}\", \"url\": \"{path.TrimStart('/')}\"");
        host.Put("/service-worker-assets.js", Encoding.UTF8.GetBytes(VersionLine().Replace(manifest, "\"version\": \"newer\"")));
    }

    [GeneratedRegex("\"version\": \"[^\"]*\"", RegexOptions.None, 5000)]
    private static partial Regex VersionLine();

    public async ValueTask DisposeAsync() => await host.DisposeAsync();
}
