using System.Security.Cryptography;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Purlin.Journal;
using Purlin.Office.Storage;
using Purlin.Office.Storage.Sqlite;

namespace Purlin.Office.Copies;

/// <summary>
/// Whether an office's folder, or a backup of it, is whole: the database, every line against its hash, the chain of receipts and their signatures, every
/// file against its name, every edition's page and PDF. It reads only, also while the office runs.
/// </summary>
public static class Verify
{
    /// <summary>Looks at all of it.</summary>
    /// <returns>What is amiss, one sentence each; empty when it is whole.</returns>
    /// <exception cref="OfficeRefused">There is no office there, or a newer program made it.</exception>
    public static async Task<IReadOnlyList<string>> Run(string folder, CancellationToken cancel)
    {
        var database = Path.Combine(folder, OfficeFolder.DatabaseFile);
        if (!File.Exists(database)) throw new OfficeRefused($"{folder} holds no office and no backup of one.");
        try
        {
            var number = SqliteSchema.Number(database);
            SqliteSchema.Refuse(database, number);
            if (number < SqliteSchema.Known) return [$"The folder is of an earlier Purlin (schema {number}); start the office once with this one, then look again."];
            using var file = new SqliteFile(database);
            List<string> amiss = [.. await Database(file, cancel)];
            if (amiss.Count > 0) return amiss;
            foreach (var tenant in await Tenants(file, cancel))
            {
                amiss.AddRange(await Lines(file, tenant, cancel));
                amiss.AddRange(await Receipts(file, tenant, folder, cancel));
                amiss.AddRange(await Files(file, tenant, folder, cancel));
            }

            return amiss;
        }
        catch (SqliteException wrong) when (wrong.SqliteErrorCode is 11 or 26)
        {
            return [DatabaseCheck.Damaged(database, wrong.Message)];
        }
    }

    private static async Task<IEnumerable<string>> Database(SqliteFile file, CancellationToken cancel)
    {
        var found = await Column(file, "PRAGMA integrity_check(10)", cancel);
        return found is ["ok"] ? [] : found.Select(words => $"{OfficeFolder.DatabaseFile}: {words.ReplaceLineEndings(" ")}");
    }

    private static async Task<List<Tenant>> Tenants(SqliteFile file, CancellationToken cancel) =>
        [.. (await Column(file, "SELECT Tenant FROM entry UNION SELECT Tenant FROM blob UNION SELECT Tenant FROM quarantine", cancel)).Select(name => new Tenant(name))];

    private static async Task<List<string>> Column(SqliteFile file, string sql, CancellationToken cancel)
    {
        await using SqliteConnection connection = new(SqliteFile.ConnectionString(file.Path));
        await connection.OpenAsync(cancel);
        await using var command = connection.CreateCommand();
        command.CommandText = sql;
        await using var rows = await command.ExecuteReaderAsync(cancel);
        List<string> column = [];
        while (await rows.ReadAsync(cancel)) column.Add(rows.GetString(0));
        return column;
    }

    private static async Task<List<string>> Lines(SqliteFile file, Tenant tenant, CancellationToken cancel)
    {
        List<string> amiss = [];
        await using var db = file.Db(tenant);
        var erased = (await db.Retentions.Where(row => row.ErasedAt != null).Select(row => row.Insp).ToListAsync(cancel)).ToHashSet(StringComparer.Ordinal);
        var rows = db.Entries.AsNoTracking().OrderBy(row => row.Insp).ThenBy(row => row.Position).Select(row => new { row.Insp, row.Dev, row.Seq, row.Hash, row.Raw });
        var journals = new Dictionary<string, int>(StringComparer.Ordinal);
        await foreach (var row in rows.AsAsyncEnumerable().WithCancellation(cancel))
        {
            journals[row.Insp] = journals.GetValueOrDefault(row.Insp) + 1;
            if (!erased.Contains(row.Insp) && Sha.Of(row.Raw) != row.Hash) amiss.Add($"{row.Insp}: the line {row.Dev}.{row.Seq} is not the one that was received");
        }

        foreach (var shown in await db.Inspections.AsNoTracking().Where(row => row.Entries > 0).Select(row => row.Insp).ToListAsync(cancel))
        {
            if (!journals.ContainsKey(shown)) amiss.Add($"{shown}: lines were received and none are here");
        }

        return amiss;
    }

    private static async Task<List<string>> Receipts(SqliteFile file, Tenant tenant, string folder, CancellationToken cancel)
    {
        List<string> amiss = [];
        if (!File.Exists(Path.Combine(folder, ReceiptChain.KeyFile))) return ["The key that receipts are signed with is not here."];
        using var chain = new ReceiptChain(folder);
        await using var db = file.Db(tenant);
        var (expected, before) = (1, (byte[]?)null);
        await foreach (var row in db.Receipts.AsNoTracking().OrderBy(row => row.N).AsAsyncEnumerable().WithCancellation(cancel))
        {
            if (row.N != expected) amiss.Add($"receipt {expected} is missing");
            if (!ReceiptChain.Verifies(row.Raw, chain.PublicKey)) amiss.Add($"receipt {row.N} does not bear the signature of the key here");
            if (SignedReceipt.Read(row.Raw) is not { IsAccepted: true } read) amiss.Add($"receipt {row.N} is no receipt");
            else if (read.OrThrow().Previous != (before is null ? "" : Sha.Of(before))) amiss.Add($"receipt {row.N} does not follow the one before it");
            (expected, before) = (row.N + 1, row.Raw);
        }

        return amiss;
    }

    private static async Task<List<string>> Files(SqliteFile file, Tenant tenant, string folder, CancellationToken cancel)
    {
        List<string> amiss = [];
        await using var db = file.Db(tenant);
        HashSet<string> here = new(StringComparer.Ordinal);
        await foreach (var row in db.Blobs.AsNoTracking().AsAsyncEnumerable().WithCancellation(cancel))
        {
            var path = Path.Combine(folder, "blobs", tenant.Id, row.Sha[..2], row.Sha[2..]);
            if (!File.Exists(path)) amiss.Add($"the file {row.Sha} ({row.MediaType}) is gone");
            else if (await Hash(path, cancel) != row.Sha) amiss.Add($"the file {row.Sha} ({row.MediaType}) is damaged");
            else here.Add(row.Sha);
        }

        var erased = (await db.Retentions.Where(row => row.ErasedAt != null).Select(row => row.Insp).ToListAsync(cancel)).ToHashSet(StringComparer.Ordinal);
        foreach (var edition in (await db.Editions.AsNoTracking().ToListAsync(cancel)).Where(row => !erased.Contains(row.Insp)))
        {
            if (!here.Contains(edition.Page) || !here.Contains(edition.Pdf)) amiss.Add($"{edition.Insp}: page or PDF of edition {edition.Number} is not here as it was sealed");
        }

        return amiss;
    }

    private static async Task<string> Hash(string path, CancellationToken cancel)
    {
        await using var file = File.OpenRead(path);
        return Convert.ToHexStringLower(await SHA256.HashDataAsync(file, cancel));
    }
}
