namespace Gylebook.Store.Tests;

public sealed class DraftTests : IAsyncLifetime
{
    private readonly Bench _bench = new();
    private Book _book = null!;
    private Guid _recipe;

    public async ValueTask InitializeAsync()
    {
        _book = await _bench.OpenAsync();
        _recipe = await _book.Recipes.CreateAsync(Bench.Recipe("Plain Bitter"), cancellation: Bench.Cancellation);
    }

    public async ValueTask DisposeAsync()
    {
        await _book.DisposeAsync();
        _bench.Dispose();
    }

    [Fact]
    public async Task A_new_recipe_has_a_draft_and_nothing_to_undo()
    {
        Draft draft = await DraftAsync();

        Assert.Equal(new Draft(_recipe, Bench.Recipe("Plain Bitter"), 1, _bench.Clock.Now, null, null), draft);
    }

    [Fact]
    public async Task A_save_is_on_disk_with_the_next_revision_and_its_log_line()
    {
        _bench.Clock.Now += TimeSpan.FromMinutes(5);
        DraftSave answer = await SaveAsync(1, "Best Bitter", "Name");
        await ReopenAsync();

        Assert.Equal(new DraftSave.Saved(2), answer);
        Assert.Equal(new Draft(_recipe, Bench.Recipe("Best Bitter"), 2, _bench.Clock.Now, "Name", null), await DraftAsync());
        DraftEdit edit = Assert.Single(await HistoryAsync());
        Assert.Equal(
            new DraftEdit(edit.Id, null, "Name", _bench.Clock.Now, "tab A", Bench.Recipe("Plain Bitter"), Bench.Recipe("Best Bitter"), false),
            edit);
    }

    [Fact]
    public async Task A_stale_save_is_answered_with_both_texts_and_loses_neither()
    {
        await SaveAsync(1, "From tab A", "Name", "tab A");

        DraftSave answer = await SaveAsync(1, "From tab B", "Name", "tab B");

        Assert.Equal(new DraftSave.Stale(Bench.Recipe("From tab A"), Bench.Recipe("From tab B"), 2), answer);
        Assert.Equal(Bench.Recipe("From tab A"), (await DraftAsync()).Document);
        DraftEdit late = (await HistoryAsync())[0];
        Assert.True(late.IsSetAside);
        Assert.Equal("tab B", late.TabId);
        Assert.Equal(Bench.Recipe("From tab B"), late.After);
    }

    [Fact]
    public async Task A_late_text_is_no_part_of_undo_and_redo()
    {
        await SaveAsync(1, "From tab A", "A");
        await SaveAsync(1, "From tab B", "B");
        Assert.IsType<DraftMove.NothingLeft>(await RedoAsync(2));

        await UndoAsync(2);
        DraftMove redone = await RedoAsync(3);

        Assert.Equal(Bench.Recipe("From tab A"), Assert.IsType<DraftMove.Moved>(redone).Draft.Document);
    }

    [Fact]
    public async Task After_a_stale_answer_the_tab_may_save_over_it_knowingly()
    {
        await SaveAsync(1, "From tab A", "A");
        var stale = (DraftSave.Stale)await SaveAsync(1, "From tab B", "B");

        Assert.Equal(new DraftSave.Saved(3), await SaveAsync(stale.TheirRevision, "Both", "Merge"));
        Assert.Equal(Bench.Recipe("Both"), (await DraftAsync()).Document);
    }

    [Fact]
    public async Task A_save_sent_twice_because_its_answer_got_lost_is_saved_once()
    {
        await SaveAsync(1, "Best Bitter", "Name");

        Assert.Equal(new DraftSave.Saved(2), await SaveAsync(1, "Best Bitter", "Name"));
        Assert.Single(await HistoryAsync());
    }

    [Fact]
    public async Task Undo_and_redo_walk_the_log_and_survive_a_restart()
    {
        await SaveAsync(1, "Second", "Two");
        await SaveAsync(2, "Third", "Three");
        await ReopenAsync();

        var once = Assert.IsType<DraftMove.Moved>(await UndoAsync(3));
        Assert.Equal(("Three", Bench.Recipe("Second"), "Two", "Three"), (once.Label, once.Draft.Document, once.Draft.UndoLabel, once.Draft.RedoLabel));
        await ReopenAsync();

        var twice = Assert.IsType<DraftMove.Moved>(await UndoAsync(4));
        Assert.Equal((Bench.Recipe("Plain Bitter"), null, "Two"), (twice.Draft.Document, twice.Draft.UndoLabel, twice.Draft.RedoLabel));
        Assert.IsType<DraftMove.NothingLeft>(await UndoAsync(5));
        await ReopenAsync();

        Assert.Equal(Bench.Recipe("Second"), Assert.IsType<DraftMove.Moved>(await RedoAsync(5)).Draft.Document);
        Assert.Equal(Bench.Recipe("Third"), Assert.IsType<DraftMove.Moved>(await RedoAsync(6)).Draft.Document);
        Assert.IsType<DraftMove.NothingLeft>(await RedoAsync(7));
    }

