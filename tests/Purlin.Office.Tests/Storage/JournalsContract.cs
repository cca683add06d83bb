using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Journal.Merge;
using Purlin.Office.Storage;
using Purlin.Office.Tests.Office;

namespace Purlin.Office.Tests.Storage;

/// <summary>What every store of journals promises, whatever it is made of.</summary>
public abstract class JournalsContract : IDisposable
{
    private const string Visit = "visit1";
    private static readonly DateTimeOffset Now = new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);

    /// <summary>The journals of a tenant; asked again, they are the same ones.</summary>
    protected abstract IJournals Of(Tenant tenant);

    /// <summary>The files beside them.</summary>
    protected abstract IBlobs BlobsOf(Tenant tenant);

    protected virtual void Dispose(bool disposing)
    {
    }

    public void Dispose()
    {
        Dispose(disposing: true);
        GC.SuppressFinalize(this);
    }

    private static Appending What(EntrySet before, IReadOnlyList<Entry> entries, IReadOnlyList<HeldLine>? held = null, string insp = Visit)
    {
        var after = EntrySet.Of(insp, before.Entries.Concat(entries), before.Held.Concat(held ?? []));
        return new Appending
        {
            Inspection = insp,
            Expected = before.Count + before.Held.Count == 0 ? "" : Outline.Of(before, Folding.Fold(before.Entries)).Root,
            Taken = [.. entries.Select(entry => (entry.Name.Device, entry))],
            Held = held ?? [],
            Outline = Outline.Of(after, Folding.Fold(after.Entries)),
            Sign = link => [(byte)link.N, (byte)(link.Previous?[0] ?? 0)],
            At = Now,
        };
    }

    private static EntrySet Set(IEnumerable<Entry> entries) => EntrySet.Of(Visit, entries);

    [Fact]
    public async Task Of_a_journal_nobody_wrote_nothing_is_held()
    {
        var heads = await Of(Tenant.Own).Heads(Visit, CancellationToken.None);
        Assert.Equal(("", 0, 0, null), (heads.Root, heads.Position, heads.Heads.Count, heads.Receipt));
        Assert.Empty(await Of(Tenant.Own).Read(Visit, 0, CancellationToken.None));
    }

    [Fact]
    public async Task What_was_added_is_read_back_byte_for_byte_in_the_order_of_arrival()
    {
        var lines = Lines.Notes(Visit, "aaa", 4);
        var junk = HeldLine.Of("no line"u8.ToArray(), Visit, [new Refusal("line", "junk", "an entry")]);
        var journals = Of(Tenant.Own);
        Assert.True(await journals.Append(What(Set([]), lines[..2], [junk])));
        Assert.True(await journals.Append(What(EntrySet.Of(Visit, lines[..2], [junk]), lines[2..])));
        var read = await journals.Read(Visit, 0, CancellationToken.None);
        Assert.Equal([1, 2, 3, 4, 5], read.Select(line => line.Position));
        Assert.Equal([lines[0].Line.ToArray(), lines[1].Line.ToArray(), junk.Raw.ToArray(), lines[2].Line.ToArray(), lines[3].Line.ToArray()], read.Select(line => line.Raw));
        Assert.Equal([null, null, "line: junk; an entry", null, null], read.Select(line => line.Why));
        Assert.Equal([4, 5], (await journals.Read(Visit, 3, CancellationToken.None)).Select(line => line.Position));
        var heads = await journals.Heads(Visit, CancellationToken.None);
        Assert.Equal((4, 5, 1), (heads.Heads["aaa"], heads.Position, heads.Held));
    }

    [Fact]
    public async Task Nothing_is_added_on_what_is_no_longer_so()
    {
        var (one, other) = (Lines.Notes(Visit, "aaa", 2), Lines.Notes(Visit, "bbb", 2));
        var journals = Of(Tenant.Own);
        Assert.True(await journals.Append(What(Set([]), one)));
        Assert.False(await journals.Append(What(Set([]), other)));
        Assert.Equal(2, (await journals.Read(Visit, 0, CancellationToken.None)).Count);
        Assert.Single(await journals.Receipts(Visit, CancellationToken.None));
        Assert.True(await journals.Append(What(Set(one), other)));
        Assert.Equal(4, (await journals.Heads(Visit, CancellationToken.None)).Position);
    }

    [Fact]
    public async Task Of_many_that_write_on_the_same_belief_one_succeeds()
    {
        var journals = Of(Tenant.Own);
        var tries = await Task.WhenAll(Enumerable.Range(0, 8).Select(writer => Task.Run(() => journals.Append(What(Set([]), Lines.Notes(Visit, $"dev{writer}", 3))))));
        Assert.Equal(1, tries.Count(took => took));
        Assert.Equal(3, (await journals.Read(Visit, 0, CancellationToken.None)).Count);
    }

    [Fact]
    public async Task Receipts_are_one_chain_for_all_inspections_of_a_tenant()
    {
        var journals = Of(Tenant.Own);
        await journals.Append(What(Set([]), Lines.Notes(Visit, "aaa", 1)));
        await journals.Append(What(new EntrySet("visit2"), Lines.Notes("visit2", "aaa", 1), insp: "visit2"));
        Assert.Equal([1, 0], Assert.Single(await journals.Receipts(Visit, CancellationToken.None)));
        Assert.Equal([2, 1], Assert.Single(await journals.Receipts("visit2", CancellationToken.None)));
        Assert.Equal([2, 1], (await journals.Heads("visit2", CancellationToken.None)).Receipt);
    }

    [Fact]
    public async Task One_tenant_sees_nothing_of_another()
    {
        var (ours, theirs) = (Of(Tenant.Own), Of(new Tenant("other")));
        await ours.Append(What(Set([]), Lines.Notes(Visit, "aaa", 2)));
        Assert.Equal(0, (await theirs.Heads(Visit, CancellationToken.None)).Position);
        Assert.Empty(await theirs.Read(Visit, 0, CancellationToken.None));
        Assert.Equal(0, (await theirs.List(new ListAsk(), CancellationToken.None)).Total);
        // The same inspection and the same lines of another tenant are its own.
        Assert.True(await theirs.Append(What(Set([]), Lines.Notes(Visit, "aaa", 2))));
        Assert.Equal([1, 0], Assert.Single(await theirs.Receipts(Visit, CancellationToken.None)));
    }

    [Fact]
    public async Task An_edition_is_kept_with_the_line_that_seals_it()
    {
        var journals = Of(Tenant.Own);
        IssuedEdition edition = new(1, new string('a', 64), new string('b', 64), new string('c', 64), new string('d', 64), Now);
        await journals.Append(What(Set([]), Lines.Notes(Visit, "aaa", 1)) with { Edition = edition });
        Assert.Equal([edition], await journals.Editions(Visit, CancellationToken.None));
    }

    private static Entry Opened(string insp, string address, DateOnly day) =>
        new Pen(insp, "aaa").Write(new EntryBody.InspectionOpened { Property = new Property { Address = address }, Date = day }, Now);

    [Fact]
    public async Task The_list_is_newest_first_is_searched_and_comes_in_pages()
    {
        var journals = Of(Tenant.Own);
        for (var number = 1; number <= 12; number++)
            await journals.Append(What(new EntrySet($"v{number:00}"), [Opened($"v{number:00}", $"{number} Invented {(number % 2 == 0 ? "Lane" : "Row")}", new DateOnly(2026, 11, number))], insp: $"v{number:00}"));
        var all = await journals.List(new ListAsk(), CancellationToken.None);
        Assert.Equal((12, "v12", "12 Invented Lane", "2026-11-12"), (all.Total, all.Inspections[0].Id, all.Inspections[0].Address, all.Inspections[0].Date));
        var page = await journals.List(new ListAsk("invented LANE", Skip: 2, Count: 3), CancellationToken.None);
        Assert.Equal(6, page.Total);
        Assert.Equal(["v08", "v06", "v04"], page.Inspections.Select(one => one.Id));
        Assert.Equal("v07", Assert.Single((await journals.List(new ListAsk("2026-11-07"), CancellationToken.None)).Inspections).Id);
        Assert.Empty((await journals.List(new ListAsk("100%_"), CancellationToken.None)).Inspections);
    }

    [Fact]
    public async Task The_list_counts_the_photographs_that_stand_and_those_that_are_here()
    {
        var (journals, blobs) = (Of(Tenant.Own), BlobsOf(Tenant.Own));
        byte[][] photos = [Office.Pictures.Jpeg(64, 48), Office.Pictures.Jpeg(65, 48)];
        var pen = new Pen(Visit, "aaa");
        Entry[] taken = [.. photos.Select(photo => pen.Write(new EntryBody.PhotoTaken { Sha = Sha.Of(photo), Size = photo.Length, MediaType = "image/jpeg" }, Now))];
        await blobs.Keep(Sha.Of(photos[0]), photos[0], "image/jpeg");
        await journals.Append(What(Set([]), taken));
        async Task<(int, int)> Counts() => (await journals.List(new ListAsk(), CancellationToken.None)).Inspections.Select(one => (one.Photos, one.PhotosHere)).Single();
        Assert.Equal((2, 1), await Counts());
        await blobs.Keep(Sha.Of(photos[1]), photos[1], "image/jpeg");
        Assert.Equal((2, 2), await Counts());
        await blobs.Remove(Sha.Of(photos[0]));
        Assert.Equal((2, 1), await Counts());
        await journals.Append(What(Set(taken), [pen.Write(new EntryBody.EntryWithdrawn { Entry = taken[0].Name }, Now.AddMinutes(1))]));
        Assert.Equal((1, 1), await Counts());
        Assert.Equal([Sha.Of(photos[1])], await journals.Shown([.. photos.Select(photo => Sha.Of(photo))], CancellationToken.None));
    }

    [Fact]
    public async Task Erased_only_after_its_time_and_then_hashes_receipts_and_seals_stay()
    {
        var journals = Of(Tenant.Own);
        var line = Opened(Visit, "9 Invented Row", new DateOnly(2020, 1, 1));
        await journals.Append(What(Set([]), [line]));
        Assert.False(await journals.Erase(Visit, Now));
        await journals.KeepUntil(Visit, Now.AddYears(1));
        Assert.False(await journals.Erase(Visit, Now));
        Assert.Equal(line.Line.ToArray(), Assert.Single(await journals.Read(Visit, 0, CancellationToken.None)).Raw);
        await journals.KeepUntil(Visit, Now.AddDays(-1));
        Assert.True(await journals.Erase(Visit, Now));
        Assert.False(await journals.Erase(Visit, Now));
        Assert.Empty(Assert.Single(await journals.Read(Visit, 0, CancellationToken.None)).Raw);
        var heads = await journals.Heads(Visit, CancellationToken.None);
        Assert.Equal((Now, 1, Merkle.Root([line.Hash])), (heads.ErasedAt!.Value, heads.Heads["aaa"], heads.Root));
        var listed = Assert.Single((await journals.List(new ListAsk(), CancellationToken.None)).Inspections);
        Assert.Equal(("", "2026-11-25T09:00:00Z"), (listed.Address, listed.Erased));
        Assert.Single(await journals.Receipts(Visit, CancellationToken.None));
    }
}
