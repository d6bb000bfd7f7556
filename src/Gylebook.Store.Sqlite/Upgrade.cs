using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Gylebook.Store.Sqlite;

/// <summary>Makes a new book, or brings an older one up to date.</summary>
internal static class Upgrade
{
    public static async Task RunAsync(string file, TimeSpan patience, CancellationToken cancellation)
    {
        if (Pending(file) is null)
        {
            return;
        }

        MakeFolder(file);

        // Another process may do the work while we wait for the room; then we need not have it alone.
        await using FileStream? alone = await Presence.AloneAsync(file, () => Pending(file) is not null, patience, cancellation);
        if (alone is null || Pending(file) is not { } last)
        {
            return;
        }

        bool isOld = BookFile.Applied(file).Count > 0;
        if (isOld)
        {
            BookCopy.Make(file, $"{file}.before-{last}", overwrite: true, CopyCare.Pages);
        }

        await MigrateAsync(file, patience, cancellation);
        if (isOld)
        {
            Shrink(file);
        }
    }

    /// <summary>Gives back the room that an older form of the book took; where there is none to do it in, the book stays long.</summary>
    private static void Shrink(string file)
    {
        try
        {
            using SqliteConnection connection = BookFile.OpenToRead(file, BookFile.WayIn(file));
            BookFile.Execute(connection, "VACUUM");
        }
        catch (SqliteException fault) when (fault.SqliteErrorCode is SQLitePCL.raw.SQLITE_FULL or SQLitePCL.raw.SQLITE_IOERR)
        {
            // It is up to date all the same.
        }
    }

    /// <summary>The last migration the file still wants; null when it is up to date.</summary>
    private static string? Pending(string file) => BookFile.Known.Except(BookFile.Applied(file)).LastOrDefault();

    private static async Task MigrateAsync(string file, TimeSpan patience, CancellationToken cancellation)
    {
        DbContextOptions<BookContext> options = SqliteBook.Options(file, patience, SqliteOpenMode.ReadWriteCreate, null);
        try
        {
            await using var context = new BookContext(options);

            // We are alone here, so a migration lock in the file is one that a killed process left behind;
            // EF Core would wait for it for ever.
            await context.Database.ExecuteSqlRawAsync("DROP TABLE IF EXISTS __EFMigrationsLock", cancellation);
            await context.Database.OpenConnectionAsync(cancellation);
            Soundness.Teach((SqliteConnection)context.Database.GetDbConnection());

            // A migration may make a table anew; SQLite lets it only so, and only outside its transaction.
            await context.Database.ExecuteSqlRawAsync("PRAGMA foreign_keys = OFF", cancellation);
            await context.Database.MigrateAsync(cancellation);
        }
        catch (SqliteException fault) when (Trouble.Explain(fault, file) is { } advice)
        {
            throw advice;
        }
        finally
        {
            SqliteBook.Release(options);
        }
    }

    private static void MakeFolder(string file)
    {
        try
        {
            Directory.CreateDirectory(Path.GetDirectoryName(file)!);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw Trouble.NoAccess(file, fault);
        }
    }
}
