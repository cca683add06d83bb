using Purlin.Journal;
using Purlin.Office.Storage;
using Purlin.Office.Tests.Office;

namespace Purlin.Office.Tests.Storage;

/// <summary>What every store of files promises: it holds what it says it holds, as it is now, and gives nothing out under a hash it does not have.</summary>
public abstract class BlobsContract : IDisposable
{
    private static readonly byte[] Photo = Office.Pictures.Jpeg(400, 300);
    private static readonly string Name = Sha.Of(Photo);

    protected abstract IBlobs Of(Tenant tenant);

    /// <summary>Does to the kept bytes what a failing disk does: other bytes, or with none no file at all.</summary>
    protected abstract void Spoil(Tenant tenant, string sha, byte[]? bytes);

    protected virtual void Dispose(bool disposing)
    {
    }

    public void Dispose()
    {
        Dispose(disposing: true);
        GC.SuppressFinalize(this);
    }

    private static async Task<byte[]?> Read(IBlobs blobs, string sha)
    {
        await using var stream = await blobs.Open(sha, CancellationToken.None);
        if (stream is null) return null;
        Assert.True(stream.CanSeek);
        using MemoryStream bytes = new();
        await stream.CopyToAsync(bytes);
        return bytes.ToArray();
    }

    private static async Task Send(IBlobs blobs, byte[] bytes)
    {
        await blobs.Part(Sha.Of(bytes), new MemoryStream(bytes), bytes.Length, CancellationToken.None);
        Assert.Null(await blobs.Finish(Sha.Of(bytes), CancellationToken.None));
    }

    private static async Task<bool> Holds(IBlobs blobs, string sha) => (await blobs.Has([sha], CancellationToken.None)).ContainsKey(sha);

    [Fact]
    public async Task Sent_in_parts_it_is_held_whole_with_what_it_is()
    {
        var blobs = Of(Tenant.Own);
        Assert.Equal(0, await blobs.Arrived(Name, CancellationToken.None));
        await blobs.Part(Name, new MemoryStream(Photo, 0, 1000), 5000, CancellationToken.None);
        Assert.Equal(1000, await blobs.Arrived(Name, CancellationToken.None));
        Assert.False(await Holds(blobs, Name));
        await blobs.Part(Name, new MemoryStream(Photo, 1000, Photo.Length - 1000), Photo.Length, CancellationToken.None);
        Assert.Null(await blobs.Finish(Name, CancellationToken.None));
        Assert.Equal(new Blob(Name, Photo.Length, "image/jpeg"), (await blobs.Has([Name, new string('0', 64)], CancellationToken.None)).Single().Value);
        Assert.Equal(Photo, await Read(blobs, Name));
        Assert.Equal(0, await blobs.Arrived(Name, CancellationToken.None));
    }

    [Fact]
    public async Task Other_bytes_and_other_kinds_are_refused_and_gone()
    {
        var blobs = Of(Tenant.Own);
        await blobs.Part(Name, new MemoryStream([1, 2, 3]), 3, CancellationToken.None);
        Assert.True((await blobs.Finish(Name, CancellationToken.None))!.OtherBytes);
        var text = "<svg/>"u8.ToArray();
        await blobs.Part(Sha.Of(text), new MemoryStream(text), 6, CancellationToken.None);
        Assert.False((await blobs.Finish(Sha.Of(text), CancellationToken.None))!.OtherBytes);
        foreach (var sha in (string[])[Name, Sha.Of(text)])
        {
            Assert.False(await Holds(blobs, sha));
            Assert.Equal(0, await blobs.Arrived(sha, CancellationToken.None));
        }
    }

    [Fact]
    public async Task More_bytes_than_announced_are_refused()
    {
        var refused = await Assert.ThrowsAsync<Microsoft.AspNetCore.Http.BadHttpRequestException>(() => Of(Tenant.Own).Part(Name, new MemoryStream(Photo), 10, CancellationToken.None));
        Assert.Equal(413, refused.StatusCode);
    }

    [Fact]
    public async Task A_file_that_is_gone_is_not_held_and_is_taken_again()
    {
        var blobs = Of(Tenant.Own);
        await Send(blobs, Photo);
        Spoil(Tenant.Own, Name, null);
        Assert.False(await Holds(blobs, Name));
        Assert.Null(await Read(blobs, Name));
        await Send(blobs, Photo);
        Assert.Equal(Photo, await Read(blobs, Name));
    }

    public static TheoryData<string> Damages => new("one bit", "emptied", "one byte less");

    private static byte[] Damaged(string how)
    {
        var bytes = Photo.ToArray();
        bytes[^5] ^= 1;
        return how switch { "one bit" => bytes, "emptied" => [], _ => Photo[..^1] };
    }

    [Theory]
    [MemberData(nameof(Damages))]
    public async Task Damaged_bytes_are_never_given_out_and_the_file_is_taken_again(string how)
    {
        var blobs = Of(Tenant.Own);
        await Send(blobs, Photo);
        Spoil(Tenant.Own, Name, Damaged(how));
        Assert.Null(await Read(blobs, Name));
        Assert.False(await Holds(blobs, Name));
        await Send(blobs, Photo);
        Assert.Equal(Photo, await Read(blobs, Name));
    }

    [Theory]
    [MemberData(nameof(Damages))]
    public async Task A_scrub_finds_what_is_damaged_and_no_longer_calls_it_held(string how)
    {
        var blobs = Of(Tenant.Own);
        var other = Office.Pictures.Jpeg(32, 32);
        await Send(blobs, Photo);
        await Send(blobs, other);
        Spoil(Tenant.Own, Name, Damaged(how));
        Assert.Equal([Name], (await blobs.Scrub(DateTimeOffset.MaxValue, CancellationToken.None)).Damaged);
        Assert.False(await Holds(blobs, Name));
        Assert.True(await Holds(blobs, Sha.Of(other)));
    }

    [Fact]
    public async Task A_scrub_passes_over_what_was_hashed_since()
    {
        var blobs = Of(Tenant.Own);
        await Send(blobs, Photo);
        Assert.Equal(0, (await blobs.Scrub(DateTimeOffset.UnixEpoch, CancellationToken.None)).Looked);
        Assert.Equal(1, (await blobs.Scrub(DateTimeOffset.MaxValue, CancellationToken.None)).Looked);
    }

    [Fact]
    public async Task One_tenants_files_are_not_anothers()
    {
        await Send(Of(Tenant.Own), Photo);
        var other = Of(new Tenant("other"));
        Assert.False(await Holds(other, Name));
        Assert.Null(await Read(other, Name));
        await Send(other, Photo);
        await other.Remove(Name);
        Assert.Equal(Photo, await Read(Of(Tenant.Own), Name));
    }

    [Fact]
    public async Task What_is_removed_is_gone()
    {
        var blobs = Of(Tenant.Own);
        await blobs.Keep(Name, Photo, "image/jpeg");
        await blobs.Remove(Name);
        Assert.False(await Holds(blobs, Name));
        Assert.Null(await Read(blobs, Name));
    }
}
