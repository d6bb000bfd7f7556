using Gylebook.Store.Sqlite;

namespace Gylebook.Store.Tests;

/// <summary>The book's file is taken away, or another put in its place, while it is open.</summary>
/// <remarks>Not on Windows, where the system lets nobody do either.</remarks>
public sealed class GoneTests : IDisposable
{
    private readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Nothing_is_called_saved_that_would_go_into_nothing_and_the_open_book_can_be_copied(bool isReplaced)
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        await using Book book = await _bench.OpenAsync();
        Guid recipe = await book.Recipes.CreateAsync(Bench.Recipe("Mine"), cancellation: Bench.Cancellation);
        await MakeAsync(_bench.At("other.sqlite"), "Another's");
        TakeAway();
        if (isReplaced)
        {
            File.Copy(_bench.At("other.sqlite"), _bench.File);
        }

        BookUnavailableException refusal = await Assert.ThrowsAsync<BookUnavailableException>(() => book.Drafts.SaveAsync(
            recipe, 1, Bench.Recipe("Into nothing"), "Name", "tab", Bench.Cancellation));
        await Assert.ThrowsAsync<BookUnavailableException>(() => book.Recipes.ListAsync(cancellation: Bench.Cancellation));

        Assert.Equal((BookTrouble.Gone, _bench.File), (refusal.Trouble, refusal.File));
        Assert.Contains("Write a copy", refusal.Message, StringComparison.Ordinal);
        Assert.Equal(isReplaced, File.Exists(_bench.File));
        await book.BackupAsync(_bench.At("copy.sqlite"), Bench.Cancellation);
        await using Book copy = await SqliteBook.OpenAsync(_bench.At("copy.sqlite"), _bench.Clock, cancellation: Bench.Cancellation);
        Assert.Equal("Mine", Assert.Single(await copy.Recipes.ListAsync(cancellation: Bench.Cancellation)).Name);
    }

    private async Task MakeAsync(string file, string name)
    {
        await using Book book = await SqliteBook.OpenAsync(file, _bench.Clock, cancellation: Bench.Cancellation);
        await book.Recipes.CreateAsync(Bench.Recipe(name), cancellation: Bench.Cancellation);
    }

    private void TakeAway()
    {
        foreach (string end in (string[])["", "-wal", "-shm"])
        {
            File.Delete(_bench.File + end);
        }
    }
}
