using System.Text.Json;
using Microsoft.EntityFrameworkCore;

namespace Purlin.Office.Storage;

/// <summary>
/// Once a day every file is hashed again, counted from when that was last done and not from when the office was started: one on a laptop that is closed every
/// evening looks too. What rotted or vanished is no longer called held, so devices that still have it are asked for it; its damaged bytes are put aside, not
/// thrown away. What the office issued itself nobody else has: that is told to the log.
/// </summary>
public sealed class Scrub(OfficeOptions office, Desks desks, OfficeSettings settings, ILogger<Scrub> log) : BackgroundService
{
    private const string Setting = "files looked at";
    private static readonly TimeSpan Between = TimeSpan.FromDays(1);
    private static readonly TimeSpan Soon = TimeSpan.FromMinutes(10);

    /// <summary>When files were last looked at; none before the first time.</summary>
    public static async Task<Scrubbed?> Last(OfficeSettings settings, Tenant tenant, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(settings);
        return await settings.Get(tenant, Setting, cancel) is { } kept ? JsonSerializer.Deserialize<Scrubbed>(kept) : null;
    }

    /// <summary>Hashes every file of the office's once; hashes of the damaged ones.</summary>
    public async Task<IReadOnlyList<string>> Once(CancellationToken cancel)
    {
        var now = office.Clock.GetUtcNow();
        var result = await desks.Of(Tenant.Own).Blobs.Scrub(now, cancel);
        foreach (var sha in result.Damaged) log.LogError("The file {Sha} is damaged or gone; devices that have it are asked for it, and a backup may hold it.", sha);
        var last = await Last(settings, Tenant.Own, cancel);
        var good = result.Damaged.Count == 0 ? Instant.Seconds(now) : last?.Good;
        await settings.Keep(Tenant.Own, Setting, JsonSerializer.Serialize(new Scrubbed(Instant.Seconds(now), good, result.Looked, result.Damaged.Count)));
        return result.Damaged;
    }

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        // The start of the office is not held up by it.
        await Task.Yield();
        try
        {
            while (true) await Task.Delay(await Next(stoppingToken), office.Clock, stoppingToken);
        }
        catch (OperationCanceledException) when (stoppingToken.IsCancellationRequested)
        {
            // The office is closing.
        }
    }

    /// <summary>Looks when it is time, and gives how long to wait then.</summary>
    private async Task<TimeSpan> Next(CancellationToken cancel)
    {
        try
        {
            var last = await Last(settings, Tenant.Own, cancel);
            var due = last is null ? office.Clock.GetUtcNow() : DateTimeOffset.Parse(last.At) + Between;
            var wait = due - office.Clock.GetUtcNow();
            // A clock that was put back must not put the next look off for years.
            if (wait > TimeSpan.Zero && wait <= Between) return wait;
            await Once(cancel);
            return Between;
        }
        catch (Exception failure) when (failure is IOException or DbUpdateException or System.Data.Common.DbException)
        {
            log.LogError(failure, "The daily look at the files was broken off; it is tried again soon.");
            return Soon;
        }
    }
}

/// <summary>A look at the files.</summary>
/// <param name="At">When, office time.</param>
/// <param name="Good">When all were last found good.</param>
/// <param name="Files">How many were looked at.</param>
/// <param name="Damaged">How many were damaged or gone.</param>
public sealed record Scrubbed(string At, string? Good, int Files, int Damaged);
