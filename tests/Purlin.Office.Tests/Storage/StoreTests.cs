using Purlin.Office.Storage;
using Purlin.Office.Storage.Sqlite;
using Purlin.Office.Tests.Office;

namespace Purlin.Office.Tests.Storage;

/// <summary>SQLite and a folder, as an office opens them.</summary>
internal sealed class DiskStore : IDisposable
{
    private readonly OfficeFolder office = OfficeFolder.Open(RunningOffice.NewFolder());

    public IJournals Journals(Tenant tenant) => new SqliteJournals(office.File, tenant, _ => { });

    public IBlobs Blobs(Tenant tenant) => new SqliteBlobs(office.File, new BlobFolder(Root(tenant), Path.Combine(Folder, "damaged"), _ => { }), tenant, TimeProvider.System);

    public void Spoil(Tenant tenant, string sha, byte[]? bytes)
    {
        var path = Path.Combine(Root(tenant), sha[..2], sha[2..]);
        if (bytes is null) File.Delete(path);
        else File.WriteAllBytes(path, bytes);
    }

    public void Dispose() => office.Dispose();

    private string Folder => Path.GetDirectoryName(office.File.Path)!;

    private string Root(Tenant tenant) => Path.Combine(Folder, "blobs", tenant.Id);
}

public sealed class SqliteJournalsTests : JournalsContract
{
    private readonly DiskStore store = new();

    protected override IJournals Of(Tenant tenant) => store.Journals(tenant);

    protected override IBlobs BlobsOf(Tenant tenant) => store.Blobs(tenant);

    protected override void Dispose(bool disposing)
    {
        store.Dispose();
        base.Dispose(disposing);
    }
}

public sealed class MemoryJournalsTests : JournalsContract
{
    private readonly MemoryStore store = new();

    protected override IJournals Of(Tenant tenant) => store.Journals(tenant);

    protected override IBlobs BlobsOf(Tenant tenant) => store.Blobs(tenant);
}

public sealed class FolderBlobsTests : BlobsContract
{
    private readonly DiskStore store = new();

    protected override IBlobs Of(Tenant tenant) => store.Blobs(tenant);

    protected override void Spoil(Tenant tenant, string sha, byte[]? bytes) => store.Spoil(tenant, sha, bytes);

    protected override void Dispose(bool disposing)
    {
        store.Dispose();
        base.Dispose(disposing);
    }
}

public sealed class MemoryBlobsTests : BlobsContract
{
    private readonly MemoryStore store = new();

    protected override IBlobs Of(Tenant tenant) => store.Blobs(tenant);

    protected override void Spoil(Tenant tenant, string sha, byte[]? bytes) => store.Spoil(tenant, sha, bytes);
}
