using Purlin.Journal;

namespace Purlin.Report.Writing;

/// <summary>Photographs that belong to no matter: they show where we are, or that a thing was looked at.</summary>
internal static class PhotoWriting
{
    public static IEnumerable<Chapter> Of(Record record, PictureNumbers pictures)
    {
        List<Block> blocks = [];
        Add(PhotoUse.Overview, "The whole of it");
        Add(PhotoUse.Context, "Where we are");
        Add(PhotoUse.Nameplate, "Nameplates");
        Add(PhotoUse.Limitation, "What could not be looked at");
        Add(PhotoUse.Fine, "Looked at, nothing of note seen");
        Add(null, "Not yet spoken for");
        var heldBack = record.Inspection.Photos.Count(photo => photo.Use == PhotoUse.HeldBack);
        if (heldBack > 0) blocks.Add(new Block.Paragraph($"{Phrase.Many(heldBack, "photograph was", "photographs were")} taken and held back, each with a reason that is kept in the record.") { Aside = true });
        if (blocks.Count > 0) yield return new Chapter("photographs", "More photographs", "Taken on the day, beside those that stand with their matters.", blocks);

        void Add(string? use, string heading)
        {
            var names = record.Inspection.Photos.Where(photo => !pictures.IsShown(photo.Id) && (use is null || (Spoken(record, photo.Id) ?? photo.Use) == use)).Select(photo => photo.Id).ToArray();
            if (pictures.Show(names) is not { Count: > 0 } shown) return;
            blocks.Add(new Block.Heading(heading));
            blocks.Add(new Block.Pictures(shown) { Small = true });
        }
    }

    private static string? Spoken(Record record, EntryName photo) => record.Judged.Photos.FirstOrDefault(spoken => spoken.Id == photo)?.Use;
}
