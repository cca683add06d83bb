namespace Purlin.Office.Storage;

/// <summary>
/// Photographs, sounds and issued files of one tenant by the hash of their bytes, wherever they are kept. To hold a file is a statement about the disk as it
/// is now, and bytes are never given out under a hash they do not have.
/// </summary>
public interface IBlobs
{
    /// <summary>Those of these hashes that are held whole, by a look at each file. A file that is gone or changed is no longer held, and is taken again.</summary>
    Task<IReadOnlyDictionary<string, Blob>> Has(IReadOnlyCollection<string> hashes, CancellationToken cancel);

    /// <summary>The bytes, hashed anew before this returns, from the start and seekable; none when they are not held whole. Dispose of the stream.</summary>
    Task<Stream?> Open(string sha, CancellationToken cancel);

    /// <summary>Bytes of an upload that have arrived so far.</summary>
    Task<long> Arrived(string sha, CancellationToken cancel);

    /// <summary>Adds bytes to an upload; what arrived before a cut is kept.</summary>
    /// <exception cref="BadHttpRequestException">More bytes came than were announced.</exception>
    Task Part(string sha, Stream bytes, long atMost, CancellationToken cancel);

    /// <summary>Ends an upload: the reason to refuse it, or none when it is held whole.</summary>
    Task<PartRefusal?> Finish(string sha, CancellationToken cancel);

    /// <summary>Keeps bytes of our own: a page, a PDF, a file of an archive.</summary>
    Task Keep(string sha, ReadOnlyMemory<byte> bytes, string mediaType);

    /// <summary>Lets a file go, for good.</summary>
    Task Remove(string sha);

    /// <summary>Hashes every file last hashed before this time, puts the damaged ones aside and clears what uploads left behind.</summary>
    Task<ScrubResult> Scrub(DateTimeOffset before, CancellationToken cancel);
}

/// <summary>A file held whole.</summary>
/// <param name="Sha">Hash of its bytes.</param>
/// <param name="Size">Bytes.</param>
/// <param name="MediaType">Its kind.</param>
public sealed record Blob(string Sha, long Size, string MediaType);

/// <summary>Why an upload was thrown away.</summary>
/// <param name="OtherBytes">True when the bytes are not those of the hash; false when they are, but of a kind that is not kept.</param>
public sealed record PartRefusal(bool OtherBytes);

/// <summary>What a look at the files found.</summary>
/// <param name="Looked">Files hashed.</param>
/// <param name="Damaged">Hashes of those whose bytes were gone or others.</param>
public sealed record ScrubResult(int Looked, IReadOnlyList<string> Damaged);
