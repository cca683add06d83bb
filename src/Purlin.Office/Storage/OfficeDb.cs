using Microsoft.EntityFrameworkCore;

namespace Purlin.Office.Storage;

/// <summary>
/// The office's tables as one tenant sees them: every query is narrowed to the tenant here, and nowhere else. Entries, receipts and editions can only be
/// added: the database itself refuses to change or delete them.
/// </summary>
public sealed class OfficeDb(DbContextOptions<OfficeDb> options, Tenant tenant) : DbContext(options)
{
    /// <summary>Whose rows these are.</summary>
    public string Tenant { get; } = tenant.Id;

    public DbSet<EntryRow> Entries => Set<EntryRow>();

    public DbSet<HeldRow> Held => Set<HeldRow>();

    public DbSet<InspectionRow> Inspections => Set<InspectionRow>();

    public DbSet<RetentionRow> Retentions => Set<RetentionRow>();

    public DbSet<PhotoRow> Photos => Set<PhotoRow>();

    public DbSet<ReceiptRow> Receipts => Set<ReceiptRow>();

    public DbSet<BlobRow> Blobs => Set<BlobRow>();

    public DbSet<EditionRow> Editions => Set<EditionRow>();

    public DbSet<SessionRow> Sessions => Set<SessionRow>();

    public DbSet<SettingRow> Settings => Set<SettingRow>();

    protected override void OnModelCreating(ModelBuilder modelBuilder)
    {
        ArgumentNullException.ThrowIfNull(modelBuilder);
        modelBuilder.Entity<EntryRow>(row =>
        {
            row.ToTable("entry").HasKey(entry => new { entry.Tenant, entry.Insp, entry.Dev, entry.Seq });
            row.HasIndex(entry => new { entry.Tenant, entry.Hash }).IsUnique();
            row.HasIndex(entry => new { entry.Tenant, entry.Insp, entry.Position }).IsUnique();
            row.HasQueryFilter(entry => entry.Tenant == Tenant);
        });
        modelBuilder.Entity<HeldRow>(row =>
        {
            row.ToTable("quarantine").HasKey(held => new { held.Tenant, held.Insp, held.Hash });
            row.HasQueryFilter(held => held.Tenant == Tenant);
        });
        modelBuilder.Entity<ReceiptRow>(row =>
        {
            row.ToTable("receipt").HasKey(receipt => new { receipt.Tenant, receipt.N });
            row.HasIndex(receipt => new { receipt.Tenant, receipt.Insp });
            row.HasQueryFilter(receipt => receipt.Tenant == Tenant);
        });
        modelBuilder.Entity<EditionRow>(row =>
        {
            row.ToTable("edition").HasKey(edition => new { edition.Tenant, edition.Insp, edition.Number });
            row.HasQueryFilter(edition => edition.Tenant == Tenant);
        });
        Changing(modelBuilder);
    }

    /// <summary>Tables whose rows change and go.</summary>
    private void Changing(ModelBuilder modelBuilder)
    {
        modelBuilder.Entity<InspectionRow>(row =>
        {
            row.ToTable("inspection").HasKey(inspection => new { inspection.Tenant, inspection.Insp });
            row.HasIndex(inspection => new { inspection.Tenant, inspection.Date });
            row.HasQueryFilter(inspection => inspection.Tenant == Tenant);
        });
        modelBuilder.Entity<RetentionRow>(row =>
        {
            row.ToTable("retention").HasKey(retention => new { retention.Tenant, retention.Insp });
            row.HasQueryFilter(retention => retention.Tenant == Tenant);
        });
        modelBuilder.Entity<PhotoRow>(row =>
        {
            row.ToTable("photo").HasKey(photo => new { photo.Tenant, photo.Insp, photo.Sha });
            row.HasIndex(photo => new { photo.Tenant, photo.Sha });
            row.HasQueryFilter(photo => photo.Tenant == Tenant);
        });
        modelBuilder.Entity<BlobRow>(row =>
        {
            row.ToTable("blob").HasKey(blob => new { blob.Tenant, blob.Sha });
            row.HasQueryFilter(blob => blob.Tenant == Tenant);
        });
        modelBuilder.Entity<SessionRow>(row =>
        {
            row.ToTable("session").HasKey(session => new { session.Tenant, session.TokenHash });
            row.HasIndex(session => session.TokenHash);
            row.HasQueryFilter(session => session.Tenant == Tenant);
        });
        modelBuilder.Entity<SettingRow>(row =>
        {
            row.ToTable("setting").HasKey(setting => new { setting.Tenant, setting.Name });
            row.HasQueryFilter(setting => setting.Tenant == Tenant);
        });
    }
}
