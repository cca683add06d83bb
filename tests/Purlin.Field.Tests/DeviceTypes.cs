using System.Diagnostics;
using Purlin.Field.Tests.App;

namespace Purlin.Field.Tests;

public sealed class DeviceTypes
{
    [Fact]
    public async Task The_device_module_type_checks_strictly()
    {
        var compiler = Path.Combine(PublishedApp.Repository, "node_modules", "typescript", "bin", "tsc");
        Assert.True(File.Exists(compiler), "typescript is missing: run `npm ci` in the root of the repository.");
        var start = new ProcessStartInfo("node", [compiler, "--noEmit", "-p", Path.Combine(PublishedApp.Repository, "src", "Purlin.Field", "jsconfig.json")]) { RedirectStandardOutput = true, UseShellExecute = false };
        using var process = Process.Start(start)!;
        var said = await process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.True(process.ExitCode == 0, said);
    }
}
