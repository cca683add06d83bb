using Microsoft.Data.Sqlite;
using Purlin.Journal;
using Purlin.Office.Tests.Office;

namespace Purlin.Office.Tests.Cli;

/// <summary>A backup made while the office writes, restored, verified, and filled up by a phone.</summary>
public sealed class CopyCommandTests
{
    private const string Visit = "visit1";

    private static string Fresh() => Path.Combine(RunningOffice.NewFolder(), "copy");

    [Fact]
    public async Task Made_while_lines_and_photographs_arrive_it_restores_whole_and_a_phone_fills_up_what_it_lacks()
    {
        await using var office = await RunningOffice.Start();
        var lines = Lines.Notes(Visit, "aaa", 600);
        byte[][] photos = [.. Enumerable.Range(0, 12).Select(number => Office.Pictures.Jpeg(64 + number, 48))];
        await office.Push(Visit, lines[..50]);
        var writing = Task.Run(async () =>
        {
            for (var at = 50; at < lines.Count; at += 10)
            {
                await office.Push(Visit, lines.Skip(at).Take(10));
                var photo = photos[at / 10 % photos.Length];
                await office.Patch(Sha.Of(photo), photo, 0, photo.Length);
            }
        });
        var backup = Fresh();
        var (status, output, error) = await Typed.RunAsync(["backup", backup, "--data", office.Folder]);
        Assert.Equal((0, ""), (status, error));
        Assert.EndsWith("whole\n", output, StringComparison.Ordinal);
        await writing;

        var restored = Fresh();
        Assert.Equal(0, (await Typed.RunAsync(["restore", backup, "--data", restored])).Status);
        await using var after = await RunningOffice.Start(restored);
        var had = (await after.Heads(Visit))["aaa"];
        Assert.InRange(had, 50, 600);
        // The phone has everything and sends it again, as it always does.
        await after.Push(Visit, lines);
        foreach (var photo in photos) await after.Patch(Sha.Of(photo), photo, 0, photo.Length);
        Assert.Equal(600, (await after.Heads(Visit))["aaa"]);
        Assert.Equal(0, (await Typed.RunAsync(["check", "--data", restored])).Status);
    }

    [Fact]
    public async Task Made_again_it_copies_only_what_is_new()
    {
        await using var office = await RunningOffice.Start();
        var (one, two) = (Office.Pictures.Jpeg(64, 48), Office.Pictures.Jpeg(65, 48));
        await office.Patch(Sha.Of(one), one, 0, one.Length);
        var backup = Fresh();
        Assert.Contains("1 files copied", (await Typed.RunAsync(["backup", backup, "--data", office.Folder])).Out, StringComparison.Ordinal);
        await office.Patch(Sha.Of(two), two, 0, two.Length);
        Assert.Contains("1 files copied", (await Typed.RunAsync(["backup", backup, "--data", office.Folder])).Out, StringComparison.Ordinal);
        Assert.Equal(0, (await Typed.RunAsync(["verify", backup])).Status);
    }

    public static TheoryData<string, string> Damages => new()
    {
        { "line", "is not the one that was received" },
        { "receipt gone", "receipt 1 is missing" },
        { "receipt altered", "does not bear the signature" },
        { "file altered", "is damaged" },
        { "file gone", "is gone" },
        { "key gone", "The key" },
        { "database", "office.db" },
    };

    [Theory]
    [MemberData(nameof(Damages))]
    public async Task What_was_damaged_in_a_copy_is_named_with_status_one(string damage, string words)
    {
        await using var office = await RunningOffice.Start();
        var photo = Office.Pictures.Jpeg(64, 48);
        await office.Push(Visit, Lines.Notes(Visit, "aaa", 3));
        await office.Push(Visit, Lines.Notes(Visit, "bbb", 3));
        await office.Patch(Sha.Of(photo), photo, 0, photo.Length);
        var backup = Fresh();
        await Typed.RunAsync(["backup", backup, "--data", office.Folder]);
        var file = Path.Combine(backup, "blobs", "own", Sha.Of(photo)[..2], Sha.Of(photo)[2..]);
        switch (damage)
        {
            case "line": Alter(backup, "entry", "UPDATE entry SET Raw = x'7b7d' WHERE Seq = 2"); break;
            case "receipt gone": Alter(backup, "receipt", "DELETE FROM receipt WHERE N = 1"); break;
            case "receipt altered": Alter(backup, "receipt", "UPDATE receipt SET Raw = CAST(replace(CAST(Raw AS TEXT), '\"aaa\":3', '\"aaa\":2') AS BLOB)"); break;
            case "file altered": await File.WriteAllBytesAsync(file, [1, 2, 3]); break;
            case "file gone": File.Delete(file); break;
            case "key gone": File.Delete(Path.Combine(backup, "receipts.key.pem")); break;
            default: await File.WriteAllTextAsync(Path.Combine(backup, "office.db"), "This is a letter and no database at all, and long enough to be looked at for what it is."); break;
        }

        var (status, output, _) = await Typed.RunAsync(["check", "--data", backup]);
        Assert.Equal(1, status);
        Assert.Contains(words, output, StringComparison.Ordinal);
    }

    /// <summary>What somebody does who has the file and the tools: takes the guards off, and puts them back.</summary>
    private static void Alter(string folder, string table, string sql)
    {
        using SqliteConnection connection = new($"Data Source={Path.Combine(folder, "office.db")};Pooling=False");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = $"DROP TRIGGER {table}_no_update; DROP TRIGGER {table}_no_delete; {sql}";
        command.ExecuteNonQuery();
    }

    [Fact]
    public async Task Nothing_is_written_over()
    {
        await using var office = await RunningOffice.Start();
        var backup = Fresh();
        await Typed.RunAsync(["backup", backup, "--data", office.Folder]);
        foreach (var (arguments, words) in ((string[], string)[])
        [
            (["restore", backup, "--data", office.Folder], "is not empty"),
            (["restore", RunningOffice.NewFolder(), "--data", Fresh()], "holds no backup"),
            (["backup", Path.Combine(office.Folder, "inside"), "--data", office.Folder], "office's own folder"),
            (["backup", Fresh(), "--data", RunningOffice.NewFolder()], "holds no office"),
        ])
        {
            var (status, output, error) = await Typed.RunAsync(arguments);
            Assert.Equal((2, ""), (status, output));
            Assert.Contains(words, error, StringComparison.Ordinal);
        }
    }
}
