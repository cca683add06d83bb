using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using Purlin.Book;
using Purlin.Journal.Merge;

namespace Purlin.Office.Storage.Sqlite;

/// <summary>Journals in the office's SQLite file.</summary>
/// <param name="file">The file.</param>
/// <param name="tenant">Whose.</param>
/// <param name="at">Called at each named step of a write, so that a test can stop the office there.</param>
internal sealed class SqliteJournals(SqliteFile file, Tenant tenant, Action<string> at) : IJournals
{
    public async Task<JournalHeads> Heads(string inspection, CancellationToken cancel)
    {
        await using var db = file.Db(tenant);
        if (await db.Inspections.AsNoTracking().SingleOrDefaultAsync(row => row.Insp == inspection, cancel) is not { } row) return JournalHeads.None;
        var retention = await db.Retentions.AsNoTracking().SingleOrDefaultAsync(one => one.Insp == inspection, cancel);
        var receipt = row.Receipt is { } n ? await db.Receipts.AsNoTracking().Where(one => one.N == n).Select(one => one.Raw).SingleOrDefaultAsync(cancel) : null;
        return new JournalHeads
        {
            Root = row.Root,
            Position = row.Position,
            Held = row.Held,
            Heads = JsonSerializer.Deserialize<SortedDictionary<string, int>>(row.Heads)!,
            Receipt = receipt,
            KeepUntil = retention is null ? null : DateTimeOffset.FromUnixTimeMilliseconds(retention.KeepUntil),
            ErasedAt = retention?.ErasedAt is { } erased ? DateTimeOffset.FromUnixTimeMilliseconds(erased) : null,
        };
    }

    public async Task<IReadOnlyList<KeptLine>> Read(string inspection, int after, CancellationToken cancel)
    {
        await using var db = file.Db(tenant);
        var entries = await db.Entries.AsNoTracking().Where(row => row.Insp == inspection && row.Position > after)
            .Select(row => new KeptLine(row.Position, row.Raw, null)).ToListAsync(cancel);
        var held = await db.Held.AsNoTracking().Where(row => row.Insp == inspection && row.Position > after)
            .Select(row => new KeptLine(row.Position, row.Raw, row.Why)).ToListAsync(cancel);
        return [.. entries.Concat(held).OrderBy(line => line.Position)];
    }

    public Task<bool> Append(Appending what) => Append(what, CancellationToken.None);

    private async Task<bool> Append(Appending what, CancellationToken cancel)
    {
        var appended = await file.Write(
            tenant,
            async db =>
            {
                var row = await db.Inspections.SingleOrDefaultAsync(one => one.Insp == what.Inspection, cancel);
                if ((row?.Root ?? "") != what.Expected) return false;
                at("before insert");
                var position = row?.Position ?? 0;
                SqliteLines.Add(db, what.Taken.Select(taken => Row(what, taken, ++position)));
                foreach (var line in what.Held) db.Held.Add(Row(what, line, ++position));
                var last = await db.Receipts.AsNoTracking().OrderByDescending(one => one.N).FirstOrDefaultAsync(cancel);
                ReceiptLink link = new((last?.N ?? 0) + 1, last?.Raw);
                db.Receipts.Add(new ReceiptRow { Tenant = tenant.Id, N = link.N, Insp = what.Inspection, Raw = what.Sign(link) });
                if (what.Edition is { } edition) db.Editions.Add(Row(what.Inspection, edition));
                await Show(db, row, what, position, link.N);
                await db.SaveChangesAsync(CancellationToken.None);
                at("after insert");
                return true;
            },
            cancel);
        if (appended) at("after commit");
        return appended;
    }

    public async Task<IReadOnlyList<byte[]>> Receipts(string inspection, CancellationToken cancel)
    {
        await using var db = file.Db(tenant);
        return await db.Receipts.AsNoTracking().Where(row => row.Insp == inspection).OrderBy(row => row.N).Select(row => row.Raw).ToListAsync(cancel);
    }

