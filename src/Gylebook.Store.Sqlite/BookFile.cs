using System.Globalization;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Gylebook.Store.Sqlite;

/// <summary>A book as a file, looked at from outside.</summary>
internal static class BookFile
{
    /// <summary>Stands in the head of every book, so that no other SQLite file is taken for one: "GYLE" in ASCII.</summary>
    public const int ApplicationId = 0x47594C45;

    private static readonly string[] MigrationTables = ["__EFMigrationsHistory", "__EFMigrationsLock"];

    /// <summary>The migrations this program knows, oldest first.</summary>
    public static IReadOnlyList<string> Known { get; } = ReadKnown();

    /// <summary>The migrations a file has seen; none when there is no file, or only an empty one.</summary>
    /// <exception cref="BookUnavailableException">Not a book, damaged, newer, or out of reach.</exception>
    public static IReadOnlyList<string> Applied(string file)
    {
        if (!File.Exists(file) || new FileInfo(file).Length == 0)
        {
            return [];
        }

        try
        {
            // Read and write: only so does SQLite see what a killed process left in the write-ahead log.
            using SqliteConnection connection = Open(file, IsReadOnly(file) ? SqliteOpenMode.ReadOnly : SqliteOpenMode.ReadWrite);
            List<string> tables = Column(connection, "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%'");
            if (!tables.Except(MigrationTables).Any())
            {
                return [];
            }

            if (Column(connection, "PRAGMA application_id")[0] != ApplicationId.ToString(CultureInfo.InvariantCulture))
            {
                throw Trouble.NotABook(file);
            }

            List<string> applied = Column(connection, "SELECT MigrationId FROM __EFMigrationsHistory ORDER BY MigrationId");
            return applied.Except(Known).Any() ? throw Trouble.Newer(file) : applied;
        }
        catch (SqliteException fault) when (Trouble.Explain(fault, file) is { } advice)
        {
            throw advice;
        }
    }

    /// <summary>Copies a book through SQLite's online backup, while it may be in use, and checks the copy.</summary>
    /// <param name="from">The book.</param>
    /// <param name="to">The copy: complete and checked, or not there at all.</param>
    /// <param name="overwrite">Whether the copy may take the place of an earlier one.</param>
    public static void Copy(string from, string to, bool overwrite)
    {
        string partial = to + ".partial";
        try
        {
            File.Delete(partial);
            CopyPages(from, partial, to);
            File.Move(partial, to, overwrite);
        }
        catch (IOException fault) when (fault is not BookUnavailableException && File.Exists(to) && !overwrite)
        {
            throw Trouble.AlreadyThere(to);
        }
        catch (Exception fault) when (fault is (IOException or UnauthorizedAccessException) and not BookUnavailableException)
        {
            throw Trouble.NoAccess(to, fault);
        }
        finally
        {
            DeleteQuietly(partial);
        }
    }

    /// <summary>Reads every page of a file and its indexes.</summary>
    /// <param name="file">The file to read.</param>
    /// <param name="blame">The file it is a copy of, which is the one to name.</param>
    /// <exception cref="BookUnavailableException">The file is damaged.</exception>
    private static void CheckIntegrity(string file, string blame)
    {
        try
        {
            using SqliteConnection connection = Open(file, SqliteOpenMode.ReadOnly);
            string verdict = string.Join("; ", Column(connection, "PRAGMA integrity_check(3)"));
            if (verdict != "ok")
            {
                throw Trouble.Damaged(blame, verdict);
            }
        }
        catch (SqliteException fault) when (Trouble.Explain(fault, blame) is { } advice)
        {
            throw advice;
        }
    }

    public static SqliteConnection Open(string file, SqliteOpenMode mode)
    {
        var connection = new SqliteConnection(
            new SqliteConnectionStringBuilder { DataSource = file, Mode = mode, Pooling = false }.ToString());
        connection.Open();
        return connection;
    }

    public static void Execute(SqliteConnection connection, string sql)
    {
        using SqliteCommand command = connection.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }

    private static void CopyPages(string from, string partial, string to)
    {
        string blame = from;
        try
        {
            using (SqliteConnection source = Open(from, IsReadOnly(from) ? SqliteOpenMode.ReadOnly : SqliteOpenMode.ReadWrite))
            {
                blame = to;
                using SqliteConnection copy = Open(partial, SqliteOpenMode.ReadWriteCreate);
                blame = from;
                // The driver retries commands, not a backup: SQLite itself must wait for a book that is just being closed or tidied.
                Execute(source, Invariant($"PRAGMA busy_timeout = {(long)SqliteBook.Patience.TotalMilliseconds}"));
                source.BackupDatabase(copy);

                // A copy is one file that can be carried away, not a file and its log.
                blame = to;
                Execute(copy, "PRAGMA journal_mode = DELETE");
            }

            CheckIntegrity(partial, blame: from);
        }
        catch (SqliteException fault) when (fault.SqliteErrorCode == SQLitePCL.raw.SQLITE_FULL)
        {
            throw Trouble.NoRoomFor(to, fault);
        }
        catch (SqliteException fault) when (Trouble.Explain(fault, blame) is { } advice)
        {
            throw advice;
        }
    }

    private static bool IsReadOnly(string file) => File.GetAttributes(file).HasFlag(FileAttributes.ReadOnly);

    private static void DeleteQuietly(string file)
    {
        try
        {
            File.Delete(file);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            // A leftover in a folder we may not write to; the caller has the real error already.
        }
    }

    private static List<string> Column(SqliteConnection connection, string sql)
    {
        using SqliteCommand command = connection.CreateCommand();
        command.CommandText = sql;
        using SqliteDataReader rows = command.ExecuteReader();
        var column = new List<string>();
        while (rows.Read())
        {
            column.Add(rows.GetString(0));
        }

        return column;
    }

    private static List<string> ReadKnown()
    {
        using var context = new BookContext(SqliteBook.Options(":memory:", SqliteBook.Patience));
        return [.. context.Database.GetMigrations()];
    }
}
