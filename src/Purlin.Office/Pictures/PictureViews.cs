using System.Collections.Concurrent;
using Purlin.Office.Storage;
using SkiaSharp;

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
            var made = Make(blobs.PathOf(sha), edge);
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

    private static byte[]? Make(string path, int edge)
    {
        using var codec = SKCodec.Create(path);
        if (codec is null) return null;
        // A JPEG can be decoded at an eighth, a quarter or half of its size: less memory for the same view.
        var wanted = Math.Min(1f, 2f * edge / Math.Max(codec.Info.Width, codec.Info.Height));
        var size = codec.GetScaledDimensions(wanted);
        using var decoded = new SKBitmap(new SKImageInfo(size.Width, size.Height, SKColorType.Rgba8888, SKAlphaType.Premul));
        if (codec.GetPixels(decoded.Info, decoded.GetPixels()) is not (SKCodecResult.Success or SKCodecResult.IncompleteInput)) return null;
        var scale = Math.Min(1f, (float)edge / Math.Max(size.Width, size.Height));
        var turned = codec.EncodedOrigin is SKEncodedOrigin.LeftTop or SKEncodedOrigin.RightTop or SKEncodedOrigin.RightBottom or SKEncodedOrigin.LeftBottom;
        var (width, height) = (Math.Max(1, (int)MathF.Round(size.Width * scale)), Math.Max(1, (int)MathF.Round(size.Height * scale)));
        using var surface = SKSurface.Create(new SKImageInfo(turned ? height : width, turned ? width : height, SKColorType.Rgba8888, SKAlphaType.Opaque));
        surface.Canvas.Clear(SKColors.White);
        Upright(surface.Canvas, codec.EncodedOrigin, width, height);
        using var image = SKImage.FromBitmap(decoded);
        surface.Canvas.DrawImage(image, new SKRect(0, 0, width, height), new SKSamplingOptions(SKFilterMode.Linear, SKMipmapMode.Linear));
        using var drawn = surface.Snapshot();
        using var encoded = drawn.Encode(SKEncodedImageFormat.Jpeg, 80);
        return encoded.ToArray();
    }

    /// <summary>Turns and mirrors the canvas as the camera held the picture; the view itself then carries no such note.</summary>
    private static void Upright(SKCanvas canvas, SKEncodedOrigin origin, int width, int height)
    {
        var matrix = origin switch
        {
            SKEncodedOrigin.TopRight => new SKMatrix(-1, 0, width, 0, 1, 0, 0, 0, 1),
            SKEncodedOrigin.BottomRight => new SKMatrix(-1, 0, width, 0, -1, height, 0, 0, 1),
            SKEncodedOrigin.BottomLeft => new SKMatrix(1, 0, 0, 0, -1, height, 0, 0, 1),
            SKEncodedOrigin.LeftTop => new SKMatrix(0, 1, 0, 1, 0, 0, 0, 0, 1),
            SKEncodedOrigin.RightTop => new SKMatrix(0, -1, height, 1, 0, 0, 0, 0, 1),
            SKEncodedOrigin.RightBottom => new SKMatrix(0, -1, height, -1, 0, width, 0, 0, 1),
            SKEncodedOrigin.LeftBottom => new SKMatrix(0, 1, 0, -1, 0, width, 0, 0, 1),
            _ => SKMatrix.Identity,
        };
        canvas.SetMatrix(matrix);
    }
}
