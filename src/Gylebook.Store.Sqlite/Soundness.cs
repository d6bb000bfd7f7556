using System.Globalization;
using Gylebook.Store.Rows;
using Gylebook.Store.Sqlite.Migrations;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Gylebook.Store.Sqlite;

/// <summary>Compares every row of a book with its checksum, and names those that differ or cannot be read.</summary>
internal static class Soundness
{
    private static readonly IReadOnlyList<SealedTable> Tables = ReadTables();

    /// <summary>Lets SQLite reckon a row's checksum by itself.</summary>
    public static void Teach(SqliteConnection connection) =>
        connection.CreateFunction(HandWritten.Checksum, (object?[] values) => RowChecksum.Of(values), isDeterministic: true);

    /// <summary>Reads row by row.</summary>
    /// <returns>Null for each row that is sound.</returns>
    public static IEnumerable<DamagedPlace?> Look(SqliteConnection connection)
    {
        Teach(connection);
        foreach (SealedTable table in Tables)
        {
            List<long>? rows = Read(() => Numbers(connection, $"SELECT rowid FROM {table.Name}"));
            if (rows is null)
            {
                yield return new DamagedPlace($"The list of all {table.Name}", null, null);
                continue;
            }

            foreach (long row in rows)
            {
                yield return IsSound(connection, table, row) ? null : Describe(connection, table, row);
            }
        }
    }

    private static bool IsSound(SqliteConnection connection, SealedTable table, long row) =>
        Read(() => Numbers(connection, $"SELECT checksum = {table.Sum} FROM {table.Name} WHERE rowid = $row", row)) is [1];

    private static DamagedPlace Describe(SqliteConnection connection, SealedTable table, long row)
    {
        string? name = Read(() => Text(connection, $"SELECT {table.Title} FROM {table.Name} t WHERE rowid = $row", row));
        string? recipe = table.Recipe is null ? null : Read(() => Text(connection, $"SELECT {table.Recipe} FROM {table.Name} t WHERE rowid = $row", row));
        string what = name is null ? string.Create(CultureInfo.InvariantCulture, $"{table.Words} no. {row}") : $"{table.Words} \"{name}\"";
        return new DamagedPlace(
            what,
            Guid.TryParse(recipe, out Guid id) ? id : null,
            recipe is null ? null : Newest(connection, recipe));
    }

    /// <summary>A recipe's newest sound text: its draft; the edit the draft stands on; the latest edit; the latest version.</summary>
    private static SoundText? Newest(SqliteConnection connection, string recipe) =>
        Sound(connection, "drafts", "recipe_id = $row", "document", "'the draft'", "updated_ticks", recipe)
        ?? Sound(connection, "edits", "id = (SELECT edit_id FROM drafts WHERE recipe_id = $row)", "after", EditTitle, "at_ticks", recipe)
        ?? Sound(connection, "edits", "recipe_id = $row", "after", EditTitle, "at_ticks", recipe)
        ?? Sound(connection, "versions", "recipe_id = $row", "document", "'version ' || number", "cut_ticks", recipe);

    private const string EditTitle = "'the edit \"' || label || '\"'";

    private static SoundText? Sound(
        SqliteConnection connection, string table, string which, string text, string title, string ticks, string recipe)
    {
        SealedTable rows = Tables.Single(t => t.Name == table);
        foreach (long row in Read(() => Numbers(connection, $"SELECT rowid FROM {table} WHERE {which} ORDER BY rowid DESC", recipe)) ?? [])
        {
            bool isGood = IsSound(connection, rows, row)
                && (table != "edits" || Numbers(connection, "SELECT is_set_aside FROM edits WHERE rowid = $row", row) is [0]);
            if (isGood)
            {
                return new SoundText(
                    Text(connection, $"SELECT {text} FROM {table} WHERE rowid = $row", row)!,
                    Text(connection, $"SELECT {title} FROM {table} WHERE rowid = $row", row)!,
                    new DateTimeOffset(Numbers(connection, $"SELECT {ticks} FROM {table} WHERE rowid = $row", row)[0], TimeSpan.Zero));
            }
        }

        return null;
    }

    /// <summary>Null where the file is too damaged to answer.</summary>
    private static T? Read<T>(Func<T> read)
        where T : class?
    {
        try
        {
            return read();
        }
        catch (Exception fault) when (fault is SqliteException { SqliteErrorCode: SQLitePCL.raw.SQLITE_CORRUPT } or InvalidOperationException or InvalidCastException)
        {
            return null;
        }
    }

    private static List<long> Numbers(SqliteConnection connection, string sql, object? row = null)
    {
        using SqliteCommand command = Command(connection, sql, row);
        using SqliteDataReader rows = command.ExecuteReader();
        List<long> numbers = [];
        while (rows.Read())
        {
            numbers.Add(rows.GetInt64(0));
        }

        return numbers;
    }

    private static string? Text(SqliteConnection connection, string sql, object? row)
    {
        using SqliteCommand command = Command(connection, sql, row);
        return command.ExecuteScalar() as string;
    }

    private static SqliteCommand Command(SqliteConnection connection, string sql, object? row)
    {
        SqliteCommand command = connection.CreateCommand();
        command.CommandText = sql;
        if (row is not null)
        {
            command.Parameters.AddWithValue("$row", row);
        }

        return command;
    }

    private static IReadOnlyList<SealedTable> ReadTables()
    {
        using var context = new BookContext(SqliteBook.Options(":memory:", SqliteBook.Patience));
        return
        [
            .. context.Model.GetEntityTypes()
                .Where(entity => entity.ClrType.IsAssignableTo(typeof(ISealedRow)))
                .Select(entity => SealedTable.Of(
                    entity.GetTableName()!, RowChecksum.Summed(entity).Select(property => property.GetColumnName()))),
        ];
    }
}
