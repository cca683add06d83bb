using Microsoft.EntityFrameworkCore.Migrations;

namespace Purlin.Office.Storage.Migrations;

/// <summary>Triggers by which the database itself refuses to change or delete what was kept.</summary>
internal static class AppendOnly
{
    private static readonly string[] Acts = ["UPDATE", "DELETE"];

    public static void Guard(MigrationBuilder migration, params string[] tables)
    {
        foreach (var table in tables)
        {
            foreach (var act in Acts) migration.Sql(Trigger(table, act, ""));
        }
    }

    public static void Unguard(MigrationBuilder migration, string table)
    {
        foreach (var act in Acts) migration.Sql($"DROP TRIGGER IF EXISTS {table}_no_{act.ToLowerInvariant()}");
    }

    /// <summary>
    /// Guards entries, save that their bytes may be emptied, and nothing else of them changed, once the inspection's time has run out and its erasure is
    /// written down.
    /// </summary>
    public static void GuardEntries(MigrationBuilder migration)
    {
        const string Same = "Tenant,Insp,Dev,Seq,Hash,Prev,Hlc,Type,ReceivedAt,Position";
        var unchanged = string.Join(" AND ", Same.Split(',').Select(column => $"NEW.\"{column}\" IS OLD.\"{column}\""));
        const string TimeIsUp =
            "EXISTS (SELECT 1 FROM retention WHERE retention.Tenant = OLD.Tenant AND retention.Insp = OLD.Insp AND retention.ErasedAt >= retention.KeepUntil)";
        migration.Sql(Trigger("entry", "UPDATE", $"WHEN NOT (length(NEW.Raw) = 0 AND {unchanged} AND {TimeIsUp})"));
        migration.Sql(Trigger("entry", "DELETE", ""));
    }

    private static string Trigger(string table, string act, string when) =>
        $"CREATE TRIGGER IF NOT EXISTS {table}_no_{act.ToLowerInvariant()} BEFORE {act} ON {table} {when} BEGIN SELECT RAISE(ABORT, '{table} is append-only'); END";
}
