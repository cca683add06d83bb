namespace Purlin.Journal.Archive;

/// <summary>A photograph or sound to be put into an archive. Bytes are opened only when their turn comes, one at a time.</summary>
/// <param name="Sha">SHA-256 of the bytes; checked while they are copied.</param>
/// <param name="MediaType">Its kind.</param>
/// <param name="Open">Opens the bytes.</param>
public sealed record ArchivePhoto(string Sha, string MediaType, Func<Stream> Open)
{
    /// <summary>A photograph in memory.</summary>
    public static ArchivePhoto Of(byte[] bytes, string mediaType) =>
        new(Journal.Sha.Of(bytes), mediaType, () => new MemoryStream(bytes, writable: false));
}

/// <summary>Another file to be put into an archive: page and PDF of an edition, receipts, the office's public key.</summary>
/// <param name="Name">As <see cref="ArchiveNames"/> allows.</param>
/// <param name="Bytes">Its bytes.</param>
public sealed record ArchiveExtra(string Name, byte[] Bytes);
