using SkiaSharp;

namespace Purlin.Office.Pictures;

/// <summary>A picture drawn anew as JPEG: upright, at most so long, and with nothing in it but pixels (no place, no device, no time).</summary>
public static class Redrawing
{
    /// <summary>Draws a picture that was looked at before anew; none when it cannot be shown.</summary>
    /// <param name="original">Seekable, at its start.</param>
    /// <param name="edge">Longest edge of what is drawn.</param>
    public static byte[]? Of(Stream original, int edge)
    {
        using var stream = new SKManagedStream(original, disposeManagedStream: false);
        using var codec = SKCodec.Create(stream);
        return codec is null ? null : Draw(codec, edge);
    }

    /// <summary>Draws a picture in memory anew; none when it is too large or cannot be shown.</summary>
    public static byte[]? Of(byte[] original, int edge)
    {
        using var stream = new MemoryStream(original, writable: false);
        if (PictureKind.Kind(stream)?.StartsWith("image/", StringComparison.Ordinal) != true) return null;
        using var data = SKData.CreateCopy(original);
        using var codec = SKCodec.Create(data);
        return codec is null ? null : Draw(codec, edge);
    }

    private static byte[]? Draw(SKCodec codec, int edge)
    {
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
