namespace Gylebook.Store.Tests;

/// <summary>A pause in mid-word, saved: one step for undo, two lines in the log.</summary>
public sealed class JoinedEditTests : IAsyncLifetime
{
    private const string Both = "Name: Start → Best Bitter";

    private readonly Bench _bench = new();
    private Book _book = null!;
    private Guid _recipe;

    public async ValueTask InitializeAsync()
    {
        _book = await _bench.OpenAsync();
        _recipe = await _book.Recipes.CreateAsync(Bench.Recipe("Start"), cancellation: Bench.Cancellation);
        await SaveAsync(1, "Best B");
    }

    public async ValueTask DisposeAsync()
    {
        await _book.DisposeAsync();
        _bench.Dispose();
    }

    [Fact]
    public async Task Two_edits_joined_are_one_step_for_undo_and_redo_and_both_stay_in_the_log()
    {
        _bench.Clock.Now += DraftJoin.Within;
        Assert.Equal(new DraftSave.Saved(3, IsJoined: true), await SaveAsync(2, "Best Bitter", Joined("Start")));
        await _book.DisposeAsync();
        _book = await _bench.OpenAsync();

        var undone = Assert.IsType<DraftMove.Moved>(await _book.Drafts.UndoAsync(_recipe, 3, "tab A", Bench.Cancellation));
        Assert.Equal((Both, Bench.Recipe("Start"), null, Both), (undone.Label, undone.Draft.Document, undone.Draft.UndoLabel, undone.Draft.RedoLabel));
        var redone = Assert.IsType<DraftMove.Moved>(await _book.Drafts.RedoAsync(_recipe, 4, "tab A", Bench.Cancellation));
        Assert.Equal((Bench.Recipe("Best Bitter"), Both, null), (redone.Draft.Document, redone.Draft.UndoLabel, redone.Draft.RedoLabel));

        List<DraftEdit> log = await HistoryAsync();
        Assert.Equal([Bench.Recipe("Best Bitter"), Bench.Recipe("Best B")], log.Select(edit => edit.After));
        Assert.All(log, edit => Assert.Equal((null, Bench.Recipe("Start")), (edit.ParentId, edit.Before)));
    }

    [Fact]
    public async Task A_third_edit_joins_the_two()
    {
        await SaveAsync(2, "Best Bit", Joined("Start"));
        Assert.Equal(new DraftSave.Saved(4, IsJoined: true), await SaveAsync(3, "Best Bitter", Joined("Start")));
        Assert.Null((await _book.Drafts.UndoAsync(_recipe, 4, "tab A", Bench.Cancellation) as DraftMove.Moved)!.Draft.UndoLabel);
        Assert.Equal(3, (await HistoryAsync()).Count);
    }

    [Theory]
    [InlineData("tab B", "Start", "Best Bitter", 0)]
    [InlineData("tab A", "Another", "Best Bitter", 0)]
    [InlineData("tab A", "Start", "Start", 0)]
    [InlineData("tab A", "Start", "Best Bitter", 1)]
    [InlineData("tab A", "Start", "Best Bitter", -10_000)]
    public async Task What_is_another_tabs_or_began_elsewhere_or_ends_where_it_began_or_comes_late_is_a_step_of_its_own(
        string tab, string before, string name, int lateMilliseconds)
    {
        _bench.Clock.Now += DraftJoin.Within + TimeSpan.FromMilliseconds(lateMilliseconds);

        Assert.Equal(new DraftSave.Saved(3), await SaveAsync(2, name, Joined(before), tab));

        DraftEdit edit = (await HistoryAsync())[0];
        Assert.Equal((Bench.Recipe("Best B"), "Name"), (edit.Before, edit.Label));
    }

    [Fact]
    public async Task An_edit_of_another_tab_in_between_is_not_swallowed()
    {
        await SaveAsync(2, "Theirs", tab: "tab B");

        Assert.IsType<DraftSave.Stale>(await SaveAsync(2, "Best Bitter", Joined("Start")));
        Assert.Equal(new DraftSave.Saved(4), await SaveAsync(3, "Best Bitter", Joined("Start")));
        Assert.Equal(Bench.Recipe("Theirs"), (await HistoryAsync())[0].Before);
    }

    private static DraftJoin Joined(string before) => new(Bench.Recipe(before), Both);

    private Task<List<DraftEdit>> HistoryAsync() => _book.Drafts.HistoryAsync(_recipe, cancellation: Bench.Cancellation);

    private Task<DraftSave> SaveAsync(long seen, string name, DraftJoin? join = null, string tab = "tab A") =>
        _book.Drafts.SaveAsync(_recipe, seen, Bench.Recipe(name), "Name", tab, join, Bench.Cancellation);
}
