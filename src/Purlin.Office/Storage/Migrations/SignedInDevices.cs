using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;

namespace Purlin.Office.Storage.Migrations;

/// <summary>Schema 3: which device a session is, since when, and when it was last here. A session of before says so once it is used.</summary>
[DbContext(typeof(OfficeDb))]
[Migration("0003_SignedInDevices")]
internal sealed class SignedInDevices : Migration
{
    private static readonly string[] Statements =
    [
        """ALTER TABLE "session" ADD COLUMN "Device" TEXT NOT NULL DEFAULT '' """,
        """ALTER TABLE "session" ADD COLUMN "Since" INTEGER NOT NULL DEFAULT 0""",
        """ALTER TABLE "session" ADD COLUMN "Seen" INTEGER NOT NULL DEFAULT 0""",
    ];

    protected override void Up(MigrationBuilder migrationBuilder)
    {
        foreach (var statement in Statements) migrationBuilder.Sql(statement);
    }
}
