using Purlin.Judgement;
using Purlin.Report.Drawing;
using Purlin.Report.Edition;
using Purlin.Report.Section;
using Purlin.Report.Writing;

namespace Purlin.Report;

/// <summary>The report as words and drawings, before it is set as a page or as paper. Both are made from this and say the same.</summary>
public sealed record ReportModel
{
    /// <summary>Which issue it is.</summary>
    public required EditionMark Mark { get; init; }

    /// <summary>The first page.</summary>
    public required Cover Cover { get; init; }

    /// <summary>The house with its heaviest matters pinned, for paper and wide screens.</summary>
    public required Sheet Front { get; init; }

    /// <summary>The house with every matter pinned, for a phone held upright.</summary>
    public required Sheet Upright { get; init; }

    /// <summary>The house with every matter pinned, for paper and wide screens.</summary>
    public required Sheet Map { get; init; }

    /// <summary>The short page: what matters first.</summary>
    public required Chapter First { get; init; }

    /// <summary>How the weights read.</summary>
    public required Block.Table Weights { get; init; }

    /// <summary>What the drawing with every matter shows.</summary>
    public string MapCaption => Mark is EditionMark.WorkingCopy
        ? "Every matter where it is. A place in faint line was not looked at. A loop on a line is a question still open there."
        : "Every matter where it is. A place in faint line was not looked at.";

    /// <summary>Every matter, heaviest first.</summary>
    public required IReadOnlyList<Matter> Matters { get; init; }

    /// <summary>What follows the matters.</summary>
    public required IReadOnlyList<Chapter> Chapters { get; init; }

    /// <summary>Photographs shown, in order.</summary>
    public required IReadOnlyList<Picture> Pictures { get; init; }

    /// <summary>Builds the model.</summary>
    /// <param name="work">The inspection, judged.</param>
    /// <param name="mark">Working copy or sealed edition.</param>
    public static ReportModel Build(Work work, EditionMark mark)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(mark);
        var (inspection, judged) = (work.Inspection, work.Judged);
        Record record = new(inspection, judged, work.Book);
        PictureNumbers pictures = new(record);
        var matters = MatterWriting.All(record, pictures);
        var options = SectionOptions.Landscape with { Knots = mark is EditionMark.WorkingCopy };
        return new ReportModel
        {
            Mark = mark,
            Cover = CoverWriting.Of(record, mark),
            Front = SectionDrawing.Draw(inspection, judged, options with { Least = FirstWriting.Heaviest(matters), Knots = false }),
            Upright = SectionDrawing.Draw(inspection, judged, options with { Wide = false }),
            Map = SectionDrawing.Draw(inspection, judged, options),
            First = FirstWriting.Of(record, matters),
            Weights = FirstWriting.Weights(matters),
            Matters = matters,
            Chapters =
            [
                .. LimitationWriting.Of(record, pictures), .. FollowUpWriting.Of(record), .. SystemsWriting.Of(record, judged.Year), .. ClearWriting.Of(record), .. ReadingWriting.Of(record),
                .. WorkingWriting.Of(record), .. CoverageWriting.Of(record), .. AroundVisitWriting.Of(record), .. PhotoWriting.Of(record, pictures), .. AboutWriting.Of(record, mark),
            ],
            Pictures = pictures.Shown,
        };
    }
}
