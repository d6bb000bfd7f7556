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

    /// <summary>Lets SQLite reckon a row's checksum by itself, and pack a text.</summary>
    public static void Teach(SqliteConnection connection)
    {
        connection.CreateFunction(HandWritten.Checksum, (object?[] values) => RowChecksum.Of(values), isDeterministic: true);
        connection.CreateFunction(HandWritten.Packed, (string text, string? other) => PackedText.Pack(text, other), isDeterministic: true);
    }

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

        foreach (DamagedPlace? place in SensorSoundness.Look(connection))
        {
            yield return place;
        }
    }

    private static bool IsSound(SqliteConnection connection, SealedTable table, long row) =>
        Read(() => Numbers(connection, $"SELECT checksum = {table.Sum} FROM {table.Name} WHERE rowid = $row", row)) is [1];

    private static DamagedPlace Describe(SqliteConnection connection, SealedTable table, long row)
    {
        string? title = Read(() => Text(connection, $"SELECT {table.Title} FROM {table.Name} t WHERE rowid = $row", row));
        string? owner = table.Owner is null ? null : Read(() => Text(connection, $"SELECT {table.Owner} FROM {table.Name} t WHERE rowid = $row", row));
        return new DamagedPlace(
            string.Create(CultureInfo.InvariantCulture, $"{table.Words} {title ?? $"no. {row}"}"),
            Guid.TryParse(owner, out Guid id) ? id : null,
            owner is null ? null : Newest(connection, owner));
    }

    /// <summary>Tables whose rows are drafts, the column that says whose, and what such a draft is called.</summary>
    private static readonly (string Table, string Owner, string Words)[] Drafts =
        [("drafts", "recipe_id", "the draft"), ("kits", "id", "the kit"), ("foods", "id", "the food"), ("waters", "id", "the water plan"), ("larder_sheets", "id", "the larder sheet")];

    /// <summary>An owner's newest sound text: its draft; the edit the draft stands on; the latest edit; the latest version.</summary>
    private static SoundText? Newest(SqliteConnection connection, string owner)
    {
        string standing = string.Join(" UNION ", Drafts.Select(draft => $"SELECT edit_id FROM {draft.Table} WHERE {draft.Owner} = $row"));
        return Drafts.Select(draft => Sound(connection, draft.Table, $"{draft.Owner} = $row", $"'{draft.Words}'", "updated_ticks", owner)).FirstOrDefault(text => text is not null)
            ?? Sound(connection, "edits", $"id IN ({standing})", EditTitle, "at_ticks", owner)
            ?? Sound(connection, "edits", "owner_id = $row", EditTitle, "at_ticks", owner)
            ?? Sound(connection, "versions", "owner_id = $row", "'version ' || number", "cut_ticks", owner);
    }

    private const string EditTitle = "'the edit \"' || label || '\"'";

    private static SoundText? Sound(SqliteConnection connection, string table, string which, string title, string ticks, string owner)
    {
        foreach (long row in Read(() => Numbers(connection, $"SELECT rowid FROM {table} WHERE {which} ORDER BY rowid DESC", owner)) ?? [])
        {
            SoundText? text = Read(() => Document(connection, table, row) is not { } document ? null : new SoundText(
                document,
                Text(connection, $"SELECT {title} FROM {table} WHERE rowid = $row", row)!,
                new DateTimeOffset(Numbers(connection, $"SELECT {ticks} FROM {table} WHERE rowid = $row", row)[0], TimeSpan.Zero)));
            if (text is not null)
            {
                return text;
            }
        }

        return null;
    }

    /// <summary>What a row says; null where it is damaged, or was set aside.</summary>
    private static string? Document(SqliteConnection connection, string table, long row) =>
        !IsSound(connection, Tables.Single(t => t.Name == table), row) ? null
        : table != "edits" ? Text(connection, $"SELECT document FROM {table} WHERE rowid = $row", row)
        : Numbers(connection, "SELECT is_set_aside FROM edits WHERE rowid = $row", row) is [0] ? After(connection, row)
        : null;

    /// <summary>The text after a sound edit; null where it is the difference to one that is damaged.</summary>
    private static string? After(SqliteConnection connection, long row)
    {
        byte[] packed = (byte[])Value(connection, "SELECT after FROM edits WHERE rowid = $row", row)!;
        if (Numbers(connection, "SELECT base_id FROM edits WHERE rowid = $row AND base_id IS NOT NULL", row) is not [long whole])
        {
            return PackedText.Open(packed);
        }

        bool isWhole = IsSound(connection, Tables.Single(t => t.Name == "edits"), whole);
        return isWhole && After(connection, whole) is { } other ? PackedText.Open(packed, other) : null;
    }

    /// <summary>Null where the file is too damaged to answer: its pages, or the names of its tables and columns.</summary>
    internal static T? Read<T>(Func<T> read)
        where T : class?
    {
        try
        {
            return read();
        }
        catch (Exception fault) when (fault is SqliteException { SqliteErrorCode: SQLitePCL.raw.SQLITE_CORRUPT or SQLitePCL.raw.SQLITE_ERROR } or InvalidOperationException or InvalidCastException)
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

    private static string? Text(SqliteConnection connection, string sql, object? row) => Value(connection, sql, row) as string;

    private static object? Value(SqliteConnection connection, string sql, object? row)
    {
        using SqliteCommand command = Command(connection, sql, row);
        return command.ExecuteScalar();
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
