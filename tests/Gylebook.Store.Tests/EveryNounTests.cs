namespace Gylebook.Store.Tests;

/// <summary>Kits, foods, waters and larder sheets have the log that recipes have: undo, redo, late texts, joined steps, versions.</summary>
public sealed class EveryNounTests : IAsyncLifetime
{
    private readonly Bench _bench = new();
    private Book _book = null!;

    public static TheoryData<BookNoun> Nouns => [.. Enum.GetValues<BookNoun>().Except([BookNoun.Gyle, BookNoun.Device, BookNoun.Setting])];

    public async ValueTask InitializeAsync() => _book = await _bench.OpenAsync();

    public async ValueTask DisposeAsync()
    {
        await _book.DisposeAsync();
        _bench.Dispose();
    }

    [Theory]
    [MemberData(nameof(Nouns))]
    public async Task Undo_and_redo_go_along_the_tree_and_the_name_goes_with_them(BookNoun noun)
    {
        Subject one = await MakeAsync(noun, "Start");
        Assert.Equal(new Draft(one.Id, one.Text("Start"), 1, _bench.Clock.Now, null, null), await one.DraftAsync());
        Assert.Equal(new DraftSave.Saved(2), await one.SaveAsync(1, "Left"));
        Assert.Equal((one.Text("Start"), null, "Name"), Shown(await one.UndoAsync(2)));
        Assert.Equal("Start", await one.NameAsync());
        Assert.Equal(new DraftSave.Saved(4), await one.SaveAsync(3, "Right"));
        Assert.Equal(new DraftSave.Saved(5), await one.SaveAsync(4, "Righter"));

        await _book.DisposeAsync();
        _book = await _bench.OpenAsync();
        one = On(noun, one.Id);

        Assert.Equal((one.Text("Right"), "Name", "Name"), Shown(await one.UndoAsync(5)));
        Assert.Equal((one.Text("Start"), null, "Name"), Shown(await one.UndoAsync(6)));
        Assert.IsType<DraftMove.NothingLeft>(await one.UndoAsync(7));
        Assert.Equal((one.Text("Right"), "Name", "Name"), Shown(await one.Drafts.RedoAsync(one.Id, 7, "tab", Bench.Cancellation)));
        Assert.Equal("Right", await one.NameAsync());
        Assert.Equal(
            [("Right", "Righter"), ("Start", "Right"), ("Start", "Left")],
            (await one.LogAsync()).Select(edit => (NameIn(edit.Before), NameIn(edit.After))));
    }

    [Theory]
    [MemberData(nameof(Nouns))]
    public async Task A_late_text_is_set_aside_and_a_pause_in_mid_word_is_no_step(BookNoun noun)
    {
        Subject one = await MakeAsync(noun, "Start");
        await one.SaveAsync(1, "St");
        Assert.Equal(new DraftSave.Stale(one.Text("St"), one.Text("Late"), 2), await one.SaveAsync(1, "Late"));
        Assert.Equal(new DraftSave.Saved(3, IsJoined: true), await one.SaveAsync(2, "Stout", new DraftJoin(one.Text("Start"), "both")));

        Assert.Equal((one.Text("Start"), null, "both"), Shown(await one.UndoAsync(3)));
        Assert.Equal(
            [("both", "Stout", false), ("Name", "Late", true), ("Name", "St", false)],
            (await one.LogAsync()).Select(edit => (edit.Label, NameIn(edit.After), edit.IsSetAside)));
    }

    [Theory]
    [MemberData(nameof(Nouns))]
    public async Task Versions_are_kept_under_numbers_of_its_own(BookNoun noun)
    {
        Subject one = await MakeAsync(noun, "One");
        Subject other = await MakeAsync(noun, "Other");
        NumberedVersion first = await one.Versions.KeepAsync(one.Id, "good", Bench.Cancellation);
        await one.SaveAsync(1, "Two");
        await one.Versions.KeepAsync(one.Id, cancellation: Bench.Cancellation);
        await one.Versions.KeepAsync(one.Id, cancellation: Bench.Cancellation);

        Assert.Equal(new NumberedVersion(one.Id, 1, one.Text("One"), CutReason.Kept, "good", _bench.Clock.Now), first);
        Assert.Equal([2, 1], (await one.Versions.ListAsync(one.Id, Bench.Cancellation)).Select(version => version.Number));
        Assert.Empty(await other.Versions.ListAsync(other.Id, Bench.Cancellation));
    }

