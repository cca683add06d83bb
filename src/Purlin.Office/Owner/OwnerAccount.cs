using System.Security.Cryptography;
using System.Text;
using Microsoft.EntityFrameworkCore;
using Purlin.Journal;
using Purlin.Office.Storage;

namespace Purlin.Office.Owner;

/// <summary>
/// The one owner of an office. A code of 99 random bits is made at first start, shown once and kept only as a hash. Sessions are random tokens, kept only as
/// hashes too.
/// </summary>
public sealed class OwnerAccount(OfficeOptions office, OfficeStore store)
{
    private const string CodeSetting = "owner code";
    /// <summary>No signs that look alike.</summary>
    private const string Letters = "abcdefghjkmnpqrstuvwxyz23456789";
    private const int Rounds = 100_000;
    private static readonly TimeSpan SessionLife = TimeSpan.FromDays(30);
    private static readonly TimeSpan LinkLife = TimeSpan.FromMinutes(30);

    private readonly Lock turn = new();
    private readonly Queue<DateTimeOffset> wrong = [];
    private (string Hash, DateTimeOffset Until)? link;

    /// <summary>Makes the owner at first start, or a new code when asked.</summary>
    /// <returns>The code to show once; none when the owner is there already.</returns>
    public async Task<string?> Prepare(CancellationToken cancel)
    {
        await using var db = store.Db();
        var there = await db.Settings.AsNoTracking().AnyAsync(row => row.Name == CodeSetting, cancel);
        if (there && !office.NewOwnerCode && office.OwnerCode is null) return null;
        var code = office.OwnerCode ?? NewCode();
        await store.Change(
            change =>
            {
                if (change.Settings.Find(CodeSetting) is { } row) row.Value = Hash(code);
                else change.Settings.Add(new SettingRow { Name = CodeSetting, Value = Hash(code) });
                if (office.NewOwnerCode) change.Sessions.RemoveRange(change.Sessions);
            },
            cancel);
        return code;
    }

    /// <summary>A code for one sign-in within half an hour, for the link that is opened at start.</summary>
    public string NewLinkCode()
    {
        var code = NewCode();
        lock (turn) link = (Sha.Of(Encoding.UTF8.GetBytes(Plain(code))), office.Clock.GetUtcNow() + LinkLife);
        return code;
    }

    /// <summary>Signs in: a session token, none for a wrong code, or how long to wait after too many wrong ones.</summary>
    public async Task<(string? Token, TimeSpan? Wait)> SignIn(string code, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(code);
        var now = office.Clock.GetUtcNow();
        if (Wait(now) is { } wait) return (null, wait);
        if (!TakesLink(code, now) && !await IsOwner(code, cancel))
        {
            lock (turn) wrong.Enqueue(now);
            return (null, null);
        }

        var token = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(32));
        var until = (now + SessionLife).ToUnixTimeMilliseconds();
        await store.Change(
            db =>
            {
                db.Sessions.RemoveRange(db.Sessions.Where(row => row.Until < now.ToUnixTimeMilliseconds()));
                db.Sessions.Add(new SessionRow { TokenHash = Sha.Of(Encoding.UTF8.GetBytes(token)), Until = until });
            },
            cancel);
        return (token, null);
    }

    /// <summary>Whether this token is a session that has not ended.</summary>
    public async Task<bool> IsSignedIn(string? token, CancellationToken cancel)
    {
        if (token is not { Length: 64 }) return false;
        var hash = Sha.Of(Encoding.UTF8.GetBytes(token));
        var now = office.Clock.GetUtcNow().ToUnixTimeMilliseconds();
        await using var db = store.Db();
        return await db.Sessions.AsNoTracking().AnyAsync(row => row.Tenant == OfficeDb.OnlyTenant && row.TokenHash == hash && row.Until > now, cancel);
    }

    /// <summary>Ends a session.</summary>
    public Task SignOut(string token, CancellationToken cancel)
    {
        var hash = Sha.Of(Encoding.UTF8.GetBytes(token));
        return store.Change(db => db.Sessions.RemoveRange(db.Sessions.Where(row => row.TokenHash == hash)), cancel);
    }

    /// <summary>Five wrong codes a minute, then waiting. Codes are too long to guess; this keeps the noise and the hashing down.</summary>
    private TimeSpan? Wait(DateTimeOffset now)
    {
        lock (turn)
        {
            while (wrong.TryPeek(out var first) && now - first > TimeSpan.FromMinutes(1)) wrong.Dequeue();
            return wrong.Count >= 5 ? wrong.Peek() + TimeSpan.FromMinutes(1) - now : null;
        }
    }

    private bool TakesLink(string code, DateTimeOffset now)
    {
        lock (turn)
        {
            if (link is not { } open || now > open.Until || !Same(open.Hash, Sha.Of(Encoding.UTF8.GetBytes(Plain(code))))) return false;
            link = null;
            return true;
        }
    }

    private async Task<bool> IsOwner(string code, CancellationToken cancel)
    {
        await using var db = store.Db();
        var kept = (await db.Settings.AsNoTracking().SingleOrDefaultAsync(row => row.Name == CodeSetting, cancel))?.Value;
        if (kept is null) return false;
        var parts = kept.Split(':');
        return Same(parts[1], Stretch(code, Convert.FromHexString(parts[0])));
    }

    private static string Hash(string code)
    {
        var salt = RandomNumberGenerator.GetBytes(16);
        return $"{Convert.ToHexStringLower(salt)}:{Stretch(code, salt)}";
    }

    private static string Stretch(string code, byte[] salt) =>
        Convert.ToHexStringLower(Rfc2898DeriveBytes.Pbkdf2(Plain(code), salt, Rounds, HashAlgorithmName.SHA256, 32));

    private static bool Same(string left, string right) =>
        CryptographicOperations.FixedTimeEquals(Encoding.ASCII.GetBytes(left), Encoding.ASCII.GetBytes(right));

    /// <summary>As typed by a person: hyphens, blanks and capitals do not matter.</summary>
    private static string Plain(string code) => string.Concat(code.Where(char.IsLetterOrDigit)).ToLowerInvariant();

    private static string NewCode() =>
        string.Join('-', Enumerable.Range(0, 4).Select(_ => RandomNumberGenerator.GetString(Letters, 5)));
}
