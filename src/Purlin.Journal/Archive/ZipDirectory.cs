using System.Buffers.Binary;
using System.Text;

namespace Purlin.Journal.Archive;

/// <summary>
/// Reads the list at the end of a zip by itself, before any library touches the file: how many names there are, what they are, and what
/// sizes are claimed. A million names, a claim of ten gigabytes or a path that leads outside cost one look at that list.
/// </summary>
internal static class ZipDirectory
{
    private const int EndLength = 22;
    private const int RecordLength = 46;
    private const int LongestList = 4 * 1024 * 1024;

    /// <summary>Every reason to go no further; empty when the list is one that we could have written.</summary>
    public static List<Refusal> Check(Stream zip)
    {
        var head = new byte[4];
        zip.Position = 0;
        if (zip.Length < EndLength || zip.ReadAtLeast(head, 4, throwOnEndOfStream: false) < 4 || head[0] != 'P' || head[1] != 'K')
            return [new Refusal("archive", new Said("journal.given.bytes-are-no-zip", ("count", zip.Length)),
                "journal.wanted.file-name-purlin")];
        if (End(zip) is not { } end)
            return [new Refusal("archive", "journal.given.zip-whose-end-missing", "journal.wanted.whole-file-cut-off-on")];
        if (end.Count > Limits.ArchiveFiles)
            return [new Refusal("archive", new Said("journal.given.count-files", ("count", end.Count)),
                new Said("journal.wanted.most-most", ("most", $"{Limits.ArchiveFiles}")))];
        if (end.Size > LongestList || end.From < 0 || end.From + end.Size != end.At)
            return [new Refusal("archive", "journal.given.list-files-does-not-end", "journal.wanted.whole-file-unaltered")];
        var list = new byte[end.Size];
        zip.Position = end.From;
        zip.ReadExactly(list);
        return Walk(list, end.Count, zip.Length);
    }

    private static (long Count, long Size, long From, long At)? End(Stream zip)
    {
        // No comment after it: two ends in one file could be read differently by two programs.
        var position = zip.Length - EndLength;
        var end = new byte[EndLength];
        zip.Position = position;
        zip.ReadExactly(end);
        if (!IsMark(end, 5, 6) || Short(end, 20) != 0) return null;
        var (count, size, from) = ((long)Short(end, 10), (long)Int(end, 12), (long)Int(end, 16));
        return count != ushort.MaxValue && size != uint.MaxValue && from != uint.MaxValue
            ? (count, size, from, position) : Large(zip, position);
    }

    /// <summary>The end record of a zip beyond four gigabytes.</summary>
    private static (long Count, long Size, long From, long At)? Large(Stream zip, long end)
    {
        var locator = new byte[20];
        var record = new byte[56];
        if (end < locator.Length + record.Length) return null;
        zip.Position = end - locator.Length;
        zip.ReadExactly(locator);
        if (!IsMark(locator, 6, 7)) return null;
        var at = Long(locator, 8);
        if (at < 0 || at > end - locator.Length - record.Length) return null;
        zip.Position = at;
        zip.ReadExactly(record);
        return IsMark(record, 6, 6) ? (Long(record, 32), Long(record, 40), Long(record, 48), at) : null;
    }

    private static List<Refusal> Walk(ReadOnlySpan<byte> list, long count, long length)
    {
        List<Refusal> refusals = [];
        HashSet<string> names = new(StringComparer.Ordinal);
        long total = 0;
        for (var left = count; left > 0 && refusals.Count < 20; left--)
        {
            if (list.Length < RecordLength || !IsMark(list, 1, 2))
                return [new Refusal("archive", "journal.given.broken-list-files", "journal.wanted.whole-file-unaltered")];
            var next = RecordLength + Short(list, 28) + Short(list, 30) + Short(list, 32);
            if (list.Length < next)
                return [new Refusal("archive", "journal.given.broken-list-files", "journal.wanted.whole-file-unaltered")];
            var name = Encoding.Latin1.GetString(list.Slice(RecordLength, Short(list, 28)));
            total += Int(list, 24);
            if (One(list, name) is { } refusal) refusals.Add(refusal);
            else if (!names.Add(name))
                refusals.Add(new Refusal("archive", new Said("journal.given.count-twice", ("count", $"{name}")),
                    "journal.wanted.every-name-once"));
            list = list[next..];
        }

        if (list.Length > 0 && refusals.Count == 0)
            refusals.Add(new Refusal("archive", "journal.given.more-files-than-says", "journal.wanted.whole-file-unaltered"));
        if (total > (length * Limits.ArchiveUnfolds) + (1024 * 1024))
            refusals.Add(new Refusal("archive", new Said("journal.given.bytes-claim-unfold", ("length", length), ("total", total)),
                new Said("journal.wanted.most-times-size", ("most", $"{Limits.ArchiveUnfolds}"))));
        return refusals;
    }

    private static Refusal? One(ReadOnlySpan<byte> record, string name)
    {
        if (ArchiveNames.MediaType(name) is null)
            return new Refusal("file name", Said.Verbatim(BodyJson.Short(Printable(name))),
                "journal.wanted.manifest-json-journal-jsonl-photos");
        if ((Short(record, 8) & 1) != 0) return new Refusal(name, "journal.given.encrypted", "journal.wanted.file-not");
        if (Short(record, 10) is not (0 or 8))
            return new Refusal(name, new Said("journal.given.packed-way", ("count", $"{Short(record, 10)}")),
                "journal.wanted.stored-or-deflated");
        if (((Int(record, 38) >> 16) & 0xF000) == 0xA000) return new Refusal(name, "journal.given.link", "journal.wanted.file");
        var size = Int(record, 24);
        return size > ArchiveNames.MostBytes(name)
            ? new Refusal(name, size == uint.MaxValue ? new Said("journal.given.4-gb-or-more")
                : new Said("journal.given.count-bytes", ("count", size)),
                new Said("journal.wanted.most-most", ("most", $"{ArchiveNames.MostBytes(name)}"))) : null;
    }

    private static string Printable(string name) => string.Concat(name.Select(c => char.IsControl(c) ? '?' : c));

    private static bool IsMark(ReadOnlySpan<byte> at, byte third, byte fourth) =>
        at.Length >= 4 && at[0] == 'P' && at[1] == 'K' && at[2] == third && at[3] == fourth;

    private static int Short(ReadOnlySpan<byte> bytes, int at) => BinaryPrimitives.ReadUInt16LittleEndian(bytes[at..]);

    private static uint Int(ReadOnlySpan<byte> bytes, int at) => BinaryPrimitives.ReadUInt32LittleEndian(bytes[at..]);

    private static long Long(ReadOnlySpan<byte> bytes, int at) => BinaryPrimitives.ReadInt64LittleEndian(bytes[at..]);
}
