using System.Globalization;

namespace Purlin.Journal.Archive;

/// <summary>
/// The only names a file in an archive may bear. They are made from hashes and numbers, never from anything a person or another program
/// wrote, so that no name can lead out of a folder.
/// </summary>
public static class ArchiveNames
{
    /// <summary>What is in the archive, with hashes.</summary>
    public const string Manifest = "manifest.json";

    /// <summary>The lines as they were written.</summary>
    public const string Journal = "journal.jsonl";

    /// <summary>The office's signed receipts, one a line.</summary>
    public const string Receipts = "receipts.jsonl";

    /// <summary>The public key that the receipts are checked with.</summary>
    public const string Key = "office-key.pem";

    private static readonly (string Folder, string Ending, string MediaType)[] Blobs =
    [
        ("photos", "jpg", "image/jpeg"), ("photos", "png", "image/png"), ("photos", "webp", "image/webp"),
        ("sounds", "webm", "audio/webm"), ("sounds", "ogg", "audio/ogg"), ("sounds", "m4a", "audio/mp4"), ("sounds", "wav", "audio/wav"),
    ];

    /// <summary>The name of a photograph or sound; none for a kind of file that an archive does not carry.</summary>
    public static string? OfBlob(string sha, string mediaType)
    {
        ArgumentNullException.ThrowIfNull(mediaType);
        // A recorder adds its codec: audio/webm;codecs=opus.
        var plain = mediaType.Split(';')[0].Trim();
        var blob = Array.Find(Blobs, blob => blob.MediaType == plain);
        return Sha.Is(sha) && blob.Folder is not null ? $"{blob.Folder}/{sha}.{blob.Ending}" : null;
    }

    /// <summary>The name of the page of an edition.</summary>
    public static string Page(int edition) => string.Create(CultureInfo.InvariantCulture, $"editions/{edition}.html");

    /// <summary>The name of the PDF of an edition.</summary>
    public static string Pdf(int edition) => string.Create(CultureInfo.InvariantCulture, $"editions/{edition}.pdf");

    /// <summary>Media type by name; none for a name that is not allowed.</summary>
    public static string? MediaType(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        switch (name)
        {
            case Manifest: return "application/json";
            case Journal or Receipts: return "application/x-ndjson";
            case Key: return "application/x-pem-file";
        }

        var slash = name.IndexOf('/', StringComparison.Ordinal);
        var dot = name.LastIndexOf('.');
        if (slash <= 0 || dot <= slash) return null;
        var (folder, stem, ending) = (name[..slash], name[(slash + 1)..dot], name[(dot + 1)..]);
        if (folder == "editions")
            return IsNumber(stem) ? ending switch { "html" => "text/html", "pdf" => "application/pdf", _ => null } : null;
        return Sha.Is(stem) ? Array.Find(Blobs, blob => blob.Folder == folder && blob.Ending == ending).MediaType : null;
    }

    /// <summary>The hash in the name of a photograph or sound; none for other files.</summary>
    public static string? Blob(string name) =>
        MediaType(name) is { } type
            && (type.StartsWith("image/", StringComparison.Ordinal) || type.StartsWith("audio/", StringComparison.Ordinal))
            ? name[7..71] : null;

    /// <summary>The most bytes a file of this name may hold.</summary>
    public static long MostBytes(string name) => name switch
    {
        Manifest or Key => 4 * 1024 * 1024,
        Journal or Receipts => Limits.JournalBytes,
        _ => Blob(name) is null ? Limits.ArchiveFileBytes : Limits.PhotoBytes,
    };

    private static bool IsNumber(string text) => text.Length is > 0 and <= 4 && text[0] != '0' && text.All(char.IsAsciiDigit);
}
