using System.IO.Compression;
using System.Text;
using CsCheck;
using Purlin.Journal;
using Purlin.Journal.Archive;

namespace Purlin.Tests.Journal.Archive;

/// <summary>Every hostile or damaged archive is a clear refusal: no exception, nothing unfolded beyond its limits.</summary>
public sealed class HostileArchiveTests
{
    private static readonly byte[] Manifest = Files()[ArchiveNames.Manifest];
    private static readonly byte[] Lines = Files()[ArchiveNames.Journal];
    private static readonly string Picture = ArchiveNames.OfBlob(Sha.Of(Samples.Picture), "image/jpeg")!;

    private static Dictionary<string, byte[]> Files()
    {
        using var zip = new ZipArchive(Samples.Archive());
        return zip.Entries.ToDictionary(entry => entry.FullName, entry =>
        {
            using var from = entry.Open();
            using var to = new MemoryStream();
            from.CopyTo(to);
            return to.ToArray();
        });
    }

    private static RawZip Whole() => new RawZip().Add(ArchiveNames.Manifest, Manifest).Add(ArchiveNames.Journal, Lines);

    private static void Refused(Stream archive, string words)
    {
        var opened = ArchiveReader.Open(archive);
        Assert.False(opened.IsAccepted);
        Assert.Contains(opened.Refusals, refusal => refusal.ToString().Contains(words, StringComparison.Ordinal));
        Assert.All(opened.Refusals, refusal => Assert.DoesNotContain(refusal.ToString(), char.IsControl));
    }

    [Fact]
    public void The_builder_of_these_fixtures_builds_a_good_one_too()
    {
        using var opened = ArchiveReader.Open(Whole().Add(Picture, Samples.Picture).End()).OrThrow();
        Assert.Equal(4, opened.Entries.Count);
    }

    [Theory]
    [InlineData("../../etc/passwd")]
    [InlineData("/etc/passwd")]
    [InlineData("photos/../../escape.jpg")]
    [InlineData("photos\\..\\escape.jpg")]
    [InlineData("C:\\windows\\system.ini")]
    [InlineData("photos/%2e%2e/escape.jpg")]
    [InlineData("photos/a\0b.jpg")]
    [InlineData("photos/")]
    [InlineData("photos/0123.jpg")]
    [InlineData("photos/0000000000000000000000000000000000000000000000000000000000000000.svg")]
    [InlineData("photos/0000000000000000000000000000000000000000000000000000000000000000.jpg/x")]
    [InlineData("editions/../1.pdf")]
    [InlineData("editions/01.pdf")]
    [InlineData("Manifest.json")]
    [InlineData("")]
    public void Names_that_lead_elsewhere(string name) => Refused(Whole().Add(name, [1]).End(), "file name");

    [Fact]
    public void Not_a_zip() => Refused(new MemoryStream(Encoding.UTF8.GetBytes("This is a letter and not an archive at all.")), "no zip");

    [Fact]
    public void Nothing_at_all() => Refused(new MemoryStream(), "no zip");

    [Fact]
    public void Cut_off_anywhere()
    {
        var whole = Samples.Archive().ToArray();
        Gen.Int[0, whole.Length - 1].Sample(length => Assert.False(ArchiveReader.Open(new MemoryStream(whole[..length])).IsAccepted), iter: 300);
        Refused(new MemoryStream(whole[..^1]), "cut off");
    }

    [Fact]
    public void Any_flipped_byte_is_noticed_or_changes_nothing()
    {
        var whole = Samples.Archive().ToArray();
        var hashes = Samples.Entries().Select(entry => entry.Hash).ToArray();
        var noticed = 0;
        Gen.Select(Gen.Int[0, whole.Length - 1], Gen.Byte[1, 255]).Sample(
            (at, flip) =>
            {
                var altered = whole.ToArray();
                altered[at] ^= flip;
                var opened = ArchiveReader.Open(new MemoryStream(altered));
                if (!opened.IsAccepted) Interlocked.Increment(ref noticed);
                else Assert.Equal(hashes, opened.OrThrow().Entries.Select(entry => entry.Hash));
            },
            iter: 2_000);
        Assert.True(noticed > 1_000, $"{noticed} noticed");
    }

    [Fact]
    public void Ten_gigabytes_claimed() => Refused(Whole().Add(Picture, Samples.Picture, claims: uint.MaxValue).End(), "4 GB or more");

    [Fact]
    public void A_photograph_that_claims_more_than_one_may_hold() => Refused(Whole().Add(Picture, Samples.Picture, claims: Limits.PhotoBytes + 1).End(), $"at most {Limits.PhotoBytes}");

    [Fact]
    public void Many_files_that_claim_to_unfold_a_thousandfold()
    {
        var zip = Whole();
        for (var at = 0; at < 40; at++) zip.Add($"photos/{at:x64}.jpg", [0], claims: Limits.PhotoBytes, method: 8);
        Refused(zip.End(), "claim to unfold");
    }

