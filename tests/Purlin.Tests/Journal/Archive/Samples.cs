using Purlin.Journal;
using Purlin.Journal.Archive;

namespace Purlin.Tests.Journal.Archive;

/// <summary>A small invented inspection with two photographs, one of which is not there.</summary>
internal static class Samples
{
    public static readonly byte[] Picture = [0xFF, 0xD8, 0xFF, 0xE0, 1, 2, 3, 4];

    public static List<Entry> Entries()
    {
        var now = new DateTimeOffset(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);
        var pen = new Pen("sample", "k3f9a2x07q");
        EntryBody[] bodies =
        [
            new EntryBody.InspectionOpened { Property = new Property { Address = "12 Invented Lane" }, Date = new DateOnly(2026, 11, 25), Demo = true },
            new EntryBody.PlaceAdded { Kind = PlaceKind.Attic, Name = "Attic" },
            new EntryBody.PhotoTaken { Sha = Sha.Of(Picture), Size = Picture.Length, MediaType = "image/jpeg", Place = EntryName.Parse("k3f9a2x07q.2") },
            new EntryBody.PhotoTaken { Sha = new string('e', 64), Size = 9, MediaType = "image/png" },
        ];
        return [.. bodies.Select((body, index) => pen.Write(body, now.AddMinutes(index)))];
    }

    public static MemoryStream Archive()
    {
        var stream = new MemoryStream();
        ArchiveWriter.Write(stream, Entries(), [ArchivePhoto.Of(Picture, "image/jpeg")]);
        stream.Position = 0;
        return stream;
    }
}
