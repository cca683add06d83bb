using System.Diagnostics;

namespace Purlin.Field.Tests.App;

/// <summary>The app as it is shipped: published once a run, trimmed, into the artifacts folder.</summary>
public static class PublishedApp
{
    private static readonly Lazy<string> Published = new(Publish);

    /// <summary>Folder of the published files.</summary>
    public static string Folder => Published.Value;

    public static string Repository { get; } = FindRepository();

    private static string FindRepository()
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "Purlin.slnx"))) folder = Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("Purlin.slnx is not above the tests.");
        return folder;
    }

    private static string Publish()
    {
        if (Environment.GetEnvironmentVariable("PURLIN_FIELD_APP") is { Length: > 0 } given) return given;
        var output = Path.Combine(Repository, "artifacts", "field-under-test");
        var start = new ProcessStartInfo("dotnet", ["publish", Path.Combine(Repository, "src", "Purlin.Field"), "-c", "Release", "-o", output, "-v", "quiet", "--nologo", "-p:RunAnalyzers=false"]) { RedirectStandardOutput = true, UseShellExecute = false };
        using var process = Process.Start(start)!;
        var said = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0 ? Path.Combine(output, "wwwroot") : throw new InvalidOperationException("The app could not be published:\n" + said);
    }
}
