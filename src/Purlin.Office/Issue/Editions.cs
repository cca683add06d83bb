using System.Security.Cryptography;
using Purlin.Journal;
using Purlin.Journal.Merge;
using Purlin.Judgement;
using Purlin.Office.Storage;
using Purlin.Report.Edition;

namespace Purlin.Office.Issue;

/// <summary>
/// Seals editions. Nothing is sealed while something stands in the way of issue, or a photograph is missing or no longer what it was; page and PDF are kept
/// before the line that names them is written; what was issued stays.
/// </summary>
public sealed class Editions(OfficeOptions office, Desk desk, OfficeSettings settings, ReceiptChain receipts) : IDisposable
{
    private const string DeviceSetting = "device";
    private readonly SemaphoreSlim turn = new(1);

    /// <summary>What stands in the way: obstacles, and hashes of photographs not at the office.</summary>
    public async Task<(IReadOnlyList<Obstacle> Obstacles, IReadOnlyList<string> MissingPhotos)> InTheWay(HeldWork standing, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(standing);
        var held = await desk.Blobs.Has(standing.Photos, cancel);
        return (standing.Judged.Obstacles, [.. standing.Photos.Where(sha => !held.ContainsKey(sha))]);
    }

    /// <summary>Seals the next edition. Nothing must stand in the way.</summary>
    public async Task<Sealed> Seal(string inspection, CancellationToken cancel)
    {
        await turn.WaitAsync(cancel);
        try
        {
            if (await desk.Issuing.Judge(inspection, cancel) is not { } standing) return new Sealed.Unknown();
            var (obstacles, missing) = await InTheWay(standing, cancel);
            if (obstacles.Count == 0 && missing.Count == 0) missing = await Damaged(standing, cancel);
            if (obstacles.Count > 0 || missing.Count > 0) return new Sealed.Refused(obstacles, missing);
            // Those that phones sealed by themselves count too: a number is given once.
            var last = standing.Inspection.Editions is [.., var newest] ? newest : null;
            if (last is not null && Merkle.Root(standing.Entries.Select(entry => entry.Hash).Where(hash => hash != last.Seal)) == last.Body.EntriesRoot)
                return new Sealed.Unchanged(new IssuedEdition(last.Body.Number, last.Seal, last.Body.EntriesRoot, last.Body.Page, last.Body.Pdf, last.Body.At));
            var root = Merkle.Root(standing.Entries.Select(entry => entry.Hash));
            var mark = new EditionMark.Sealed((last?.Body.Number ?? 0) + 1, root)
            {
                At = DateTimeOffset.FromUnixTimeSeconds(office.Clock.GetUtcNow().ToUnixTimeSeconds()),
                Previous = last?.Seal,
                OfficeKey = receipts.Fingerprint,
            };
            return new Sealed.Done(await Issue(inspection, standing, mark));
        }
        finally
        {
            turn.Release();
        }
    }

    public void Dispose() => turn.Dispose();

    /// <summary>Photographs whose bytes, hashed anew, are others than those that were taken. An edition vouches for them, so a look at the file is not enough.</summary>
    private async Task<IReadOnlyList<string>> Damaged(HeldWork standing, CancellationToken cancel)
    {
        List<string> damaged = [];
        foreach (var sha in standing.Photos)
        {
            await using var bytes = await desk.Blobs.Open(sha, cancel);
            if (bytes is null) damaged.Add(sha);
        }

        return damaged;
    }

    private async Task<IssuedEdition> Issue(string inspection, HeldWork standing, EditionMark.Sealed mark)
    {
        var issued = await desk.Issuing.Issue(standing, mark, CancellationToken.None);
        await desk.Blobs.Keep(issued.PageHash, issued.Page, "text/html");
        await desk.Blobs.Keep(issued.PdfHash, issued.Pdf, "application/pdf");
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
            RuleBookHash = Book.RuleBook.BuiltIn.Hash,
            PreviousEdition = mark.Previous,
            At = mark.At,
        };
        IssuedEdition? edition = null;
        await desk.Shelf.Write(
            inspection,
            lines =>
            {
                var entry = Continue(lines, device, mark.At).Write(body, mark.At);
                edition = new IssuedEdition(mark.Number, entry.Hash, mark.Root, body.Page, body.Pdf, mark.At);
                return (entry, edition);
            },
            CancellationToken.None);
        return edition!;
    }

    /// <summary>The office's own pen, having seen all that the office holds, forks by their marks.</summary>
    private static Pen Continue(EntrySet lines, string device, DateTimeOffset now)
    {
        var pen = Pen.After(lines.Inspection, device, lines.Entries.Where(entry => entry.Name.Device == device), now);
        foreach (var (other, seq) in lines.Heads()) pen.Saw(other, seq);
        return pen;
    }

    private async Task<string> Device()
    {
        if (await settings.Get(desk.Tenant, DeviceSetting, CancellationToken.None) is { } kept) return kept;
        var minted = "o" + RandomNumberGenerator.GetString("abcdefghijklmnopqrstuvwxyz0123456789", 9);
        await settings.Keep(desk.Tenant, DeviceSetting, minted);
        return minted;
    }
}
