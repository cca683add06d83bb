using Purlin.Field.Tests.App;

namespace Purlin.Field.Tests;

/// <summary>The whole browser is killed in the middle of its work, and started again on the same profile.</summary>
public sealed class Killed(Browser browser) : IAsyncLifetime
{
    private TinyHost host = null!;

    public async ValueTask InitializeAsync() => host = await TinyHost.StartAsync();

    [Fact]
    public async Task A_killed_browser_loses_nothing_acknowledged()
    {
        var profile = Directory.CreateTempSubdirectory("purlin-killed-").FullName;
        try
        {
            Hammer hammer = new();
            var seed = await OnProfileAsync(profile, async phone => await phone.SeedAsync());
            for (var run = 0; run < 3; run++)
            {
                await OnProfileAsync(profile, async phone =>
                {
                    await hammer.StartAsync(phone.Page, seed.Insp);
                    await hammer.MoreAsync(25);
                    await Processes.KillAsync(profile);
                    return 0;
                });
            }

            Assert.True(hammer.Ticks.Count >= 75);
            Assert.Empty(await OnProfileAsync(profile, phone => hammer.LostAsync(phone.Page, seed.Insp)));
        }
        finally
        {
            await Processes.KillAsync(profile);
            Directory.Delete(profile, recursive: true);
        }
    }

    private async Task<T> OnProfileAsync<T>(string profile, Func<Phone, Task<T>> work)
    {
        var context = await browser.Playwright.Chromium.LaunchPersistentContextAsync(profile, new()
        {
            ExecutablePath = Browser.Program,
            Args = [.. Browser.Arguments],
            ServiceWorkers = ServiceWorkerPolicy.Block,
        });
        try
        {
            var phone = new Phone(context, host.Address);
            await phone.OpenBareAsync();
            return await work(phone);
        }
        finally
        {
            // Closing one that was killed says that it is closed already.
            try { await context.CloseAsync(); }
            catch (PlaywrightException) { Assert.Empty(Processes.Of(profile)); }
        }
    }

    public async ValueTask DisposeAsync() => await host.DisposeAsync();
}
