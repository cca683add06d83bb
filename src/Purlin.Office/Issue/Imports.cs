using Purlin.Journal.Archive;
using Purlin.Journal.Merge;
using Purlin.Office.Storage;

namespace Purlin.Office.Issue;

/// <summary>Takes archives in: a merge like any other delivery, so that it may be repeated.</summary>
public sealed class Imports(JournalShelf shelf, IBlobs blobs)
{
    /// <summary>Takes one archive in and says what came of it.</summary>
    public async Task Take(Func<Stream> open, Action<string> say, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(open);
        ArgumentNullException.ThrowIfNull(say);
        await using var stream = open();
        var read = ArchiveReader.Open(stream);
        if (!read.IsAccepted)
        {
            say($"An archive was not taken in: {string.Join("; ", read.Refusals)}");
            return;
        }

        using var archive = read.OrThrow();
        var arrival = await shelf.Take(archive.Manifest.Inspection, new LineBlock { Entries = archive.Entries, Held = archive.Held }, cancel);
        if (arrival is null)
        {
            say($"An archive was not taken in: inspection {archive.Manifest.Inspection} was erased here after its time.");
            return;
        }

        var held = await blobs.Has(archive.Blobs, cancel);
        foreach (var sha in archive.Blobs.Where(sha => !held.ContainsKey(sha)))
        {
            var type = archive.Manifest.Files.First(file => file.Sha256 == sha).MediaType;
            await blobs.Keep(sha, archive.Photo(sha)!, type);
        }

        if (arrival.Admitted.Taken.Count > 0) say($"Taken in: inspection {archive.Manifest.Inspection}, {arrival.Admitted.Taken.Count} entries, {archive.Blobs.Count} files.");
    }
}