    public async Task<IReadOnlyList<IssuedEdition>> Editions(string inspection, CancellationToken cancel)
    {
        await using var db = file.Db(tenant);
        var rows = await db.Editions.AsNoTracking().Where(row => row.Insp == inspection).OrderBy(row => row.Number).ToListAsync(cancel);
        return [.. rows.Select(row => new IssuedEdition(row.Number, row.Seal, row.Root, row.Page, row.Pdf, DateTimeOffset.FromUnixTimeMilliseconds(row.At)))];
    }

    public async Task<InspectionPage> List(ListAsk ask, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(ask);
        await using var db = file.Db(tenant);
        var found = db.Inspections.AsNoTracking().Where(row => row.Insp != OwnWording.Journal);
        foreach (var word in (ask.Search ?? "").ToLowerInvariant().Split(' ', StringSplitOptions.RemoveEmptyEntries)) found = found.Where(row => row.Words.Contains(word));
        var total = await found.CountAsync(cancel);
        var rows = await found.OrderByDescending(row => row.Date).ThenBy(row => row.Insp).Skip(ask.Skip).Take(ask.Count ?? int.MaxValue).ToListAsync(cancel);
        var erased = await db.Retentions.AsNoTracking().Where(row => row.ErasedAt != null).ToDictionaryAsync(row => row.Insp, row => row.ErasedAt!.Value, cancel);
        return new InspectionPage([.. rows.Select(row => Listed(row, erased.TryGetValue(row.Insp, out var when) ? when : null))], total);
    }

    public async Task<IReadOnlySet<string>> Shown(IReadOnlyCollection<string> hashes, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(hashes);
        HashSet<string> shown = new(StringComparer.Ordinal);
        await using var db = file.Db(tenant);
        foreach (var some in hashes.Chunk(500)) shown.UnionWith(await db.Photos.AsNoTracking().Where(row => some.Contains(row.Sha)).Select(row => row.Sha).ToListAsync(cancel));
        return shown;
    }

    public Task KeepUntil(string inspection, DateTimeOffset until) => file.Write(
        tenant,
        async db =>
        {
            if (await db.Retentions.SingleOrDefaultAsync(row => row.Insp == inspection) is { } row) row.KeepUntil = until.ToUnixTimeMilliseconds();
            else db.Retentions.Add(new RetentionRow { Tenant = tenant.Id, Insp = inspection, KeepUntil = until.ToUnixTimeMilliseconds() });
            return true;
        },
        CancellationToken.None);

    public Task<bool> Erase(string inspection, DateTimeOffset now) => file.Write(
        tenant,
        async db =>
        {
            var retention = await db.Retentions.SingleOrDefaultAsync(row => row.Insp == inspection);
            var shown = await db.Inspections.SingleOrDefaultAsync(row => row.Insp == inspection);
            if (retention is null || shown is null || retention.ErasedAt is not null || retention.KeepUntil > now.ToUnixTimeMilliseconds()) return false;
            retention.ErasedAt = now.ToUnixTimeMilliseconds();
            (shown.Address, shown.Words, shown.Photos, shown.PhotosHere) = ("", inspection.ToLowerInvariant(), 0, 0);
            // The triggers look for the row that says so.
            await db.SaveChangesAsync();
            await db.Database.ExecuteSqlAsync($"UPDATE entry SET Raw = x'' WHERE Tenant = {tenant.Id} AND Insp = {inspection}");
            await db.Database.ExecuteSqlAsync($"UPDATE quarantine SET Raw = x'', Why = '' WHERE Tenant = {tenant.Id} AND Insp = {inspection}");
            await db.Photos.Where(row => row.Insp == inspection).ExecuteDeleteAsync();
            return true;
        },
        CancellationToken.None);

