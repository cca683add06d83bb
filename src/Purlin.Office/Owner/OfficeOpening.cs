using Purlin.Office.Storage;
using Purlin.Office.Storage.Sqlite;

namespace Purlin.Office.Owner;

/// <summary>What an office does as it opens: what an older version left is taken over and archives are taken in before anybody is let in; the owner is made after.</summary>
internal sealed class OfficeOpening(OfficeOptions office, SqliteFile file, Desks desks, OwnerAccount owner) : IHostedLifecycleService
{
    public async Task StartingAsync(CancellationToken cancellationToken)
    {
        await Adopting.Run(file, Tenant.Own, office.Say);
        foreach (var open in office.Import) await desks.Of(Tenant.Own).Imports.Take(open, office.Say, cancellationToken);
    }

    /// <summary>Only an office that listens shows a code: one that failed to start would have shown it "only now" and for nothing.</summary>
    public async Task StartedAsync(CancellationToken cancellationToken)
    {
        if (!office.ShowCodes && !office.NewOwnerCode && office.OwnerCode is null) return;
        if (await owner.Prepare(cancellationToken) is { } code && office.OwnerCode is null) office.Say($"Owner's code, shown only now; keep it: {code}");
    }

    public Task StartAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public Task StopAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public Task StoppingAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public Task StoppedAsync(CancellationToken cancellationToken) => Task.CompletedTask;
}
