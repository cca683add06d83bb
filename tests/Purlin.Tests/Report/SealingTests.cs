using System.Security.Cryptography;
using Purlin.Report.Edition;

namespace Purlin.Tests.Report;

public static class SealingTests
{
    [Fact]
    public static void The_root_is_the_tree_hash_of_rfc_6962()
    {
        // RFC 6962, section 2.1: leaf = SHA-256(0x00 || d), node = SHA-256(0x01 || left || right), split at the largest power of two below n.
        byte[][] lines = [.. Enumerable.Range(0, 5).Select(index => SHA256.HashData([(byte)index]))];
        byte[] Leaf(int index) => SHA256.HashData([0, .. lines[index]]);
        byte[] Node(byte[] left, byte[] right) => SHA256.HashData([1, .. left, .. right]);
        var expected = Node(Node(Node(Leaf(0), Leaf(1)), Node(Leaf(2), Leaf(3))), Leaf(4));
        Assert.Equal(Convert.ToHexStringLower(expected), Sealing.EntriesRoot(lines.Select(Convert.ToHexString)));
        // RFC 6962, section 2.1: the hash of an empty list is the hash of an empty string.
        Assert.Equal("e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855", Sealing.EntriesRoot([]));
    }

    [Fact]
    public static void One_line_changed_dropped_or_swapped_changes_the_root()
    {
        string[] lines = [.. Enumerable.Range(0, 6).Select(index => Convert.ToHexStringLower(SHA256.HashData([(byte)index])))];
        var root = Sealing.EntriesRoot(lines);
        Assert.NotEqual(root, Sealing.EntriesRoot(lines[..^1]));
        Assert.NotEqual(root, Sealing.EntriesRoot([lines[1], lines[0], .. lines[2..]]));
        Assert.NotEqual(root, Sealing.EntriesRoot([.. lines, lines[^1]]));
    }

    [Fact]
    public static void Page_and_paper_are_hashed_as_they_are_stored()
    {
        // FIPS 180-2, appendix B.1: SHA-256 of "abc".
        Assert.Equal("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad", Sealing.OfPage("abc"));
        Assert.Equal("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad", Sealing.OfPdf("abc"u8));
    }
}
