using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;

namespace Purlin.Office.Storage.Migrations;

/// <summary>
/// Schema 2: the order of arrival as a number, what lists show in a table of its own, when a file was last hashed, retention and erasure, and a tenant in
/// settings too. The rows of lists are filled in by the program at the next start.
/// </summary>
[DbContext(typeof(OfficeDb))]
[Migration("0002_TenantsAndOutlines")]
internal sealed class TenantsAndOutlines : Migration
{
    // One count for lines and quarantine together, in the order in which their rows came.
    private const string Arrivals =
        """
        CREATE TEMP TABLE arrival AS
        SELECT Tenant, Insp, Hash, row_number() OVER (PARTITION BY Tenant, Insp ORDER BY ReceivedAt, held, at) AS n FROM (
            SELECT Tenant, Insp, Hash, ReceivedAt, 0 AS held, rowid AS at FROM entry
            UNION ALL SELECT Tenant, Insp, Hash, ReceivedAt, 1, rowid FROM quarantine)
        """;

    private static readonly string[] Statements =
    [
        """ALTER TABLE "entry" ADD COLUMN "Position" INTEGER NOT NULL DEFAULT 0""",
        """ALTER TABLE "quarantine" ADD COLUMN "Position" INTEGER NOT NULL DEFAULT 0""",
        Arrivals,
        "CREATE INDEX temp.arrival_hash ON arrival (Hash)",
        Numbered("entry"),
        Numbered("quarantine"),
        "DROP TABLE temp.arrival",
        """CREATE UNIQUE INDEX "IX_entry_Tenant_Insp_Position" ON "entry" ("Tenant", "Insp", "Position")""",
        """ALTER TABLE "blob" ADD COLUMN "HashedAt" INTEGER NOT NULL DEFAULT 0""",
        """ALTER TABLE "blob" ADD COLUMN "Stamp" INTEGER NOT NULL DEFAULT 0""",
        """CREATE TABLE "inspection" ("Tenant" TEXT NOT NULL, "Insp" TEXT NOT NULL, "Address" TEXT NOT NULL, "Date" TEXT NOT NULL, "Words" TEXT NOT NULL, "Demo" INTEGER NOT NULL, "Entries" INTEGER NOT NULL, "Held" INTEGER NOT NULL, "Photos" INTEGER NOT NULL, "PhotosHere" INTEGER NOT NULL, "Editions" INTEGER NOT NULL, "Heads" TEXT NOT NULL, "Root" TEXT NOT NULL, "Position" INTEGER NOT NULL, "ReceivedAt" INTEGER NOT NULL, "Receipt" INTEGER NULL, CONSTRAINT "PK_inspection" PRIMARY KEY ("Tenant", "Insp"))""",
        """CREATE INDEX "IX_inspection_Tenant_Date" ON "inspection" ("Tenant", "Date")""",
        """CREATE TABLE "retention" ("Tenant" TEXT NOT NULL, "Insp" TEXT NOT NULL, "KeepUntil" INTEGER NOT NULL, "ErasedAt" INTEGER NULL, CONSTRAINT "PK_retention" PRIMARY KEY ("Tenant", "Insp"))""",
        """CREATE TABLE "photo" ("Tenant" TEXT NOT NULL, "Insp" TEXT NOT NULL, "Sha" TEXT NOT NULL, CONSTRAINT "PK_photo" PRIMARY KEY ("Tenant", "Insp", "Sha"))""",
        """CREATE INDEX "IX_photo_Tenant_Sha" ON "photo" ("Tenant", "Sha")""",
        """CREATE INDEX "IX_session_TokenHash" ON "session" ("TokenHash")""",
        """ALTER TABLE "setting" RENAME TO "setting_1" """,
        """CREATE TABLE "setting" ("Tenant" TEXT NOT NULL, "Name" TEXT NOT NULL, "Value" TEXT NOT NULL, CONSTRAINT "PK_setting" PRIMARY KEY ("Tenant", "Name"))""",
        """INSERT INTO "setting" SELECT 'own', "Name", "Value" FROM "setting_1" """,
        """DROP TABLE "setting_1" """,
    ];

    protected override void Up(MigrationBuilder migrationBuilder)
    {
        AppendOnly.Unguard(migrationBuilder, "entry");
        foreach (var statement in Statements) migrationBuilder.Sql(statement);
        AppendOnly.GuardEntries(migrationBuilder);
    }

    private static string Numbered(string table) =>
        $"UPDATE {table} SET Position = (SELECT n FROM arrival WHERE arrival.Hash = {table}.Hash AND arrival.Tenant = {table}.Tenant AND arrival.Insp = {table}.Insp)";
}
