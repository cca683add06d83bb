using System.IO.Compression;
using System.Security.Cryptography;
using System.Text.Json;
using Purlin.Journal.Merge;

namespace Purlin.Journal.Archive;

/// <summary>
/// Writes <c>NAME.purlin</c>. The same lines and files give the same bytes: order, times and attributes are fixed, and nothing is
/// compressed (photographs do not shrink, and compressors differ between platforms).
/// </summary>
public static class ArchiveWriter
{
    // A plain file that its owner writes and everybody reads (0644): with no mode at all, Unix unpacks files that nobody can open.
    private const int PlainFile = unchecked((int)0x81A40000);

    private static readonly DateTimeOffset FixedTime = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>Writes the archive and returns its manifest.</summary>
    /// <param name="to">Written forward only.</param>
    /// <param name="entries">Lines of one inspection.</param>
    /// <param name="photos">Photographs and sounds that are here; those that lines name and that are not here are listed as
    /// missing.</param>
    /// <param name="held">Lines that could not be read, kept as they came.</param>
    /// <param name="extras">Editions, receipts, key.</param>
    /// <exception cref="InvalidDataException">A photograph's bytes do not have its hash: the copy here is damaged.</exception>
    public static Manifest Write(Stream to, IEnumerable<Entry> entries, IEnumerable<ArchivePhoto> photos,
        IEnumerable<HeldLine>? held = null, IEnumerable<ArchiveExtra>? extras = null)
    {
        ArgumentNullException.ThrowIfNull(to);
        Entry[] all = [.. entries];
        HeldLine[] unread = [.. held ?? []];
        if (all.Length == 0 && unread.Length == 0) throw new ArgumentException("an archive holds at least one line", nameof(entries));
        var set = EntrySet.Of(all.Length > 0 ? all[0].Inspection : "", all, unread);
        using var zip = new ZipArchive(new ForwardStream(to), ZipArchiveMode.Create, leaveOpen: true);
        var journal = Lines(set);
        Put(zip, ArchiveNames.Journal, journal);
        var files = WriteFiles(zip, [.. photos], [.. extras ?? []]);
        var manifest = Describe(set, Sha.Of(journal), files);
        Put(zip, ArchiveNames.Manifest, [.. JsonSerializer.SerializeToUtf8Bytes(manifest, ManifestContext.Default.Manifest), (byte)'\n']);
        return manifest;
    }

    /// <summary>Readable lines in causal order, then held ones by hash.</summary>
    private static byte[] Lines(EntrySet set)
    {
        using var lines = new MemoryStream();
        LineBlock.Write(lines, set.InOrder().Select(line => line.Entry.Line));
        LineBlock.Write(lines, set.Held.OrderBy(line => line.Hash, StringComparer.Ordinal).Select(line => line.Raw));
        return lines.ToArray();
    }

    private static Manifest Describe(EntrySet set, string journal, List<ArchivedFile> files)
    {
        HashSet<string> here = [.. files.Select(file => file.Sha256)];
        return new Manifest
        {
            Format = Manifest.FormatName,
            Version = 1,
            Inspection = set.Inspection,
            Heads = new SortedDictionary<string, int>(set.Heads().ToDictionary(), StringComparer.Ordinal),
            Entries = set.Count,
            Held = set.Held.Count,
            Journal = journal,
            LinesRoot = Merkle.Root([.. set.Entries.Select(entry => entry.Hash), .. set.Held.Select(line => line.Hash)]),
            Files = files,
            Missing = [.. set.Entries.Select(entry => Blob(entry.Body)).OfType<string>().Where(sha => !here.Contains(sha))
                .Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)],
        };
    }

    private static string? Blob(EntryBody body) => body switch
    {
        EntryBody.PhotoTaken photo => photo.Sha,
        EntryBody.SoundTaken sound => sound.Sha,
        _ => null,
    };

    private static List<ArchivedFile> WriteFiles(ZipArchive zip, ArchivePhoto[] photos, ArchiveExtra[] extras)
    {
        List<ArchivedFile> files = [];
        foreach (var extra in extras.OrderBy(extra => extra.Name, StringComparer.Ordinal))
        {
            if (ArchiveNames.MediaType(extra.Name) is not { } type || ArchiveNames.Blob(extra.Name) is not null)
                throw new ArgumentException($"no file of an archive is called {extra.Name}", nameof(extras));
            Put(zip, extra.Name, extra.Bytes);
            files.Add(new ArchivedFile(extra.Name, Sha.Of(extra.Bytes), extra.Bytes.Length, type));
        }

        foreach (var photo in photos.DistinctBy(photo => photo.Sha, StringComparer.Ordinal)
            .OrderBy(photo => photo.Sha, StringComparer.Ordinal))
        {
            var name = ArchiveNames.OfBlob(photo.Sha, photo.MediaType)
                ?? throw new ArgumentException($"an archive does not carry {photo.MediaType}", nameof(photos));
            using var from = photo.Open();
            using var into = Start(zip, name).Open();
            var size = CopyHashed(from, into, photo.Sha);
            files.Add(new ArchivedFile(name, photo.Sha, size, ArchiveNames.MediaType(name)!));
        }

        return files;
    }

    private static long CopyHashed(Stream from, Stream to, string sha)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        var buffer = new byte[81920];
        long size = 0;
        for (int read; (read = from.Read(buffer)) > 0; size += read)
        {
            hash.AppendData(buffer, 0, read);
            to.Write(buffer, 0, read);
        }

        return Convert.ToHexStringLower(hash.GetHashAndReset()) == sha
            ? size : throw new InvalidDataException($"the copy of {sha} here is damaged");
    }

    private static void Put(ZipArchive zip, string name, byte[] bytes)
    {
        using var into = Start(zip, name).Open();
        into.Write(bytes);
    }

    private static ZipArchiveEntry Start(ZipArchive zip, string name)
    {
        var entry = zip.CreateEntry(name, CompressionLevel.NoCompression);
        entry.LastWriteTime = FixedTime;
        entry.ExternalAttributes = PlainFile;
        return entry;
    }
}
