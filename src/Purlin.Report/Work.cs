using Purlin.Book;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Judgement;
using Purlin.Report.Edition;
using Purlin.Report.Page;
using Purlin.Report.Pdf;

namespace Purlin.Report;

/// <summary>
/// An inspection worked through from its lines to its papers: folded, its own wording laid over the book, judged. The command line, the phone
/// and the office all come by this one way, so that they say the same; they only read and write.
/// </summary>
public sealed record Work
{
    /// <summary>The evidence.</summary>
    public required Inspection Inspection { get; init; }

    /// <summary>Its judgement.</summary>
    public required JudgedInspection Judged { get; init; }

    /// <summary>The rule book with the inspection's own wording over it.</summary>
    public required RuleBook Book { get; init; }

    /// <summary>When the last line was written, as its device believed: the moment up to which the papers go.</summary>
    public required DateTimeOffset Latest { get; init; }

    /// <summary>The mark of what has not been issued. It bears the time of the last line, so that the same lines give the same bytes.</summary>
    public EditionMark.WorkingCopy Copy => new() { At = Latest };

    /// <summary>Works through lines in any order.</summary>
    /// <param name="entries">The lines of one inspection.</param>
    /// <param name="book">The rule book.</param>
    /// <param name="yearUnopened">The year to judge by while no opening has arrived; else the year of the visit counts.</param>
    public static Work Of(IReadOnlyCollection<Entry> entries, RuleBook book, int yearUnopened) => Of(Folding.Fold(entries), entries, book, yearUnopened, new JudgingMemory());

    /// <summary>Works through lines that are folded already.</summary>
    /// <param name="inspection">The lines, folded.</param>
    /// <param name="entries">The same lines.</param>
    /// <param name="book">The rule book.</param>
    /// <param name="yearUnopened">The year to judge by while no opening has arrived; else the year of the visit counts.</param>
    /// <param name="memory">What was worked out before, to be built upon.</param>
    public static Work Of(Inspection inspection, IReadOnlyCollection<Entry> entries, RuleBook book, int yearUnopened, JudgingMemory memory)
    {
        ArgumentNullException.ThrowIfNull(memory);
        return new Work
        {
            Inspection = inspection,
            Judged = Judging.Judge(inspection, book, yearUnopened, memory),
            Book = memory.Laid.Of(book, inspection).Book,
            Latest = entries.Count == 0 ? DateTimeOffset.UnixEpoch : entries.Max(entry => entry.Hlc).At,
        };
    }

    /// <summary>The words and drawings of which all papers are composed.</summary>
    public ReportModel Report(EditionMark mark) => ReportModel.Build(this, mark);

    /// <summary>One of the papers.</summary>
    public Paper Paper(PaperKind kind, EditionMark mark) => Report(mark).Paper(kind);

    /// <summary>The report as page and PDF with the hashes by which an edition is sealed.</summary>
    /// <param name="mark">Working copy or sealed edition.</param>
    /// <param name="photoBySha">Bytes of a photograph by its hash; none when they are not at hand, which the papers then say.</param>
    public async Task<Issued> IssueAsync(EditionMark mark, Func<string, byte[]?> photoBySha)
    {
        var paper = Paper(PaperKind.Report, mark);
        return new Issued { Paper = paper, Page = await PageWriter.BytesAsync(paper, photoBySha), Pdf = PdfWriter.Bytes(paper, photoBySha) };
    }
}
