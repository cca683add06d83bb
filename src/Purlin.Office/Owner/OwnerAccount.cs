using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Microsoft.EntityFrameworkCore;
using Purlin.Journal;
using Purlin.Office.Storage;
using Purlin.Office.Storage.Sqlite;

namespace Purlin.Office.Owner;

/// <summary>
/// The one owner of an office. A code of 99 random bits is made at first start, shown once and kept only as a hash.
/// </summary>
public sealed class OwnerAccount(OfficeOptions office, SqliteFile file, OfficeSettings settings, Sessions sessions) : IDisposable
{
    private const string CodeSetting = "owner code";
    private const string LinkSetting = "sign-in link";

    /// <summary>No signs that look alike.</summary>
    private const string Letters = "abcdefghjkmnpqrstuvwxyz23456789";
    private const string Quick = "sha256";
    private const int Rounds = 100_000;
    private static readonly TimeSpan LinkLife = TimeSpan.FromMinutes(30);

    private readonly Lock turn = new();
    private readonly SemaphoreSlim stretching = new(1);
    private string? link;

    /// <summary>Makes the owner at first start, or a new code when asked.</summary>
    /// <returns>The code to show once; none when the owner is there already.</returns>
    public async Task<string?> Prepare(CancellationToken cancel)
    {
        var there = await settings.Get(Tenant.Own, CodeSetting, cancel) is not null;
        if (there && !office.NewOwnerCode && office.OwnerCode is null) return null;
        var code = office.OwnerCode ?? NewCode();
        await settings.Keep(Tenant.Own, CodeSetting, Hash(code));
        if (office.NewOwnerCode) await sessions.EndAll(cancel);
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
    /// <param name="code">The owner's code, or that of a link.</param>
    /// <param name="device">The name under which the device writes; empty when it writes none.</param>
    /// <param name="cancel">Ends the wait.</param>
    public async Task<string?> SignIn(string code, string device, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(code);
        var isKnown = await TakesLink(code, office.Clock.GetUtcNow(), cancel) || await IsOwner(code, cancel);
        return isKnown ? await sessions.Open(device, cancel) : null;
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