    [Fact]
    public void A_bomb_that_claims_to_be_small()
    {
        using var packed = new MemoryStream();
        using (var deflate = new DeflateStream(packed, CompressionLevel.SmallestSize, leaveOpen: true)) deflate.Write(new byte[60_000_000]);
        var bomb = packed.ToArray();
        Assert.True(bomb.Length < 100_000);
        Refused(Whole().Add(Picture, bomb, claims: 8, method: 8).End(), Picture);
        Refused(new RawZip().Add(ArchiveNames.Manifest, Manifest).Add(ArchiveNames.Journal, bomb, claims: (uint)Lines.Length, method: 8).End(), ArchiveNames.Journal);
    }

    [Fact]
    public void A_million_names()
    {
        var zip = new RawZip();
        for (var at = 0; at < 1_000_000; at++) zip.Add("a", []);
        Refused(zip.End(60_000), $"at most {Limits.ArchiveFiles}");
        Refused(zip.End(3), "does not end where it says");
    }

    [Fact]
    public void A_name_twice() => Refused(Whole().Add(Picture, Samples.Picture).Add(Picture, [1]).End(), "twice");

    [Fact]
    public void Two_manifests() => Refused(Whole().Add(ArchiveNames.Manifest, Manifest).End(), "twice");

    [Fact]
    public void A_link() => Refused(Whole().Add(Picture, Encoding.ASCII.GetBytes("/etc/passwd"), attributes: 0xA1FFu << 16).End(), "a link");

    [Fact]
    public void Encrypted() => Refused(Whole().Add(Picture, Samples.Picture, flags: 1).End(), "encrypted");

    [Fact]
    public void Packed_in_a_way_we_do_not_read() => Refused(Whole().Add(Picture, Samples.Picture, method: 14).End(), "packed in way 14");

    [Fact]
    public void No_manifest() => Refused(new RawZip().Add(ArchiveNames.Journal, Lines).End(), "not an archive of ours");

    [Fact]
    public void No_journal() => Refused(new RawZip().Add(ArchiveNames.Manifest, Manifest).End(), ArchiveNames.Journal);

    [Fact]
    public void A_manifest_that_is_no_manifest() =>
        Refused(new RawZip().Add(ArchiveNames.Manifest, Encoding.UTF8.GetBytes("[" + new string('[', 100_000))).Add(ArchiveNames.Journal, Lines).End(), "manifest.schema.json");

    [Fact]
    public void A_newer_format() => Refused(With(ArchiveNames.Manifest, "\"version\": 1", "\"version\": 2"), "a newer program");

    [Fact]
    public void Another_photograph_under_the_name() => Refused(Whole().Add(Picture, [.. Samples.Picture.Reverse()]).End(), "altered or damaged");

    [Fact]
    public void A_photograph_the_manifest_lists_and_the_zip_lacks() => Refused(Whole().End(), "the manifest lists");

    [Fact]
    public void A_photograph_the_manifest_does_not_list() =>
        Refused(Whole().Add(Picture, Samples.Picture).Add($"photos/{Sha.Of([7])}.jpg", [7]).End(), "does not list");

    [Fact]
    public void One_letter_of_one_line() => Refused(With(ArchiveNames.Journal, "Invented Lane", "Inverted Lane"), "altered or lost");

    [Fact]
    public void A_line_left_out_with_its_hash_put_right()
    {
        var lines = Encoding.UTF8.GetString(Lines);
        var shorter = Encoding.UTF8.GetBytes(string.Concat(lines.Split('\n').Where((_, at) => at != 1).Select(line => line.Length > 0 ? line + "\n" : "")));
        var manifest = Encoding.UTF8.GetBytes(Encoding.UTF8.GetString(Manifest).Replace(Sha.Of(Lines), Sha.Of(shorter), StringComparison.Ordinal));
        Refused(new RawZip().Add(ArchiveNames.Manifest, manifest).Add(ArchiveNames.Journal, shorter).Add(Picture, Samples.Picture).End(), "root");
    }

    [Theory]
    [InlineData("\"entries\": 4", "\"entries\": -5")]
    [InlineData("\"entries\": 4", "\"entries\": 3")]
    [InlineData("\"held\": 0", "\"held\": 2147483647")]
    public void A_manifest_that_counts_otherwise(string from, string to) => Refused(With(ArchiveNames.Manifest, from, to), "the number of its lines");

    private static MemoryStream With(string file, string from, string to)
    {
        var zip = new RawZip();
        foreach (var (name, bytes) in Files())
            zip.Add(name, name == file ? Encoding.UTF8.GetBytes(Encoding.UTF8.GetString(bytes).Replace(from, to, StringComparison.Ordinal)) : bytes);
        return zip.End();
    }
}