    [Theory]
    [MemberData(nameof(Nouns))]
    public async Task Other_tabs_hear_of_undo_by_its_noun(BookNoun noun)
    {
        Subject one = await MakeAsync(noun, "One");
        await one.SaveAsync(1, "Two");
        using var listening = CancellationTokenSource.CreateLinkedTokenSource(Bench.Cancellation);
        IAsyncEnumerator<BookChange> heard = _book.Changes.WatchAsync(one.Id, listening.Token).GetAsyncEnumerator(listening.Token);

        await one.UndoAsync(2);

        Assert.True(await heard.MoveNextAsync());
        Assert.Equal(new BookChange(noun, one.Id, 3, "tab"), heard.Current);
        await listening.CancelAsync();
        await heard.DisposeAsync();
    }

    [Theory]
    [MemberData(nameof(Nouns))]
    public async Task What_begins_comes_into_the_book_with_its_first_edit_and_undo_leads_back_to_the_text_it_began_with(BookNoun noun)
    {
        Subject one = On(noun, Guid.CreateVersion7(_bench.Clock.GetUtcNow()));
        Assert.Null(await one.DraftAsync());
        await using IAsyncEnumerator<BookChange> heard = _book.Changes.WatchAllAsync(Bench.Cancellation).GetAsyncEnumerator(Bench.Cancellation);

        Assert.Equal(new DraftSave.Saved(2), await one.BeginAsync("Empty", "Mead"));

        Assert.True(await heard.MoveNextAsync());
        Assert.Equal(new BookChange(noun, one.Id, 2, "tab"), heard.Current);
        Assert.Equal(("Mead", one.Text("Mead")), (await one.NameAsync(), (await one.DraftAsync())!.Document));
        Assert.Equal((one.Text("Empty"), null, "Name"), Shown(await one.UndoAsync(2)));
        Assert.Equal("Empty", await one.NameAsync());
        Assert.Empty(Sqlite.BookCheck.Damage(_bench.File));
    }

    [Theory]
    [MemberData(nameof(Nouns))]
    public async Task Beginning_again_what_the_book_has_by_now_makes_no_second_one_and_loses_no_text(BookNoun noun)
    {
        Subject one = On(noun, Guid.CreateVersion7(_bench.Clock.GetUtcNow()));
        await one.BeginAsync("Empty", "Mead");
        Assert.Equal(new DraftSave.Saved(2), await one.BeginAsync("Empty", "Mead"));
        Assert.Equal(new DraftSave.Stale(one.Text("Mead"), one.Text("Mead 2"), 2), await one.BeginAsync("Empty", "Mead 2"));
        Assert.Contains(await one.LogAsync(), edit => edit.IsSetAside && edit.After == one.Text("Mead 2"));
    }

    [Fact]
    public async Task Undo_brings_back_the_id_that_recipes_find_a_food_by()
    {
        Guid honey = await _book.Foods.CreateAsync(Bench.Food("Honey", "honey"), cancellation: Bench.Cancellation);
        await _book.Foods.Drafts.SaveAsync(honey, 1, Bench.Food("Honey", "other"), "another text", "tab", Bench.Cancellation);
        Assert.Null(await _book.Foods.FindAsync("honey", Bench.Cancellation));

        await _book.Foods.Drafts.UndoAsync(honey, 2, "tab", Bench.Cancellation);

        Assert.Equal(honey, (await _book.Foods.FindAsync("honey", Bench.Cancellation))!.Id);
    }

