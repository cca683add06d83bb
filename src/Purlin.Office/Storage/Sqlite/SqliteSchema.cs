using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;
using Purlin.Office.Storage.Migrations;

namespace Purlin.Office.Storage.Sqlite;

/// <summary>
/// Brings a database to the schema this program knows. Its number stands in the file itself (<c>PRAGMA user_version</c>), so that a newer folder is refused and
/// an older one is copied before it is changed.
/// </summary>
internal static class SqliteSchema
{
    /// <summary>The schema this program writes: the number of its migrations.</summary>
    public const int Known = 3;

    /// <summary>Makes or changes tables as needed.</summary>
    /// <exception cref="OfficeRefused">A newer program made the file.</exception>
    public static void Prepare(SqliteFile file)
    {
        var number = Number(file.Path);
        Refuse(file.Path, number);
        if (number is > 0 and < Known) Copy(file.Path, $"{file.Path}.schema-{number}");
        using var db = file.Db(Tenant.Own);
        if (number == 1) Adopt(db);
        db.Database.Migrate();
        db.Database.ExecuteSqlRaw("PRAGMA journal_mode=WAL");
        db.Database.ExecuteSqlRaw($"PRAGMA user_version={Known}");
    }

    /// <summary>Refuses a file of a newer program.</summary>
    /// <exception cref="OfficeRefused">It is one.</exception>
    public static void Refuse(string path, int number)
    {
        if (number > Known)
            throw new OfficeRefused($"{path} was made by a newer Purlin (schema {number}, this one knows {Known}). Nothing was changed; start it with that version.");
    }

    /// <summary>The schema of a file: 0 for a new one, 1 for one of version 0.1, which wrote no number.</summary>
    public static int Number(string path)
    {
        if (!File.Exists(path) || new FileInfo(path).Length == 0) return 0;
        using var connection = new SqliteConnection(SqliteFile.ConnectionString(path));
        connection.Open();
        var number = Convert.ToInt32(Scalar(connection, "PRAGMA user_version"));
        return number > 0 || Scalar(connection, "SELECT count(*) FROM sqlite_master WHERE name = 'entry'") is 0L ? number : 1;
    }

    private static void Copy(string path, string to)
    {
        if (File.Exists(to)) return;
        using var connection = new SqliteConnection(SqliteFile.ConnectionString(path));
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = "VACUUM INTO $to";
        command.Parameters.AddWithValue("$to", to);
        command.ExecuteNonQuery();
        Disk.MakePrivate(to);
    }

    /// <summary>Tables that were made all at once are those of the first migration: it is written down as done.</summary>
    private static void Adopt(OfficeDb db)
    {
        var history = db.GetService<IHistoryRepository>();
        db.Database.ExecuteSqlRaw(history.GetCreateIfNotExistsScript());
        if (history.GetAppliedMigrations().Count > 0) return;
        var version = typeof(DbContext).Assembly.GetName().Version?.ToString(3) ?? "10";
        db.Database.ExecuteSqlRaw(history.GetInsertScript(new HistoryRow(FirstTables.Name, version)));
    }

    private static object? Scalar(SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        return command.ExecuteScalar();
    }
}
