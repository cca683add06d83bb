using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;

namespace Purlin.Office.Storage.Migrations;

/// <summary>Schema 1: the tables as version 0.1 made them, all at once and without a number. A folder of that time is taken to be here.</summary>
[DbContext(typeof(OfficeDb))]
[Migration(Name)]
internal sealed class FirstTables : Migration
{
    public const string Name = "0001_FirstTables";

    private static readonly string[] Statements =
    [
        """CREATE TABLE "entry" ("Tenant" TEXT NOT NULL, "Insp" TEXT NOT NULL, "Dev" TEXT NOT NULL, "Seq" INTEGER NOT NULL, "Hash" TEXT NOT NULL, "Prev" TEXT NULL, "Hlc" TEXT NOT NULL, "Type" TEXT NOT NULL, "Raw" BLOB NOT NULL, "ReceivedAt" INTEGER NOT NULL, CONSTRAINT "PK_entry" PRIMARY KEY ("Tenant", "Insp", "Dev", "Seq"))""",
        """CREATE UNIQUE INDEX "IX_entry_Tenant_Hash" ON "entry" ("Tenant", "Hash")""",
        """CREATE TABLE "quarantine" ("Tenant" TEXT NOT NULL, "Insp" TEXT NOT NULL, "Hash" TEXT NOT NULL, "Name" TEXT NULL, "Raw" BLOB NOT NULL, "Why" TEXT NOT NULL, "ReceivedAt" INTEGER NOT NULL, CONSTRAINT "PK_quarantine" PRIMARY KEY ("Tenant", "Insp", "Hash"))""",
        """CREATE TABLE "receipt" ("Tenant" TEXT NOT NULL, "N" INTEGER NOT NULL, "Insp" TEXT NOT NULL, "Raw" BLOB NOT NULL, CONSTRAINT "PK_receipt" PRIMARY KEY ("Tenant", "N"))""",
        """CREATE INDEX "IX_receipt_Tenant_Insp" ON "receipt" ("Tenant", "Insp")""",
        """CREATE TABLE "blob" ("Tenant" TEXT NOT NULL, "Sha" TEXT NOT NULL, "Size" INTEGER NOT NULL, "MediaType" TEXT NOT NULL, "ReceivedAt" INTEGER NOT NULL, CONSTRAINT "PK_blob" PRIMARY KEY ("Tenant", "Sha"))""",
        """CREATE TABLE "edition" ("Tenant" TEXT NOT NULL, "Insp" TEXT NOT NULL, "Number" INTEGER NOT NULL, "Seal" TEXT NOT NULL, "Root" TEXT NOT NULL, "Page" TEXT NOT NULL, "Pdf" TEXT NOT NULL, "At" INTEGER NOT NULL, CONSTRAINT "PK_edition" PRIMARY KEY ("Tenant", "Insp", "Number"))""",
        """CREATE TABLE "session" ("Tenant" TEXT NOT NULL, "TokenHash" TEXT NOT NULL, "Until" INTEGER NOT NULL, CONSTRAINT "PK_session" PRIMARY KEY ("Tenant", "TokenHash"))""",
        """CREATE TABLE "setting" ("Name" TEXT NOT NULL CONSTRAINT "PK_setting" PRIMARY KEY, "Value" TEXT NOT NULL)""",
    ];

    protected override void Up(MigrationBuilder migrationBuilder)
    {
        foreach (var statement in Statements) migrationBuilder.Sql(statement);
        AppendOnly.Guard(migrationBuilder, "entry", "receipt", "edition");
    }
}
