using Purlin.Journal;
using Purlin.Journal.Archive;
using Purlin.Journal.Merge;
using Purlin.Office.Storage;

namespace Purlin.Office.Issue;

/// <summary>Makes the archive of an inspection: lines, originals held here, what was issued, receipts and the key they are checked with.</summary>
public sealed class Archiving(JournalShelf shelf, IJournals journals, IBlobs blobs, ReceiptChain receipts)
{
    /// <summary>Gathers what goes into it, every file hashed anew: one that is damaged here is left out and named as missing. None when nothing is held.</summary>
    public async Task<Leaving?> Prepare(string inspection, CancellationToken cancel)
    {
        var (entries, held) = await shelf.With(inspection, journal => (journal.Lines.Entries.ToArray(), journal.Lines.Held.ToArray()), cancel);
        if (entries.Length + held.Length == 0) return null;
        var photos = await Photos(entries, cancel);
        return new Leaving(entries, held, photos, await Extras(inspection, cancel));
    }

    private async Task<List<ArchivePhoto>> Photos(Entry[] entries, CancellationToken cancel)
    {
        List<ArchivePhoto> photos = [];
        var named = entries.Select(entry => entry.Body switch { EntryBody.PhotoTaken photo => photo.Sha, EntryBody.SoundTaken sound => sound.Sha, _ => null }).OfType<string>().ToHashSet(StringComparer.Ordinal);
        foreach (var (sha, blob) in await blobs.Has(named, cancel))
        {
            if (ArchiveNames.OfBlob(sha, blob.MediaType) is null) continue;
            await using (var whole = await blobs.Open(sha, cancel))
            {
                if (whole is null) continue;
            }

            photos.Add(new ArchivePhoto(sha, blob.MediaType, () => blobs.Open(sha, CancellationToken.None).GetAwaiter().GetResult() ?? throw new IOException($"{sha} went away")));
        }

        return photos;
    }

    private async Task<List<ArchiveExtra>> Extras(string inspection, CancellationToken cancel)
    {
        List<ArchiveExtra> extras = [new(ArchiveNames.Key, System.Text.Encoding.ASCII.GetBytes(receipts.PublicKey))];
        foreach (var edition in await journals.Editions(inspection, cancel))
        {
            if (await Bytes(edition.Page, cancel) is { } page) extras.Add(new ArchiveExtra(ArchiveNames.Page(edition.Number), page));
            if (await Bytes(edition.Pdf, cancel) is { } pdf) extras.Add(new ArchiveExtra(ArchiveNames.Pdf(edition.Number), pdf));
        }

        using var lines = new MemoryStream();
        LineBlock.Write(lines, (await journals.Receipts(inspection, cancel)).Select(raw => (ReadOnlyMemory<byte>)raw));
        extras.Add(new ArchiveExtra(ArchiveNames.Receipts, lines.ToArray()));
        return extras;
    }

    private async Task<byte[]?> Bytes(string sha, CancellationToken cancel)
    {
        await using var from = await blobs.Open(sha, cancel);
        if (from is null) return null;
        var bytes = new byte[from.Length];
        await from.ReadExactlyAsync(bytes, cancel);
        return bytes;
    }
}

/// <summary>An archive that is about to leave.</summary>
public sealed class Leaving(Entry[] entries, HeldLine[] held, List<ArchivePhoto> photos, List<ArchiveExtra> extras)
{
    /// <summary>Writes it, forward only.</summary>
    public void Write(Stream to) => ArchiveWriter.Write(to, entries, photos, held, extras);
}
