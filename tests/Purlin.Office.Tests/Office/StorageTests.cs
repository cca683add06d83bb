using System.Diagnostics;
using System.Net;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Purlin.Journal;
using Purlin.Journal.Archive;
using Purlin.Office.Storage;

namespace Purlin.Office.Tests.Office;

/// <summary>What the disk holds, and what happens when it is full.</summary>
public sealed class StorageTests
{
    private const string Visit = "visit1";

    [Theory]
    [InlineData("UPDATE entry SET Raw = x'00'")]
    [InlineData("DELETE FROM entry")]
    [InlineData("UPDATE receipt SET N = 7")]
    [InlineData("DELETE FROM receipt")]
    [InlineData("DELETE FROM edition")]
    [InlineData("UPDATE edition SET Seal = ''")]
    public async Task The_database_itself_refuses_to_change_or_delete_what_was_kept(string command)
    {
        await using var office = await RunningOffice.Start();
        await office.Push(Visit, Lines.Notes(Visit, "aaa", 2));
        await using var db = office.Db();
        db.Editions.Add(new EditionRow { Tenant = "own", Insp = Visit, Number = 1, Seal = "s", Root = "r", Page = "p", Pdf = "f", At = 1 });
        await db.SaveChangesAsync(TestContext.Current.CancellationToken);
        var refused = await Assert.ThrowsAsync<SqliteException>(() => db.Database.ExecuteSqlRawAsync(command, TestContext.Current.CancellationToken));
        Assert.Contains("append-only", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_connection_forces_commits_to_disk_and_writes_ahead()
    {
        await using var office = await RunningOffice.Start();
        await using var db = office.Db();
        Assert.Equal("2", await Scalar(db, "PRAGMA synchronous"));
        Assert.Equal("wal", await Scalar(db, "PRAGMA journal_mode"));
    }

    [Fact]
    public async Task An_archive_is_taken_in_once_however_often_it_is_offered()
    {
        var lines = Lines.Notes(Visit, "aaa", 5);
        var photo = Pictures.Jpeg(64, 48);
        using var archive = new MemoryStream();
        ArchiveWriter.Write(archive, lines, [ArchivePhoto.Of(photo, "image/jpeg")]);
        List<string> said = [];
        OfficeOptions With(OfficeOptions options) => options with { Import = [() => new MemoryStream(archive.ToArray())], Say = said.Add };
        var folder = RunningOffice.NewFolder();
        await using (var first = await RunningOffice.Start(folder, With)) Assert.Equal(5, (await first.Heads(Visit))["aaa"]);
        await using var again = await RunningOffice.Start(folder, With);
        Assert.Equal(photo, await again.Client.GetByteArrayAsync($"/blobs/{Sha.Of(photo)}"));
        Assert.Single(said, line => line.StartsWith("Taken in", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_damaged_archive_is_said_and_the_office_starts()
    {
        List<string> said = [];
        await using var office = await RunningOffice.Start(with: options => options with { Import = [() => new MemoryStream([1, 2, 3])], Say = said.Add });
        Assert.Contains("no zip", Assert.Single(said), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_full_disk_is_said_nothing_is_acknowledged_and_it_heals()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux() && Environment.UserName == "root", "a small disk of its own can only be mounted by root on Linux");
        var folder = RunningOffice.NewFolder();
        Assert.SkipUnless(Run("mount", "-t", "tmpfs", "-o", "size=6m", "tmpfs", folder) == 0, "mounting is not allowed here");
        try
        {
            await using var office = await RunningOffice.Start(folder);
            await office.Push(Visit, Lines.Notes(Visit, "aaa", 50));
            var filler = Path.Combine(folder, "filler");
            Fill(filler);
            var full = await office.PushRaw(Visit, RunningOffice.Bytes(Lines.Notes(Visit, "aaa", 4_000)));
            Assert.Equal(HttpStatusCode.InsufficientStorage, full.StatusCode);
            Assert.Contains("disk is full", await RunningOffice.Words(full), StringComparison.Ordinal);
            Assert.Equal(50, (await office.Heads(Visit))["aaa"]);
            var photo = Pictures.Jpeg(2000, 1500, 100);
            var upload = await office.Patch(Sha.Of(photo), photo, 0, photo.Length);
            Assert.Equal(HttpStatusCode.InsufficientStorage, upload.StatusCode);
            // Nobody is kept out for it, and what is kept can be had.
            using var phone = office.NewClient();
            Assert.Equal(HttpStatusCode.NoContent, (await System.Net.Http.Json.HttpClientJsonExtensions.PostAsJsonAsync(phone, "/office/session", new { code = RunningOffice.Code })).StatusCode);
            Assert.Equal(HttpStatusCode.OK, (await phone.GetAsync("/office/inspections")).StatusCode);
            Assert.True(ArchiveReader.Open(new MemoryStream(await phone.GetByteArrayAsync($"/office/inspections/{Visit}/archive"))).IsAccepted);
            Assert.Equal(HttpStatusCode.NoContent, (await phone.DeleteAsync("/office/session")).StatusCode);
            Assert.Equal(HttpStatusCode.Unauthorized, (await phone.GetAsync("/office/inspections")).StatusCode);
            File.Delete(filler);
            Assert.Equal(4_000, RunningOffice.HeadsOf(await office.Push(Visit, Lines.Notes(Visit, "aaa", 4_000)))["aaa"]);
        }
        finally
        {
            SqliteConnection.ClearAllPools();
            Run("umount", "-l", folder);
        }
    }

    private static void Fill(string path)
    {
        using var file = File.Create(path, 1);
        var block = new byte[4096];
        try
        {
            while (true) file.Write(block);
        }
        catch (IOException)
        {
            // Full: that is what was wanted.
        }
    }

    private static int Run(string program, params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { UseShellExecute = false, RedirectStandardError = true })!;
        process.WaitForExit();
        return process.ExitCode;
    }

    private static async Task<string> Scalar(OfficeDb db, string pragma)
    {
        await db.Database.OpenConnectionAsync();
        await using var command = db.Database.GetDbConnection().CreateCommand();
        command.CommandText = pragma;
        return $"{await command.ExecuteScalarAsync()}";
    }
}
