namespace Gylebook.Store.Tests;

/// <summary>What one file of another format brings lands together, changes nothing, and is taken back at once.</summary>
public sealed class LandingTests : IAsyncLifetime
{
    private readonly Bench _bench = new();
    private Book _book = null!;

    public async ValueTask InitializeAsync() => _book = await _bench.OpenAsync();

    public async ValueTask DisposeAsync()
    {
        await _book.DisposeAsync();
        _bench.Dispose();
    }

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Fact]
    public async Task All_of_it_goes_at_once_also_after_the_book_was_closed()
    {
        string[] texts = [Bench.Malt("Field", "field"), Bench.Food("Seeds", "seeds"), Bench.Kit("Pot"), Bench.Water("Well"), Bench.Recipe("Brown")];
        Landing landing = await _book.Landings.PutAsync(texts, "theirs.json", "tab", Cancellation);
        Assert.Equal(["malt", "food", "kit", "water", "recipe"], landing.Added.Select(file => file.Kind));

        await _book.DisposeAsync();
        _book = await _bench.OpenAsync();
        LandingUndone undone = (await _book.Landings.UndoAsync(cancellation: Cancellation))!;
        Assert.Equal(("theirs.json", 5, 0), (undone.From, undone.Gone.Count, undone.Stayed.Count));
        Assert.Empty(await _book.Recipes.ListAsync(cancellation: Cancellation));
        Assert.Empty(await _book.Kits.ListAsync(cancellation: Cancellation));
        Assert.Single(await _book.Recipes.DeletedAsync(Cancellation));
        Assert.Null(await _book.Landings.UndoAsync(cancellation: Cancellation));
    }

    [Fact]
    public async Task What_stands_is_not_changed_and_a_sheet_keeps_the_id_its_recipe_calls_it_by()
    {
        Guid recipe = await _book.Recipes.CreateAsync(Bench.Recipe("Brown"), cancellation: Cancellation);
        Guid malt = await _book.Larder.CreateAsync(Bench.Malt("Field", "field"), cancellation: Cancellation);
        Landing landing = await _book.Landings.PutAsync(
            [Bench.Recipe("Brown").Replace("\n", "\n ", StringComparison.Ordinal), Bench.Malt("Another", "field"), Bench.Malt("Field", "other-field")], "theirs.json", "tab", Cancellation);
        Assert.Equal(["Brown 2", "Field 2"], landing.Added.Select(file => file.Name));
        Assert.Equal("other-field", landing.Added.Last().CalledBy);
        Assert.IsType<FilePut.Clash>(landing.Puts[1]);
        Assert.Equal(1, (await _book.Drafts.FindAsync(recipe, Cancellation))!.Revision);
        Assert.Equal("Field", (await _book.Larder.FindAsync(malt, Cancellation))!.Name);
    }

    [Fact]
    public async Task What_was_changed_or_thrown_away_since_stays_as_it_is()
    {
        Landing landing = await _book.Landings.PutAsync([Bench.Kit("Pot"), Bench.Recipe("Brown"), Bench.Recipe("Pale")], "theirs.json", "tab", Cancellation);
        Guid brown = landing.Added.ElementAt(1).Id, pale = landing.Added.ElementAt(2).Id;
        await _book.Recipes.RenameAsync(brown, "Mine", "tab", Cancellation);
        await _book.Recipes.DeleteAsync(pale, Cancellation);
        LandingUndone undone = (await _book.Landings.UndoAsync(landing.Id, Cancellation))!;
        Assert.Equal(["kit \"Pot\""], undone.Gone);
        Assert.Equal(["recipe \"Mine\"", "recipe \"Pale\""], undone.Stayed);
        Assert.Equal("Mine", Assert.Single(await _book.Recipes.ListAsync(cancellation: Cancellation)).Name);
    }

    [Fact]
    public async Task The_last_is_taken_back_first_and_each_once()
    {
        await _book.Landings.PutAsync([Bench.Recipe("First")], "first.json", "tab", Cancellation);
        await _book.Landings.PutAsync([Bench.Recipe("Second")], "second.json", "tab", Cancellation);
        Assert.Equal("second.json", (await _book.Landings.UndoAsync(cancellation: Cancellation))!.From);
        Assert.Equal("first.json", (await _book.Landings.UndoAsync(cancellation: Cancellation))!.From);
        Assert.Null(await _book.Landings.UndoAsync(cancellation: Cancellation));
    }
}
