using System.Buffers.Binary;
using Purlin.Journal;
using SkiaSharp;

namespace Purlin.Office.Pictures;

/// <summary>What a file is, by its first bytes and never by its name, and how large a picture is before anything of it is decoded.</summary>
public static class PictureKind
{
    /// <summary>Media type of a picture or sound that the office keeps; none for anything else, or for a picture with too many pixels.</summary>
    public static string? Kind(Stream file)
    {
        var head = new byte[32];
        var length = file.ReadAtLeast(head, head.Length, throwOnEndOfStream: false);
        var kind = Kind(head.AsSpan(0, length));
        // An original as some phones take it: kept, shown once converted. Its size is not read here.
        if (kind is null or "image/heic" || kind.StartsWith("audio/", StringComparison.Ordinal)) return kind;
        file.Position = 0;
        return Size(file) is { } size && size.Width > 0 && size.Height > 0 && (long)size.Width * size.Height <= Limits.PhotoPixels ? kind : null;
    }

    private static string? Kind(ReadOnlySpan<byte> head)
    {
        if (head.StartsWith<byte>([0xFF, 0xD8, 0xFF])) return "image/jpeg";
        if (head.StartsWith<byte>([0x89, (byte)'P', (byte)'N', (byte)'G', 0x0D, 0x0A, 0x1A, 0x0A])) return "image/png";
        if (head.StartsWith("RIFF"u8) && head.Length >= 12) return head[8..].StartsWith("WEBP"u8) ? "image/webp" : head[8..].StartsWith("WAVE"u8) ? "audio/wav" : null;
        if (head.StartsWith<byte>([0x1A, 0x45, 0xDF, 0xA3])) return "audio/webm";
        if (head.StartsWith("OggS"u8)) return "audio/ogg";
        if (head.Length >= 12 && head[4..].StartsWith("ftyp"u8))
        {
            var brand = head[8..12];
            if (brand.SequenceEqual("heic"u8) || brand.SequenceEqual("heix"u8) || brand.SequenceEqual("mif1"u8)) return "image/heic";
            if (brand.SequenceEqual("M4A "u8) || brand.SequenceEqual("mp42"u8) || brand.SequenceEqual("isom"u8) || brand.SequenceEqual("iso5"u8)) return "audio/mp4";
        }

        return null;
    }

    /// <summary>Pixels across and down as the header says; the library reads no further.</summary>
    private static (int Width, int Height)? Size(Stream file)
    {
        // A PNG says it in its first bytes; asking them directly keeps a hostile one away from the library.
        var head = new byte[24];
        if (file.ReadAtLeast(head, head.Length, throwOnEndOfStream: false) < head.Length) return null;
        if (head[0] == 0x89)
        {
            var (width, height) = (BinaryPrimitives.ReadUInt32BigEndian(head.AsSpan(16)), BinaryPrimitives.ReadUInt32BigEndian(head.AsSpan(20)));
            if ((ulong)width * height > (ulong)Limits.PhotoPixels) return null;
        }

        file.Position = 0;
        using var codec = SKCodec.Create(new SKManagedStream(file));
        return codec is null ? null : (codec.Info.Width, codec.Info.Height);
    }
}
