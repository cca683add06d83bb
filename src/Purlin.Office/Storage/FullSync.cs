using System.Data.Common;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Purlin.Office.Storage;

/// <summary>Every connection forces each commit to disk. With <c>NORMAL</c> power cuts lost commits that had been acknowledged, with <c>FULL</c> none.</summary>
internal sealed class FullSync : DbConnectionInterceptor
{
    public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData) => Set(connection);

    public override Task ConnectionOpenedAsync(DbConnection connection, ConnectionEndEventData eventData, CancellationToken cancellationToken = default)
    {
        Set(connection);
        return Task.CompletedTask;
    }

    private static void Set(DbConnection connection)
    {
        using var command = connection.CreateCommand();
        command.CommandText = "PRAGMA synchronous=FULL";
        command.ExecuteNonQuery();
    }
}
