using Gylebook.Store.Sqlite;
using Microsoft.Data.Sqlite;

namespace Gylebook.Store.Tests;

/// <summary>A book that another program is just closing is waited for.</summary>
/// <remarks>
/// Whoever closes a book's last connection brings its log home, and holds the whole file meanwhile, against readers too.
/// That lasts milliseconds; <c>locking_mode = EXCLUSIVE</c> holds the same lock for as long as a test wants. While a book of
/// ours is open nobody can be the last: its own backup reads through the connection that it keeps.
/// </remarks>
public sealed class LockedBackupTests : IDisposable
{
    // Several rounds of SQLite's own waiting, and far below the book's patience.
    private static readonly TimeSpan Held = TimeSpan.FromMilliseconds(250);

    private readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Fact]
    public async Task A_restore_waits_for_a_backup_that_is_just_being_closed()
    {
        await MakeAsync();
        using SqliteConnection closing = Hold();

        Task restore = Task.Run(() => SqliteBackup.RestoreAsync(_bench.File, _bench.At("back.sqlite"), _bench.Clock, cancellation: Bench.Cancellation), Bench.Cancellation);
        Assert.NotSame(restore, await Task.WhenAny(restore, Task.Delay(Held, Bench.Cancellation)));
        closing.Close();
        await restore;

        await using Book back = await SqliteBook.OpenAsync(_bench.At("back.sqlite"), _bench.Clock, cancellation: Bench.Cancellation);
        Assert.Equal(["Saved"], (await back.Recipes.ListAsync(cancellation: Bench.Cancellation)).Select(line => line.Name));
    }

    /// <remarks>
    /// The driver tries again what is asked in SQL, but not a copy: only a lock that comes between the opening and the copying
    /// shows that SQLite itself waits. The file is locked half of the time, so that of thirty copies some begin while it is.
    /// </remarks>
    [Fact]
    public async Task Copying_waits_for_another_program_that_locks_the_backup_again_and_again()
    {
        await MakeAsync();
        string backup = _bench.At("backup.sqlite");
        await using (Book book = await _bench.OpenAsync())
        {
            await book.BackupAsync(backup, Bench.Cancellation);
        }

        using CancellationTokenSource end = new();
        Task<int> locking = Task.Run(() => LockAgainAndAgain(backup, end.Token), Bench.Cancellation);
        try
        {
            for (int i = 0; i < 30; i++)
            {
                await SqliteBackup.RestoreAsync(backup, _bench.At($"back{i}.sqlite"), _bench.Clock, cancellation: Bench.Cancellation);
            }
        }
        finally
        {
            await end.CancelAsync();
        }

        Assert.True(await locking > 30, "It was hardly ever locked.");
    }

    private async Task MakeAsync()
    {
        await using Book book = await _bench.OpenAsync();
        await book.Recipes.CreateAsync(Bench.Recipe("Saved"), cancellation: Bench.Cancellation);
    }

    /// <summary>Locks the file against everybody, half of the time.</summary>
    /// <returns>How often.</returns>
    private static int LockAgainAndAgain(string file, CancellationToken end)
    {
        using var connection = new SqliteConnection($"Data Source={file};Pooling=False");
        connection.Open();
        using SqliteCommand command = connection.CreateCommand();
        int times = 0;
        for (; !end.IsCancellationRequested; times++)
        {
            command.CommandText = "PRAGMA busy_timeout = 5000; BEGIN EXCLUSIVE";
            command.ExecuteNonQuery();
            Thread.Sleep(3);
            command.CommandText = "COMMIT";
            command.ExecuteNonQuery();
            Thread.Sleep(3);
        }

        return times;
    }

    /// <summary>Holds the file as the last to close it does.</summary>
    private SqliteConnection Hold()
    {
        var connection = new SqliteConnection($"Data Source={_bench.File};Pooling=False");
        connection.Open();
        using SqliteCommand command = connection.CreateCommand();
        command.CommandText = "PRAGMA locking_mode = EXCLUSIVE; SELECT count(*) FROM recipes";
        command.ExecuteScalar();
        return connection;
    }
}
