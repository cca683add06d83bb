using System.Collections.Concurrent;
using Purlin.Office.Storage;

namespace Purlin.Office.Pictures;

/// <summary>
/// Re-encoded views of photographs, upright and without any metadata (no place, no device). Made one at a time, so that memory stays bounded by one decoded
/// picture; kept beside the originals and remade when lost. A full disk keeps none and shows them all the same.
/// </summary>
public sealed class PictureViews(string folder, IBlobs blobs) : IDisposable
{
    /// <summary>Longest edge of a view on a screen.</summary>
    public const int View = 2048;

    /// <summary>Longest edge in a report: 300 pixels to the inch where it is printed 4 inches wide, and a page that can still be mailed.</summary>
    public const int Printed = 1200;

    /// <summary>Longest edge of a thumbnail.</summary>
    public const int Thumb = 320;

    private readonly SemaphoreSlim turn = new(1);
    private readonly ConcurrentDictionary<string, bool> unreadable = [];

    /// <summary>JPEG bytes, at most <paramref name="edge"/> pixels along the longer edge; none when the photograph is not here or cannot be shown.</summary>
    public async Task<byte[]?> Of(string sha, int edge, CancellationToken cancel)
    {
        if ((await blobs.Has([sha], cancel)).GetValueOrDefault(sha) is not { } blob || !blob.MediaType.StartsWith("image/", StringComparison.Ordinal) || unreadable.ContainsKey(sha)) return null;
        var file = FileOf(sha, edge);
        if (File.Exists(file)) return await File.ReadAllBytesAsync(file, cancel);
        await turn.WaitAsync(cancel);
        try
        {
            await using var original = await blobs.Open(sha, cancel);
            if (original is null) return null;
            if (Redrawing.Of(original, edge) is not { } made)
            {
                unreadable[sha] = true;
                return null;
            }

            await Keep(file, made);
            return made;
        }
        finally
        {
            turn.Release();
        }
    }

    /// <summary>Drops the views of these photographs.</summary>
    public void Drop(IEnumerable<string> hashes)
    {
        ArgumentNullException.ThrowIfNull(hashes);
        if (!Directory.Exists(folder)) return;
        foreach (var sha in hashes)
        {
            File.Delete(FileOf(sha, View));
            File.Delete(FileOf(sha, Thumb));
        }
    }

    public void Dispose() => turn.Dispose();

    private string FileOf(string sha, int edge) => Path.Combine(folder, $"{sha}-{edge}.jpg");

    private async Task Keep(string file, byte[] made)
    {
        try
        {
            Disk.MakePrivateFolder(folder);
            var part = file + ".part";
            await using (var stream = Disk.Write(part, FileMode.Create)) await stream.WriteAsync(made);
            File.Move(part, file, overwrite: true);
        }
        catch (IOException full) when (Disk.IsFull(full))
        {
            File.Delete(file + ".part");
        }
    }
}
