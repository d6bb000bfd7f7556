using Microsoft.Data.Sqlite;

namespace Gylebook.Store.Sqlite;

/// <summary>Reads a whole book that is one SQLite file, and names what is damaged in it.</summary>
public static class BookCheck
{
    // The first of them tell all that a brewer can use.
    private const int MostComplaints = 3;

    /// <summary>Whether a file begins like a book: whether it is one of ours is said when it is opened.</summary>
    public static bool LooksLikeBook(string file)
    {
        try
        {
            using FileStream stream = File.OpenRead(file);
            byte[] start = new byte[16];
            return stream.ReadAtLeast(start, start.Length, throwOnEndOfStream: false) == start.Length
                && start.AsSpan().SequenceEqual("SQLite format 3\0"u8);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return false;
        }
    }

    /// <summary>Everything in the book that is not as it was written; none when all is well.</summary>
    /// <param name="file">The book; may be open in a running Gylebook.</param>
    /// <exception cref="BookUnavailableException">Not a book, newer, of an older Gylebook, or out of reach.</exception>
    public static IReadOnlyList<DamagedPlace> Damage(string file)
    {
        file = Path.GetFullPath(file);
        if (BookFile.Known.Except(BookFile.Applied(file)).Any())
        {
            throw Trouble.Older(file);
        }

        try
        {
            using SqliteConnection connection = BookFile.OpenToRead(file, BookFile.WayIn(file));
            List<DamagedPlace> places = [.. Soundness.Look(connection).OfType<DamagedPlace>()];
            places.AddRange(Complaints(connection).Select(complaint => new DamagedPlace($"The form of the file ({complaint})", null, null)));
            return places;
        }
        catch (SqliteException fault) when (Trouble.Explain(fault, file) is { } advice)
        {
            throw advice;
        }
    }

    /// <summary>Refuses a copy that is not good.</summary>
    /// <param name="copy">The file to read.</param>
    /// <param name="blame">The file it is a copy of, which is the one to name.</param>
    /// <param name="care">How closely to look.</param>
    /// <exception cref="BookUnavailableException">It is damaged.</exception>
    internal static void Check(string copy, string blame, CopyCare care)
    {
        if (care == CopyCare.None)
        {
            return;
        }

        try
        {
            using SqliteConnection connection = BookFile.Open(copy, SqliteOpenMode.ReadOnly);
            bool isSealed = care == CopyCare.Rows && !BookFile.Known.Except(BookFile.Column(connection, BookFile.AppliedMigrations)).Any();
            List<DamagedPlace> damaged = isSealed ? [.. Soundness.Look(connection).OfType<DamagedPlace>()] : [];
            List<string> complaints = [.. Words(damaged), .. Complaints(connection)];
            if (complaints.Count > 0)
            {
                throw Trouble.Damaged(blame, string.Join("; ", complaints));
            }
        }
        catch (SqliteException fault) when (Trouble.Explain(fault, blame) is { } advice)
        {
            throw advice;
        }
    }

    private static IEnumerable<string> Words(List<DamagedPlace> damaged)
    {
        IEnumerable<string> first = damaged.Take(MostComplaints).Select(place => place.What);
        return damaged.Count > MostComplaints ? [.. first, Invariant($"and {damaged.Count - MostComplaints} more")] : first;
    }

    /// <summary>What SQLite itself finds wrong with pages and indexes.</summary>
    private static List<string> Complaints(SqliteConnection connection)
    {
        try
        {
            List<string> verdict = BookFile.Column(connection, $"PRAGMA integrity_check({MostComplaints})");
            return verdict is ["ok"] ? [] : verdict;
        }
        catch (SqliteException fault) when (fault.SqliteErrorCode == SQLitePCL.raw.SQLITE_CORRUPT)
        {
            return [fault.Message];
        }
    }
}
