using Microsoft.EntityFrameworkCore;
using Purlin.Journal;
using Purlin.Journal.Archive;
using Purlin.Office.Storage;

namespace Purlin.Office.Issue;

/// <summary>Writes the archive of an inspection: lines, originals held here, what was issued, receipts and the key they are checked with.</summary>
public sealed class Archiving(OfficeOptions office, OfficeStore store, BlobFolder blobs, ReceiptChain receipts)
{
    /// <summary>Writes it to a file that vanishes when closed, and opens that; none when the office holds nothing.</summary>
    public async Task<Stream?> Prepare(string inspection, CancellationToken cancel)
    {
        var (entries, held) = await store.With(inspection, journal => (journal.Entries.ToArray(), journal.Held.ToArray()), cancel);
        if (entries.Length + held.Length == 0) return null;
        var photos = await Photos(entries, cancel);
        var extras = await Extras(inspection, cancel);
        var folder = Path.Combine(office.Folder, "leaving");
        Directory.CreateDirectory(folder);
        var file = new FileStream(Path.Combine(folder, Path.GetRandomFileName()), FileMode.CreateNew, FileAccess.ReadWrite, FileShare.None, 81920, FileOptions.DeleteOnClose);
        try
        {
            await Task.Run(() => ArchiveWriter.Write(file, entries, photos, held, extras), cancel);
            file.Position = 0;
            return file;
        }
        catch
        {
            await file.DisposeAsync();
            throw;
        }
    }

    private async Task<List<ArchivePhoto>> Photos(Entry[] entries, CancellationToken cancel)
    {
        List<ArchivePhoto> photos = [];
        foreach (var sha in entries.Select(entry => entry.Body switch { EntryBody.PhotoTaken photo => photo.Sha, EntryBody.SoundTaken sound => sound.Sha, _ => null }).OfType<string>().Distinct(StringComparer.Ordinal))
        {
            if (await blobs.Row(sha, cancel) is { } row && ArchiveNames.OfBlob(sha, row.MediaType) is not null) photos.Add(new ArchivePhoto(sha, row.MediaType, () => File.OpenRead(blobs.PathOf(sha))));
        }

        return photos;
    }

    private async Task<List<ArchiveExtra>> Extras(string inspection, CancellationToken cancel)
    {
        List<ArchiveExtra> extras = [new(ArchiveNames.Key, System.Text.Encoding.ASCII.GetBytes(receipts.PublicKey))];
        await using var db = store.Db();
        foreach (var edition in await db.Editions.AsNoTracking().Where(row => row.Tenant == OfficeDb.OnlyTenant && row.Insp == inspection).OrderBy(row => row.Number).ToListAsync(cancel))
        {
            if (await blobs.Bytes(edition.Page, cancel) is { } page) extras.Add(new ArchiveExtra(ArchiveNames.Page(edition.Number), page));
            if (await blobs.Bytes(edition.Pdf, cancel) is { } pdf) extras.Add(new ArchiveExtra(ArchiveNames.Pdf(edition.Number), pdf));
        }

        var signed = await db.Receipts.AsNoTracking().Where(row => row.Tenant == OfficeDb.OnlyTenant && row.Insp == inspection).OrderBy(row => row.N).Select(row => row.Raw).ToListAsync(cancel);
        extras.Add(new ArchiveExtra(ArchiveNames.Receipts, [.. signed.SelectMany(raw => raw.Append((byte)'\n'))]));
        return extras;
    }
}
