using System.Collections.Concurrent;
using System.Security.Cryptography;
using System.Text;
using Microsoft.EntityFrameworkCore;
using Purlin.Journal;
using Purlin.Office.Storage;
using Purlin.Office.Storage.Sqlite;

namespace Purlin.Office.Owner;

/// <summary>A session that is open, as its owner is shown it.</summary>
/// <param name="Id">Names it; nobody can sign in with it.</param>
/// <param name="Device">The name under which the device writes its lines; empty for a browser that writes none.</param>
/// <param name="Since">When it signed in; none when that was not kept.</param>
/// <param name="Seen">When it was last here, to the hour.</param>
/// <param name="Here">Whether it is the one that asks.</param>
public sealed record OpenSession(string Id, string Device, DateTimeOffset? Since, DateTimeOffset? Seen, bool Here);

/// <summary>
/// Who is signed in, on which devices. Tokens are 256 random bits and kept only as hashes. A full disk keeps nobody out: what cannot be written is
/// remembered until the office stops.
/// </summary>
public sealed class Sessions(OfficeOptions office, SqliteFile file)
{
    // Of a hash of 256 random bits these tell nothing that could be used.
    private const int IdLength = 16;
    private const long Hour = 3_600_000;
    private static readonly TimeSpan Life = TimeSpan.FromDays(30);

    private readonly ConcurrentDictionary<string, long> unwritten = [];
    private readonly ConcurrentDictionary<string, bool> ended = [];

    /// <summary>Opens one and gives its token.</summary>
    /// <param name="device">The name under which the device writes; empty when it writes none.</param>
    /// <param name="cancel">Ends the wait.</param>
    internal async Task<string> Open(string device, CancellationToken cancel)
    {
        var token = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(32));
        var now = Now;
        SessionRow row = new() { Tenant = Tenant.Own.Id, TokenHash = HashOf(token), Until = now + (long)Life.TotalMilliseconds, Device = device, Since = now, Seen = now };
        try
        {
            await file.Write(
                Tenant.Own,
                async db =>
                {
                    await db.Sessions.Where(old => old.Until < now).ExecuteDeleteAsync(cancel);
                    db.Sessions.Add(row);
                    return true;
                },
                cancel);
        }
        catch (Exception full) when (Disk.IsFull(full))
        {
            unwritten[row.TokenHash] = row.Until;
        }

        return token;
    }

    /// <summary>Whose session this token is; none when it is none, or has ended. That the device was here is noted once an hour.</summary>
    public async Task<Tenant?> Who(string? token, string device, CancellationToken cancel)
    {
        if (token is not { Length: 64 }) return null;
        var (hash, now) = (HashOf(token), Now);
        if (ended.ContainsKey(hash)) return null;
        if (unwritten.TryGetValue(hash, out var until)) return until > now ? Tenant.Own : null;
        await using var db = file.Db(Tenant.Own);
        // The session says who it is: the one place that looks across tenants.
        var row = await db.Sessions.IgnoreQueryFilters().AsNoTracking().FirstOrDefaultAsync(row => row.TokenHash == hash && row.Until > now, cancel);
        if (row is null) return null;
        Tenant tenant = new(row.Tenant);
        if (now - row.Seen > Hour || (device.Length > 0 && device != row.Device)) await Note(tenant, hash, now, device.Length > 0 ? device : row.Device);
        return tenant;
    }

    /// <summary>The sessions that are open, the one last here first.</summary>
    /// <param name="tenant">Whose.</param>
    /// <param name="token">That of the one that asks.</param>
    /// <param name="cancel">Ends the wait.</param>
    public async Task<IReadOnlyList<OpenSession>> All(Tenant tenant, string token, CancellationToken cancel)
    {
        var (mine, now) = (HashOf(token), Now);
        await using var db = file.Db(tenant);
        var rows = await db.Sessions.AsNoTracking().Where(row => row.Until > now).OrderByDescending(row => row.Seen).ToListAsync(cancel);
        return [.. rows.Where(row => !ended.ContainsKey(row.TokenHash)).Select(row => new OpenSession(row.TokenHash[..IdLength], row.Device, Time(row.Since), Time(row.Seen), row.TokenHash == mine))];
    }

    /// <summary>Ends the session of a token.</summary>
    public Task End(Tenant tenant, string token) => EndOf(tenant, HashOf(token));

    /// <summary>Ends the session of this name; says whether there was one.</summary>
    public async Task<bool> EndOther(Tenant tenant, string id, CancellationToken cancel)
    {
        if (id is not { Length: IdLength }) return false;
        await using var db = file.Db(tenant);
        if (await db.Sessions.AsNoTracking().Where(row => row.TokenHash.StartsWith(id)).Select(row => row.TokenHash).FirstOrDefaultAsync(cancel) is not { } hash) return false;
        await EndOf(tenant, hash);
        return true;
    }

    /// <summary>Ends all of them.</summary>
    internal Task<int> EndAll(CancellationToken cancel) => file.Write(Tenant.Own, db => db.Sessions.ExecuteDeleteAsync(cancel), cancel);

    private async Task EndOf(Tenant tenant, string hash)
    {
        if (unwritten.TryRemove(hash, out _)) return;
        ended[hash] = true;
        try
        {
            await file.Write(tenant, db => db.Sessions.Where(row => row.TokenHash == hash).ExecuteDeleteAsync(), CancellationToken.None);
            ended.TryRemove(hash, out _);
        }
        catch (Exception full) when (Disk.IsFull(full))
        {
            // Ended here and now; the row goes when there is room and the session's time is over.
        }
    }

    private async Task Note(Tenant tenant, string hash, long now, string device)
    {
        try
        {
            await file.Write(
                tenant,
                db => db.Sessions.Where(row => row.TokenHash == hash).ExecuteUpdateAsync(row => row.SetProperty(one => one.Seen, now).SetProperty(one => one.Device, device)),
                CancellationToken.None);
        }
        catch (Exception full) when (Disk.IsFull(full))
        {
            // When a device was last here is not worth turning it away.
        }
    }

    private long Now => office.Clock.GetUtcNow().ToUnixTimeMilliseconds();

    private static DateTimeOffset? Time(long at) => at == 0 ? null : DateTimeOffset.FromUnixTimeMilliseconds(at);

    private static string HashOf(string token) => Sha.Of(Encoding.UTF8.GetBytes(token));
}
