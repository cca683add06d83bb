using System.Security.Cryptography;

namespace Purlin.Journal.Merge;

/// <summary>
/// One hash for a set of lines: what an edition seals and a receipt signs. Leaves and nodes are hashed with different first bytes, so that
/// no node can be passed off as a line.
/// </summary>
public static class Merkle
{
    /// <summary>
    /// Root over these line hashes, each once, in ascending order; an odd one moves up as it is. Nothing gives the hash of no bytes.
    /// </summary>
    public static string Root(IEnumerable<string> hashes)
    {
        ArgumentNullException.ThrowIfNull(hashes);
        List<byte[]> level = [.. hashes.Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)
            .Select(hash => SHA256.HashData([0, .. Convert.FromHexString(hash)]))];
        if (level.Count == 0) return Sha.Of([]);
        while (level.Count > 1)
        {
            List<byte[]> above = new((level.Count + 1) / 2);
            for (var at = 0; at < level.Count; at += 2)
                above.Add(at + 1 < level.Count ? SHA256.HashData([1, .. level[at], .. level[at + 1]]) : level[at]);
            level = above;
        }

        return Convert.ToHexStringLower(level[0]);
    }
}
