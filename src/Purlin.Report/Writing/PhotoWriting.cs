using Purlin.Journal;
using Purlin.Report.Edition;

namespace Purlin.Report.Writing;

/// <summary>Photographs that belong to no matter: they show where we are, or that a thing was looked at.</summary>
internal static class PhotoWriting
{
    public static IEnumerable<Chapter> Of(ReportModel model)
    {
        List<Block> blocks = [];
        foreach (var (heading, shown) in model.More)
        {
            blocks.Add(new Block.Heading(heading));
            blocks.Add(new Block.Pictures(shown));
        }
        var heldBack = model.Record.Inspection.Photos.Count(photo => photo.Use == PhotoUse.HeldBack);
        if (heldBack > 0) blocks.Add(new Block.Paragraph($"{Phrase.Many(heldBack, "photograph was", "photographs were")} taken and held back, each with a reason that is kept in the record.") { Aside = true });
        if (blocks.Count > 0) yield return new Chapter("photographs", "More photographs", "", blocks) { Form = ChapterForm.Reference };
    }

    /// <summary>All that no matter and no limitation shows, by what it is for. In an edition none is left unspoken for; in a working copy the inspector sees what is.</summary>
    public static IReadOnlyList<(string Heading, IReadOnlyList<Picture> Shown)> Rest(Record record, PictureNumbers pictures, EditionMark mark)
    {
        (string? Use, string Heading)[] uses =
        [
            (PhotoUse.Overview, "The whole of it"), (PhotoUse.Context, "Where we are"), (PhotoUse.Nameplate, "Nameplates"), (PhotoUse.Limitation, "What could not be looked at"), (PhotoUse.Fine, "Looked at, nothing of note seen"),
            .. mark is EditionMark.WorkingCopy ? ((string?, string)[])[(null, "Not yet spoken for")] : [],
        ];
        List<(string, IReadOnlyList<Picture>)> rest = [];
        foreach (var (use, heading) in uses)
        {
            var names = record.Inspection.Photos.Where(photo => !pictures.IsShown(photo.Id) && (use is null || (Spoken(record, photo.Id) ?? photo.Use) == use)).Select(photo => photo.Id).ToArray();
            if (pictures.Show(names) is { Count: > 0 } shown) rest.Add((heading, shown));
        }
        return rest;
    }

    private static string? Spoken(Record record, EntryName photo) => record.Judged.Photos.FirstOrDefault(spoken => spoken.Id == photo)?.Use;
}
