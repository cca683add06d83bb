using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Journal.Merge;
using Purlin.Judgement;
using Purlin.Book;
using Purlin.Office.Pictures;
using Purlin.Office.Storage;
using Purlin.Report;
using Purlin.Report.Edition;
using Purlin.Report.Page;
using Purlin.Report.Pdf;

namespace Purlin.Office.Issue;

/// <summary>Makes reports: the inspection folded and judged as it stands, rendered as page and PDF with re-encoded photographs.</summary>
public sealed class Issuing(JournalShelf shelf, PictureViews views, OfficeOptions office) : IDisposable
{
    // One report at a time: three hundred photographs in memory are enough.
    private readonly SemaphoreSlim turn = new(1);

    /// <summary>The inspection as it stands, judged; none when the office holds nothing of it.</summary>
    public async Task<HeldWork?> Judge(string inspection, CancellationToken cancel)
    {
        var (entries, heads, state) = await shelf.With(inspection, journal => (journal.Lines.Entries.ToArray(), journal.Lines.Heads(), journal.State), cancel);
        if (entries.Length == 0) return null;
        // Judged beside the journal and not within its turn: what takes long holds up nobody who sends.
        var work = await Task.Run(() => Work.Of(state, entries, RuleBook.BuiltIn, office.Clock.GetUtcNow().Year, new JudgingMemory()), cancel);
        return new HeldWork(entries, heads, work);
    }

    /// <summary>The page of this issue, UTF-8.</summary>
    public Task<byte[]> Page(HeldWork standing, EditionMark mark, CancellationToken cancel, PaperKind kind = PaperKind.Report) =>
        Alone(photos => PageWriter.BytesAsync(standing.Work.Paper(kind, mark), photos), cancel);

    /// <summary>The PDF of this issue.</summary>
    public Task<byte[]> Pdf(HeldWork standing, EditionMark mark, CancellationToken cancel, PaperKind kind = PaperKind.Report) =>
        Alone(photos => Task.FromResult(PdfWriter.Bytes(standing.Work.Paper(kind, mark), photos)), cancel);

    /// <summary>Page and PDF of this issue with their hashes.</summary>
    public Task<Issued> Issue(HeldWork standing, EditionMark mark, CancellationToken cancel) => Alone(photos => standing.Work.IssueAsync(mark, photos), cancel);

    public void Dispose() => turn.Dispose();

    private async Task<T> Alone<T>(Func<Func<string, byte[]?>, Task<T>> make, CancellationToken cancel)
    {
        await turn.WaitAsync(cancel);
        try
        {
            // Photographs are fetched as the writer asks for them, so that they are never all in memory: each on a thread of its own, because the page's
            // renderer lets nothing else run on its own while it waits.
            return await Task.Run(() => make(sha => Task.Run(() => views.Of(sha, PictureViews.Printed, cancel)).GetAwaiter().GetResult()), cancel);
        }
        finally
        {
            turn.Release();
        }
    }
}

/// <summary>An inspection as it stands at the office.</summary>
/// <param name="Entries">Its lines.</param>
/// <param name="Heads">How far they go.</param>
/// <param name="Work">Folded and judged.</param>
public sealed record HeldWork(IReadOnlyList<Entry> Entries, IReadOnlyDictionary<string, int> Heads, Work Work)
{
    /// <summary>Folded.</summary>
    public Inspection Inspection => Work.Inspection;

    /// <summary>Judged.</summary>
    public JudgedInspection Judged => Work.Judged;

    /// <summary>Hashes of its photographs, each once.</summary>
    public IReadOnlyList<string> Photos => [.. Inspection.Photos.Select(photo => photo.Body.Sha).Distinct(StringComparer.Ordinal)];
}
