using Microsoft.EntityFrameworkCore;
using Purlin.Office.Storage.Sqlite;

namespace Purlin.Office.Storage;

/// <summary>Works out what lists show of inspections that a program kept which had no such rows. Done once for a folder; nothing of the record is touched.</summary>
internal static class Adopting
{
    public static async Task Run(SqliteFile file, Tenant tenant, Action<string> say)
    {
        List<string> without;
        await using (var db = file.Db(tenant))
        {
            var kept = db.Entries.Select(row => row.Insp).Union(db.Held.Select(row => row.Insp));
            without = await kept.Where(insp => !db.Inspections.Any(row => row.Insp == insp)).ToListAsync();
        }

        if (without.Count == 0) return;
        say($"Taking over {without.Count} inspections kept by an earlier version ...");
        var journals = new SqliteJournals(file, tenant, _ => { });
        foreach (var inspection in without) await Adopt(file, tenant, journals, inspection);
    }

    private static async Task Adopt(SqliteFile file, Tenant tenant, SqliteJournals journals, string inspection)
    {
        var journal = new OpenJournal(inspection);
        await journal.CatchUp(journals, new JournalHeads { Root = "unknown" }, CancellationToken.None);
        var outline = journal.Outline();
        await file.Write(
            tenant,
            async db =>
            {
                var position = await db.Entries.Where(row => row.Insp == inspection).Select(row => row.Position)
                    .Concat(db.Held.Where(row => row.Insp == inspection).Select(row => row.Position)).MaxAsync();
                var received = await db.Entries.Where(row => row.Insp == inspection).Select(row => row.ReceivedAt)
                    .Concat(db.Held.Where(row => row.Insp == inspection).Select(row => row.ReceivedAt)).MaxAsync();
                var receipt = await db.Receipts.Where(row => row.Insp == inspection).MaxAsync(row => (int?)row.N);
                Appending what = new()
                {
                    Inspection = inspection,
                    Expected = "",
                    Taken = [],
                    Held = [],
                    Outline = outline,
                    Sign = _ => [],
                    At = DateTimeOffset.FromUnixTimeMilliseconds(received),
                };
                await SqliteJournals.Show(db, null, what, position, receipt);
                return true;
            },
            CancellationToken.None);
    }
}
