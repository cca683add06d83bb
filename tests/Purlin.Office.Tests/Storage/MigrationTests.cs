using System.Text;
using Microsoft.Data.Sqlite;
using System.Net;
using Microsoft.EntityFrameworkCore;
using Purlin.Journal;
using Purlin.Office.Storage;
using Purlin.Office.Storage.Sqlite;
using Purlin.Office.Tests.Office;

namespace Purlin.Office.Tests.Storage;

/// <summary>A folder of any earlier version is taken over whole, one of a later version is left alone.</summary>
public sealed class MigrationTests
{
    private const string Visit = "visit1";

    // Tables and triggers as version 0.1 made them, read out of a database it had made.
    private const string Schema01 =
        """
        CREATE TABLE "blob" ("Tenant" TEXT NOT NULL, "Sha" TEXT NOT NULL, "Size" INTEGER NOT NULL, "MediaType" TEXT NOT NULL, "ReceivedAt" INTEGER NOT NULL,
            CONSTRAINT "PK_blob" PRIMARY KEY ("Tenant", "Sha"));
        CREATE TABLE "edition" ("Tenant" TEXT NOT NULL, "Insp" TEXT NOT NULL, "Number" INTEGER NOT NULL, "Seal" TEXT NOT NULL, "Root" TEXT NOT NULL,
            "Page" TEXT NOT NULL, "Pdf" TEXT NOT NULL, "At" INTEGER NOT NULL, CONSTRAINT "PK_edition" PRIMARY KEY ("Tenant", "Insp", "Number"));
        CREATE TABLE "entry" ("Tenant" TEXT NOT NULL, "Insp" TEXT NOT NULL, "Dev" TEXT NOT NULL, "Seq" INTEGER NOT NULL, "Hash" TEXT NOT NULL, "Prev" TEXT NULL,
            "Hlc" TEXT NOT NULL, "Type" TEXT NOT NULL, "Raw" BLOB NOT NULL, "ReceivedAt" INTEGER NOT NULL, CONSTRAINT "PK_entry" PRIMARY KEY ("Tenant", "Insp", "Dev", "Seq"));
        CREATE TABLE "quarantine" ("Tenant" TEXT NOT NULL, "Insp" TEXT NOT NULL, "Hash" TEXT NOT NULL, "Name" TEXT NULL, "Raw" BLOB NOT NULL, "Why" TEXT NOT NULL,
            "ReceivedAt" INTEGER NOT NULL, CONSTRAINT "PK_quarantine" PRIMARY KEY ("Tenant", "Insp", "Hash"));
        CREATE TABLE "receipt" ("Tenant" TEXT NOT NULL, "N" INTEGER NOT NULL, "Insp" TEXT NOT NULL, "Raw" BLOB NOT NULL, CONSTRAINT "PK_receipt" PRIMARY KEY ("Tenant", "N"));
        CREATE TABLE "session" ("Tenant" TEXT NOT NULL, "TokenHash" TEXT NOT NULL, "Until" INTEGER NOT NULL, CONSTRAINT "PK_session" PRIMARY KEY ("Tenant", "TokenHash"));
        CREATE TABLE "setting" ("Name" TEXT NOT NULL CONSTRAINT "PK_setting" PRIMARY KEY, "Value" TEXT NOT NULL);
        CREATE UNIQUE INDEX "IX_entry_Tenant_Hash" ON "entry" ("Tenant", "Hash");
        CREATE INDEX "IX_receipt_Tenant_Insp" ON "receipt" ("Tenant", "Insp");
        CREATE TRIGGER entry_no_update BEFORE UPDATE ON entry BEGIN SELECT RAISE(ABORT, 'entry is append-only'); END;
        CREATE TRIGGER entry_no_delete BEFORE DELETE ON entry BEGIN SELECT RAISE(ABORT, 'entry is append-only'); END;
        CREATE TRIGGER receipt_no_update BEFORE UPDATE ON receipt BEGIN SELECT RAISE(ABORT, 'receipt is append-only'); END;
        CREATE TRIGGER receipt_no_delete BEFORE DELETE ON receipt BEGIN SELECT RAISE(ABORT, 'receipt is append-only'); END;
        CREATE TRIGGER edition_no_update BEFORE UPDATE ON edition BEGIN SELECT RAISE(ABORT, 'edition is append-only'); END;
        CREATE TRIGGER edition_no_delete BEFORE DELETE ON edition BEGIN SELECT RAISE(ABORT, 'edition is append-only'); END;
        PRAGMA journal_mode=WAL;
        """;

