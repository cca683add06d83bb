using System.Text;
using CsCheck;
using Purlin.Report.Photos;

namespace Purlin.Tests.Report;

public static class PhotoTests
{
    // Latitude 47 deg 36 min as an Exif rational would carry it; the letters are easy to find again.
    private static readonly byte[] place = [.. "GPSGPSGPS 47.6062N 122.3321W"u8];

    /// <summary>A WebP of one pixel: container, extended header with the Exif flag, a lossless chunk of one pixel's header, an Exif chunk.</summary>
    public static byte[] TinyWebP { get; } = WebP();

    [Fact]
    public static void A_jpeg_that_carries_nothing_keeps_its_very_bytes()
    {
        var photo = PhotoBytes.Read(SampleReport.Jpeg)!;
        Assert.Equal((1, 1, 1, PhotoFormat.Jpeg), (photo.Width, photo.Height, photo.Orientation, photo.Format));
        Assert.Equal(SampleReport.Jpeg, photo.Bytes.ToArray());
    }

    [Fact]
    public static void Place_and_owner_are_cut_out_of_a_jpeg_and_the_turn_is_kept()
    {
        var tagged = With(Exif(orientation: 6), Segment(0xE1, [.. "http://ns.adobe.com/xap/1.0/\0"u8, .. place]), Segment(0xFE, place), Segment(0xED, place));
        byte[] trailing = [.. tagged, .. place];
        var photo = PhotoBytes.Read(trailing)!;
        Assert.Equal(6, photo.Orientation);
        Assert.True(photo.Turned);
        Assert.False(Holds(photo.Bytes.Span, "GPSGPS"u8));
        Assert.False(Holds(photo.Bytes.Span, "xap"u8));
        Assert.Equal(6, PhotoBytes.Read(photo.Bytes.ToArray())!.Orientation);
        Assert.Equal(photo.Bytes.ToArray(), PhotoBytes.Read(photo.Bytes.ToArray())!.Bytes.ToArray());
    }

    [Fact]
    public static void Place_is_cut_out_of_a_png()
    {
        byte[] png = [0x89, .. "PNG\r\n\u001a\n"u8, .. Chunk("IHDR", [0, 0, 0, 2, 0, 0, 0, 3, 8, 0, 0, 0, 0]), .. Chunk("eXIf", place), .. Chunk("iTXt", place), .. Chunk("IDAT", [1, 2, 3]), .. Chunk("IEND", [])];
        var photo = PhotoBytes.Read(png)!;
        Assert.Equal((2, 3, PhotoFormat.Png), (photo.Width, photo.Height, photo.Format));
        Assert.False(Holds(photo.Bytes.Span, "GPSGPS"u8));
        Assert.True(Holds(photo.Bytes.Span, "IDAT"u8));
    }

    [Fact]
    public static void Place_is_cut_out_of_a_webp_and_no_flag_announces_it()
    {
        var photo = PhotoBytes.Read(TinyWebP)!;
        Assert.Equal((5, 7, PhotoFormat.WebP), (photo.Width, photo.Height, photo.Format));
        Assert.False(Holds(photo.Bytes.Span, "GPSGPS"u8));
        Assert.Equal(0, photo.Bytes.Span[20] & 0b1100);
        Assert.Equal(photo.Bytes.Length - 8, BitConverter.ToInt32(photo.Bytes.Span[4..8]));
    }

    [Fact]
    public static void Bytes_that_are_no_picture_are_refused_without_throwing()
    {
        Assert.Null(PhotoBytes.Read(null));
        Assert.Null(PhotoBytes.Read(Encoding.UTF8.GetBytes("<svg xmlns='http://www.w3.org/2000/svg'><script/></svg>")));
        Gen.Int[0, SampleReport.Jpeg.Length].Sample(length => PhotoBytes.Read(SampleReport.Jpeg[..length]) is null or { Width: 1 });
        Gen.Select(Gen.Int[2, SampleReport.Jpeg.Length - 1], Gen.Byte).Sample((at, value) =>
        {
            byte[] broken = [.. SampleReport.Jpeg];
            broken[at] = value;
            return PhotoBytes.Read(broken) is null or { Bytes.Length: > 0 };
        });
    }

    private static byte[] With(params byte[][] segments) => [.. SampleReport.Jpeg.AsSpan(0, 2), .. segments.SelectMany(segment => segment), .. SampleReport.Jpeg.AsSpan(2)];

    private static byte[] Segment(byte marker, byte[] body) => [0xFF, marker, (byte)((body.Length + 2) >> 8), (byte)(body.Length + 2), .. body];

    // Exif 2.32: little-endian header, one directory with the orientation (274) and a pointer to GPS (34853).
    private static byte[] Exif(byte orientation) =>
        Segment(0xE1, [.. "Exif\0\0"u8, .. "II"u8, 0x2A, 0, 8, 0, 0, 0, 2, 0, 0x12, 0x01, 3, 0, 1, 0, 0, 0, orientation, 0, 0, 0, 0x25, 0x88, 4, 0, 1, 0, 0, 0, 38, 0, 0, 0, 0, 0, 0, 0, .. place]);

    private static byte[] Chunk(string name, byte[] body) => [(byte)(body.Length >> 24), (byte)(body.Length >> 16), (byte)(body.Length >> 8), (byte)body.Length, .. Encoding.ASCII.GetBytes(name), .. body, 0, 0, 0, 0];

    private static byte[] WebP()
    {
        static byte[] Riff(string name, byte[] body) => [.. Encoding.ASCII.GetBytes(name), .. BitConverter.GetBytes(body.Length), .. body, .. body.Length % 2 == 1 ? new byte[] { 0 } : []];
        byte[] chunks = [.. Riff("VP8X", [0b0000_1100, 0, 0, 0, 4, 0, 0, 6, 0, 0]), .. Riff("VP8L", [0x2F, 4, 0x80, 1, 0]), .. Riff("EXIF", place), .. Riff("XMP ", place)];
        return [.. "RIFF"u8, .. BitConverter.GetBytes(chunks.Length + 4), .. "WEBP"u8, .. chunks];
    }

    private static bool Holds(ReadOnlySpan<byte> bytes, ReadOnlySpan<byte> sought) => bytes.IndexOf(sought) >= 0;
}
