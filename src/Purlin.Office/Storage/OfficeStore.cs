using Microsoft.EntityFrameworkCore;
using Purlin.Journal;
using Purlin.Journal.Merge;

namespace Purlin.Office.Storage;

/// <summary>
/// The journals of the office. One writer at a time; lines already read stay in memory and are thrown away at any failure, so that memory never says
/// more than the disk.
/// </summary>
public sealed class OfficeStore(OfficeOptions office, ReceiptChain receipts) : IDisposable
{
    private const int JournalsInMemory = 8;

    private readonly DbContextOptions<OfficeDb> options = OfficeDb.Options(office.Folder);
    private readonly SemaphoreSlim turn = new(1);
    private readonly List<EntrySet> read = [];

    /// <summary>A connection of its own, for reading.</summary>
    public OfficeDb Db() => new(options);

    /// <summary>Reads from the journal of an inspection, alone with it.</summary>
    public async Task<T> With<T>(string inspection, Func<EntrySet, T> ask, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(ask);
        await turn.WaitAsync(cancel);
        try
        {
            await using var db = Db();
            return ask(await Journal(db, inspection, cancel));
        }
        finally
        {
            turn.Release();
        }
    }

    /// <summary>Takes what arrives, in one transaction: lines, held lines, receipt. Acknowledged only when this returns.</summary>
    public async Task<Arrival> Take(string inspection, LineBlock arriving, CancellationToken cancel)
    {
        await turn.WaitAsync(cancel);
        try
        {
            await using var db = Db();
            var journal = await Journal(db, inspection, cancel);
            var admitted = Admission.Of(journal, arriving);
            return await Keep(db, journal, admitted);
        }
        finally
        {
            turn.Release();
        }
    }

    /// <summary>Lets the office's own pen write one line, with rows that belong to it, in one transaction.</summary>
    /// <param name="inspection">Where.</param>
    /// <param name="write">Given the journal, returns the line and adds its rows.</param>
    /// <param name="cancel">Stops the wait, not the write.</param>
    public async Task<Arrival> Write(string inspection, Func<EntrySet, OfficeDb, Entry> write, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(write);
        await turn.WaitAsync(cancel);
        try
        {
            await using var db = Db();
            var journal = await Journal(db, inspection, cancel);
            var entry = write(journal, db);
            return await Keep(db, journal, new Admission { Taken = [entry], Held = [], Waiting = [] });
        }
        finally
        {
            turn.Release();
        }
    }

    /// <summary>Any other small write, in its turn.</summary>
    public async Task Change(Action<OfficeDb> change, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(change);
        await turn.WaitAsync(cancel);
        try
        {
            await using var db = Db();
            change(db);
            await db.SaveChangesAsync(CancellationToken.None);
        }
        finally
        {
            turn.Release();
        }
    }

    public void Dispose() => turn.Dispose();

    private async Task<Arrival> Keep(OfficeDb db, EntrySet journal, Admission admitted)
    {
        var now = office.Clock.GetUtcNow();
        try
        {
            if (admitted.Taken.Count + admitted.Held.Count > 0)
            {
                var after = EntrySet.Of(journal.Inspection, [.. journal.Entries, .. admitted.Taken], [.. journal.Held, .. admitted.Held]);
                await using var transaction = await db.Database.BeginTransactionAsync(CancellationToken.None);
                office.At("before insert");
                db.Entries.AddRange(Rows(journal, admitted.Taken, now));
                db.Held.AddRange(admitted.Held.Select(line => HeldRowOf(journal.Inspection, line, now)));
                db.Receipts.Add(receipts.Next(db, after, now));
                await db.SaveChangesAsync(CancellationToken.None);
                office.At("after insert");
                await transaction.CommitAsync(CancellationToken.None);
                office.At("after commit");
                foreach (var entry in admitted.Taken) journal.Add(entry);
                foreach (var line in admitted.Held) journal.Hold(line);
            }

            return new Arrival(admitted, journal.Heads(), await ReceiptChain.Last(db, journal.Inspection));
        }
        catch
        {
            read.Remove(journal);
            throw;
        }
    }

