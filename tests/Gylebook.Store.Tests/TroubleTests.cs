using System.Data.Common;
using Gylebook.Store.Sqlite;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Gylebook.Store.Tests;

public sealed class TroubleTests : IDisposable
{
    private readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Fact]
    public async Task A_full_disk_is_named_and_what_was_saved_stays()
    {
        await using Book book = await _bench.OpenAsync();
        Guid recipe = await book.Recipes.CreateAsync(Bench.Recipe("Saved"), cancellation: Bench.Cancellation);
        await using Book cramped = _bench.Over(new NoRoomLeft());

        BookUnavailableException refusal = await RefusalAsync(() => cramped.Drafts.SaveAsync(
            recipe, 1, Bench.Recipe("Too much", new string('x', 100_000)), "Notes", "tab", Bench.Cancellation));

        Assert.Equal(BookTrouble.DiskFull, refusal.Trouble);
        Assert.Contains(_bench.File, refusal.Message, StringComparison.Ordinal);
        Assert.Contains("Make room", refusal.Message, StringComparison.Ordinal);
        Draft draft = (await book.Drafts.FindAsync(recipe, Bench.Cancellation))!;
        Assert.Equal((Bench.Recipe("Saved"), 1L), (draft.Document, draft.Revision));
        Assert.Empty(await book.Drafts.HistoryAsync(recipe, cancellation: Bench.Cancellation));
        Assert.Equal("ok", _bench.Sql("PRAGMA integrity_check"));

        // With room again the same save goes through.
        Assert.Equal(
            new DraftSave.Saved(2),
            await book.Drafts.SaveAsync(recipe, 1, Bench.Recipe("Too much", new string('x', 100_000)), "Notes", "tab", Bench.Cancellation));
    }

    [Fact]
    public async Task A_book_that_another_program_holds_is_named_and_reading_goes_on()
    {
        await using Book book = await _bench.OpenAsync(TimeSpan.FromMilliseconds(100));
        Guid recipe = await book.Recipes.CreateAsync(Bench.Recipe("Saved"), cancellation: Bench.Cancellation);
        using var other = new SqliteConnection($"Data Source={_bench.File};Pooling=False");
        other.Open();
        await using (DbTransaction held = await other.BeginTransactionAsync(Bench.Cancellation))
        {
            BookUnavailableException refusal = await RefusalAsync(() => RenameAsync(book, recipe));

            Assert.Equal(BookTrouble.InUse, refusal.Trouble);
            Assert.Contains(_bench.File, refusal.Message, StringComparison.Ordinal);
            Assert.Equal("Saved", (await book.Recipes.FindAsync(recipe, Bench.Cancellation))!.Name);
        }

        await RenameAsync(book, recipe);
        Assert.Equal("Renamed", (await book.Recipes.FindAsync(recipe, Bench.Cancellation))!.Name);
    }

    [Fact]
    public async Task A_book_of_a_newer_gylebook_is_left_as_it_is()
    {
        await using (await _bench.OpenAsync())
        {
        }

        _bench.Sql("INSERT INTO __EFMigrationsHistory VALUES ('99990101000000_FromTheFuture', '99.0.0')");
        string before = Bench.Fingerprint(_bench.File);

        BookUnavailableException refusal = await RefusalAsync(() => _bench.OpenAsync());

        Assert.Equal(BookTrouble.Newer, refusal.Trouble);
        Assert.Contains(_bench.File, refusal.Message, StringComparison.Ordinal);
        Assert.Contains("Update Gylebook", refusal.Message, StringComparison.Ordinal);
        Assert.Equal(before, Bench.Fingerprint(_bench.File));
        await RefusalAsync(() => SqliteBackup.RestoreAsync(_bench.File, _bench.At("other.sqlite"), _bench.Clock, cancellation: Bench.Cancellation));
        Assert.False(File.Exists(_bench.At("other.sqlite")));
    }

    [Fact]
    public async Task A_file_that_is_no_database_is_left_as_it_is()
    {
        await File.WriteAllTextAsync(_bench.File, string.Concat(Enumerable.Repeat("letters to my aunt. ", 500)), Bench.Cancellation);
        string before = Bench.Fingerprint(_bench.File);

        BookUnavailableException refusal = await RefusalAsync(() => _bench.OpenAsync());

        Assert.Equal((BookTrouble.NotABook, _bench.File), (refusal.Trouble, refusal.File));
        Assert.Equal(before, Bench.Fingerprint(_bench.File));
    }

    [Fact]
    public async Task Another_programs_database_is_left_as_it_is()
    {
        _bench.Sql("CREATE TABLE letters (text TEXT)");
        string before = Bench.Fingerprint(_bench.File);

        Assert.Equal(BookTrouble.NotABook, (await RefusalAsync(() => _bench.OpenAsync())).Trouble);
        Assert.Equal(before, Bench.Fingerprint(_bench.File));
    }

    [Fact]
    public async Task A_truncated_book_is_called_damaged()
    {
        await using (Book book = await _bench.OpenAsync())
        {
            await book.Recipes.CreateAsync(Bench.Recipe("Saved"), cancellation: Bench.Cancellation);
        }

        byte[] bytes = await File.ReadAllBytesAsync(_bench.File, Bench.Cancellation);
        await File.WriteAllBytesAsync(_bench.File, bytes[..6000], Bench.Cancellation);

        BookUnavailableException refusal = await RefusalAsync(() => _bench.OpenAsync());

        Assert.Equal(BookTrouble.Damaged, refusal.Trouble);
        Assert.Contains("gylebook restore", refusal.Message, StringComparison.Ordinal);
        Assert.Equal(6000, new FileInfo(_bench.File).Length);
    }

    [Fact]
    public async Task A_folder_in_the_place_of_the_file_is_named()
    {
        Directory.CreateDirectory(_bench.File);

        BookUnavailableException refusal = await RefusalAsync(() => _bench.OpenAsync());

        Assert.Equal((BookTrouble.NoAccess, _bench.File), (refusal.Trouble, refusal.File));
    }

    [Fact]
    public async Task A_first_start_that_was_killed_half_way_can_be_repeated()
    {
        _bench.Sql(
            """
            CREATE TABLE __EFMigrationsLock (Id INTEGER NOT NULL PRIMARY KEY, Timestamp TEXT NOT NULL);
            INSERT INTO __EFMigrationsLock VALUES (1, '2026-03-14 09:30:00');
            """);

        Task<Book> opening = _bench.OpenAsync();
        Assert.Same(opening, await Task.WhenAny(opening, Task.Delay(TimeSpan.FromSeconds(60), Bench.Cancellation)));
        await using Book book = await opening;
        Assert.Empty(await book.Recipes.ListAsync(cancellation: Bench.Cancellation));
    }

    [Fact]
    public async Task Two_that_start_at_once_on_a_new_book_both_get_it()
    {
        Book[] books = await Task.WhenAll(Enumerable.Range(0, 2).Select(_ => Task.Run(() => _bench.OpenAsync(TimeSpan.FromSeconds(60)))));

        await books[0].Recipes.CreateAsync(Bench.Recipe("Shared"), cancellation: Bench.Cancellation);
        Assert.Single(await books[1].Recipes.ListAsync(cancellation: Bench.Cancellation));
        await books[0].DisposeAsync();
        await books[1].DisposeAsync();
    }

    private static Task<long> RenameAsync(Book book, Guid recipe) =>
        book.Recipes.RenameAsync(recipe, "Renamed", "tab", Bench.Cancellation);

    private static Task<BookUnavailableException> RefusalAsync(Func<Task> act) =>
        Assert.ThrowsAsync<BookUnavailableException>(act);

    /// <summary>Lets SQLite meet its own "disk full" by allowing the file not one page more than it has.</summary>
    private sealed class NoRoomLeft : DbConnectionInterceptor
    {
        public override async Task ConnectionOpenedAsync(
            DbConnection connection, ConnectionEndEventData eventData, CancellationToken cancellationToken = default)
        {
            // No pool for this one: the limit must not follow the connection to its next user.
            SqliteConnection.ClearPool((SqliteConnection)connection);
            await using DbCommand command = connection.CreateCommand();
            command.CommandText = "PRAGMA max_page_count = 1";
            await command.ExecuteNonQueryAsync(cancellationToken);
        }
    }
}
