using System.Collections.Concurrent;
using Purlin.Office.Storage;

namespace Purlin.Office.Pictures;

/// <summary>
/// Re-encoded views of photographs, upright and without any metadata (no place, no device). Made one at a time, so that memory stays bounded by one decoded
/// picture; kept beside the originals and remade when lost.
/// </summary>
public sealed class PictureViews(OfficeOptions office, BlobFolder blobs) : IDisposable
{
    /// <summary>Longest edge of a view for reports.</summary>
    public const int View = 2048;

    /// <summary>Longest edge of a thumbnail.</summary>
    public const int Thumb = 320;

    private readonly SemaphoreSlim turn = new(1);
    private readonly ConcurrentDictionary<string, bool> unreadable = [];

    /// <summary>JPEG bytes, at most <paramref name="edge"/> pixels along the longer edge; none when the photograph is not here or cannot be shown.</summary>
    public async Task<byte[]?> Of(string sha, int edge, CancellationToken cancel)
    {
        if (await blobs.Row(sha, cancel) is not { } row || !row.MediaType.StartsWith("image/", StringComparison.Ordinal) || unreadable.ContainsKey(sha)) return null;
        var folder = Path.Combine(office.Folder, "views");
        var file = Path.Combine(folder, $"{sha}-{edge}.jpg");
        if (File.Exists(file)) return await File.ReadAllBytesAsync(file, cancel);
        await turn.WaitAsync(cancel);
        try
        {
            var made = Redrawing.Of(blobs.PathOf(sha), edge);
            if (made is null)
            {
                unreadable[sha] = true;
                return null;
            }

            Directory.CreateDirectory(folder);
            var part = file + ".part";
            await File.WriteAllBytesAsync(part, made, cancel);
            File.Move(part, file, overwrite: true);
            return made;
        }
        finally
        {
            turn.Release();
        }
    }

    public void Dispose() => turn.Dispose();
}
