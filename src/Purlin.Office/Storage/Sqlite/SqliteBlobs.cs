using Microsoft.EntityFrameworkCore;
using Purlin.Office.Pictures;

namespace Purlin.Office.Storage.Sqlite;

/// <summary>Files in a folder, with a row in the office's SQLite file for each that is held whole.</summary>
internal sealed class SqliteBlobs(SqliteFile file, BlobFolder folder, Tenant tenant, TimeProvider clock) : IBlobs
{
    public async Task<IReadOnlyDictionary<string, Blob>> Has(IReadOnlyCollection<string> hashes, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(hashes);
        Dictionary<string, Blob> held = new(StringComparer.Ordinal);
        await using var db = file.Db(tenant);
        foreach (var some in hashes.Chunk(500))
        {
            foreach (var row in await db.Blobs.AsNoTracking().Where(row => some.Contains(row.Sha)).ToListAsync(cancel))
            {
                if (await IsThere(row, cancel)) held[row.Sha] = new Blob(row.Sha, row.Size, row.MediaType);
            }
        }

        return held;
    }

    public async Task<Stream?> Open(string sha, CancellationToken cancel)
    {
        await using (var db = file.Db(tenant))
        {
            if (!await db.Blobs.AsNoTracking().AnyAsync(row => row.Sha == sha, cancel)) return null;
        }

        if (folder.Look(sha) is { } look)
        {
            var stream = folder.Open(sha);
            try
            {
                if (stream.Length == look.Size && await BlobFolder.Has(stream, sha, cancel))
                {
                    stream.Position = 0;
                    return stream;
                }
            }
            catch
            {
                await stream.DisposeAsync();
                throw;
            }

            await stream.DisposeAsync();
        }

        await Lost(sha);
        return null;
    }

    public Task<long> Arrived(string sha, CancellationToken cancel) => Task.FromResult(folder.Arrived(sha));

    public Task Part(string sha, Stream bytes, long atMost, CancellationToken cancel) => folder.Append(sha, bytes, atMost, cancel);

    public async Task<PartRefusal?> Finish(string sha, CancellationToken cancel)
    {
        string? type;
        await using (var part = folder.OpenPart(sha))
        {
            var whole = await BlobFolder.Has(part, sha, cancel);
            part.Position = 0;
            type = whole ? PictureKind.Kind(part) : null;
            if (type is null)
            {
                folder.DropPart(sha);
                return new PartRefusal(OtherBytes: !whole);
            }
        }

        await Place(sha, type);
        return null;
    }

    public async Task Keep(string sha, ReadOnlyMemory<byte> bytes, string mediaType)
    {
        await folder.Fill(sha, bytes);
        await Place(sha, mediaType);
    }

    public async Task Remove(string sha)
    {
        await Forget(sha);
        folder.Delete(sha);
    }

    public async Task<ScrubResult> Scrub(DateTimeOffset before, CancellationToken cancel)
    {
        List<string> damaged = [];
        List<BlobRow> rows;
        HashSet<string> known;
        var limit = before.ToUnixTimeMilliseconds();
        await using (var db = file.Db(tenant))
        {
            rows = await db.Blobs.AsNoTracking().Where(row => row.HashedAt <= limit).OrderBy(row => row.HashedAt).ToListAsync(cancel);
            known = (await db.Blobs.AsNoTracking().Select(row => row.Sha).ToListAsync(cancel)).ToHashSet(StringComparer.Ordinal);
        }

        List<BlobRow> good = [];
        foreach (var row in rows)
        {
            if (await IsWhole(row, cancel)) good.Add(row);
            else damaged.Add(row.Sha);
            if (good.Count == 100) await Hashed(good);
        }

        await Hashed(good);
        // One that is being settled right now is nobody's orphan.
        var settled = (clock.GetUtcNow() - TimeSpan.FromHours(1)).UtcTicks;
        foreach (var orphan in folder.All().Where(sha => !known.Contains(sha) && folder.Look(sha)?.Stamp < settled).ToList()) await Adopt(orphan, cancel);
        folder.ClearParts(clock.GetUtcNow());
        return new ScrubResult(rows.Count, damaged);
    }

