using System.Buffers.Binary;
using System.Globalization;
using System.Text;

namespace Purlin.Cli;

/// <summary>
/// Reads when a photograph was taken out of its Exif tags (CIPA DC-008, tags 0x9003 and 0x9011); all else of them is passed over.
/// </summary>
internal static class ExifTime
{
    private const int Directory = 0x8769, Taken = 0x9003, Offset = 0x9011;

    /// <summary>The time on the clock of the camera, with its offset where it says one; none for a file that has no such tag.</summary>
    public static (DateTimeOffset Time, bool HasOffset)? Of(ReadOnlySpan<byte> file)
    {
        var start = file[..Math.Min(file.Length, 256 * 1024)].IndexOf("Exif\0\0"u8);
        if (start < 0) return null;
        var tiff = file[(start + 6)..];
        if (tiff.Length < 8 || (tiff[0] != 'I' && tiff[0] != 'M')) return null;
        var little = tiff[0] == 'I';
        if (Entry(tiff, U32(tiff[4..], little), Directory, little) is not { } pointer
            || Entry(tiff, U32(tiff[(pointer + 8)..], little), Taken, little) is not { } taken) return null;
        var zone = Entry(tiff, U32(tiff[(pointer + 8)..], little), Offset, little) is { } offset ? Text(tiff, offset, little) : "";
        var hasOffset = zone.Length == 6;
        return DateTimeOffset.TryParseExact($"{Text(tiff, taken, little)} {(hasOffset ? zone : "+00:00")}", "yyyy:MM:dd HH:mm:ss zzz",
            CultureInfo.InvariantCulture, DateTimeStyles.None, out var time) ? (time, hasOffset) : null;
    }

    private static int? Entry(ReadOnlySpan<byte> tiff, long directory, int tag, bool little)
    {
        if (directory < 8 || directory + 2 > tiff.Length) return null;
        var count = U16(tiff[(int)directory..], little);
        for (var index = 0; index < count; index++)
        {
            var at = (int)directory + 2 + (index * 12);
            if (at + 12 > tiff.Length) return null;
            if (U16(tiff[at..], little) == tag) return at;
        }
        return null;
    }

    private static string Text(ReadOnlySpan<byte> tiff, int entry, bool little)
    {
        long length = U32(tiff[(entry + 4)..], little), at = length <= 4 ? entry + 8 : U32(tiff[(entry + 8)..], little);
        return length is < 1 or > 64 || at + length > tiff.Length ? ""
            : Encoding.ASCII.GetString(tiff.Slice((int)at, (int)length)).TrimEnd('\0', ' ');
    }

    private static int U16(ReadOnlySpan<byte> at, bool little) =>
        little ? BinaryPrimitives.ReadUInt16LittleEndian(at) : BinaryPrimitives.ReadUInt16BigEndian(at);

    private static uint U32(ReadOnlySpan<byte> at, bool little) =>
        little ? BinaryPrimitives.ReadUInt32LittleEndian(at) : BinaryPrimitives.ReadUInt32BigEndian(at);
}
