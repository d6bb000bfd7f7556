using Microsoft.EntityFrameworkCore.Migrations;

namespace Gylebook.Store.Sqlite.Migrations;

/// <summary>What the model cannot say and migrations therefore say by hand.</summary>
internal static class HandWritten
{
    /// <summary>What SQL calls the checksum of a row's values: see <see cref="Soundness.Teach"/>.</summary>
    public const string Checksum = "row_checksum";

    /// <summary>What SQL calls a text packed for the log, alone or as the difference to another.</summary>
    public const string Packed = "packed_text";

    /// <summary>SQL: the checksum of those columns.</summary>
    public static string SumOf(IEnumerable<string> columns) => $"{Checksum}({string.Join(", ", columns)})";

    /// <summary>Gives each row of a table the checksum of those columns, which stand in the order of their names.</summary>
    public static void Seal(this MigrationBuilder migration, string table, params IReadOnlyList<string> columns) =>
        migration.Sql($"UPDATE {table} SET checksum = {SumOf(columns)};");

    /// <summary>Gives each row of a table whose columns changed a new checksum; what was damaged stays marked so.</summary>
    /// <param name="migration">The migration.</param>
    /// <param name="table">The table, with old and new columns in it.</param>
    /// <param name="was">What was summed, in its order.</param>
    /// <param name="now">What is summed from now on, in the order of their names.</param>
    public static void SealAgain(this MigrationBuilder migration, string table, IReadOnlyList<string> was, IReadOnlyList<string> now) =>
        migration.Sql($"UPDATE {table} SET checksum = CASE WHEN checksum = {SumOf(was)} THEN {SumOf(now)} ELSE ~{SumOf(now)} END;");

    /// <summary>Lets a migration change rows of an append-only table; to be guarded again at its end.</summary>
    public static void LiftGuard(this MigrationBuilder migration, params IReadOnlyList<string> tables)
    {
        foreach (string table in tables)
        {
            migration.Sql($"DROP TRIGGER {table}_refuse_update; DROP TRIGGER {table}_refuse_delete;");
        }
    }

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