    [Fact]
    public async Task An_edit_after_an_undo_ends_redo_but_the_old_branch_stays_in_the_log()
    {
        await SaveAsync(1, "Old branch", "Old");
        await UndoAsync(2);
        await SaveAsync(3, "New branch", "New");

        Assert.IsType<DraftMove.NothingLeft>(await RedoAsync(4));
        await UndoAsync(4);
        Assert.Equal(Bench.Recipe("New branch"), Assert.IsType<DraftMove.Moved>(await RedoAsync(5)).Draft.Document);
        Assert.Equal(["New", "Old"], (await HistoryAsync()).Select(edit => edit.Label));
    }

    [Fact]
    public async Task A_stale_undo_moves_nothing_and_shows_the_draft_as_it_is()
    {
        await SaveAsync(1, "Second", "Two");
        await SaveAsync(2, "Third", "Three");

        var stale = Assert.IsType<DraftMove.Stale>(await UndoAsync(2));

        Assert.Equal(await DraftAsync(), stale.Theirs);
        Assert.Equal(Bench.Recipe("Third"), stale.Theirs.Document);
    }

    [Fact]
    public async Task Undo_takes_the_name_in_the_list_back_too()
    {
        await SaveAsync(1, "Renamed", "Name");
        await UndoAsync(2);

        Assert.Equal("Plain Bitter", (await _book.Recipes.FindAsync(_recipe, Bench.Cancellation))!.Name);
    }

    [Fact]
    public async Task Tabs_that_race_lose_no_edit()
    {
        await Task.WhenAll(Enumerable.Range(0, 4).Select(tab => Task.Run(() => SaveTenAsync(tab))));

        Draft draft = await DraftAsync();
        List<DraftEdit> saved = [.. (await HistoryAsync()).Where(edit => !edit.IsSetAside)];
        Assert.Equal(41, draft.Revision);
        Assert.Equal(40, saved.Count);
        Assert.Equal(40, saved.Select(edit => edit.After).Distinct().Count());

        // Each edit builds on the one before: nobody wrote over what he had not seen.
        Assert.Equal(saved.Skip(1).Select(edit => edit.After), saved.SkipLast(1).Select(edit => edit.Before));
    }

    [Theory]
    [InlineData("not json at all")]
    [InlineData("[]")]
    [InlineData("""{ "format": "gylebook-kit/1", "name": "A kit" }""")]
    [InlineData("""{ "format": "gylebook-recipe/1" }""")]
    [InlineData("""{ "format": "gylebook-recipe/1", "name": " " }""")]
    [InlineData("""{ "format": "gylebook-recipe/1", "name": 5 }""")]
    public async Task What_is_no_recipe_is_refused_and_changes_nothing(string document)
    {
        await Assert.ThrowsAsync<ArgumentException>(
            () => _book.Drafts.SaveAsync(_recipe, 1, document, "Bad", "tab A", Bench.Cancellation));

        Assert.Equal(1, (await DraftAsync()).Revision);
        Assert.Empty(await HistoryAsync());
    }

    private async Task SaveTenAsync(int tab)
    {
        for (int edit = 0; edit < 10; edit++)
        {
            DraftSave answer;
            do
            {
                long seen = (await DraftAsync()).Revision;
                answer = await SaveAsync(seen, $"Tab {tab}, edit {edit}", "Race", $"tab {tab}");
            }
            while (answer is not DraftSave.Saved);
        }
    }

    private async Task ReopenAsync()
    {
        await _book.DisposeAsync();
        _book = await _bench.OpenAsync();
    }

    private async Task<Draft> DraftAsync() => (await _book.Drafts.FindAsync(_recipe, Bench.Cancellation))!;

    private Task<List<DraftEdit>> HistoryAsync() => _book.Drafts.HistoryAsync(_recipe, cancellation: Bench.Cancellation);

    private Task<DraftSave> SaveAsync(long seen, string name, string label, string tab = "tab A") =>
        _book.Drafts.SaveAsync(_recipe, seen, Bench.Recipe(name), label, tab, Bench.Cancellation);

    private Task<DraftMove> UndoAsync(long seen) => _book.Drafts.UndoAsync(_recipe, seen, "tab A", Bench.Cancellation);

    private Task<DraftMove> RedoAsync(long seen) => _book.Drafts.RedoAsync(_recipe, seen, "tab A", Bench.Cancellation);
}
