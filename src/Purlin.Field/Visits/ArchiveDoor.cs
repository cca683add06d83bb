using Purlin.Book;
using Purlin.Field.Device;
using Purlin.Journal.Archive;

namespace Purlin.Field.Visits;

/// <summary>
/// Takes an archive into the phone's tables. Its list of files and its pictures are read by the device, one picture at a time; manifest and
/// lines are judged here.
/// </summary>
public sealed class ArchiveDoor(Phone phone, Hand hand)
{
    /// <summary>Lets the person choose an archive and takes it; gives what came of it, in words.</summary>
    public async Task<string> OpenFileAsync()
    {
        if (await phone.ChooseArchiveAsync() is not { } against) return "";
        if (against.Count > 0) return string.Join(" ", against.Take(3));
        var journal = await phone.ArchiveBytesAsync(ArchiveNames.Journal);
        var read = ArchivedLines.Read(await phone.ArchiveBytesAsync(ArchiveNames.Manifest), journal);
        return read.IsAccepted ? await TakeAsync(read.OrThrow(), journal) : $"Nothing was taken. {string.Join(" ", read.Refusals.Take(3))}";
    }

    private async Task<string> TakeAsync(ArchivedLines lines, byte[] journal)
    {
        if (lines.Entries.Count == 0) return "This archive holds no entries.";
        var inspection = lines.Manifest.Inspection;
        if (inspection == OwnWording.Journal) return "This is no inspection but somebody’s own wording. Bring wording in as a file, under My wording: there it is shown before it is taken.";
        var kept = await phone.TakeArchiveAsync(inspection, journal, lines.Manifest.Files);
        if (!kept.Ok) return kept.Words ?? "The archive was not taken. Everything that was here before is kept.";
        hand.To($"/visit/{inspection}");
        return kept.Words == "0" ? "Everything in this archive was here already." : $"{kept.Words} entries taken over.";
    }
}
