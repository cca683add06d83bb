using Purlin.Field.Tests.App;

namespace Purlin.Field.Tests;

/// <summary>
/// The phone loses power: the profile lies on a file system in a file; the browser is stopped in mid-write, the file is copied as the disk
/// would be found, and the copy is opened. The negative control shows that the test can see a loss.
/// </summary>
public sealed class PowerCut(Browser browser) : IAsyncLifetime
{
    private TinyHost host = null!;

    public async ValueTask InitializeAsync() => host = await TinyHost.StartAsync();

    [Fact]
    public async Task Strict_writes_survive_a_power_cut()
    {
        SkipWithoutMount();
        var (acknowledged, lost) = await CutAsync(isStrict: true);
        Assert.True(acknowledged >= 40);
        Assert.Empty(lost);
    }

    [Fact]
    public async Task Relaxed_writes_do_not_so_the_test_can_see_a_loss()
    {
        SkipWithoutMount();
        var (_, lost) = await CutAsync(isStrict: false);
        Assert.NotEmpty(lost);
    }

    private static void SkipWithoutMount()
    {
        if (Environment.UserName != "root") Assert.Skip("A file system in a file can be mounted by root only.");
        if (!File.Exists("/usr/sbin/mkfs.ext4") && !File.Exists("/sbin/mkfs.ext4")) Assert.Skip("mkfs.ext4 is not installed.");
        var probe = Directory.CreateTempSubdirectory("purlin-mount-").FullName;
        var image = probe + ".img";
        try
        {
            MakeImage(image, "16M");
            Processes.Run("mount", ["-o", "loop", image, probe]);
            Processes.Run("umount", [probe]);
        }
        catch (InvalidOperationException refused)
        {
            Assert.Skip("This system mounts no file system from a file: " + refused.Message);
        }
        finally
        {
            File.Delete(image);
            Directory.Delete(probe);
        }
    }

    private static void MakeImage(string image, string size)
    {
        Processes.Run("truncate", ["-s", size, image]);
        Processes.Run("mkfs.ext4", ["-q", image]);
    }

    private async Task<(int Acknowledged, IReadOnlyList<string> Lost)> CutAsync(bool isStrict)
    {
        var folder = Directory.CreateTempSubdirectory("purlin-power-").FullName;
        string image = Path.Combine(folder, "disk.img"), copy = Path.Combine(folder, "found.img"), disk = Path.Combine(folder, "disk"), found = Path.Combine(folder, "found");
        Directory.CreateDirectory(disk);
        Directory.CreateDirectory(found);
        MakeImage(image, "400M");
        Processes.Run("mount", ["-o", "loop", image, disk]);
        try
        {
            Hammer hammer = new();
            var seed = await RunUntilTheCutAsync(Path.Combine(disk, "profile"), image, copy, hammer, isStrict);
            Processes.Run("mount", ["-o", "loop", copy, found]);
            await using var context = await LaunchAsync(Path.Combine(found, "profile"));
            var phone = new Phone(context, host.Address);
            await phone.OpenBareAsync();
            return (hammer.Ticks.Count, await hammer.LostAsync(phone.Page, seed.Insp));
        }
        finally
        {
            await Processes.KillAsync(folder);
            foreach (var mounted in (string[])[found, disk]) Processes.Run("umount", [mounted], mustSucceed: false);
            Directory.Delete(folder, recursive: true);
        }
    }

    private async Task<Seed> RunUntilTheCutAsync(string profile, string image, string copy, Hammer hammer, bool isStrict)
    {
        var context = await LaunchAsync(profile);
        if (!isStrict) await context.RouteAsync("**/device/store.js", RelaxAsync);
        var phone = new Phone(context, host.Address);
        await phone.OpenBareAsync();
        var seed = await phone.SeedAsync();
        await hammer.StartAsync(phone.Page, seed.Insp, 4000);
        await hammer.MoreAsync(40);
        Processes.Signal(profile, "-STOP");
        // What had been ticked on the screen by now is what must be found.
        await Task.Delay(200, TestContext.Current.CancellationToken);
        File.Copy(image, copy);
        await Processes.KillAsync(profile);
        return seed;
    }

    private static async Task RelaxAsync(IRoute route)
    {
        var answer = await route.FetchAsync();
        var text = await answer.TextAsync();
        Assert.Contains("durability: 'strict'", text, StringComparison.Ordinal);
        await route.FulfillAsync(new() { Response = answer, Body = text.Replace("durability: 'strict'", "durability: 'relaxed'", StringComparison.Ordinal) });
    }

    private async Task<IBrowserContext> LaunchAsync(string profile)
    {
        var context = await browser.Playwright.Chromium.LaunchPersistentContextAsync(profile, new()
        {
            ExecutablePath = Browser.Program,
            Args = [.. Browser.Arguments],
            ServiceWorkers = ServiceWorkerPolicy.Block,
            Timeout = 240_000,
        });
        context.SetDefaultTimeout(120_000);
        context.SetDefaultNavigationTimeout(240_000);
        return context;
    }

    public async ValueTask DisposeAsync() => await host.DisposeAsync();
}
