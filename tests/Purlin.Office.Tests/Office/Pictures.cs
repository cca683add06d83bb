using SkiaSharp;

namespace Purlin.Office.Tests.Office;

/// <summary>Pictures drawn for tests.</summary>
internal static class Pictures
{
    public static byte[] Jpeg(int width, int height, int quality = 90)
    {
        using var surface = SKSurface.Create(new SKImageInfo(width, height));
        surface.Canvas.Clear(SKColors.SteelBlue);
        using var paint = new SKPaint { Color = SKColors.Orange };
        for (var at = 0; at < 40; at++) surface.Canvas.DrawCircle(at * width / 40f, height / 2f, at + 2, paint);
        using var image = surface.Snapshot();
        using var data = image.Encode(SKEncodedImageFormat.Jpeg, quality);
        return data.ToArray();
    }

    /// <summary>The same picture with an EXIF block that turns it a quarter and gives a place.</summary>
    public static byte[] WithExif(byte[] jpeg, byte orientation)
    {
        byte[] exif =
        [
            .. "Exif\0\0II*\0"u8, 8, 0, 0, 0, 2, 0,
            0x12, 0x01, 3, 0, 1, 0, 0, 0, orientation, 0, 0, 0,
            0x0E, 0x01, 2, 0, 20, 0, 0, 0, 38, 0, 0, 0,
            0, 0, 0, 0,
            .. "GPS 47.6062N 122.33W"u8,
        ];
        var length = exif.Length + 2;
        return [.. jpeg[..2], 0xFF, 0xE1, (byte)(length >> 8), (byte)length, .. exif, .. jpeg[2..]];
    }

    /// <summary>The header of a PNG that claims this size.</summary>
    public static byte[] PngHeader(uint width, uint height) =>
    [
        0x89, (byte)'P', (byte)'N', (byte)'G', 0x0D, 0x0A, 0x1A, 0x0A, 0, 0, 0, 13, .. "IHDR"u8,
        (byte)(width >> 24), (byte)(width >> 16), (byte)(width >> 8), (byte)width, (byte)(height >> 24), (byte)(height >> 16), (byte)(height >> 8), (byte)height,
        8, 2, 0, 0, 0, 0, 0, 0, 0,
    ];

    /// <summary>A JPEG whose frame header claims this size.</summary>
    public static byte[] JpegClaiming(byte[] jpeg, ushort width, ushort height)
    {
        var altered = jpeg.ToArray();
        for (var at = 2; at < altered.Length - 9; at++)
        {
            if (altered[at] != 0xFF || altered[at + 1] is not (0xC0 or 0xC2)) continue;
            (altered[at + 5], altered[at + 6], altered[at + 7], altered[at + 8]) = ((byte)(height >> 8), (byte)height, (byte)(width >> 8), (byte)width);
            return altered;
        }

        throw new InvalidOperationException("no frame header");
    }
}
