using Microsoft.EntityFrameworkCore.Migrations;

namespace Gylebook.Store.Sqlite.Migrations;

/// <summary>What the model cannot say and migrations therefore say by hand.</summary>
internal static class HandWritten
{
    /// <summary>Writes into the head of the file that it is a book of ours.</summary>
    public static void SignAsBook(this MigrationBuilder migration) =>
        migration.Sql(Invariant($"PRAGMA application_id = {BookFile.ApplicationId};"));

    /// <summary>Lets rows be added to a table, and never changed or deleted.</summary>
    public static void GuardAsAppendOnly(this MigrationBuilder migration, params IReadOnlyList<string> tables)
    {
        foreach (string table in tables)
        {
            foreach (string change in (string[])["UPDATE", "DELETE"])
            {
                migration.Sql(
                    $"""
                    CREATE TRIGGER {table}_refuse_{(change == "UPDATE" ? "update" : "delete")} BEFORE {change} ON {table}
                    BEGIN
                        SELECT RAISE(ABORT, '{table} is append-only: add a row that corrects the old one');
                    END;
                    """);
            }
        }
    }
}
