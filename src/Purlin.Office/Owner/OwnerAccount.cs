using System.Collections.Concurrent;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Microsoft.EntityFrameworkCore;
using Purlin.Journal;
using Purlin.Office.Storage;
using Purlin.Office.Storage.Sqlite;

namespace Purlin.Office.Owner;

/// <summary>
/// The one owner of an office. A code of 99 random bits is made at first start, shown once and kept only as a hash. Sessions are random tokens, kept only as
/// hashes too. A full disk keeps nobody out: what cannot be written is remembered until the office stops.
/// </summary>
public sealed class OwnerAccount(OfficeOptions office, SqliteFile file, OfficeSettings settings) : IDisposable
{
    private const string CodeSetting = "owner code";
    private const string LinkSetting = "sign-in link";

    /// <summary>No signs that look alike.</summary>
    private const string Letters = "abcdefghjkmnpqrstuvwxyz23456789";
    private const string Quick = "sha256";
    private const int Rounds = 100_000;
    private static readonly TimeSpan SessionLife = TimeSpan.FromDays(30);
    private static readonly TimeSpan LinkLife = TimeSpan.FromMinutes(30);

    private readonly Lock turn = new();
    private readonly SemaphoreSlim stretching = new(1);
    private readonly ConcurrentDictionary<string, long> unwritten = [];
    private readonly ConcurrentDictionary<string, bool> ended = [];
    private string? link;

    /// <summary>Makes the owner at first start, or a new code when asked.</summary>
    /// <returns>The code to show once; none when the owner is there already.</returns>
    public async Task<string?> Prepare(CancellationToken cancel)
    {
        var there = await settings.Get(Tenant.Own, CodeSetting, cancel) is not null;
        if (there && !office.NewOwnerCode && office.OwnerCode is null) return null;
        var code = office.OwnerCode ?? NewCode();
        await settings.Keep(Tenant.Own, CodeSetting, Hash(code));
        if (office.NewOwnerCode) await file.Write(Tenant.Own, db => db.Sessions.ExecuteDeleteAsync(cancel), cancel);
        return code;
    }

    /// <summary>A code for one sign-in within half an hour, for the link that is opened at start.</summary>
    public string NewLinkCode()
    {
        var code = NewCode();
        lock (turn) link = Link(code, office.Clock.GetUtcNow());
        return code;
    }

    /// <summary>The same for a running office, by way of its database: what <c>purlin link</c> does.</summary>
    public static async Task<string> KeepLinkCode(OfficeSettings settings, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(settings);
        var code = NewCode();
        await settings.Keep(Tenant.Own, LinkSetting, Link(code, now));
        return code;
    }

    /// <summary>Signs in: a session token; none for a wrong code.</summary>
    public async Task<string?> SignIn(string code, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(code);
        var now = office.Clock.GetUtcNow();
        if (!await TakesLink(code, now, cancel) && !await IsOwner(code, cancel)) return null;
        var token = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(32));
        var (hash, until) = (Sha.Of(Encoding.UTF8.GetBytes(token)), (now + SessionLife).ToUnixTimeMilliseconds());
        try
        {
            await file.Write(
                Tenant.Own,
                async db =>
                {
                    var past = now.ToUnixTimeMilliseconds();
                    await db.Sessions.Where(row => row.Until < past).ExecuteDeleteAsync(cancel);
                    db.Sessions.Add(new SessionRow { Tenant = Tenant.Own.Id, TokenHash = hash, Until = until });
                    return true;
                },
                cancel);
        }
        catch (Exception full) when (Disk.IsFull(full))
        {
            unwritten[hash] = until;
        }

