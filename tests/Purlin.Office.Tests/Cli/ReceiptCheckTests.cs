using System.Text;
using Purlin.Journal;
using Purlin.Journal.Archive;
using Purlin.Office.Tests.Office;

namespace Purlin.Office.Tests.Cli;

/// <summary><c>purlin check</c> against an archive whose lines, hashes and manifest are all put right after something was taken away.</summary>
public sealed class ReceiptCheckTests
{
    private const string Visit = "visit1";

    private static async Task<(int Status, string Out)> Check(Action<MemoryStream, OpenedArchive> alter)
    {
        await using var office = await RunningOffice.Start();
        await office.Push(Visit, Lines.Notes(Visit, "aaa", 3));
        await office.Push(Visit, Lines.Notes(Visit, "bbb", 4));
        using var archive = ArchiveReader.Open(new MemoryStream(await office.Client.GetByteArrayAsync($"/office/inspections/{Visit}/archive"))).OrThrow();
        using var altered = new MemoryStream();
        alter(altered, archive);
        var path = Path.Combine(office.Folder, "checked.purlin");
        await File.WriteAllBytesAsync(path, altered.ToArray());
        var (status, output, _) = await Typed.RunAsync(["check", path]);
        return (status, output);
    }

    private static void Write(MemoryStream to, IEnumerable<Entry> entries, byte[] receipts, byte[] key) =>
        ArchiveWriter.Write(to, entries, [], extras: [new ArchiveExtra(ArchiveNames.Receipts, receipts), new ArchiveExtra(ArchiveNames.Key, key)]);

    [Fact]
    public async Task What_the_office_gave_is_whole()
    {
        var (status, output) = await Check((to, archive) => Write(to, archive.Entries, archive.File(ArchiveNames.Receipts)!, archive.File(ArchiveNames.Key)!));
        Assert.Equal((0, true), (status, output.Contains("whole", StringComparison.Ordinal)));
    }

    [Fact]
    public async Task A_tail_cut_off_a_perfect_chain_is_named()
    {
        var (status, output) = await Check((to, archive) => Write(to, archive.Entries.Where(entry => entry.Name != EntryName.Parse("bbb.4")), archive.File(ArchiveNames.Receipts)!, archive.File(ArchiveNames.Key)!));
        Assert.Equal(1, status);
        Assert.Contains("held bbb up to line 4, here it ends at 3", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_rewritten_device_is_named()
    {
        var (status, output) = await Check((to, archive) =>
        {
            var pen = new Pen(Visit, "bbb");
            var forged = Enumerable.Range(1, 4).Select(number => pen.Write(new EntryBody.NoteWritten { Part = $"n{number}", Text = "nothing of note" }, DateTimeOffset.UnixEpoch));
            Write(to, [.. archive.Entries.Where(entry => entry.Name.Device == "aaa"), .. forged], archive.File(ArchiveNames.Receipts)!, archive.File(ArchiveNames.Key)!);
        });
        Assert.Equal(1, status);
        Assert.Contains("not the ones the office signed for", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_receipt_altered_to_fit_loses_its_signature()
    {
        var (status, output) = await Check((to, archive) =>
        {
            var receipts = Encoding.UTF8.GetString(archive.File(ArchiveNames.Receipts)!).Replace("\"bbb\":4", "\"bbb\":3", StringComparison.Ordinal);
            Write(to, archive.Entries.Where(entry => entry.Name != EntryName.Parse("bbb.4")), Encoding.UTF8.GetBytes(receipts), archive.File(ArchiveNames.Key)!);
        });
        Assert.Equal(1, status);
        Assert.Contains("does not bear the office's signature", output, StringComparison.Ordinal);
    }
}
