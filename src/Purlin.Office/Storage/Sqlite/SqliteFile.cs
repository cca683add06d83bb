using System.Data.Common;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Purlin.Office.Storage.Sqlite;

/// <summary>The office's database as one SQLite file. Everything that another database would do otherwise is in this folder.</summary>
public sealed class SqliteFile : IDisposable
{
    private readonly DbContextOptions<OfficeDb> options;
    private readonly SemaphoreSlim turn = new(1);

    public SqliteFile(string path)
    {
        Path = path;
        options = OptionsOf(path);
    }

    /// <summary>The file.</summary>
    public string Path { get; }

    /// <summary>A connection of its own, for reading.</summary>
    public OfficeDb Db(Tenant tenant) => new(options, tenant);

    /// <summary>
    /// Writes in one transaction that takes the database's own lock from its start. In this process writers wait for one another here, so that none of them
    /// gives up while a long one writes; what takes time to work out is worked out before.
    /// </summary>
    /// <returns>What <paramref name="write"/> gives; nothing is kept when it throws.</returns>
    public async Task<T> Write<T>(Tenant tenant, Func<OfficeDb, Task<T>> write, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(write);
        await turn.WaitAsync(cancel);
        try
        {
            await using var db = Db(tenant);
            await using var transaction = await db.Database.BeginTransactionAsync(CancellationToken.None);
            var result = await write(db);
            await db.SaveChangesAsync(CancellationToken.None);
            await transaction.CommitAsync(CancellationToken.None);
            return result;
        }
        finally
        {
            turn.Release();
        }
    }

    public void Dispose()
    {
        turn.Dispose();
        // A pooled connection would keep the file open after the office has gone.
        using var connection = new SqliteConnection(ConnectionString(Path));
        SqliteConnection.ClearPool(connection);
    }

    internal static string ConnectionString(string path, bool readOnly = false) => new SqliteConnectionStringBuilder
    {
        DataSource = path,
        ForeignKeys = true,
        DefaultTimeout = 30,
        Mode = readOnly ? SqliteOpenMode.ReadOnly : SqliteOpenMode.ReadWriteCreate,
    }.ConnectionString;

    private static DbContextOptions<OfficeDb> OptionsOf(string path) => new DbContextOptionsBuilder<OfficeDb>()
        .UseSqlite(ConnectionString(path))
        .AddInterceptors(new FullSync())
        // Migrations are written by hand, so there is no picture of the model beside them; a test compares what they make with the model.
        .ConfigureWarnings(warnings => warnings.Ignore(RelationalEventId.PendingModelChangesWarning))
        .Options;

    /// <summary>Every connection forces each commit to disk. With <c>NORMAL</c> power cuts lost commits that had been acknowledged, with <c>FULL</c> none.</summary>
    private sealed class FullSync : DbConnectionInterceptor
    {
        public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData) => Set(connection);

        public override Task ConnectionOpenedAsync(DbConnection connection, ConnectionEndEventData eventData, CancellationToken cancellationToken = default)
        {
            Set(connection);
            return Task.CompletedTask;
        }

        private static void Set(DbConnection connection)
        {
            using var command = connection.CreateCommand();
            command.CommandText = "PRAGMA synchronous=FULL";
            command.ExecuteNonQuery();
        }
    }
}
