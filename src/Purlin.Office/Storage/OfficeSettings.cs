using Microsoft.EntityFrameworkCore;
using Purlin.Office.Storage.Sqlite;

namespace Purlin.Office.Storage;

/// <summary>Small values that an office keeps for itself, by name.</summary>
public sealed class OfficeSettings(SqliteFile file)
{
    /// <summary>Name of the value that holds the address people open.</summary>
    public const string Address = "address";

    /// <summary>A value; none when it was never kept.</summary>
    public async Task<string?> Get(Tenant tenant, string name, CancellationToken cancel)
    {
        await using var db = file.Db(tenant);
        return await db.Settings.AsNoTracking().Where(row => row.Name == name).Select(row => row.Value).SingleOrDefaultAsync(cancel);
    }

    /// <summary>Keeps a value.</summary>
    public Task Keep(Tenant tenant, string name, string value) => file.Write(
        tenant,
        async db =>
        {
            if (await db.Settings.SingleOrDefaultAsync(row => row.Name == name) is { } row) row.Value = value;
            else db.Settings.Add(new SettingRow { Tenant = tenant.Id, Name = name, Value = value });
            return true;
        },
        CancellationToken.None);
}
