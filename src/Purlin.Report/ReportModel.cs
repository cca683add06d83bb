using Purlin.Journal;
using Purlin.Report.Drawing;
using Purlin.Report.Edition;
using Purlin.Report.Section;
using Purlin.Report.Writing;

namespace Purlin.Report;

/// <summary>The inspection as words and drawings, of which every paper is composed; so they say the same.</summary>
public sealed class ReportModel
{
    private readonly Dictionary<PaperKind, Paper> papers = [];

    /// <summary>Which issue it is.</summary>
    public required EditionMark Mark { get; init; }

    /// <summary>Whose house, for whom, by whom, when.</summary>
    public required Cover Cover { get; init; }

    /// <summary>The house, one balloon a place, for paper and wide screens.</summary>
    public required Sheet Front { get; init; }

    /// <summary>The same for a phone held upright.</summary>
    public required Sheet Upright { get; init; }

    /// <summary>The house with every matter pinned.</summary>
    public required Sheet Map { get; init; }

    /// <summary>Every matter, heaviest first.</summary>
    public required IReadOnlyList<Matter> Matters { get; init; }

    /// <summary>Words of the cautions, in the order of their letters.</summary>
    public required IReadOnlyList<string> Cautions { get; init; }

    /// <summary>Photographs shown, in order.</summary>
    public IReadOnlyList<Picture> Pictures => Paper(PaperKind.Report).Pictures;

    private readonly PictureNumbers pictures;

    private ReportModel(Record record, Numbering sources, PictureNumbers pictures) => (Record, SourceNumbers, this.pictures) = (record,
        sources, pictures);

    internal Record Record { get; }

    /// <summary>Turns of phrase in its language.</summary>
    internal Phrase Words => Record.Words;

    /// <summary>Sources cited, with their numbers; workings add theirs when they are written.</summary>
    internal Numbering SourceNumbers { get; }

    /// <summary>What was in the way where one could not look. Numbered here, so that each paper shows the same whichever is made
    /// first.</summary>
    internal IReadOnlyList<Picture> InTheWay { get; private init; } = [];

    /// <summary>Photographs as they would be shown, whether another chapter shows them or not.</summary>
    internal IEnumerable<Picture> Taken(IEnumerable<EntryName> photos) => photos.Select(pictures.Of).OfType<Picture>();

    /// <summary>Photographs that belong to no matter, by what they are for.</summary>
    internal IReadOnlyList<(string Heading, IReadOnlyList<Picture> Shown)> More { get; private init; } = [];

    /// <summary>Builds the model.</summary>
    /// <param name="work">The inspection, judged.</param>
    /// <param name="mark">Working copy or sealed edition.</param>
    public static ReportModel Build(Work work, EditionMark mark)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(mark);
        Record record = new(work.Inspection, work.Judged, work.Book);
        PictureNumbers numbers = new(record);
        Numbering cautions = new(), sources = new();
        var matters = new MatterWriting(record, numbers, cautions, sources).All();
        var inTheWay = numbers.Show(work.Judged.Limitations.SelectMany(limitation => limitation.Photos),
            record.Words.Say("report.in-the-way"));
        var options = SectionOptions.Landscape with { Knots = false, Words = work.Book.Words };
        return new ReportModel(record, sources, numbers)
        {
            Mark = mark,
            Cover = CoverWriting.Of(record, mark),
            Front = SectionDrawing.Draw(work.Inspection, work.Judged, options with { Front = true, OnePin = true }),
            Upright = SectionDrawing.Draw(work.Inspection, work.Judged, options with { Wide = false }),
            Map = SectionDrawing.Draw(work.Inspection, work.Judged, options),
            Matters = matters,
            Cautions = cautions.Listed,
            InTheWay = inTheWay,
            More = PhotoWriting.Rest(record, numbers, mark),
        };
    }

    /// <summary>What became of the matters of an earlier visit.</summary>
    public Paper SecondVisit(ReportModel earlier) => Papers.Of(this, PaperKind.Second, earlier);

    /// <summary>One of its papers, made when first asked for.</summary>
    public Paper Paper(PaperKind kind) => papers.TryGetValue(kind, out var made) ? made : papers[kind] = Papers.Of(this, kind);
}
