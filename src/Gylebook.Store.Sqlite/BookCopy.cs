using Microsoft.Data.Sqlite;

namespace Gylebook.Store.Sqlite;

/// <summary>How closely a copy is looked at before it gets its name.</summary>
internal enum CopyCare
{
    /// <summary>Its pages must hang together, and every row must be as it was written.</summary>
    Rows,

    /// <summary>Its pages must hang together.</summary>
    Pages,

    /// <summary>Not at all: the brewer knows that the book is damaged.</summary>
    None,
}

/// <summary>Copies a book through SQLite's online backup, while it may be in use.</summary>
internal static class BookCopy
{
    /// <summary>Copies the book that lies there.</summary>
    /// <param name="from">The book.</param>
    /// <param name="to">The copy: complete and checked, or not there at all.</param>
    /// <param name="overwrite">Whether the copy may take the place of an earlier one.</param>
    /// <param name="care">How closely it is checked.</param>
    public static void Make(string from, string to, bool overwrite, CopyCare care)
    {
        try
        {
            using SqliteConnection source = BookFile.OpenToRead(from, BookFile.WayIn(from));
            Make(source, from, to, overwrite, care);
        }
        catch (SqliteException fault) when (Trouble.Explain(fault, from) is { } advice)
        {
            throw advice;
        }
    }

    /// <summary>Copies the book that a connection holds open, wherever its file may be by now.</summary>
    /// <param name="source">The connection; does nothing else meanwhile.</param>
    /// <param name="from">The book, for messages.</param>
    /// <param name="to">The copy: complete and checked, or not there at all.</param>
    /// <param name="overwrite">Whether the copy may take the place of an earlier one.</param>
    /// <param name="care">How closely it is checked.</param>
    public static void Make(SqliteConnection source, string from, string to, bool overwrite, CopyCare care)
    {
        string partial = to + ".partial";
        try
        {
            File.Delete(partial);
            CopyPages(source, from, partial, to);
            BookCheck.Check(partial, from, care);
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

    private static void CopyPages(SqliteConnection source, string from, string partial, string to)
    {
        string blame = to;
        try
        {
            using SqliteConnection copy = BookFile.Open(partial, SqliteOpenMode.ReadWriteCreate);
            blame = from;
            source.BackupDatabase(copy);

            // A copy is one file that can be carried away, not a file and its log.
            blame = to;
            BookFile.Execute(copy, "PRAGMA journal_mode = DELETE");
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
}