    /// <summary>
    /// A look at the file: gone or of another size, it is no longer held. Changed by its own time since it was last hashed (a restored copy, a hand in the
    /// folder), it is hashed again now; rot leaves that time alone and is found by the scrub and wherever bytes are used.
    /// </summary>
    private async Task<bool> IsThere(BlobRow row, CancellationToken cancel)
    {
        if (folder.Look(row.Sha) is { } look && look.Size == row.Size)
        {
            if (look.Stamp == row.Stamp) return true;
            if (await IsWhole(row, cancel))
            {
                await Hashed([row]);
                return true;
            }

            return false;
        }

        await Lost(row.Sha);
        return false;
    }

    private async Task<bool> IsWhole(BlobRow row, CancellationToken cancel)
    {
        if (folder.Look(row.Sha) is { } look && look.Size == row.Size)
        {
            await using var bytes = folder.Open(row.Sha);
            if (await BlobFolder.Has(bytes, row.Sha, cancel))
            {
                (row.Stamp, row.HashedAt) = (look.Stamp, clock.GetUtcNow().ToUnixTimeMilliseconds());
                return true;
            }
        }

        await Lost(row.Sha);
        return false;
    }

    private async Task Hashed(List<BlobRow> rows)
    {
        if (rows.Count == 0) return;
        await file.Write(
            tenant,
            async db =>
            {
                foreach (var row in rows)
                {
                    await db.Blobs.Where(one => one.Sha == row.Sha)
                        .ExecuteUpdateAsync(set => set.SetProperty(one => one.Stamp, row.Stamp).SetProperty(one => one.HashedAt, row.HashedAt));
                }

                return true;
            },
            CancellationToken.None);
        rows.Clear();
    }

    /// <summary>Bytes that are gone or others: put aside what is there, and call it held no longer, so that devices that still have it are asked.</summary>
    private async Task Lost(string sha)
    {
        folder.PutAside(sha);
        await Forget(sha);
    }

    private Task Forget(string sha) => file.Write(
        tenant,
        async db =>
        {
            await db.Blobs.Where(row => row.Sha == sha).ExecuteDeleteAsync();
            await Recount(db, sha);
            return true;
        },
        CancellationToken.None);

    /// <summary>A file that a kill left between its rename and its row: taken when it is what its name says, put aside otherwise.</summary>
    private async Task Adopt(string sha, CancellationToken cancel)
    {
        string? type = null;
        await using (var bytes = folder.Open(sha))
        {
            if (await BlobFolder.Has(bytes, sha, cancel))
            {
                bytes.Position = 0;
                type = PictureKind.Kind(bytes);
            }
        }

        if (type is null) folder.PutAside(sha);
        else await Note(sha, type);
    }

    private async Task Place(string sha, string mediaType)
    {
        folder.Settle(sha);
        await Note(sha, mediaType);
    }

    private async Task Note(string sha, string mediaType)
    {
        var look = folder.Look(sha) ?? throw new IOException($"the file {sha} went away while it was kept");
        var now = clock.GetUtcNow().ToUnixTimeMilliseconds();
        await file.Write(
            tenant,
            async db =>
            {
                await db.Blobs.Where(row => row.Sha == sha).ExecuteDeleteAsync();
                db.Blobs.Add(new BlobRow { Tenant = tenant.Id, Sha = sha, Size = look.Size, MediaType = mediaType, ReceivedAt = now, HashedAt = now, Stamp = look.Stamp });
                await db.SaveChangesAsync();
                await Recount(db, sha);
                return true;
            },
            CancellationToken.None);
    }

    private static async Task Recount(OfficeDb db, string sha)
    {
        foreach (var inspection in await db.Photos.AsNoTracking().Where(photo => photo.Sha == sha).Select(photo => photo.Insp).ToListAsync())
        {
            var here = await SqliteJournals.Here(db, inspection);
            await db.Inspections.Where(row => row.Insp == inspection).ExecuteUpdateAsync(set => set.SetProperty(row => row.PhotosHere, here));
        }
    }
}
