using System.IO.Compression;
using System.Security.Cryptography;
using System.Text.Json;
using Purlin.Journal.Merge;

namespace Purlin.Journal.Archive;

/// <summary>
/// Opens <c>NAME.purlin</c>, trusting nothing in it: names by pattern, sizes as claimed and as they turn out, every hash. What cannot be
/// trusted is refused with all the reasons; nothing is written anywhere.
/// </summary>
public static class ArchiveReader
{
    /// <summary>Opens and checks an archive.</summary>
    /// <param name="from">Readable and seekable; stays open and in use while the archive is.</param>
    public static Checked<OpenedArchive> Open(Stream from)
    {
        ArgumentNullException.ThrowIfNull(from);
        if (!from.CanSeek) throw new ArgumentException("an archive is read from a stream that can seek", nameof(from));
        ZipArchive? zip = null;
        var keep = false;
        try
        {
            var refusals = ZipDirectory.Check(from);
            if (refusals.Count > 0) return Checked<OpenedArchive>.Refused(refusals);
            from.Position = 0;
            zip = new ZipArchive(from, ZipArchiveMode.Read, leaveOpen: true);
            var opened = Verify(zip);
            keep = opened.IsAccepted;
            return opened;
        }
        catch (Exception wrong) when (wrong is InvalidDataException or EndOfStreamException or NotSupportedException or ArgumentException)
        {
            return new Refusal("archive", "journal.given.damaged-zip", "journal.wanted.whole-file-unaltered-copy-again");
        }
        finally
        {
            if (!keep) zip?.Dispose();
        }
    }

    private static Checked<OpenedArchive> Verify(ZipArchive zip)
    {
        if (zip.GetEntry(ArchiveNames.Manifest) is not { } listed)
            return new Refusal(ArchiveNames.Manifest, "journal.given.nothing", "journal.wanted.manifest-this-zip-not-archive");
        if (zip.GetEntry(ArchiveNames.Journal) is not { } lines)
            return new Refusal(ArchiveNames.Journal, "journal.given.nothing", "journal.wanted.lines-one-inspection");
        if (Bytes(listed) is not { } manifest) return TooLong(listed);
        if (Bytes(lines) is not { } journal) return TooLong(lines);
        var read = ArchivedLines.Read(manifest, journal);
        if (!read.IsAccepted) return Checked<OpenedArchive>.Refused(read.Refusals);
        var known = read.OrThrow();
        List<Refusal> refusals = [.. Files(zip, known.Manifest)];
        return refusals.Count > 0 ? Checked<OpenedArchive>.Refused(refusals) : new OpenedArchive(zip, known);
    }

    private static IEnumerable<Refusal> Files(ZipArchive zip, Manifest manifest)
    {
        foreach (var file in manifest.Files)
        {
            if (One(zip, file) is { } refusal) yield return refusal;
        }

        HashSet<string> listed = new(manifest.Files.Select(file => file.Name),
            StringComparer.Ordinal) { ArchiveNames.Manifest, ArchiveNames.Journal };

        foreach (var stranger in zip.Entries.Where(entry => !listed.Contains(entry.FullName)))
            yield return new Refusal(stranger.FullName, "journal.given.file-manifest-does-not-list", "journal.wanted.only-listed-files");
    }

    private static Refusal? One(ZipArchive zip, ArchivedFile file)
    {
        if (zip.GetEntry(file.Name) is not { } entry)
            return new Refusal(BodyJson.Short(file.Name), "journal.given.nothing", "journal.wanted.file-manifest-lists");
        if (entry.Length != file.Size)
            return new Refusal(file.Name, new Said("journal.given.count-bytes", ("count", entry.Length)),
                new Said("journal.wanted.manifest-says", ("most", $"{file.Size}")));
        if (ArchiveNames.Blob(file.Name) is { } sha && sha != file.Sha256)
            return new Refusal(file.Name, "journal.given.name-not-hash",
                new Said("journal.wanted.photos-most", ("most", BodyJson.Short(file.Sha256))));
        return Hash(entry) is not { } hash
            ? new Refusal(file.Name, "journal.given.more-bytes-than-claims", Said.Verbatim($"{entry.Length}"))
            : hash != file.Sha256 ? new Refusal(file.Name, new Said("journal.given.bytes-with-hash", ("count", $"{hash[..12]}")),
                "journal.wanted.bytes-put-altered-or-damaged") : null;
    }

    private static Refusal TooLong(ZipArchiveEntry entry) => new(entry.FullName, "more bytes than it claims", $"{entry.Length}");

    private static byte[]? Bytes(ZipArchiveEntry entry)
    {
        using var from = entry.Open();
        var bytes = new byte[entry.Length];
        var read = from.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
        return read == bytes.Length && from.ReadByte() < 0 ? bytes : null;
    }

    /// <summary>Hash of a file as it turns out to be, read no further than one byte beyond what it claims.</summary>
    private static string? Hash(ZipArchiveEntry entry)
    {
        using var from = entry.Open();
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        var buffer = new byte[81920];
        long size = 0;
        for (int read; (read = from.Read(buffer)) > 0;)
        {
            size += read;
            if (size > entry.Length) return null;
            hash.AppendData(buffer, 0, read);
        }

        return size == entry.Length ? Convert.ToHexStringLower(hash.GetHashAndReset()) : null;
    }
}
