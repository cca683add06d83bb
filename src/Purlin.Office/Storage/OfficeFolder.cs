using Microsoft.Data.Sqlite;
using Purlin.Office.Storage.Sqlite;

namespace Purlin.Office.Storage;

/// <summary>An office's folder, taken for this process alone: lock, database at the schema of this program, key of receipts.</summary>
public sealed class OfficeFolder : IDisposable
{
    /// <summary>The database's file in the folder.</summary>
    public const string DatabaseFile = "office.db";

    private readonly FolderLock held;

    private OfficeFolder(FolderLock held, SqliteFile file, ReceiptChain receipts) => (this.held, File, Receipts) = (held, file, receipts);

    /// <summary>The database.</summary>
    public SqliteFile File { get; }

    /// <summary>The office's chain of receipts.</summary>
    public ReceiptChain Receipts { get; }

    /// <summary>Opens a folder, made when absent.</summary>
    /// <exception cref="OfficeRefused">Somebody else has it, or it cannot be used as it is; nothing was changed.</exception>
    public static OfficeFolder Open(string folder)
    {
        FolderLock? taken = null;
        try
        {
            Disk.ClosePrivateFolder(folder);
            taken = FolderLock.Take(folder);
            var path = Path.Combine(folder, DatabaseFile);
            DatabaseCheck.Refuse(path);
            // Looked at before the database is touched: a folder without its key is not to be changed either.
            var receipts = new ReceiptChain(folder);
            if (!System.IO.File.Exists(path)) Disk.Write(path, FileMode.CreateNew).Dispose();
            Disk.MakePrivate(path);
            var file = new SqliteFile(path);
            SqliteSchema.Prepare(file);
            return new OfficeFolder(taken, file, receipts);
        }
        catch (Exception failure)
        {
            taken?.Dispose();
            if (WorldFailure.Words(failure, folder) is { } words) throw new OfficeRefused(words, failure);
            throw;
        }
    }

    /// <summary>The database of a folder that another process may be serving; what is written there must be small.</summary>
    /// <exception cref="OfficeRefused">There is no office there, or not one of this program's schema.</exception>
    public static SqliteFile Peek(string folder)
    {
        var path = Path.Combine(folder, DatabaseFile);
        if (!System.IO.File.Exists(path)) throw new OfficeRefused($"{folder} holds no office; name its folder with --data.");
        var number = SqliteSchema.Number(path);
        SqliteSchema.Refuse(path, number);
        if (number < SqliteSchema.Known) throw new OfficeRefused($"The office in {folder} is of an earlier Purlin; start it once with this one.");
        return new SqliteFile(path);
    }

    public void Dispose()
    {
        File.Dispose();
        Receipts.Dispose();
        held.Dispose();
    }
}

/// <summary>A look at a database file before anything is written to it.</summary>
internal static class DatabaseCheck
{
    // Beyond this size a full look takes more than a moment; then only head, length and schema are looked at, and `purlin verify` does the rest.
    private const long LookedAtWhole = 64L * 1024 * 1024;

    /// <exception cref="OfficeRefused">The file is damaged or of a newer program.</exception>
    public static void Refuse(string path)
    {
        if (!File.Exists(path) || new FileInfo(path).Length == 0) return;
        try
        {
            SqliteSchema.Refuse(path, SqliteSchema.Number(path));
            using var connection = new SqliteConnection(SqliteFile.ConnectionString(path));
            connection.Open();
            using var command = connection.CreateCommand();
            command.CommandText = new FileInfo(path).Length > LookedAtWhole ? "SELECT count(*) FROM sqlite_master" : "PRAGMA quick_check(1)";
            if (command.ExecuteScalar() is string found && found != "ok") throw new OfficeRefused(Damaged(path, found));
        }
        catch (SqliteException wrong) when (wrong.SqliteErrorCode is 11 or 26)
        {
            throw new OfficeRefused(Damaged(path, wrong.SqliteErrorCode == 26 ? "it is no database" : "its pages do not hold together"), wrong);
        }
    }

    public static string Damaged(string path, string how) =>
        $"{path} is damaged ({how.ReplaceLineEndings(" ")}). Nothing was changed. Keep the folder as it is, and put your last backup into a new one: "
        + "purlin restore BACKUP --data NEW-FOLDER; phones then send what the backup lacks.";
}

/// <summary>Failures of the world at start, in words for the person at the machine.</summary>
public static class WorldFailure
{
    /// <summary>One sentence; none for a failure that is ours.</summary>
    public static string? Words(Exception failure, string folder) => failure switch
    {
        OfficeRefused refused => refused.Message,
        _ when Disk.IsFull(failure) => $"The disk that holds {folder} is full. Nothing was changed; make room and start again.",
        UnauthorizedAccessException => $"{folder} may not be written by this account. Nothing was changed; give it to the account that runs Purlin, or name another --data.",
        SqliteException { SqliteErrorCode: 8 or 14 } => $"{folder} cannot be written. Nothing was changed; look at its owner and its disk, or name another --data.",
        SqliteException { SqliteErrorCode: 11 or 26 } damaged => DatabaseCheck.Damaged(Path.Combine(folder, OfficeFolder.DatabaseFile), damaged.Message),
        SqliteException { SqliteErrorCode: 5 or 6 } => $"The database in {folder} is in use by another program. Nothing was changed; close that program and start again.",
        IOException io => $"{folder} cannot be used: {io.Message.TrimEnd('.')}. Nothing was changed.",
        _ => failure.InnerException is { } inner ? Words(inner, folder) : null,
    };
}
