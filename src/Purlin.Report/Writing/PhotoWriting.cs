using Purlin.Journal;
using Purlin.Report.Edition;

namespace Purlin.Report.Writing;

/// <summary>Photographs that belong to no matter: they show where we are, or that a thing was looked at.</summary>
internal static class PhotoWriting
{
    public static IEnumerable<Chapter> Of(ReportModel model)
    {
        var record = model.Record;
        List<Block> blocks = [];
        Add(PhotoUse.Overview, "The whole of it");
        Add(PhotoUse.Context, "Where we are");
        Add(PhotoUse.Nameplate, "Nameplates");
        Add(PhotoUse.Limitation, "What could not be looked at");
        Add(PhotoUse.Fine, "Looked at, nothing of note seen");
        // In an edition none is left unspoken for; in a working copy the inspector sees what is.
        if (model.Mark is EditionMark.WorkingCopy) Add(null, "Not yet spoken for");
        var heldBack = record.Inspection.Photos.Count(photo => photo.Use == PhotoUse.HeldBack);
        if (heldBack > 0) blocks.Add(new Block.Paragraph($"{Phrase.Many(heldBack, "photograph was", "photographs were")} taken and held back, each with a reason that is kept in the record.") { Aside = true });
        if (blocks.Count > 0) yield return new Chapter("photographs", "More photographs", "", blocks) { Form = ChapterForm.Reference };

        void Add(string? use, string heading)
        {
            var names = record.Inspection.Photos.Where(photo => !model.Shown.IsShown(photo.Id) && (use is null || (Spoken(record, photo.Id) ?? photo.Use) == use)).Select(photo => photo.Id).ToArray();
            if (model.Shown.Show(names) is not { Count: > 0 } shown) return;
            blocks.Add(new Block.Heading(heading));
            blocks.Add(new Block.Pictures(shown));
        }
    }

    private static string? Spoken(Record record, EntryName photo) => record.Judged.Photos.FirstOrDefault(spoken => spoken.Id == photo)?.Use;
}
