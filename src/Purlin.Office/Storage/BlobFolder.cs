using System.Security.Cryptography;
using Purlin.Journal;

namespace Purlin.Office.Storage;

/// <summary>
/// Bytes by hash in a folder: <c>ab/cdef...</c>, uploads under <c>part</c>. Whole, a file is forced to disk, renamed, its folder forced, and only then may a row
/// speak of it. An object store would take this place; everything above asks in streams.
/// </summary>
/// <param name="root">The folder.</param>
/// <param name="damaged">Where bytes go that are not those of their name: they are put aside, not thrown away.</param>
/// <param name="at">Called at each named step, so that a test can stop the office there.</param>
internal sealed class BlobFolder(string root, string damaged, Action<string> at)
{
    private static readonly TimeSpan PartLife = TimeSpan.FromDays(7);

    private string Parts => Path.Combine(root, "part");

    /// <summary>Size, and the file's own time of change; none when it is not there.</summary>
    public (long Size, long Stamp)? Look(string sha) => new FileInfo(PathOf(sha)) is { Exists: true } file ? (file.Length, file.LastWriteTimeUtc.Ticks) : null;

    public FileStream Open(string sha) => new(PathOf(sha), FileMode.Open, FileAccess.Read, FileShare.Read | FileShare.Delete, 81920, FileOptions.Asynchronous | FileOptions.SequentialScan);

    /// <summary>Whether a stream's bytes have this hash; read to its end.</summary>
    public static async Task<bool> Has(Stream bytes, string sha, CancellationToken cancel) => Convert.ToHexStringLower(await SHA256.HashDataAsync(bytes, cancel)) == sha;

    public long Arrived(string sha) => new FileInfo(PartOf(sha)) is { Exists: true } part ? part.Length : 0;

    public async Task Append(string sha, Stream bytes, long atMost, CancellationToken cancel)
    {
        Disk.MakePrivateFolder(Parts);
        await using var part = Disk.Write(PartOf(sha), FileMode.Append);
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

    /// <summary>The bytes of an upload so far.</summary>
    public FileStream OpenPart(string sha) => File.OpenRead(PartOf(sha));

    public void DropPart(string sha) => File.Delete(PartOf(sha));

    /// <summary>Puts bytes into an upload of its own, whole.</summary>
    public async Task Fill(string sha, ReadOnlyMemory<byte> bytes)
    {
        Disk.MakePrivateFolder(Parts);
        await using var part = Disk.Write(PartOf(sha), FileMode.Create);
        await part.WriteAsync(bytes);
        Disk.Force(part);
    }

    /// <summary>Gives an upload its name among the whole ones; what stood there is replaced.</summary>
    public void Settle(string sha)
    {
        var path = PathOf(sha);
        var folder = Path.GetDirectoryName(path)!;
        var isNew = !Directory.Exists(folder);
        Disk.MakePrivateFolder(folder);
        at("before rename");
        File.Move(PartOf(sha), path, overwrite: true);
        Disk.ForceFolder(folder);
        if (isNew) Disk.ForceFolder(root);
        at("after rename");
    }

    public void PutAside(string sha)
    {
        if (!File.Exists(PathOf(sha))) return;
        Disk.MakePrivateFolder(damaged);
        File.Move(PathOf(sha), Path.Combine(damaged, sha), overwrite: true);
    }

    public void Delete(string sha) => File.Delete(PathOf(sha));

    /// <summary>Hashes of all files here, whether a row speaks of them or not.</summary>
    public IEnumerable<string> All()
    {
        if (!Directory.Exists(root)) yield break;
        foreach (var folder in Directory.EnumerateDirectories(root).Where(folder => Path.GetFileName(folder).Length == 2))
        {
            foreach (var file in Directory.EnumerateFiles(folder).Select(file => Path.GetFileName(folder) + Path.GetFileName(file)).Where(Sha.Is)) yield return file;
        }
    }

    /// <summary>Clears uploads with nothing in them and those that nobody went on with for a week.</summary>
    public void ClearParts(DateTimeOffset now)
    {
        if (!Directory.Exists(Parts)) return;
        foreach (var part in new DirectoryInfo(Parts).EnumerateFiles())
        {
            var age = now - new DateTimeOffset(part.LastWriteTimeUtc);
            if (age > PartLife || (part.Length == 0 && age > TimeSpan.FromHours(1))) part.Delete();
        }
    }

    private string PathOf(string sha) => Path.Combine(root, Safe(sha)[..2], sha[2..]);

    private string PartOf(string sha) => Path.Combine(Parts, Safe(sha));

    private static string Safe(string sha) => Sha.Is(sha) ? sha : throw new ArgumentException("not a hash", nameof(sha));
}
