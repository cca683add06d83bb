using System.Security.Cryptography;
using Microsoft.EntityFrameworkCore;
using Purlin.Journal;
using Purlin.Office.Pictures;

namespace Purlin.Office.Storage;

/// <summary>
/// Photographs, sounds and issued files by hash, in <c>blobs/own/ab/cdef...</c>. An upload grows under <c>blobs/own/part</c>; whole, it is hashed, forced to
/// disk, renamed, its folder forced, and only then does a row speak of it.
/// </summary>
public sealed class BlobFolder(OfficeOptions office, OfficeStore store)
{
    private readonly string root = Path.Combine(office.Folder, "blobs", OfficeDb.OnlyTenant);

    /// <summary>The file of a blob, whole or not there.</summary>
    public string PathOf(string sha) => Path.Combine(root, Safe(sha)[..2], sha[2..]);

    /// <summary>The bytes of a blob held whole; none otherwise.</summary>
    public async Task<byte[]?> Bytes(string sha, CancellationToken cancel) => await Row(sha, cancel) is null ? null : await File.ReadAllBytesAsync(PathOf(sha), cancel);

    /// <summary>The row of a blob held whole.</summary>
    public async Task<BlobRow?> Row(string sha, CancellationToken cancel)
    {
        await using var db = store.Db();
        return await db.Blobs.AsNoTracking().SingleOrDefaultAsync(row => row.Tenant == OfficeDb.OnlyTenant && row.Sha == sha, cancel);
    }

    /// <summary>Those of these hashes that are held whole.</summary>
    public async Task<IReadOnlySet<string>> Whole(IReadOnlyCollection<string> hashes, CancellationToken cancel)
    {
        HashSet<string> whole = [];
        await using var db = store.Db();
        foreach (var some in hashes.Chunk(500))
            whole.UnionWith(await db.Blobs.AsNoTracking().Where(row => row.Tenant == OfficeDb.OnlyTenant && some.Contains(row.Sha)).Select(row => row.Sha).ToListAsync(cancel));
        return whole;
    }

    /// <summary>Bytes of an upload that are here so far.</summary>
    public long Arrived(string sha) => new FileInfo(PartOf(sha)) is { Exists: true } part ? part.Length : 0;

    /// <summary>Adds bytes to an upload. What arrived before a cut is kept.</summary>
    public async Task Append(string sha, Stream bytes, long atMost, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        Directory.CreateDirectory(Path.Combine(root, "part"));
        await using var part = new FileStream(PartOf(sha), FileMode.Append, FileAccess.Write, FileShare.None);
        var buffer = new byte[81920];
        try
        {
            for (int read; (read = await bytes.ReadAsync(buffer, cancel)) > 0; atMost -= read)
            {
                if (read > atMost) throw new BadHttpRequestException("more bytes than announced", StatusCodes.Status413PayloadTooLarge);
                await part.WriteAsync(buffer.AsMemory(0, read), CancellationToken.None);
            }
        }
        finally
        {
            Disk.Force(part);
        }
    }

    /// <summary>Ends an upload: the reason to refuse it, or none when it is held whole.</summary>
    public async Task<(int Status, string Words)?> Finish(string sha, CancellationToken cancel)
    {
        var part = PartOf(sha);
        string hash;
        await using (var from = File.OpenRead(part)) hash = Convert.ToHexStringLower(await SHA256.HashDataAsync(from, cancel));
        if (hash != sha)
        {
            File.Delete(part);
            return (StatusCodes.Status422UnprocessableEntity, "The bytes that arrived are not those of this hash. Send the file again from the start.");
        }

        string? type;
        await using (var from = File.OpenRead(part)) type = Picture.Kind(from);
        if (type is null)
        {
            File.Delete(part);
            return (StatusCodes.Status415UnsupportedMediaType, "This is not a picture or sound the office keeps, or it has more than 50 million pixels.");
        }

        await Place(part, sha, type);
        return null;
    }

    /// <summary>Keeps bytes of our own: a page, a PDF, a photograph of an archive.</summary>
    public async Task Keep(string sha, byte[] bytes, string mediaType)
    {
        Directory.CreateDirectory(Path.Combine(root, "part"));
        var part = Path.Combine(root, "part", $"{Safe(sha)}.own");
        await using (var stream = new FileStream(part, FileMode.Create, FileAccess.Write, FileShare.None))
        {
            await stream.WriteAsync(bytes);
            Disk.Force(stream);
        }

        await Place(part, sha, mediaType);
    }

    private async Task Place(string part, string sha, string mediaType)
    {
        var path = PathOf(sha);
        var folder = Path.GetDirectoryName(path)!;
        var isNew = !Directory.Exists(folder);
        Directory.CreateDirectory(folder);
        var size = new FileInfo(part).Length;
        office.At("before rename");
        File.Move(part, path, overwrite: true);
        Disk.ForceFolder(folder);
        if (isNew) Disk.ForceFolder(root);
        office.At("after rename");
        var now = office.Clock.GetUtcNow().ToUnixTimeMilliseconds();
        await store.Change(
            db =>
            {
                if (!db.Blobs.Any(row => row.Tenant == OfficeDb.OnlyTenant && row.Sha == sha)) db.Blobs.Add(new BlobRow { Sha = sha, Size = size, MediaType = mediaType, ReceivedAt = now });
            },
            CancellationToken.None);
    }

    private string PartOf(string sha) => Path.Combine(root, "part", Safe(sha));

    private static string Safe(string sha) => Sha.Is(sha) ? sha : throw new ArgumentException("not a hash", nameof(sha));
}
