using System.Buffers.Binary;

namespace Purlin.Report.Photos;

/// <summary>The chunks of a PNG file (ISO/IEC 15948, section 5.3). Only those that make the picture are kept.</summary>
internal static class Png
{
    private static readonly HashSet<string> kept = ["IHDR", "PLTE", "IDAT", "IEND", "tRNS", "gAMA", "cHRM", "sRGB", "iCCP", "sBIT"];

    public static PhotoBytes? Read(byte[] bytes)
    {
        using MemoryStream picture = new(bytes.Length);
        picture.Write(bytes, 0, 8);
        int at = 8, width = 0, height = 0;
        while (at + 12 <= bytes.Length)
        {
            var length = checked((int)BinaryPrimitives.ReadUInt32BigEndian(bytes.AsSpan(at)));
            var chunk = bytes.AsSpan(at, checked(length + 12));
            var name = string.Concat((char)chunk[4], (char)chunk[5], (char)chunk[6], (char)chunk[7]);
            if (name == "IHDR") (width, height) = (BinaryPrimitives.ReadInt32BigEndian(chunk[8..]), BinaryPrimitives.ReadInt32BigEndian(chunk[12..]));
            if (kept.Contains(name)) picture.Write(chunk);
            if (name == "IEND") return width > 0 && height > 0 ? new PhotoBytes { Format = PhotoFormat.Png, Width = width, Height = height, Bytes = picture.ToArray() } : null;
            at += chunk.Length;
        }
        return null;
    }
}
