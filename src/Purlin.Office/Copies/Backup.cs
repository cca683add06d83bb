using System.Globalization;
using Microsoft.Data.Sqlite;
using Purlin.Office.Storage;
using Purlin.Office.Storage.Sqlite;

namespace Purlin.Office.Copies;

/// <summary>
/// A copy of an office that may be running: first the database, as it stands at one moment, then every file its rows speak of, each of which was on disk before
/// its row. Made again into the same folder, only what is new is copied.
/// </summary>
public static class Backup
{
    /// <summary>Copies an office's folder.</summary>
    /// <param name="data">The office's folder.</param>
    /// <param name="to">The backup's folder; made when absent.</param>
    /// <param name="say">Told what a person should know.</param>
    /// <exception cref="OfficeRefused">There is no office there, or the other folder is not a place for a backup.</exception>
    public static async Task<BackupResult> Make(string data, string to, Action<string> say, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(say);
        var database = Path.Combine(data, OfficeFolder.DatabaseFile);
        if (!File.Exists(database)) throw new OfficeRefused($"{data} holds no office. Nothing was copied; name its folder with --data.");
        RefusePlace(data, to);
        SqliteSchema.Refuse(database, SqliteSchema.Number(database));
        Disk.ClosePrivateFolder(to);
        CopyDatabase(database, Path.Combine(to, OfficeFolder.DatabaseFile));
        CopyFile(Path.Combine(data, ReceiptChain.KeyFile), Path.Combine(to, ReceiptChain.KeyFile));
        var (copied, missing) = (0, 0);
        await foreach (var (tenant, sha) in Blobs(Path.Combine(to, OfficeFolder.DatabaseFile), cancel))
        {
            var name = Path.Combine("blobs", tenant, sha[..2], sha[2..]);
            var (from, into) = (Path.Combine(data, name), Path.Combine(to, name));
            if (File.Exists(into) && File.Exists(from) && new FileInfo(into).Length == new FileInfo(from).Length) continue;
            if (!File.Exists(from))
            {
                missing++;
                say($"{sha}: the office has no file of this hash; it is not in the backup either.");
                continue;
            }

            Disk.MakePrivateFolder(Path.GetDirectoryName(into)!);
            CopyFile(from, into);
            copied++;
        }

        return new BackupResult(copied, missing);
    }

    private static void RefusePlace(string data, string to)
    {
        var (from, into) = (Path.GetFullPath(data) + Path.DirectorySeparatorChar, Path.GetFullPath(to) + Path.DirectorySeparatorChar);
        if (into.StartsWith(from, StringComparison.Ordinal)) throw new OfficeRefused($"{to} lies in the office's own folder. Nothing was copied; a backup belongs on another disk.");
        if (File.Exists(Path.Combine(to, "office.lock"))) throw new OfficeRefused($"{to} is the folder of an office, not of a backup. Nothing was copied.");
    }

    /// <summary>By the database's own way of copying while others write; beside and renamed, so that a cut leaves the earlier copy.</summary>
    private static void CopyDatabase(string from, string to)
    {
        var half = to + ".new";
        File.Delete(half);
        Disk.Write(half, FileMode.CreateNew).Dispose();
        using (var source = new SqliteConnection(SqliteFile.ConnectionString(from)))
        using (var target = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = half, Pooling = false }.ConnectionString))
        {
            source.Open();
            target.Open();
            source.BackupDatabase(target);
            using var command = target.CreateCommand();
            // A copy at rest is one file.
            command.CommandText = "PRAGMA journal_mode=DELETE";
            command.ExecuteNonQuery();
        }

        using (var file = new FileStream(half, FileMode.Open, FileAccess.ReadWrite)) Disk.Force(file);
        File.Move(half, to, overwrite: true);
        Disk.ForceFolder(Path.GetDirectoryName(to)!);
    }

    private static void CopyFile(string from, string to)
    {
        var half = to + ".new";
        using (var source = File.OpenRead(from))
        using (var target = Disk.Write(half, FileMode.Create))
        {
            source.CopyTo(target);
            Disk.Force(target);
        }

        File.Move(half, to, overwrite: true);
    }

    private static async IAsyncEnumerable<(string Tenant, string Sha)> Blobs(string database, [System.Runtime.CompilerServices.EnumeratorCancellation] CancellationToken cancel)
    {
        await using var connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = database, Mode = SqliteOpenMode.ReadOnly, Pooling = false }.ConnectionString);
        await connection.OpenAsync(cancel);
        await using var command = connection.CreateCommand();
        command.CommandText = "SELECT Tenant, Sha FROM blob ORDER BY Tenant, Sha";
        await using var rows = await command.ExecuteReaderAsync(cancel);
        while (await rows.ReadAsync(cancel))
        {
            if (Journal.Sha.Is(rows.GetString(1)) && rows.GetString(0).All(char.IsAsciiLetterOrDigit)) yield return (rows.GetString(0), rows.GetString(1));
        }
    }
}

/// <summary>What a backup did.</summary>
/// <param name="Copied">Files that were new in it.</param>
/// <param name="Missing">Files that the office itself no longer has.</param>
public sealed record BackupResult(int Copied, int Missing)
{
    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Copied} files copied, {Missing} missing at the office");
}