    /// <summary>A fork's second line bears a mark in the order of arrival: its key must differ, its bytes say the rest.</summary>
    private static List<EntryRow> Rows(EntrySet journal, IReadOnlyList<Entry> taken, DateTimeOffset now)
    {
        Dictionary<EntryName, int> names = [];
        foreach (var entry in journal.Entries) names[entry.Name] = names.GetValueOrDefault(entry.Name) + 1;
        List<EntryRow> rows = [];
        foreach (var entry in taken)
        {
            var branch = names[entry.Name] = names.GetValueOrDefault(entry.Name) + 1;
            rows.Add(new EntryRow
            {
                Insp = journal.Inspection,
                Dev = branch == 1 ? entry.Name.Device : $"{entry.Name.Device}~{branch}",
                Seq = entry.Name.Seq,
                Hash = entry.Hash,
                Prev = entry.Previous,
                Hlc = entry.Hlc.ToString(),
                Type = entry.Body.Type,
                Raw = entry.Line.ToArray(),
                ReceivedAt = now.ToUnixTimeMilliseconds(),
            });
        }

        return rows;
    }

    private static HeldRow HeldRowOf(string inspection, HeldLine line, DateTimeOffset now) => new()
    {
        Insp = inspection,
        Hash = line.Hash,
        Name = line.Name?.ToString(),
        Raw = line.Raw.ToArray(),
        Why = string.Join("; ", line.Why),
        ReceivedAt = now.ToUnixTimeMilliseconds(),
    };

    private async Task<EntrySet> Journal(OfficeDb db, string inspection, CancellationToken cancel)
    {
        var journal = read.Find(one => one.Inspection == inspection);
        if (journal is null)
        {
            var lines = await db.Entries.AsNoTracking().Where(row => row.Tenant == OfficeDb.OnlyTenant && row.Insp == inspection).Select(row => row.Raw).ToListAsync(cancel);
            var held = await db.Held.AsNoTracking().Where(row => row.Tenant == OfficeDb.OnlyTenant && row.Insp == inspection).ToListAsync(cancel);
            journal = EntrySet.Of(inspection, lines.Select(line => EntryLine.Read(line).OrThrow()));
            LookAgain(journal, held);
            if (read.Count == JournalsInMemory) read.RemoveAt(0);
        }
        else
        {
            read.Remove(journal);
        }

        read.Add(journal);
        return journal;
    }

    /// <summary>Lines that an older program had to hold and this one can read are taken now; their rows stay where they are. The others stay held.</summary>
    private static void LookAgain(EntrySet journal, List<HeldRow> rows)
    {
        List<Entry> readable = [];
        foreach (var row in rows)
        {
            var line = EntryLine.Read(row.Raw);
            if (line.IsAccepted && line.OrThrow() is { } entry && entry.Inspection == journal.Inspection) readable.Add(entry);
            else journal.Hold(Held(journal.Inspection, row));
        }

        foreach (var entry in Admission.Of(journal, new LineBlock { Entries = readable, Held = [] }).Taken) journal.Add(entry);
        // What is still beyond a limit, or behind a gap, is held as before; a line that was taken is not.
        foreach (var row in rows) journal.Hold(Held(journal.Inspection, row));
    }

    private static HeldLine Held(string inspection, HeldRow row) =>
        HeldLine.Of(row.Raw, inspection, [new Refusal("line", row.Why, "see the words of the check")]);
}

/// <summary>What became of a delivery.</summary>
/// <param name="Admitted">Taken, held, waiting.</param>
/// <param name="Heads">What the office holds now.</param>
/// <param name="Receipt">The office's latest receipt for the inspection; none when it holds nothing.</param>
public sealed record Arrival(Admission Admitted, IReadOnlyDictionary<string, int> Heads, byte[]? Receipt);
