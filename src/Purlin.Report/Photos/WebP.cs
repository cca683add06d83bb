using System.Buffers.Binary;

namespace Purlin.Report.Photos;

/// <summary>The chunks of a WebP file (RFC 9649, section 2). Exif and XMP are left out and the flags that announce them cleared.</summary>
internal static class WebP
{
    public static PhotoBytes? Read(byte[] bytes)
    {
        using MemoryStream picture = new(bytes.Length);
        picture.Write(bytes, 0, 12);
        int at = 12, width = 0, height = 0;
        while (at + 8 <= bytes.Length)
        {
            var length = checked((int)BinaryPrimitives.ReadUInt32LittleEndian(bytes.AsSpan(at + 4)));
            var whole = Math.Min(bytes.Length - at, checked(8 + length + (length & 1)));
            var chunk = bytes.AsSpan(at, whole).ToArray();
            var name = string.Concat((char)chunk[0], (char)chunk[1], (char)chunk[2], (char)chunk[3]);
            if (Size(name, chunk) is { } size && width == 0) (width, height) = size;
            // Bits 3 and 2 of the flags: Exif and XMP (RFC 9649, section 2.7).
            if (name == "VP8X") chunk[8] &= 0b1111_0011;
            if (name is "VP8 " or "VP8L" or "VP8X" or "ALPH" or "ANIM" or "ANMF" or "ICCP") picture.Write(chunk);
            at += whole;
        }
        if (width <= 0 || height <= 0) return null;
        var made = picture.ToArray();
        BinaryPrimitives.WriteUInt32LittleEndian(made.AsSpan(4), (uint)(made.Length - 8));
        return new PhotoBytes { Format = PhotoFormat.WebP, Width = width, Height = height, Bytes = made };
    }

    private static (int Width, int Height)? Size(string name, ReadOnlySpan<byte> chunk) => name switch
    {
        "VP8X" => (1 + (chunk[12] | chunk[13] << 8 | chunk[14] << 16), 1 + (chunk[15] | chunk[16] << 8 | chunk[17] << 16)),
        "VP8 " => (BinaryPrimitives.ReadUInt16LittleEndian(chunk[14..]) & 0x3FFF, BinaryPrimitives.ReadUInt16LittleEndian(chunk[16..]) & 0x3FFF),
        "VP8L" => (1 + (int)(BinaryPrimitives.ReadUInt32LittleEndian(chunk[9..]) & 0x3FFF), 1 + (int)(BinaryPrimitives.ReadUInt32LittleEndian(chunk[9..]) >> 14 & 0x3FFF)),
        _ => null,
    };
}
