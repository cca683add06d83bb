using System.Security.Cryptography;
using Microsoft.EntityFrameworkCore;

namespace Purlin.Office.Storage;

/// <summary>
/// Once a night every file is hashed again. A photograph or sound that rotted or vanished is no longer called held, so devices that still have it are asked for
/// it; its damaged bytes are put aside, not thrown away. What the office issued itself nobody else has: that is told to the log.
/// </summary>
public sealed class Scrub(OfficeOptions office, OfficeStore store, BlobFolder blobs, ILogger<Scrub> log) : BackgroundService
{
    private static readonly TimeSpan Between = TimeSpan.FromDays(1);

    /// <summary>Hashes every file once; the hashes that are asked for again.</summary>
    public async Task<IReadOnlyList<string>> Once(CancellationToken cancel)
    {
        List<BlobRow> rows;
        await using (var db = store.Db()) rows = await db.Blobs.AsNoTracking().Where(row => row.Tenant == OfficeDb.OnlyTenant).ToListAsync(cancel);
        List<string> asked = [];
        foreach (var row in rows)
        {
            if (await IsWhole(row.Sha, cancel)) continue;
            log.LogError("The file {Sha} ({Kind}) is damaged or gone.", row.Sha, row.MediaType);
            if (!row.MediaType.StartsWith("image/", StringComparison.Ordinal) && !row.MediaType.StartsWith("audio/", StringComparison.Ordinal)) continue;
            PutAside(row.Sha);
            await store.Change(db => db.Blobs.Where(gone => gone.Tenant == OfficeDb.OnlyTenant && gone.Sha == row.Sha).ExecuteDelete(), cancel);
            asked.Add(row.Sha);
        }

        return asked;
    }

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        using var timer = new PeriodicTimer(Between, office.Clock);
        try
        {
            while (await timer.WaitForNextTickAsync(stoppingToken)) await OnceOrTomorrow(stoppingToken);
        }
        catch (OperationCanceledException) when (stoppingToken.IsCancellationRequested)
        {
            // The office is closing.
        }
    }

    private async Task OnceOrTomorrow(CancellationToken cancel)
    {
        try
        {
            await Once(cancel);
        }
        catch (Exception failure) when (failure is IOException or DbUpdateException or Microsoft.Data.Sqlite.SqliteException)
        {
            log.LogError(failure, "The nightly look at the files was broken off; it is tried again tomorrow.");
        }
    }

    private async Task<bool> IsWhole(string sha, CancellationToken cancel)
    {
        if (!File.Exists(blobs.PathOf(sha))) return false;
        await using var file = File.OpenRead(blobs.PathOf(sha));
        return Convert.ToHexStringLower(await SHA256.HashDataAsync(file, cancel)) == sha;
    }

    private void PutAside(string sha)
    {
        if (!File.Exists(blobs.PathOf(sha))) return;
        var folder = Path.Combine(office.Folder, "damaged");
        Directory.CreateDirectory(folder);
        File.Move(blobs.PathOf(sha), Path.Combine(folder, sha), overwrite: true);
    }
}
