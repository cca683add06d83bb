using Purlin.Office.Tests.Office;

namespace Purlin.Office.Tests.Cli;

/// <summary>What <c>purlin setup</c> writes on a machine.</summary>
public sealed class SetupCommandTests
{
    [Theory]
    [InlineData(false, "--public https://office.example.org --own-certificate")]
    [InlineData(true, "--public https://office.example.org")]
    public async Task It_writes_the_options_and_the_service_and_starts_nothing_elsewhere(bool proxy, string options)
    {
        var root = RunningOffice.NewFolder();
        string[] more = proxy ? ["--behind-proxy"] : [];
        var (status, output, error) = await Typed.RunAsync(["setup", "office.example.org", "--root", root, .. more]);
        Assert.Equal((0, ""), (status, error));
        Assert.Contains("Nothing was started", output, StringComparison.Ordinal);
        Assert.Contains($"PURLIN_OPTIONS=\"{options}\"\n", await File.ReadAllTextAsync(Path.Combine(root, "etc/default/purlin")), StringComparison.Ordinal);
        var unit = await File.ReadAllTextAsync(Path.Combine(root, "etc/systemd/system/purlin.service"));
        Assert.Contains("serve --data /var/lib/purlin $PURLIN_OPTIONS", unit, StringComparison.Ordinal);
        Assert.Contains("DynamicUser=yes", unit, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("https://office.example.org")]
    [InlineData("office.example.org/path")]
    [InlineData("office")]
    [InlineData("127.0.0.1")]
    [InlineData("office.example.org\" --new-owner-code \"")]
    [InlineData("-office.example.org")]
    public async Task What_is_no_name_is_refused_and_nothing_is_written(string name)
    {
        var root = RunningOffice.NewFolder();
        var (status, _, error) = await Typed.RunAsync(["setup", "--root", root, "--", name]);
        Assert.Equal(2, status);
        Assert.StartsWith("purlin: NAME: ", error, StringComparison.Ordinal);
        Assert.Empty(Directory.EnumerateFileSystemEntries(root));
    }
}
