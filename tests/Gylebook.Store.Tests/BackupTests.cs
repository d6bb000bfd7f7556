using Gylebook.Store.Sqlite;

namespace Gylebook.Store.Tests;

public sealed class BackupTests : IDisposable
{
    private static readonly TimeSpan Short = TimeSpan.FromMilliseconds(200);

    private readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Fact]
    public async Task A_backup_of_a_book_in_use_is_one_file_with_all_that_was_saved()
    {
        await using Book book = await _bench.OpenAsync();
        await book.Recipes.CreateAsync(Bench.Recipe("Saved a moment ago"), cancellation: Bench.Cancellation);

        await book.BackupAsync(_bench.At("copy.sqlite"), Bench.Cancellation);

        Assert.Equal(["copy.sqlite"], Directory.GetFiles(_bench.Folder, "copy*").Select(Path.GetFileName));
        await using Book copy = await SqliteBook.OpenAsync(_bench.At("copy.sqlite"), _bench.Clock, cancellation: Bench.Cancellation);
        Assert.Equal(["Saved a moment ago"], await NamesAsync(copy));
    }

    [Fact]
    public async Task A_backup_writes_over_nothing()
    {
        await using Book book = await _bench.OpenAsync();
        await File.WriteAllTextAsync(_bench.At("copy.sqlite"), "precious", Bench.Cancellation);

        BookUnavailableException refusal = await RefusalAsync(() => book.BackupAsync(_bench.At("copy.sqlite"), Bench.Cancellation));
        BookUnavailableException itself = await RefusalAsync(() => book.BackupAsync(_bench.File, Bench.Cancellation));

        Assert.Equal((BookTrouble.AlreadyThere, BookTrouble.AlreadyThere), (refusal.Trouble, itself.Trouble));
        Assert.Equal("precious", await File.ReadAllTextAsync(_bench.At("copy.sqlite"), Bench.Cancellation));
    }

    [Fact]
    public async Task A_backup_into_no_folder_says_where_it_failed()
    {
        await using Book book = await _bench.OpenAsync();
        string target = _bench.At(Path.Combine("no such folder", "copy.sqlite"));

        BookUnavailableException refusal = await RefusalAsync(() => book.BackupAsync(target, Bench.Cancellation));

        Assert.Equal(BookTrouble.NoAccess, refusal.Trouble);
        Assert.Contains("no such folder", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Restore_brings_the_backup_back_and_keeps_what_lay_there()
    {
        await FillAsync("Then");
        await using (Book book = await _bench.OpenAsync())
        {
            await book.BackupAsync(_bench.At("copy.sqlite"), Bench.Cancellation);
        }

        await FillAsync("Since");
        string? kept = await RestoreAsync(_bench.At("copy.sqlite"));

        Assert.Equal(["Then"], await NamesAsync(_bench.File));
        Assert.NotNull(kept);
        Assert.Equal(["Since", "Then"], await NamesAsync(kept));
        Assert.Equal(["Then"], await NamesAsync(_bench.At("copy.sqlite")));
    }

    [Fact]
    public async Task What_a_killed_process_left_in_the_log_is_kept_too_and_does_not_leak_into_the_new_book()
    {
        await FillAsync("Then");
        await using (Book book = await _bench.OpenAsync())
        {
            await book.BackupAsync(_bench.At("copy.sqlite"), Bench.Cancellation);
            await book.Recipes.CreateAsync(Bench.Recipe("In the log"), cancellation: Bench.Cancellation);

            // As after a kill: the files as they lie, log included, with nobody at home.
            File.Copy(_bench.File, _bench.At("left.sqlite"));
            File.Copy(_bench.File + "-wal", _bench.At("left.sqlite-wal"));
        }

        Assert.True(new FileInfo(_bench.At("left.sqlite-wal")).Length > 0);
        string? kept = await SqliteBackup.RestoreAsync(
            _bench.At("copy.sqlite"), _bench.At("left.sqlite"), _bench.Clock, Short, Bench.Cancellation);

        Assert.Equal(["Then"], await NamesAsync(_bench.At("left.sqlite")));
        Assert.Equal(["In the log", "Then"], await NamesAsync(kept!));
    }

    [Fact]
    public async Task The_log_of_a_book_too_damaged_to_open_does_not_leak_into_the_new_one()
    {
        await FillAsync("Then");
        await using (Book book = await _bench.OpenAsync())
        {
            await book.BackupAsync(_bench.At("copy.sqlite"), Bench.Cancellation);
            await book.Recipes.CreateAsync(Bench.Recipe("In the log"), cancellation: Bench.Cancellation);
            File.Copy(_bench.File + "-wal", _bench.At("left.sqlite-wal"));
        }

        byte[] log = await File.ReadAllBytesAsync(_bench.At("left.sqlite-wal"), Bench.Cancellation);
        await File.WriteAllBytesAsync(_bench.At("left.sqlite"), [.. Enumerable.Repeat((byte)0xA5, 50_000)], Bench.Cancellation);
        string? kept = await SqliteBackup.RestoreAsync(
            _bench.At("copy.sqlite"), _bench.At("left.sqlite"), _bench.Clock, Short, Bench.Cancellation);

        Assert.Equal(["Then"], await NamesAsync(_bench.At("left.sqlite")));
        Assert.Equal(log, await File.ReadAllBytesAsync(kept + "-wal", Bench.Cancellation));
    }

    [Fact]
    public async Task Restore_where_there_is_no_book_makes_one()
    {
        await FillAsync("Then");

        Assert.Null(await SqliteBackup.RestoreAsync(_bench.File, _bench.At("new.sqlite"), _bench.Clock, Short, Bench.Cancellation));

        Assert.Equal(["Then"], await NamesAsync(_bench.At("new.sqlite")));
    }

    [Fact]
    public async Task Restore_does_not_pull_the_book_away_from_under_a_running_gylebook()
    {
        await FillAsync("Then");
        File.Copy(_bench.File, _bench.At("copy.sqlite"));
        await using (Book book = await _bench.OpenAsync())
        {
            await book.Recipes.CreateAsync(Bench.Recipe("Since"), cancellation: Bench.Cancellation);

            Assert.Equal(BookTrouble.InUse, (await RefusalAsync(() => RestoreAsync(_bench.At("copy.sqlite")))).Trouble);
        }

        Assert.Equal(["Since", "Then"], await NamesAsync(_bench.File));
    }

    [Fact]
    public async Task A_damaged_backup_is_refused_and_the_book_left_as_it_is()
    {
        await FillAsync([.. Enumerable.Range(0, 40).Select(i => $"Recipe {i:00}")]);
        File.Copy(_bench.File, _bench.At("copy.sqlite"));
        await DamageAsync(_bench.At("copy.sqlite"));
        string before = Bench.Fingerprint(_bench.File);

        BookUnavailableException refusal = await RefusalAsync(() => RestoreAsync(_bench.At("copy.sqlite")));

        Assert.Equal((BookTrouble.Damaged, _bench.At("copy.sqlite")), (refusal.Trouble, refusal.File));
        Assert.Equal(before, Bench.Fingerprint(_bench.File));
        Assert.Empty(Directory.GetFiles(_bench.Folder, "*.replaced*"));
        Assert.Empty(Directory.GetFiles(_bench.Folder, "*.restoring*"));
    }

    [Fact]
    public async Task A_damaged_book_gives_no_backup_that_looks_like_a_good_one()
    {
        await FillAsync([.. Enumerable.Range(0, 40).Select(i => $"Recipe {i:00}")]);
        await DamageAsync(_bench.File);
        await using Book book = await _bench.OpenAsync();

        BookUnavailableException refusal = await RefusalAsync(() => book.BackupAsync(_bench.At("copy.sqlite"), Bench.Cancellation));

        Assert.Equal((BookTrouble.Damaged, _bench.File), (refusal.Trouble, refusal.File));
        Assert.Empty(Directory.GetFiles(_bench.Folder, "copy*"));
    }

    [Theory]
    [InlineData("this is no database, but it is long enough to be looked at as one, page by page, if need be. ")]
    [InlineData("")]
    public async Task What_is_no_book_is_not_restored(string text)
    {
        await FillAsync("Mine");
        await File.WriteAllTextAsync(_bench.At("copy.sqlite"), text, Bench.Cancellation);

        Assert.Equal(BookTrouble.NotABook, (await RefusalAsync(() => RestoreAsync(_bench.At("copy.sqlite")))).Trouble);
        Assert.Equal(BookTrouble.NoAccess, (await RefusalAsync(() => RestoreAsync(_bench.At("missing.sqlite")))).Trouble);
        Assert.Equal(["Mine"], await NamesAsync(_bench.File));
    }

    /// <summary>Fills the middle of a book, where its rows lie, with noise.</summary>
    private static async Task DamageAsync(string file)
    {
        byte[] bytes = await File.ReadAllBytesAsync(file, Bench.Cancellation);
        const int Page = 4096;

        // The first pages hold the schema; damage there shows at once. We want the damage that hides.
        int from = 2 * bytes.Length / 3 / Page * Page;
        Array.Fill(bytes, (byte)0xA5, from, bytes.Length - from);
        await File.WriteAllBytesAsync(file, bytes, Bench.Cancellation);
    }

    private async Task FillAsync(params string[] names)
    {
        await using Book book = await _bench.OpenAsync();
        foreach (string name in names)
        {
            Guid recipe = await book.Recipes.CreateAsync(Bench.Recipe(name, new string('x', 3000)), cancellation: Bench.Cancellation);
            await book.Versions.KeepAsync(recipe, cancellation: Bench.Cancellation);
        }
    }

    private Task<string?> RestoreAsync(string backup) =>
        SqliteBackup.RestoreAsync(backup, _bench.File, _bench.Clock, Short, Bench.Cancellation);

    private static Task<BookUnavailableException> RefusalAsync(Func<Task> act) =>
        Assert.ThrowsAsync<BookUnavailableException>(act);

    private async Task<List<string>> NamesAsync(string file)
    {
        await using Book book = await SqliteBook.OpenAsync(file, _bench.Clock, cancellation: Bench.Cancellation);
        return await NamesAsync(book);
    }

    private static async Task<List<string>> NamesAsync(Book book) =>
        [.. (await book.Recipes.ListAsync(cancellation: Bench.Cancellation)).Select(line => line.Name).Order(StringComparer.Ordinal)];
}