    /// <summary>What lists show, and which photographs the inspection wants, brought to what the outline says.</summary>
    internal static async Task Show(OfficeDb db, InspectionRow? row, Appending what, int position, int? receipt)
    {
        var outline = what.Outline;
        var wanted = outline.Photos.ToHashSet(StringComparer.Ordinal);
        var before = await db.Photos.Where(photo => photo.Insp == what.Inspection).ToListAsync();
        db.Photos.RemoveRange(before.Where(photo => !wanted.Remove(photo.Sha)));
        db.Photos.AddRange(wanted.Select(sha => new PhotoRow { Tenant = db.Tenant, Insp = what.Inspection, Sha = sha }));
        if (row is null)
        {
            row = new InspectionRow
            {
                Tenant = db.Tenant,
                Insp = what.Inspection,
                Address = "",
                Date = "",
                Words = "",
                Demo = false,
                Entries = 0,
                Held = 0,
                Photos = 0,
                PhotosHere = 0,
                Editions = 0,
                Heads = "{}",
                Root = "",
                Position = 0,
                ReceivedAt = 0,
            };
            db.Inspections.Add(row);
        }

        (row.Address, row.Date, row.Demo, row.Editions) = (outline.Address, outline.Date, outline.Demo, outline.Editions);
        (row.Entries, row.Held, row.Photos) = (outline.Entries, outline.Held, outline.Photos.Count);
        row.Words = $"{outline.Address} {outline.Date} {what.Inspection}".ToLowerInvariant();
        (row.Heads, row.Root) = (JsonSerializer.Serialize(outline.Heads), outline.Root);
        (row.Position, row.ReceivedAt, row.Receipt) = (position, what.At.ToUnixTimeMilliseconds(), receipt);
        await db.SaveChangesAsync();
        row.PhotosHere = await Here(db, what.Inspection);
    }

    /// <summary>How many of the photographs that stand are held.</summary>
    internal static Task<int> Here(OfficeDb db, string inspection) =>
        db.Photos.Where(photo => photo.Insp == inspection).CountAsync(photo => db.Blobs.Any(blob => blob.Sha == photo.Sha));

    private EntryRow Row(Appending what, (string Device, Journal.Entry Entry) taken, int position) => new()
    {
        Tenant = tenant.Id,
        Insp = what.Inspection,
        Dev = taken.Device,
        Seq = taken.Entry.Name.Seq,
        Hash = taken.Entry.Hash,
        Prev = taken.Entry.Previous,
        Hlc = taken.Entry.Hlc.ToString(),
        Type = taken.Entry.Body.Type,
        Raw = taken.Entry.Line.ToArray(),
        ReceivedAt = what.At.ToUnixTimeMilliseconds(),
        Position = position,
    };

    private HeldRow Row(Appending what, HeldLine line, int position) => new()
    {
        Tenant = tenant.Id,
        Insp = what.Inspection,
        Hash = line.Hash,
        Name = line.Name?.ToString(),
        Raw = line.Raw.ToArray(),
        Why = string.Join("; ", line.Why),
        ReceivedAt = what.At.ToUnixTimeMilliseconds(),
        Position = position,
    };

    private EditionRow Row(string inspection, IssuedEdition edition) => new()
    {
        Tenant = tenant.Id,
        Insp = inspection,
        Number = edition.Number,
        Seal = edition.Seal,
        Root = edition.Root,
        Page = edition.Page,
        Pdf = edition.Pdf,
        At = edition.At.ToUnixTimeMilliseconds(),
    };

    private static Listed Listed(InspectionRow row, long? erased) => new()
    {
        Id = row.Insp,
        Address = row.Address,
        Date = row.Date,
        Demo = row.Demo,
        Entries = row.Entries,
        Held = row.Held,
        Photos = row.Photos,
        PhotosHere = row.PhotosHere,
        Editions = row.Editions,
        LastReceived = Instant.Seconds(DateTimeOffset.FromUnixTimeMilliseconds(row.ReceivedAt)),
        Erased = erased is { } when ? Instant.Seconds(DateTimeOffset.FromUnixTimeMilliseconds(when)) : null,
    };
}
