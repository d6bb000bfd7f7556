using System.Globalization;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using static SQLitePCL.raw;

namespace Gylebook.Store.Sqlite;

/// <summary>A book as a file, looked at from outside.</summary>
internal static class BookFile
{
    /// <summary>Stands in the head of every book, so that no other SQLite file is taken for one: "GYLE" in ASCII.</summary>
    public const int ApplicationId = 0x47594C45;

    /// <summary>SQL: the migrations a file has seen.</summary>
    public const string AppliedMigrations = "SELECT MigrationId FROM __EFMigrationsHistory ORDER BY MigrationId";

    private const string IndexInMemory = "unix-excl";

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
            using SqliteConnection connection = OpenToRead(file, WayIn(file));
            List<string> tables = Column(connection, "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%'");
            if (!tables.Except(MigrationTables).Any())
            {
                return [];
            }

            if (Column(connection, "PRAGMA application_id")[0] != ApplicationId.ToString(CultureInfo.InvariantCulture))
            {
                throw Trouble.NotABook(file);
            }

            List<string> applied = Column(connection, AppliedMigrations);
            return applied.Except(Known).Any() ? throw Trouble.Newer(file) : applied;
        }
        catch (SqliteException fault) when (Trouble.Explain(fault, file) is { } advice)
        {
            throw advice;
        }
    }

    /// <summary>SQLite's way to the disk: null for the usual one, or one that needs no room on it.</summary>
    /// <remarks>
    /// Readers and writers share an index of the log in a small file beside the book. On a full disk it cannot be made;
    /// then it is kept in memory, and no other program has the book meanwhile. Windows has no such way.
    /// </remarks>
    public static string? WayIn(string file)
    {
        try
        {
            OpenToRead(file, null).Dispose();
            return null;
        }
        catch (SqliteException fault) when (!OperatingSystem.IsWindows() && IsAboutTheIndex(fault))
        {
            OpenToRead(file, IndexInMemory).Dispose();
            return IndexInMemory;
        }
    }

    /// <summary>Opens a book and reads a little of it, so that its log is open too.</summary>
    /// <param name="file">The book's file.</param>
    /// <param name="vfs">From <see cref="WayIn"/>.</param>
    public static SqliteConnection OpenToRead(string file, string? vfs)
    {
        // Read and write: only so does SQLite see what a killed process left in the write-ahead log.
        SqliteConnection connection = Open(file, IsReadOnly(file) ? SqliteOpenMode.ReadOnly : SqliteOpenMode.ReadWrite, vfs);
        try
        {
            // The driver retries commands, not a backup: SQLite itself must wait for a book that is just being closed or tidied.
            Execute(connection, Invariant($"PRAGMA busy_timeout = {(long)SqliteBook.Patience.TotalMilliseconds}"));
            Column(connection, "SELECT count(*) FROM sqlite_master");
            return connection;
        }
        catch
        {
            connection.Dispose();
            throw;
        }
    }

    public static SqliteConnection Open(string file, SqliteOpenMode mode, string? vfs = null)
    {
        var connection = new SqliteConnection(
            new SqliteConnectionStringBuilder { DataSource = file, Mode = mode, Pooling = false, Vfs = vfs }.ToString());
        connection.Open();
        return connection;
    }

    public static void Execute(SqliteConnection connection, string sql)
    {
        using SqliteCommand command = connection.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }

    /// <summary>The first column of what a query finds.</summary>
    public static List<string> Column(SqliteConnection connection, string sql)
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

    private static bool IsAboutTheIndex(SqliteException fault) =>
        fault.SqliteErrorCode is SQLITE_FULL or SQLITE_CANTOPEN
        || fault.SqliteExtendedErrorCode is SQLITE_IOERR_SHMSIZE or SQLITE_IOERR_SHMOPEN or SQLITE_IOERR_SHMMAP;

    private static bool IsReadOnly(string file) => File.GetAttributes(file).HasFlag(FileAttributes.ReadOnly);
}
