using Purlin.Field.Device;
using Purlin.Journal;
using Purlin.Journal.Archive;
using Purlin.Book;

namespace Purlin.Field.Visits;

/// <summary>Takes an archive into the phone's tables: its lines, then its pictures.</summary>
public sealed class ArchiveDoor(Phone phone, Hand hand)
{
    public async Task<string> OpenFileAsync()
    {
        var bytes = await phone.AskAsync<byte[]>("chooseFile", ".purlin,application/zip");
        return bytes.Length == 0 ? "" : await TakeAsync(bytes);
    }

    private async Task<string> TakeAsync(byte[] bytes)
    {
        using var stream = new MemoryStream(bytes);
        var opened = ArchiveReader.Open(stream);
        if (!opened.IsAccepted) return string.Join(" ", opened.Refusals.Take(3));
        using var archive = opened.OrThrow();
        return await TakeAsync(archive);
    }

    private async Task<string> TakeAsync(OpenedArchive archive)
    {
        if (archive.Entries.Count == 0) return "This archive holds no entries.";
        var inspection = archive.Manifest.Inspection;
        if (inspection == OwnWording.Journal) return "This is no inspection but somebody’s own wording. Bring wording in as a file, under My wording: there it is shown before it is taken.";
        using var lines = new MemoryStream();
        foreach (var entry in archive.Entries)
        {
            lines.Write(entry.Line.Span);
            lines.WriteByte((byte)'\n');
        }
        var fresh = await phone.AskAsync<int>("receive", inspection, lines.ToArray());
        foreach (var sha in archive.Blobs)
        {
            var type = ArchiveNames.MediaType(archive.Manifest.Files.First(file => file.Sha256 == sha).Name) ?? "image/jpeg";
            if (archive.Photo(sha) is { } picture) await phone.TellAsync("receivePicture", inspection, sha, type, picture);
        }
        hand.To($"/visit/{inspection}");
        return fresh == 0 ? "Everything in this archive was here already." : $"{fresh} entries taken over.";
    }
}
