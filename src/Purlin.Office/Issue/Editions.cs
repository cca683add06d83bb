using System.Security.Cryptography;
using Microsoft.EntityFrameworkCore;
using Purlin.Journal;
using Purlin.Journal.Merge;
using Purlin.Judgement;
using Purlin.Office.Storage;
using Purlin.Report.Edition;

namespace Purlin.Office.Issue;

/// <summary>
/// Seals editions. Nothing is sealed while something stands in the way of issue or a photograph is missing; page and PDF are kept before the line that names
/// them is written; what was issued stays.
/// </summary>
public sealed class Editions(OfficeOptions office, OfficeStore store, BlobFolder blobs, Issuing issuing) : IDisposable
{
    private const string DeviceSetting = "device";
    private readonly SemaphoreSlim turn = new(1);

    /// <summary>What stands in the way: obstacles, and hashes of photographs not at the office.</summary>
    public async Task<(IReadOnlyList<Obstacle> Obstacles, IReadOnlyList<string> MissingPhotos)> InTheWay(Standing standing, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(standing);
        var whole = await blobs.Whole(standing.Photos, cancel);
        return (standing.Judged.Obstacles, [.. standing.Photos.Where(sha => !whole.Contains(sha))]);
    }

    /// <summary>Editions of an inspection, by number.</summary>
    public async Task<IReadOnlyList<EditionRow>> Of(string inspection, CancellationToken cancel)
    {
        await using var db = store.Db();
        return await db.Editions.AsNoTracking().Where(row => row.Tenant == OfficeDb.OnlyTenant && row.Insp == inspection).OrderBy(row => row.Number).ToListAsync(cancel);
    }

    /// <summary>Seals the next edition. Nothing must stand in the way.</summary>
    public async Task<Sealed> Seal(string inspection, CancellationToken cancel)
    {
        await turn.WaitAsync(cancel);
        try
        {
            if (await issuing.Judge(inspection, cancel) is not { } standing) return new Sealed.Unknown();
            var (obstacles, missing) = await InTheWay(standing, cancel);
            if (obstacles.Count > 0 || missing.Count > 0) return new Sealed.Refused(obstacles, missing);
            var before = await Of(inspection, cancel);
            var last = before is [.., var newest] ? newest : null;
            if (last is not null && Merkle.Root(standing.Entries.Select(entry => entry.Hash).Where(hash => hash != last.Seal)) == last.Root) return new Sealed.Unchanged(last);
            var root = Merkle.Root(standing.Entries.Select(entry => entry.Hash));
            var mark = new EditionMark.Sealed(before.Count + 1, root) { At = DateTimeOffset.FromUnixTimeSeconds(office.Clock.GetUtcNow().ToUnixTimeSeconds()), Previous = last?.Seal };
            return new Sealed.Done(await Issue(inspection, standing, mark));
        }
        finally
        {
            turn.Release();
        }
    }

    private async Task<EditionRow> Issue(string inspection, Standing standing, EditionMark.Sealed mark)
    {
        var issued = await issuing.Issue(standing, mark, CancellationToken.None);
        await blobs.Keep(issued.PageHash, issued.Page.ToArray(), "text/html");
        await blobs.Keep(issued.PdfHash, issued.Pdf.ToArray(), "application/pdf");
        var device = await Device();
        var body = new EntryBody.EditionSealed
        {
            Number = mark.Number,
            Heads = standing.Heads,
            EntriesRoot = mark.Root,
            Photos = issued.Photos,
            Page = issued.PageHash,
            Pdf = issued.PdfHash,
            RuleBook = standing.Judged.RuleBook,
            PreviousEdition = mark.Previous,
            At = mark.At,
        };
        EditionRow? row = null;
        await store.Write(
            inspection,
            (journal, db) =>
            {
                var entry = Continue(journal, device, mark.At).Write(body, mark.At);
                row = new EditionRow { Insp = inspection, Number = mark.Number, Seal = entry.Hash, Root = mark.Root, Page = body.Page, Pdf = body.Pdf, At = mark.At.ToUnixTimeMilliseconds() };
                db.Editions.Add(row);
                return entry;
            },
            CancellationToken.None);
        return row!;
    }

    /// <summary>The office's own pen, having seen all that the office holds, forks by their marks.</summary>
    private static Pen Continue(EntrySet journal, string device, DateTimeOffset now)
    {
        var pen = Pen.After(journal.Inspection, device, journal.Entries.Where(entry => entry.Name.Device == device), now);
        foreach (var (other, seq) in journal.Heads()) pen.Saw(other, seq);
        return pen;
    }

    private async Task<string> Device()
    {
        await using var db = store.Db();
        if (await db.Settings.AsNoTracking().SingleOrDefaultAsync(row => row.Name == DeviceSetting) is { } kept) return kept.Value;
        var minted = "o" + RandomNumberGenerator.GetString("abcdefghijklmnopqrstuvwxyz0123456789", 9);
        await store.Change(change => change.Settings.Add(new SettingRow { Name = DeviceSetting, Value = minted }), CancellationToken.None);
        return minted;
    }

    public void Dispose() => turn.Dispose();
}
