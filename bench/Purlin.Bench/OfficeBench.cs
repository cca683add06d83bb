using System.Globalization;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Purlin.Journal;
using Purlin.Journal.Merge;
using Purlin.Office.Storage;
using Purlin.Office.Storage.Sqlite;

namespace Purlin.Bench;

/// <summary>
/// What an office does most: taking 3,000 lines, beside the same rows as tracked row objects, and a page of a list of 10,000 visits, beside
/// the same rows read by plain SQL. Every transaction is forced to disk on both sides.
/// </summary>
internal static class OfficeBench
{
    private const int Lines = 3_000;
    private const int Visits = 10_000;

    public static void Run(Results results)
    {
        var folder = Directory.CreateTempSubdirectory("purlin-bench-").FullName;
        using (var office = OfficeFolder.Open(folder))
        {
            var entries = Histories.Of(Lines);
            var next = 0;
            Tenant Fresh() => new($"t{next++}");
            const string Peer = "the same rows as tracked row objects";
            results.Pair($"insert {Lines} lines", () => Insert(office, Fresh(), entries, SqliteLines.Add), Peer,
                () => Insert(office, Fresh(), entries, Tracked));
            results.Pair($"take a delivery of {Lines} lines whole", () => Take(office, Fresh(), entries), Peer,
                () => Insert(office, Fresh(), entries, Tracked));
            Tenant many = new("many");
            Fill(office, many);
            SqliteJournals journals = new(office.File, many, _ => { });
            results.Pair(
                $"a page of 100 of {Visits} visits",
                () => journals.List(new ListAsk(Count: 100), CancellationToken.None).GetAwaiter().GetResult(),
                "the same rows by plain SQL",
                () => Plain(office, "SELECT * FROM inspection WHERE Tenant = 'many' ORDER BY Date DESC, Insp LIMIT 100"));
            results.Pair(
                $"a search among {Visits} visits",
                () => journals.List(new ListAsk("77 row", Count: 100), CancellationToken.None).GetAwaiter().GetResult(),
                "the same rows by plain SQL",
                () => Plain(office, "SELECT * FROM inspection WHERE Tenant = 'many' AND instr(Words, '77') > 0 AND instr(Words, 'row') > 0 ORDER BY Date DESC, Insp LIMIT 100"));
        }

        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
    }

    private static void Insert(OfficeFolder office, Tenant tenant, IReadOnlyList<Entry> entries,
        Action<OfficeDb, IEnumerable<EntryRow>> add) =>
        office.File.Write(
            tenant,
            db =>
            {
                add(db, entries.Select((entry, at) => new EntryRow
                {
                    Tenant = tenant.Id,
                    Insp = entry.Inspection,
                    Dev = entry.Name.Device,
                    Seq = entry.Name.Seq,
                    Hash = entry.Hash,
                    Prev = entry.Previous,
                    Hlc = entry.Hlc.ToString(),
                    Type = entry.Body.Type,
                    Raw = entry.Line.ToArray(),
                    ReceivedAt = 1,
                    Position = at + 1,
                }));
                return Task.FromResult(true);
            },
            CancellationToken.None).GetAwaiter().GetResult();

    private static void Tracked(OfficeDb db, IEnumerable<EntryRow> rows) => db.Entries.AddRange(rows);

    private static void Take(OfficeFolder office, Tenant tenant, IReadOnlyList<Entry> entries)
    {
        JournalShelf shelf = new(new SqliteJournals(office.File, tenant, _ => { }), office.Receipts, TimeProvider.System);
        shelf.Take(entries[0].Inspection, new LineBlock { Entries = entries, Held = [] }, CancellationToken.None).GetAwaiter().GetResult();
    }

    private static void Fill(OfficeFolder office, Tenant tenant) =>
        office.File.Write(
            tenant,
            db =>
            {
                db.Inspections.AddRange(Enumerable.Range(0, Visits).Select(visit =>
                {
                    var (address, day) = ($"{visit} Invented Row", new DateOnly(1990, 1, 1).AddDays(visit)
                        .ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
                    return new InspectionRow
                    {
                        Tenant = tenant.Id,
                        Insp = $"v{visit:00000}",
                        Address = address,
                        Date = day,
                        Words = $"{address} {day} v{visit:00000}".ToLowerInvariant(),
                        Demo = false,
                        Entries = 492,
                        Held = 0,
                        Photos = 57,
                        PhotosHere = 57,
                        Editions = 1,
                        Heads = "{\"aaa\":492}",
                        Root = new string('a', 64),
                        Position = 492,
                        ReceivedAt = 1,
                    };
                }));
                return Task.FromResult(true);
            },
            CancellationToken.None).GetAwaiter().GetResult();

    private static void Plain(OfficeFolder office, string sql)
    {
        using SqliteConnection connection = new($"Data Source={office.File.Path}");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        using var rows = command.ExecuteReader();
        var values = new object[rows.FieldCount];
        while (rows.Read()) rows.GetValues(values);
    }
}
