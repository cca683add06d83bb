using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Judgement;
using Purlin.Report.Drawing;
using Purlin.Report.Section;

namespace Purlin.Field.House;

/// <summary>The section drawing for a phone held upright; the screen's own theme lends it its colours.</summary>
public static class Section
{
    public static string Draw(Inspection inspection, JudgedInspection? judged, EntryName? here) =>
        inspection.Opening is null ? "" : SvgWriter.Write(SectionDrawing.Draw(inspection, judged, SectionOptions.Portrait with { Here = here }), Theme.Day);

    /// <summary>The same drawing to look at only: nothing on it can be tapped.</summary>
    public static string Picture(Inspection inspection) =>
        SvgWriter.Write(SectionDrawing.Draw(inspection, null, SectionOptions.Portrait with { Pins = false }), Theme.Day, _ => "#");
}
