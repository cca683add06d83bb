using System.IO.Compression;
using Purlin.Journal.Merge;

namespace Purlin.Journal.Archive;

/// <summary>An archive whose every byte has been checked against its manifest. Photographs are read from it one at a time.</summary>
public sealed class OpenedArchive : IDisposable
{
    private readonly ZipArchive zip;
    private readonly Dictionary<string, string> blobs;

    internal OpenedArchive(ZipArchive zip, ArchivedLines lines)
    {
        this.zip = zip;
        Manifest = lines.Manifest;
        Entries = lines.Entries;
        Held = lines.Held;
        blobs = Manifest.Files.Where(file => ArchiveNames.Blob(file.Name) is not null)
            .ToDictionary(file => file.Sha256, file => file.Name, StringComparer.Ordinal);
    }

    /// <summary>What it holds.</summary>
    public Manifest Manifest { get; }

    /// <summary>Its readable lines.</summary>
    public IReadOnlyList<Entry> Entries { get; }

    /// <summary>Lines this program cannot read, kept as they came.</summary>
    public IReadOnlyList<HeldLine> Held { get; }

    /// <summary>Hashes of the photographs and sounds in it.</summary>
    public IReadOnlyCollection<string> Blobs => blobs.Keys;

    /// <summary>The bytes of a photograph or sound; none when it is not here.</summary>
    public byte[]? Photo(string sha) => blobs.TryGetValue(sha, out var name) ? File(name) : null;

    /// <summary>The bytes of a file; none when it is not here.</summary>
    public byte[]? File(string name)
    {
        if (zip.GetEntry(name) is not { } entry) return null;
        using var from = entry.Open();
        var bytes = new byte[entry.Length];
        from.ReadExactly(bytes);
        return bytes;
    }

    /// <inheritdoc/>
    public void Dispose() => zip.Dispose();
}
