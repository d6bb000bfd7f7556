namespace Gylebook.Store.Tests;

public sealed class ChangeTests : IAsyncLifetime
{
    private readonly Bench _bench = new();
    private Book _book = null!;
    private Guid _recipe;

    public async ValueTask InitializeAsync()
    {
        _book = await _bench.OpenAsync();
        _recipe = await _book.Recipes.CreateAsync(Bench.Recipe("One"), cancellation: Bench.Cancellation);
    }

    public async ValueTask DisposeAsync()
    {
        await _book.DisposeAsync();
        _bench.Dispose();
    }

    [Fact]
    public async Task A_second_tab_sees_an_edit_and_who_made_it()
    {
        Guid other = await _book.Recipes.CreateAsync(Bench.Recipe("Other"), cancellation: Bench.Cancellation);
        IAsyncEnumerable<BookChange> secondTab = _book.Changes.WatchAsync(_recipe, Bench.Cancellation);

        await SaveAsync(other, 1, "Other edit");
        await SaveAsync(_recipe, 1, "Two");
        await SaveAsync(_recipe, 1, "Too late");
        await SaveAsync(_recipe, 1, "Two");
        await _book.Drafts.UndoAsync(_recipe, 2, "tab A", Bench.Cancellation);

        // The late text, and the one sent twice, changed nothing and are not told.
        Assert.Equal(
            [new BookChange(BookNoun.Recipe, _recipe, 2, "tab A"), new BookChange(BookNoun.Recipe, _recipe, 3, "tab A")],
            await secondTab.Take(2).ToListAsync(Bench.Cancellation));
    }

    [Fact]
    public async Task What_is_told_is_on_disk_already()
    {
        IAsyncEnumerable<BookChange> changes = _book.Changes.WatchAsync(_recipe, Bench.Cancellation);
        Task<long> seen = Task.Run(async () =>
        {
            await changes.FirstAsync(Bench.Cancellation);
            return (long)_bench.Sql("SELECT revision FROM drafts")!;
        });

        await SaveAsync(_recipe, 1, "Two");

        Assert.Equal(2, await seen);
    }

    [Fact]
    public async Task A_tab_that_was_closed_hears_no_more()
    {
        using var closing = new CancellationTokenSource();
        IAsyncEnumerable<BookChange> tab = _book.Changes.WatchAllAsync(closing.Token);
        await SaveAsync(_recipe, 1, "Two");
        await closing.CancelAsync();
        await SaveAsync(_recipe, 2, "Three");

        Assert.Empty(await tab.ToListAsync(CancellationToken.None));
    }

    [Fact]
    public async Task A_tab_that_is_closed_while_it_listens_stops_without_a_word()
    {
        using var closing = new CancellationTokenSource();
        await using IAsyncEnumerator<BookChange> tab = _book.Changes.WatchAllAsync(closing.Token).GetAsyncEnumerator(Bench.Cancellation);
        await SaveAsync(_recipe, 1, "Two");
        Assert.True(await tab.MoveNextAsync());

        ValueTask<bool> listening = tab.MoveNextAsync();
        Assert.False(listening.IsCompleted);
        await closing.CancelAsync();

        Assert.False(await listening);
    }

    [Fact]
    public async Task A_sleeping_tab_wakes_to_the_newest_changes()
    {
        IAsyncEnumerable<BookChange> tab = _book.Changes.WatchAsync(_recipe, Bench.Cancellation);
        for (long revision = 1; revision <= 100; revision++)
        {
            await SaveAsync(_recipe, revision, $"Edit {revision}");
        }

        List<BookChange> heard = await tab.Take(64).ToListAsync(Bench.Cancellation);
        Assert.Equal(101, heard[^1].Revision);
    }

    private Task<DraftSave> SaveAsync(Guid recipe, long seen, string name) =>
        _book.Drafts.SaveAsync(recipe, seen, Bench.Recipe(name), "Name", "tab A", Bench.Cancellation);
}
