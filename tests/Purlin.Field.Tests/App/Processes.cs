using System.Diagnostics;

namespace Purlin.Field.Tests.App;

/// <summary>The processes of one browser profile, found by the folder on their command line; others are never touched.</summary>
public static class Processes
{
    public static IReadOnlyList<int> Of(string profile) =>
    [
        .. Directory.GetDirectories("/proc").Select(Path.GetFileName).Where(name => int.TryParse(name, out _)).Select(name => int.Parse(name!, System.Globalization.CultureInfo.InvariantCulture))
            .Where(id => CommandLine(id).Contains(profile, StringComparison.Ordinal)),
    ];

    private static string CommandLine(int id)
    {
        try
        {
            return File.ReadAllText($"/proc/{id}/cmdline");
        }
        catch (IOException)
        {
            return "";
        }
        catch (UnauthorizedAccessException)
        {
            return "";
        }
    }

    public static void Signal(string profile, string signal)
    {
        var ids = Of(profile);
        if (ids.Count > 0) Run("kill", [signal, .. ids.Select(id => $"{id}")], mustSucceed: false);
    }

    /// <summary>Kills every process of the profile and waits until none is left.</summary>
    public static async Task KillAsync(string profile)
    {
        for (var turn = 0; turn < 50 && Of(profile).Count > 0; turn++)
        {
            Signal(profile, "-KILL");
            await Task.Delay(100, TestContext.Current.CancellationToken);
        }
    }

    public static void Run(string program, IReadOnlyList<string> arguments, bool mustSucceed = true)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardError = true, UseShellExecute = false })!;
        var said = process.StandardError.ReadToEnd();
        process.WaitForExit();
        if (mustSucceed && process.ExitCode != 0) throw new InvalidOperationException($"{program} {string.Join(' ', arguments)}: {said}");
    }
}
