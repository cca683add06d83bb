using Purlin.Office.Issue;
using Purlin.Office.Pictures;
using Purlin.Office.Storage;
using Purlin.Office.Storage.Sqlite;
using Purlin.Office.Sync;

namespace Purlin.Office;

/// <summary>Everything of one tenant: journals, files, pictures, reports. A request has the desk of whoever is signed in, and no way to another.</summary>
public sealed class Desk : IDisposable
{
    internal Desk(Tenant tenant, IJournals journals, IBlobs blobs, ReceiptChain receipts, OfficeSettings settings, OfficeOptions office)
    {
        (Tenant, Journals, Blobs) = (tenant, journals, blobs);
        Shelf = new JournalShelf(journals, receipts, office.Clock);
        Views = new PictureViews(Path.Combine(office.Folder, "views", tenant.Id), blobs);
        Issuing = new Issuing(Shelf, Views, office);
        Imports = new Imports(Shelf, blobs);
        Archiving = new Archiving(Shelf, journals, blobs, receipts);
        Editions = new Editions(office, this, settings, receipts);
    }

    /// <summary>Whose.</summary>
    public Tenant Tenant { get; }

    /// <summary>Its journals as they are kept.</summary>
    public IJournals Journals { get; }

    /// <summary>Its files.</summary>
    public IBlobs Blobs { get; }

    /// <summary>Its journals as they are worked with.</summary>
    public JournalShelf Shelf { get; }

    internal PictureViews Views { get; }

    internal Issuing Issuing { get; }

    internal Imports Imports { get; }

    internal Archiving Archiving { get; }

    internal UploadTurns Uploads { get; } = new();

    internal Editions Editions { get; }

    /// <summary>The desk of a request, for endpoints: set by the door that knows the session.</summary>
    public static ValueTask<Desk?> BindAsync(HttpContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        return ValueTask.FromResult(context.Features.Get<Desk>());
    }

    public void Dispose()
    {
        Views.Dispose();
        Issuing.Dispose();
        Editions.Dispose();
    }
}

/// <summary>The desks of an office, each made when first asked for.</summary>
public sealed class Desks(OfficeOptions office, SqliteFile file, ReceiptChain receipts, OfficeSettings settings) : IDisposable
{
    private readonly Lock turn = new();
    private readonly Dictionary<Tenant, Desk> desks = [];

    /// <summary>The desk of a tenant.</summary>
    public Desk Of(Tenant tenant)
    {
        lock (turn)
        {
            if (!desks.TryGetValue(tenant, out var desk)) desks[tenant] = desk = Make(tenant);
            return desk;
        }
    }

    public void Dispose()
    {
        foreach (var desk in desks.Values) desk.Dispose();
    }

    private Desk Make(Tenant tenant)
    {
        var folder = new BlobFolder(Path.Combine(office.Folder, "blobs", tenant.Id), Path.Combine(office.Folder, "damaged"), office.At);
        var blobs = new SqliteBlobs(file, folder, tenant, office.Clock);
        return new Desk(tenant, new SqliteJournals(file, tenant, office.At), blobs, receipts, settings, office);
    }
}
