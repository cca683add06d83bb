using System.Security.Cryptography;
using System.Text;

namespace Purlin.Report.Edition;

/// <summary>The hashes an edition is sealed with; pure functions, so that the office, the phone and the command line agree.</summary>
public static class Sealing
{
    /// <summary>
    /// Root of a tree over the hashes of the journal lines an edition was made from, in the order of their names. A leaf and a knot are hashed
    /// with different first bytes, so that neither can stand for the other (RFC 6962, section 2.1).
    /// </summary>
    /// <param name="lineHashes">SHA-256 of each line, 64 hexadecimal digits, in the order of the names <c>dev.seq</c>.</param>
    /// <returns>64 lower-case hexadecimal digits; that of nothing at all when there is no line.</returns>
    /// <exception cref="FormatException">A hash is not hexadecimal.</exception>
    public static string EntriesRoot(IEnumerable<string> lineHashes)
    {
        ArgumentNullException.ThrowIfNull(lineHashes);
        byte[][] level = [.. lineHashes.Select(hash => SHA256.HashData([0, .. Convert.FromHexString(hash)]))];
        return Convert.ToHexStringLower(level.Length == 0 ? SHA256.HashData([]) : Root(level));
    }

    /// <summary>Hash of a page as it is stored: UTF-8, no byte order mark.</summary>
    public static string OfPage(string page) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(page)));

    /// <summary>Hash of a PDF as it is stored.</summary>
    public static string OfPdf(ReadOnlySpan<byte> pdf) => Convert.ToHexStringLower(SHA256.HashData(pdf));

    /// <summary>A hash in groups of eight, to be read aloud and compared by eye.</summary>
    public static string InGroups(string hash)
    {
        ArgumentNullException.ThrowIfNull(hash);
        return string.Join(' ', hash.Chunk(8).Select(group => new string(group)));
    }

    // RFC 6962 splits at the largest power of two below the count.
    private static byte[] Root(ReadOnlySpan<byte[]> level)
    {
        if (level.Length == 1) return level[0];
        var split = 1;
        while (split * 2 < level.Length) split *= 2;
        return SHA256.HashData([1, .. Root(level[..split]), .. Root(level[split..])]);
    }
}