    private static SqliteConnection Connect(string folder)
    {
        SqliteConnection connection = new(new SqliteConnectionStringBuilder { DataSource = Path.Combine(folder, "office.db"), Pooling = false }.ConnectionString);
        connection.Open();
        return connection;
    }

    private static void Run(SqliteConnection connection, string sql, params object?[] values)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        for (var at = 0; at < values.Length; at++) command.Parameters.AddWithValue($"${at}", values[at] ?? DBNull.Value);
        command.ExecuteNonQuery();
    }

    private static string Old(List<Entry> lines, byte[] junk)
    {
        var folder = RunningOffice.NewFolder();
        using var connection = Connect(folder);
        Run(connection, Schema01);
        foreach (var entry in lines)
            Run(connection, "INSERT INTO entry VALUES ('own', $0, $1, $2, $3, $4, $5, $6, $7, $8)", Visit, entry.Name.Device, entry.Name.Seq, entry.Hash, entry.Previous, entry.Hlc.ToString(), entry.Body.Type, entry.Line.ToArray(), 1_000L);
        Run(connection, "INSERT INTO quarantine VALUES ('own', $0, $1, NULL, $2, 'line: junk', 500)", Visit, Sha.Of(junk), junk);
        Run(connection, "INSERT INTO setting VALUES ('device', 'oabcdefghi')");
        return folder;
    }

    [Fact]
    public async Task A_folder_of_the_first_version_is_taken_over_whole_and_copied_before()
    {
        List<Entry> lines = [new Pen(Visit, "aaa").Write(new EntryBody.InspectionOpened { Property = new Property { Address = "9 Invented Row" }, Date = new DateOnly(2026, 11, 25) }, DateTimeOffset.UnixEpoch), .. Lines.Notes(Visit, "bbb", 3)];
        var folder = Old(lines, "junk"u8.ToArray());
        await using var office = await RunningOffice.Start(folder);
        var listed = Assert.Single((await office.Get("/office/inspections")).AsArray())!;
        Assert.Equal(("9 Invented Row", "2026-11-25", 4, 1), ((string)listed["address"]!, (string)listed["date"]!, (int)listed["entries"]!, (int)listed["held"]!));
        Assert.Equal(new Dictionary<string, int> { ["aaa"] = 1, ["bbb"] = 3 }, await office.Heads(Visit));
        await office.Push(Visit, Lines.Notes(Visit, "bbb", 5));
        Assert.Equal(5, (await office.Heads(Visit))["bbb"]);
        await using var db = office.Db();
        Assert.Equal("oabcdefghi", db.Settings.Single(row => row.Name == "device").Value);
        // The line in quarantine came first: it bears the first number.
        Assert.Equal((1, 2), (db.Held.Single().Position, db.Entries.OrderBy(row => row.Position).First().Position));
        await using SqliteConnection before = new($"Data Source={Path.Combine(folder, "office.db.schema-1")};Pooling=False");
        before.Open();
        using var count = before.CreateCommand();
        count.CommandText = "SELECT count(*) FROM entry";
        Assert.Equal(4L, count.ExecuteScalar());
    }

    [Fact]
    public async Task Whoever_was_signed_in_before_devices_were_kept_still_is()
    {
        var folder = RunningOffice.NewFolder();
        var token = new string('a', 64);
        using (SqliteFile file = new(Path.Combine(folder, "office.db")))
        {
            SqliteSchema.Prepare(file);
            await using var db = file.Db(Tenant.Own);
            // As schema 2 left it.
            await db.Database.ExecuteSqlRawAsync("ALTER TABLE session DROP COLUMN \"Device\"; ALTER TABLE session DROP COLUMN \"Since\"; ALTER TABLE session DROP COLUMN \"Seen\"");
            await db.Database.ExecuteSqlRawAsync("DELETE FROM __EFMigrationsHistory WHERE MigrationId LIKE '0003%'");
            await db.Database.ExecuteSqlRawAsync("INSERT INTO session VALUES ('own', {0}, 4000000000000)", Sha.Of(Encoding.UTF8.GetBytes(token)));
            await db.Database.ExecuteSqlRawAsync("PRAGMA user_version=2");
        }

        await using var office = await RunningOffice.Start(folder);
        using var client = office.NewClient();
        client.DefaultRequestHeaders.Add("Cookie", $"purlin-session={token}");
        Assert.Equal(HttpStatusCode.OK, (await client.GetAsync("/office/inspections")).StatusCode);
        Assert.True(File.Exists(Path.Combine(folder, "office.db.schema-2")));
    }

    [Fact]
    public async Task Started_again_it_changes_nothing_more()
    {
        var folder = Old(Lines.Notes(Visit, "aaa", 3), "junk"u8.ToArray());
        for (var start = 0; start < 3; start++)
        {
            await using var office = await RunningOffice.Start(folder);
            Assert.Equal(3, (await office.Heads(Visit))["aaa"]);
            await using var db = office.Db();
            Assert.Equal([$"{SqliteSchema.Known}"], await db.Database.SqlQueryRaw<string>("SELECT CAST(user_version AS TEXT) AS Value FROM pragma_user_version").ToListAsync());
            Assert.Equal(SqliteSchema.Known, (await db.Database.GetAppliedMigrationsAsync()).Count());
        }
    }

    [Fact]
    public void The_migrations_make_what_the_model_says()
    {
        using var migrated = OfficeFolder.Open(RunningOffice.NewFolder());
        var path = Path.Combine(RunningOffice.NewFolder(), "model.db");
        using SqliteFile model = new(path);
        using (var db = model.Db(Tenant.Own)) db.Database.EnsureCreated();
        Assert.Equal(Shape(path), Shape(migrated.File.Path));
    }

    private static List<string> Shape(string path)
    {
        using SqliteConnection connection = new($"Data Source={path};Pooling=False");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText =
            """
            SELECT m.name || '.' || c.name || ' ' || c.type || ' ' || c."notnull" || ' key ' || c.pk FROM sqlite_master m, pragma_table_info(m.name) c WHERE m.type = 'table' AND m.name NOT LIKE '\_\_EF%' ESCAPE '\'
            UNION ALL
            SELECT 'index ' || m.name || ' on ' || m.tbl_name || ' ' || i.name || ' ' || i.seqno FROM sqlite_master m, pragma_index_info(m.name) i WHERE m.type = 'index' AND m.name LIKE 'IX%'
            ORDER BY 1
            """;
        using var reader = command.ExecuteReader();
        List<string> shape = [];
        while (reader.Read()) shape.Add(reader.GetString(0));
        Assert.True(shape.Count > 60);
        return shape;
    }

    [Fact]
    public void A_folder_of_a_later_version_is_refused_and_left_alone()
    {
        var folder = RunningOffice.NewFolder();
        OfficeFolder.Open(folder).Dispose();
        using (var connection = Connect(folder)) Run(connection, "PRAGMA user_version=99");
        var before = Sha.Of(File.ReadAllBytes(Path.Combine(folder, "office.db")));
        var refused = Assert.Throws<OfficeRefused>(() => OfficeFolder.Open(folder));
        Assert.Contains("newer Purlin (schema 99", refused.Message, StringComparison.Ordinal);
        Assert.Equal(before, Sha.Of(File.ReadAllBytes(Path.Combine(folder, "office.db"))));
    }

    [Theory]
    [InlineData("UPDATE entry SET Raw = x''")]
    [InlineData("UPDATE entry SET Raw = x'', Hash = 'other'")]
    [InlineData("DELETE FROM entry")]
    public async Task The_bytes_of_a_line_can_only_be_dropped_once_its_erasure_is_written_down(string command)
    {
        await using var office = await RunningOffice.Start();
        await office.Push(Visit, Lines.Notes(Visit, "aaa", 2));
        await using var db = office.Db();
        db.Retentions.Add(new RetentionRow { Tenant = "own", Insp = Visit, KeepUntil = 2_000, ErasedAt = 1_000 });
        await db.SaveChangesAsync(TestContext.Current.CancellationToken);
        var refused = await Assert.ThrowsAsync<SqliteException>(() => db.Database.ExecuteSqlRawAsync(command, TestContext.Current.CancellationToken));
        Assert.Contains("append-only", refused.Message, StringComparison.Ordinal);
        db.Retentions.Single().ErasedAt = 3_000;
        await db.SaveChangesAsync(TestContext.Current.CancellationToken);
        if (command.EndsWith("x''", StringComparison.Ordinal)) Assert.Equal(2, await db.Database.ExecuteSqlRawAsync(command, TestContext.Current.CancellationToken));
        else await Assert.ThrowsAsync<SqliteException>(() => db.Database.ExecuteSqlRawAsync(command, TestContext.Current.CancellationToken));
    }
}
