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
        if (heldBack > 0) blocks.Add(new Block.Paragraph(model.Words.Say("report.photographs.held", ("count", heldBack))) { Aside = true });
        if (blocks.Count > 0) yield return new Chapter("photographs", model.Words.Say("report.photographs.title"), "", blocks) { Form = ChapterForm.Reference };
    }

    /// <summary>All that no matter and no limitation shows, by what it is for. In an edition none is left unspoken for; in a working copy the inspector sees what is.</summary>
    public static IReadOnlyList<(string Heading, IReadOnlyList<Picture> Shown)> Rest(Record record, PictureNumbers pictures, EditionMark mark)
    {
        (string? Use, string Heading)[] uses =
        [
            (PhotoUse.Overview, record.Words.Say("report.photographs.overview")), (PhotoUse.Context, record.Words.Say("report.photographs.context")), (PhotoUse.Nameplate, record.Words.Say("report.photographs.nameplates")), (PhotoUse.Limitation, record.Words.Say("report.photographs.limitation")), (PhotoUse.Fine, record.Words.Say("report.photographs.fine")),
            .. mark is EditionMark.WorkingCopy ? ((string?, string)[])[(null, record.Words.Say("report.photographs.unspoken"))] : [],
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
