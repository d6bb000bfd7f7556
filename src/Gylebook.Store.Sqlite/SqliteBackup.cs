using System.Globalization;
using Microsoft.Data.Sqlite;

namespace Gylebook.Store.Sqlite;

/// <summary>Restore of a book that is one SQLite file; a backup is made by <see cref="Book.BackupAsync(string, CancellationToken)"/>.</summary>
public static class SqliteBackup
{
    /// <summary>Puts a good backup in the place of the book. What lay there before is kept beside it.</summary>
    /// <inheritdoc cref="RestoreAsync(string, string, TimeProvider, bool, TimeSpan?, CancellationToken)"/>
    public static Task<string?> RestoreAsync(
        string backup, string file, TimeProvider clock, TimeSpan? patience = null, CancellationToken cancellation = default) =>
        RestoreAsync(backup, file, clock, evenDamaged: false, patience, cancellation);

    /// <summary>Puts a backup in the place of the book. What lay there before is kept beside it.</summary>
    /// <param name="backup">The backup; checked first.</param>
    /// <param name="file">The book's file; must not be open in a running Gylebook.</param>
    /// <param name="clock">The time, for the name of what is kept.</param>
    /// <param name="evenDamaged">Whether a backup of which something is damaged is brought back all the same.</param>
    /// <param name="patience">How long to wait for others; null for <see cref="SqliteBook.Patience"/>.</param>
    /// <param name="cancellation">Stops waiting before the change begins.</param>
    /// <returns>Where the book that lay there before is kept; null when there was none.</returns>
    /// <exception cref="BookUnavailableException">The backup is not good, or the book is in use; the book was left as it is.</exception>
    public static async Task<string?> RestoreAsync(
        string backup,
        string file,
        TimeProvider clock,
        bool evenDamaged,
        TimeSpan? patience = null,
        CancellationToken cancellation = default)
    {
        backup = Path.GetFullPath(backup);
        file = Path.GetFullPath(file);
        if (!File.Exists(backup))
        {
            throw Trouble.Missing(backup);
        }

        if (BookFile.Applied(backup).Count == 0)
        {
            throw Trouble.NotABook(backup);
        }

        await using FileStream? alone = await Presence.AloneAsync(file, () => true, patience ?? SqliteBook.Patience, cancellation);
        string incoming = file + ".restoring";
        BookCopy.Make(backup, incoming, overwrite: true, evenDamaged ? CopyCare.None : CopyCare.Rows);
        string? kept = File.Exists(file) ? Keep(file, clock.GetUtcNow()) : null;

        // A log of the old book must not be replayed over the new one.
        File.Delete(file + "-wal");
        File.Delete(file + "-shm");
        File.Move(incoming, file, overwrite: true);
        return kept;
    }

    /// <summary>Lays a copy of the old book, with what its log still holds, beside the new one.</summary>
    private static string Keep(string file, DateTimeOffset now)
    {
        string kept = $"{file}.replaced-{now.UtcDateTime.ToString("yyyyMMdd'T'HHmmssfff'Z'", CultureInfo.InvariantCulture)}";
        try
        {
            using SqliteConnection old = BookFile.Open(file, SqliteOpenMode.ReadWrite);
            BookFile.Execute(old, "PRAGMA wal_checkpoint(TRUNCATE)");
        }
        catch (SqliteException)
        {
            // Too damaged to be tidied: it is kept as it lies, log and all.
        }

        File.Copy(file, kept);
        if (File.Exists(file + "-wal"))
        {
            File.Copy(file + "-wal", kept + "-wal");
        }

        return kept;
    }
}