        return token;
    }

    /// <summary>Whose session this token is; none when it is none, or has ended.</summary>
    public async Task<Tenant?> Who(string? token, CancellationToken cancel)
    {
        if (token is not { Length: 64 }) return null;
        var hash = Sha.Of(Encoding.UTF8.GetBytes(token));
        var now = office.Clock.GetUtcNow().ToUnixTimeMilliseconds();
        if (ended.ContainsKey(hash)) return null;
        if (unwritten.TryGetValue(hash, out var until)) return until > now ? Tenant.Own : null;
        await using var db = file.Db(Tenant.Own);
        // The session says who it is: the one place that looks across tenants.
        var tenant = await db.Sessions.IgnoreQueryFilters().AsNoTracking().Where(row => row.TokenHash == hash && row.Until > now).Select(row => row.Tenant).FirstOrDefaultAsync(cancel);
        return tenant is null ? null : new Tenant(tenant);
    }

    /// <summary>Ends a session.</summary>
    public async Task SignOut(Tenant tenant, string token)
    {
        var hash = Sha.Of(Encoding.UTF8.GetBytes(token));
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

    public void Dispose() => stretching.Dispose();

    private async Task<bool> TakesLink(string code, DateTimeOffset now, CancellationToken cancel)
    {
        lock (turn)
        {
            if (IsLink(link, code, now))
            {
                link = null;
                return true;
            }
        }

        if (!IsLink(await settings.Get(Tenant.Own, LinkSetting, cancel), code, now)) return false;
        // Two at once: the one whose delete finds the row has it.
        return await file.Write(Tenant.Own, db => db.Settings.Where(row => row.Name == LinkSetting).ExecuteDeleteAsync(cancel), cancel) == 1;
    }

    private static string Link(string code, DateTimeOffset now) =>
        string.Create(CultureInfo.InvariantCulture, $"{(now + LinkLife).ToUnixTimeMilliseconds()}:{Sha.Of(Encoding.UTF8.GetBytes(Plain(code)))}");

    private static bool IsLink(string? kept, string code, DateTimeOffset now) =>
        kept?.Split(':') is [var until, var hash] && long.Parse(until, CultureInfo.InvariantCulture) > now.ToUnixTimeMilliseconds()
        && Same(hash, Sha.Of(Encoding.UTF8.GetBytes(Plain(code))));

    private async Task<bool> IsOwner(string code, CancellationToken cancel)
    {
        var kept = (await settings.Get(Tenant.Own, CodeSetting, cancel))?.Split(':');
        if (kept is [Quick, var salt, var hash]) return Same(hash, Salted(code, salt));
        if (kept is not [var oldSalt, var oldHash]) return false;
        // Kept by version 0.1, which stretched it: costly, so one at a time, and written anew once it was right.
        await stretching.WaitAsync(cancel);
        try
        {
            if (!Same(oldHash, Stretch(code, Convert.FromHexString(oldSalt)))) return false;
            await settings.Keep(Tenant.Own, CodeSetting, Hash(code));
            return true;
        }
        finally
        {
            stretching.Release();
        }
    }

    /// <summary>Of 99 random bits nothing can be guessed from a plain salted hash; a slow one would only give strangers a way to keep the office busy.</summary>
    private static string Hash(string code)
    {
        var salt = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(16));
        return $"{Quick}:{salt}:{Salted(code, salt)}";
    }

    private static string Salted(string code, string salt) => Sha.Of(Encoding.UTF8.GetBytes($"{salt}:{Plain(code)}"));

    private static string Stretch(string code, byte[] salt) =>
        Convert.ToHexStringLower(Rfc2898DeriveBytes.Pbkdf2(Plain(code), salt, Rounds, HashAlgorithmName.SHA256, 32));

    private static bool Same(string left, string right) =>
        CryptographicOperations.FixedTimeEquals(Encoding.ASCII.GetBytes(left), Encoding.ASCII.GetBytes(right));

    /// <summary>As typed by a person: hyphens, blanks and capitals do not matter.</summary>
    private static string Plain(string code) => string.Concat(code.Where(char.IsLetterOrDigit)).ToLowerInvariant();

    private static string NewCode() =>
        string.Join('-', Enumerable.Range(0, 4).Select(_ => RandomNumberGenerator.GetString(Letters, 5)));
}
