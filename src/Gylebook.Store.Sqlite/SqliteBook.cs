using System.Data.Common;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Diagnostics;
using Microsoft.EntityFrameworkCore.Infrastructure;

namespace Gylebook.Store.Sqlite;

/// <summary>Opens a book that is one SQLite file.</summary>
public static class SqliteBook
{
    /// <summary>How long a write waits while another connection writes, unless told otherwise.</summary>
    public static TimeSpan Patience { get; } = TimeSpan.FromSeconds(5);

    /// <summary>Opens the book; makes it when there is none, and brings an older one up to date.</summary>
    /// <param name="file">The book's file.</param>
    /// <param name="clock">The time, for what is stamped.</param>
    /// <param name="patience">How long to wait for others; null for <see cref="Patience"/>.</param>
    /// <param name="cancellation">Stops waiting.</param>
    /// <remarks>Before an older book is brought up to date, a copy is laid beside it.</remarks>
    /// <exception cref="BookUnavailableException">The file cannot be used; it was left as it is.</exception>
    public static async Task<Book> OpenAsync(
        string file, TimeProvider clock, TimeSpan? patience = null, CancellationToken cancellation = default)
    {
        file = Path.GetFullPath(file);
        TimeSpan wait = patience ?? Patience;
        await Upgrade.RunAsync(file, wait, cancellation);
        FileStream presence = await Presence.ShareAsync(file, wait, cancellation);
        try
        {
            string? vfs = BookFile.WayIn(file);
            DbContextOptions<BookContext> options = Options(file, wait, SqliteOpenMode.ReadWrite, vfs);
            SqliteHold hold = new(file, vfs, presence, options);
            return new Book(Access(options, clock, file, hold.EnsureInPlace), file, hold);
        }
        catch (SqliteException fault) when (Trouble.Explain(fault, file) is { } advice)
        {
            await presence.DisposeAsync();
            throw advice;
        }
    }

    /// <summary>How contexts reach that file.</summary>
    /// <param name="file">The book's file.</param>
    /// <param name="patience">How long to wait for others.</param>
    /// <param name="more">Further interceptors, for tests and measurements.</param>
    public static DbContextOptions<BookContext> Options(string file, TimeSpan patience, params IInterceptor[] more) =>
        Options(file, patience, SqliteOpenMode.ReadWrite, null, more);

    /// <summary>The way to a book through contexts of those options.</summary>
    /// <param name="options">From <see cref="Options(string, TimeSpan, IInterceptor[])"/>.</param>
    /// <param name="clock">The time, for what is stamped.</param>
    /// <param name="file">The book's file, for messages.</param>
    /// <param name="ensureInPlace">Refuses when the file is no longer the one that was opened; null where nobody looks.</param>
    public static BookAccess Access(DbContextOptions<BookContext> options, TimeProvider clock, string file, Action? ensureInPlace = null) => new(
        new PooledDbContextFactory<BookContext>(options),
        clock,
        file,
        (DbException fault) => fault is SqliteException sqlite ? Trouble.Explain(sqlite, file) : null,
        ensureInPlace);

    internal static DbContextOptions<BookContext> Options(
        string file, TimeSpan patience, SqliteOpenMode mode, string? vfs, params IInterceptor[] more)
    {
        string connection = new SqliteConnectionStringBuilder
        {
            DataSource = file,
            Mode = mode,
            Vfs = vfs,
            // SQLite's own busy_timeout waits first; the driver's retries, in whole seconds, come on top.
            DefaultTimeout = Math.Max(1, (int)patience.TotalSeconds),
        }.ToString();
        return new DbContextOptionsBuilder<BookContext>()
            .UseSqlite(connection, sqlite => sqlite.MigrationsAssembly(typeof(SqliteBook).Assembly.GetName().Name))
            .AddInterceptors([new BookConnections(patience), .. more])
            .Options;
    }

    /// <summary>Closes pooled connections, so that the file may be moved.</summary>
    internal static void Release(DbContextOptions<BookContext> options)
    {
        using var context = new BookContext(options);
        SqliteConnection.ClearPool((SqliteConnection)context.Database.GetDbConnection());
    }
}
