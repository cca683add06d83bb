using System.Buffers.Binary;

namespace Purlin.Report.Photos;

/// <summary>The segments of a JPEG file (ISO/IEC 10918-1, annex B). Application segments are left out but for colour: JFIF, ICC profile, Adobe transform.</summary>
internal static class Jpeg
{
    public static PhotoBytes? Read(byte[] bytes)
    {
        using MemoryStream kept = new(bytes.Length);
        kept.Write(bytes, 0, 2);
        int at = 2, width = 0, height = 0, orientation = 1;
        while (at + 4 <= bytes.Length)
        {
            if (bytes[at] != 0xFF) return null;
            var marker = bytes[at + 1];
            if (marker == 0xFF) { at++; continue; }
            if (marker == 0xDA)
            {
                kept.Write(bytes, at, End(bytes, at) - at);
                return width > 0 && height > 0 ? new PhotoBytes { Format = PhotoFormat.Jpeg, Width = width, Height = height, Orientation = orientation, Bytes = Turn(kept.ToArray(), orientation) } : null;
            }
            var length = BinaryPrimitives.ReadUInt16BigEndian(bytes.AsSpan(at + 2)) + 2;
            var segment = bytes.AsSpan(at, length);
            if (marker is >= 0xC0 and <= 0xCF and not (0xC4 or 0xC8 or 0xCC)) (height, width) = (BinaryPrimitives.ReadUInt16BigEndian(segment[5..]), BinaryPrimitives.ReadUInt16BigEndian(segment[7..]));
            if (marker == 0xE1 && segment.Length > 20 && segment[4..].StartsWith("Exif\0\0"u8)) orientation = Orientation(segment[10..]);
            if (!Travels(marker, segment)) kept.Write(segment);
            at += length;
        }
        return null;
    }

    // Comments and application segments tell of camera, place and owner; those that say how colours are to be read stay.
    private static bool Travels(byte marker, ReadOnlySpan<byte> segment) => marker switch
    {
        0xFE => true,
        0xE0 => !segment[4..].StartsWith("JFIF\0"u8),
        0xE2 => !segment[4..].StartsWith("ICC_PROFILE\0"u8),
        0xEE => !segment[4..].StartsWith("Adobe"u8),
        >= 0xE0 and <= 0xEF => true,
        _ => false,
    };

    // What stands after the end of the picture is cut off too: some cameras put a second picture there, with its own tags.
    private static int End(byte[] bytes, int scan)
    {
        for (var at = scan; at + 4 <= bytes.Length;)
        {
            if (bytes[at] != 0xFF || bytes[at + 1] is 0x00 or 0xFF or (>= 0xD0 and <= 0xD7)) { at++; continue; }
            if (bytes[at + 1] == 0xD9) return at + 2;
            at += 2 + BinaryPrimitives.ReadUInt16BigEndian(bytes.AsSpan(at + 2));
        }
        return bytes.Length;
    }

    private static int Orientation(ReadOnlySpan<byte> tiff)
    {
        var little = tiff[0] == (byte)'I';
        int U16(ReadOnlySpan<byte> at) => little ? BinaryPrimitives.ReadUInt16LittleEndian(at) : BinaryPrimitives.ReadUInt16BigEndian(at);
        var directory = (int)(little ? BinaryPrimitives.ReadUInt32LittleEndian(tiff[4..]) : BinaryPrimitives.ReadUInt32BigEndian(tiff[4..]));
        if (directory < 8 || directory + 2 > tiff.Length) return 1;
        var count = U16(tiff[directory..]);
        for (var index = 0; index < count && directory + 2 + index * 12 + 12 <= tiff.Length; index++)
        {
            var entry = tiff[(directory + 2 + index * 12)..];
            if (U16(entry) == 274) return U16(entry[8..]) is >= 1 and <= 8 and var turn ? turn : 1;
        }
        return 1;
    }

    // Browsers turn a picture by its tag, so a turned one gets that one tag back and no other.
    private static byte[] Turn(byte[] bytes, int orientation) => orientation == 1 ? bytes :
    [
        0xFF, 0xD8, 0xFF, 0xE1, 0x00, 0x22, .. "Exif\0\0"u8, .. "MM\0\x2a"u8, 0, 0, 0, 8, 0, 1, 0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, (byte)orientation, 0, 0, 0, 0, 0, 0, .. bytes.AsSpan(2),
    ];
}