    [Fact]
    public async Task A_damaged_kit_is_no_version_and_undo_goes_to_a_sound_text()
    {
        Guid kit = await _book.Kits.CreateAsync(Bench.Kit("Shed"), cancellation: Bench.Cancellation);
        await _book.Kits.Drafts.SaveAsync(kit, 1, Bench.Kit("Barn"), "another text", "tab", Bench.Cancellation);
        _bench.Sql("UPDATE kits SET document = replace(document, 'Barn', 'Born')");

        BookUnavailableException refusal = await Assert.ThrowsAsync<BookUnavailableException>(() => _book.Kits.Versions.KeepAsync(kit, cancellation: Bench.Cancellation));
        Assert.Contains("The draft of this kit is damaged", refusal.Message, StringComparison.Ordinal);
        DamagedPlace place = Assert.Single(Sqlite.BookCheck.Damage(_bench.File));
        Assert.Equal(("The kit \"Barn\"", Bench.Kit("Barn"), "the edit \"another text\""), (place.What, place.Sound!.Document, place.Sound.From));

        var undone = (DraftMove.Moved)await _book.Kits.Drafts.UndoAsync(kit, 2, "tab", Bench.Cancellation);
        Assert.Equal((Bench.Kit("Shed"), false), (undone.Draft.Document, undone.Draft.IsDamaged));
    }

    private static (string, string?, string?) Shown(DraftMove move)
    {
        Draft draft = Assert.IsType<DraftMove.Moved>(move).Draft;
        return (draft.Document, draft.UndoLabel, draft.RedoLabel);
    }

    private static string NameIn(string document) => System.Text.Json.JsonDocument.Parse(document).RootElement.GetProperty("name").GetString()!;

    private async Task<Subject> MakeAsync(BookNoun noun, string name)
    {
        string text = On(noun, Guid.Empty).Text(name);
        return On(noun, await (noun switch
        {
            BookNoun.Kit => _book.Kits.CreateAsync(text, cancellation: Bench.Cancellation),
            BookNoun.Food => _book.Foods.CreateAsync(text, cancellation: Bench.Cancellation),
            BookNoun.Water => _book.Waters.CreateAsync(text, cancellation: Bench.Cancellation),
            BookNoun.Larder => _book.Larder.CreateAsync(text, cancellation: Bench.Cancellation),
            _ => _book.Recipes.CreateAsync(text, cancellation: Bench.Cancellation),
        }));
    }

    private Subject On(BookNoun noun, Guid id) => noun switch
    {
        BookNoun.Kit => new(id, _book.Kits.Drafts, _book.Kits.Versions, Bench.Kit, async () => (await _book.Kits.FindAsync(id, Bench.Cancellation))!.Name),
        BookNoun.Food => new(id, _book.Foods.Drafts, _book.Foods.Versions, name => Bench.Food(name, "id"), async () => (await _book.Foods.FindAsync(id, Bench.Cancellation))!.Name),
        BookNoun.Water => new(id, _book.Waters.Drafts, _book.Waters.Versions, Bench.Water, async () => (await _book.Waters.FindAsync(id, Bench.Cancellation))!.Name),
        BookNoun.Larder => new(id, _book.Larder.Drafts, _book.Larder.Versions, name => Bench.Malt(name, "id"), async () => (await _book.Larder.FindAsync(id, Bench.Cancellation))!.Name),
        _ => new(id, _book.Drafts, _book.Versions, name => Bench.Recipe(name), async () => (await _book.Recipes.FindAsync(id, Bench.Cancellation))!.Name),
    };

    /// <summary>One thing of any noun.</summary>
    private sealed record Subject(Guid Id, BookDrafts Drafts, BookVersions Versions, Func<string, string> Text, Func<Task<string>> NameAsync)
    {
        public Task<Draft?> DraftAsync() => Drafts.FindAsync(Id, Bench.Cancellation);

        public Task<List<DraftEdit>> LogAsync() => Drafts.HistoryAsync(Id, cancellation: Bench.Cancellation);

        public Task<DraftMove> UndoAsync(long seen) => Drafts.UndoAsync(Id, seen, "tab", Bench.Cancellation);

        public Task<DraftSave> BeginAsync(string before, string after) => Drafts.BeginAsync(Id, Text(before), Text(after), "Name", "tab", Bench.Cancellation);

        public Task<DraftSave> SaveAsync(long seen, string name, DraftJoin? join = null) =>
            Drafts.SaveAsync(Id, seen, Text(name), "Name", "tab", join, Bench.Cancellation);
    }
}
