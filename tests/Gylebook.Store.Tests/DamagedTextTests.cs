namespace Gylebook.Store.Tests;

/// <summary>A text that the disk has changed, though it still can be read: noticed when it is opened, and never sealed as if it were sound.</summary>
public sealed class DamagedTextTests : IAsyncLifetime
{
    private readonly Bench _bench = new();
    private Book _book = null!;
    private Guid _recipe;

    public async ValueTask InitializeAsync()
    {
        _book = await _bench.OpenAsync();
        _recipe = await _book.Recipes.CreateAsync(Bench.Recipe("Hedgerow", "first"), cancellation: Bench.Cancellation);
        await _book.Versions.KeepAsync(_recipe, cancellation: Bench.Cancellation);
        await _book.Drafts.SaveAsync(_recipe, 1, Bench.Recipe("Hedgerow", "second"), "Notes", "tab", Bench.Cancellation);
    }

    public async ValueTask DisposeAsync()
    {
        await _book.DisposeAsync();
        _bench.Dispose();
    }

    [Fact]
    public async Task What_is_sound_is_not_called_damaged()
    {
        Assert.False((await DraftAsync()).IsDamaged);
        Assert.False(Assert.Single(await _book.Drafts.HistoryAsync(_recipe, cancellation: Bench.Cancellation)).IsDamaged);
        Assert.False(Assert.Single(await _book.Versions.ListAsync(_recipe, Bench.Cancellation)).IsDamaged);
    }

    [Fact]
    public async Task A_damaged_draft_is_noticed_and_nothing_is_made_of_it()
    {
        DamageDraft();

        Assert.True((await DraftAsync()).IsDamaged);
        Func<Task>[] makings =
        [
            () => _book.Versions.KeepAsync(_recipe, cancellation: Bench.Cancellation),
            () => _book.Publications.PublishAsync(_recipe, null, null, to => to.Version.Document, Bench.Cancellation),
            () => _book.Recipes.DuplicateAsync(_recipe, "Copy", Bench.Cancellation),
            () => _book.Recipes.RenameAsync(_recipe, "Other", "tab", Bench.Cancellation),
        ];
        foreach (Func<Task> making in makings)
        {
            Assert.Equal(BookTrouble.Damaged, (await Assert.ThrowsAsync<BookUnavailableException>(making)).Trouble);
        }

        Assert.Single(await _book.Versions.ListAsync(_recipe, Bench.Cancellation));
        Assert.Single(await _book.Recipes.ListAsync(cancellation: Bench.Cancellation));
    }

    [Fact]
    public async Task The_next_save_makes_it_whole_and_undo_goes_to_the_text_that_was_written()
    {
        DamageDraft();

        await _book.Drafts.SaveAsync(_recipe, 2, Bench.Recipe("Hedgerow", "third"), "Notes", "tab", Bench.Cancellation);

        Assert.False((await DraftAsync()).IsDamaged);
        DraftMove undone = await _book.Drafts.UndoAsync(_recipe, 3, "tab", Bench.Cancellation);
        Assert.Equal(Bench.Recipe("Hedgerow", "second"), Assert.IsType<DraftMove.Moved>(undone).Draft.Document);
    }

    [Fact]
    public async Task Undo_of_a_damaged_draft_goes_back_to_a_sound_text()
    {
        DamageDraft();

        DraftMove undone = await _book.Drafts.UndoAsync(_recipe, 2, "tab", Bench.Cancellation);

        Draft draft = Assert.IsType<DraftMove.Moved>(undone).Draft;
        Assert.Equal((Bench.Recipe("Hedgerow", "first"), false), (draft.Document, draft.IsDamaged));
        Assert.False((await DraftAsync()).IsDamaged);
    }

    [Fact]
    public async Task A_damaged_edit_is_named_and_undo_does_not_go_to_its_text()
    {
        _bench.Sql("DROP TRIGGER edits_refuse_update; UPDATE edits SET before = zeroblob(length(before))");

        Assert.True(Assert.Single(await _book.Drafts.HistoryAsync(_recipe, cancellation: Bench.Cancellation)).IsDamaged);
        BookUnavailableException refusal = await Assert.ThrowsAsync<BookUnavailableException>(() => _book.Drafts.UndoAsync(_recipe, 2, "tab", Bench.Cancellation));
        Assert.Equal(BookTrouble.Damaged, refusal.Trouble);
        Assert.Equal(Bench.Recipe("Hedgerow", "second"), (await DraftAsync()).Document);
    }

    [Fact]
    public async Task A_damaged_water_plan_is_marked_in_the_list_of_all()
    {
        await _book.Waters.CreateForAsync(_recipe, Bench.Water("Soft"), cancellation: Bench.Cancellation);
        await _book.Waters.CreateAsync(Bench.Water("Hard"), cancellation: Bench.Cancellation);
        _bench.Sql("UPDATE waters SET document = replace(document, 'Soft', 'S0ft')");

        List<WaterOf> waters = await _book.Waters.ListWithRecipesAsync(Bench.Cancellation);

        Assert.Equal([("Hard", false), ("Soft", true)], waters.Select(water => (water.Sheet.Name, water.Sheet.IsDamaged)));
        Assert.Equal("Hedgerow", waters[1].Recipe);
    }

    private async Task<Draft> DraftAsync() => (await _book.Drafts.FindAsync(_recipe, Bench.Cancellation))!;

    private void DamageDraft() => _bench.Sql("UPDATE drafts SET document = replace(document, 'second', 'sec0nd')");
}
