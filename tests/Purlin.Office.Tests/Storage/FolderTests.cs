#pragma warning disable CA1416 // Rights of files are looked at where the system has them; elsewhere the test is skipped.
using Purlin.Office.Storage;
using Purlin.Office.Tests.Cli;
using Purlin.Office.Tests.Office;

namespace Purlin.Office.Tests.Storage;

/// <summary>Starting on a world that is not as it should be: one sentence, status 2, nothing changed, never a trace.</summary>
public sealed class FolderTests
{
    private static string Made()
    {
        var folder = RunningOffice.NewFolder();
        OfficeFolder.Open(folder).Dispose();
        return folder;
    }

    private static async Task<string> Refused(string folder, params string[] more)
    {
        var (status, output, error) = await Typed.RunAsync(["serve", "--data", folder, "--address", "http://127.0.0.1:0", .. more]);
        Assert.Equal((2, ""), (status, output));
        Assert.StartsWith("purlin: ", error, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", error, StringComparison.Ordinal);
        Assert.Single(error.Split('\n', StringSplitOptions.RemoveEmptyEntries));
        return error;
    }

    [Fact]
    public async Task A_second_office_on_one_folder_is_refused()
    {
        await using var office = await RunningOffice.Start();
        Assert.Contains("Another Purlin is running", await Refused(office.Folder), StringComparison.Ordinal);
        await office.Push("visit1", Lines.Notes("visit1", "aaa", 2));
    }

    [Fact]
    public async Task The_lock_falls_with_the_office()
    {
        var folder = RunningOffice.NewFolder();
        for (var time = 0; time < 2; time++) await (await RunningOffice.Start(folder)).DisposeAsync();
    }

    public static TheoryData<string, string> Worlds => new()
    {
        { "text", "damaged" },
        { "header", "damaged" },
        { "truncated", "damaged" },
        { "key garbage", "receipts.key.pem is damaged" },
        { "key empty", "receipts.key.pem is damaged" },
        { "not a folder", "cannot be used" },
    };

    [Theory]
    [MemberData(nameof(Worlds))]
    public async Task A_damaged_folder_is_told_in_a_sentence_and_left_as_it_is(string world, string words)
    {
        var folder = Made();
        var (database, key) = (Path.Combine(folder, "office.db"), Path.Combine(folder, "receipts.key.pem"));
        var bytes = await File.ReadAllBytesAsync(database);
        switch (world)
        {
            case "text": await File.WriteAllTextAsync(database, "This is a letter and no database at all, and long enough to be looked at for what it is."); break;
            case "header": await File.WriteAllBytesAsync(database, [.. new byte[100], .. bytes[100..]]); break;
            case "truncated": await File.WriteAllBytesAsync(database, bytes[..(bytes.Length / 2)]); break;
            case "key garbage": await File.WriteAllTextAsync(key, "-----BEGIN nothing"); break;
            case "key empty": await File.WriteAllTextAsync(key, ""); break;
            default: folder = database; break;
        }

        var before = await File.ReadAllBytesAsync(database);
        Assert.Contains(words, await Refused(folder), StringComparison.Ordinal);
        Assert.Equal(before, await File.ReadAllBytesAsync(database));
    }

    [Theory]
    [InlineData("https://127.0.0.1:5306", "--public")]
    [InlineData("http://127.0.0.1:5306/office", "root of its address")]
    [InlineData("ftp://127.0.0.1", "http://127.0.0.1:5225")]
    [InlineData("nonsense", "http://127.0.0.1:5225")]
    [InlineData("http://192.0.2.1:5306", "could not listen")]
    public async Task An_address_that_cannot_be_is_told_in_a_sentence(string address, string words)
    {
        var (status, _, error) = await Typed.RunAsync(["serve", "--data", RunningOffice.NewFolder(), "--address", address]);
        Assert.Equal(2, status);
        Assert.Contains(words, error, StringComparison.Ordinal);
        Assert.Single(error.Split('\n', StringSplitOptions.RemoveEmptyEntries));
    }

    [Fact]
    public async Task A_port_in_use_is_told_in_a_sentence_and_shows_no_code()
    {
        await using var office = await RunningOffice.Start();
        var folder = RunningOffice.NewFolder();
        var (status, output, error) = await Typed.RunAsync(["serve", "--data", folder, "--address", office.Address.ToString()]);
        Assert.Equal((2, ""), (status, output));
        Assert.Contains("could not listen", error, StringComparison.Ordinal);
        // The code that was not shown was not made either.
        using var later = OfficeFolder.Open(folder);
        await using var db = later.File.Db(Tenant.Own);
        Assert.DoesNotContain(db.Settings, row => row.Name == "owner code");
    }

    [Fact]
    public async Task No_other_account_of_the_machine_can_look_in()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has other rights");
        var folder = RunningOffice.NewFolder();
        File.SetUnixFileMode(folder, (UnixFileMode)0b111_101_101);
        await using var office = await RunningOffice.Start(folder);
        var photo = Office.Pictures.Jpeg(64, 48);
        await office.Push("visit1", Lines.Notes("visit1", "aaa", 2));
        await office.Patch(Journal.Sha.Of(photo), photo, 0, photo.Length);
        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute, File.GetUnixFileMode(folder));
        const UnixFileMode Others = (UnixFileMode)0b000_111_111;
        Assert.All(Directory.EnumerateFileSystemEntries(folder, "*", SearchOption.AllDirectories), entry => Assert.Equal((UnixFileMode)0, File.GetUnixFileMode(entry) & Others));
    }
}
