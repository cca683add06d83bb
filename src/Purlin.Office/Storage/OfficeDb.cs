using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Purlin.Office.Storage;

/// <summary>The office's tables. Entries, receipts and editions can only be added: the database itself refuses to change or delete them.</summary>
public sealed class OfficeDb(DbContextOptions<OfficeDb> options) : DbContext(options)
{
    /// <summary>One office, one tenant; the column is there so that a second one never needs a new schema.</summary>
    public const string OnlyTenant = "own";

    private static readonly string[] AppendOnly = ["entry", "receipt", "edition"];

    public DbSet<EntryRow> Entries => Set<EntryRow>();

    public DbSet<HeldRow> Held => Set<HeldRow>();

    public DbSet<ReceiptRow> Receipts => Set<ReceiptRow>();

    public DbSet<BlobRow> Blobs => Set<BlobRow>();

    public DbSet<EditionRow> Editions => Set<EditionRow>();

    public DbSet<SessionRow> Sessions => Set<SessionRow>();

    public DbSet<SettingRow> Settings => Set<SettingRow>();

    /// <summary>Options for the database file of this folder.</summary>
    public static DbContextOptions<OfficeDb> Options(string folder) =>
        new DbContextOptionsBuilder<OfficeDb>()
            .UseSqlite(new SqliteConnectionStringBuilder { DataSource = Path.Combine(folder, "office.db"), ForeignKeys = true, DefaultTimeout = 30 }.ConnectionString)
            .AddInterceptors(new FullSync())
            .Options;

    /// <summary>Makes tables and triggers that are not there yet.</summary>
    public void Prepare()
    {
        Database.EnsureCreated();
        Database.ExecuteSqlRaw("PRAGMA journal_mode=WAL");
        foreach (var table in AppendOnly)
        {
            foreach (var act in (string[])["UPDATE", "DELETE"])
            {
                var trigger = $"CREATE TRIGGER IF NOT EXISTS {table}_no_{act.ToLowerInvariant()} BEFORE {act} ON {table} BEGIN SELECT RAISE(ABORT, '{table} is append-only'); END";
                Database.ExecuteSqlRaw(trigger);
            }
        }
    }

    protected override void OnModelCreating(ModelBuilder modelBuilder)
    {
        ArgumentNullException.ThrowIfNull(modelBuilder);
        modelBuilder.Entity<EntryRow>(row =>
        {
            row.ToTable("entry").HasKey(entry => new { entry.Tenant, entry.Insp, entry.Dev, entry.Seq });
            row.HasIndex(entry => new { entry.Tenant, entry.Hash }).IsUnique();
        });
        modelBuilder.Entity<HeldRow>().ToTable("quarantine").HasKey(held => new { held.Tenant, held.Insp, held.Hash });
        modelBuilder.Entity<ReceiptRow>(row =>
        {
            row.ToTable("receipt").HasKey(receipt => new { receipt.Tenant, receipt.N });
            row.HasIndex(receipt => new { receipt.Tenant, receipt.Insp });
        });
        modelBuilder.Entity<BlobRow>().ToTable("blob").HasKey(blob => new { blob.Tenant, blob.Sha });
        modelBuilder.Entity<EditionRow>().ToTable("edition").HasKey(edition => new { edition.Tenant, edition.Insp, edition.Number });
        modelBuilder.Entity<SessionRow>().ToTable("session").HasKey(session => new { session.Tenant, session.TokenHash });
        modelBuilder.Entity<SettingRow>().ToTable("setting").HasKey(setting => setting.Name);
    }
}
