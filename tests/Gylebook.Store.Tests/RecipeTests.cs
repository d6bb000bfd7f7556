namespace Gylebook.Store.Tests;

public sealed class RecipeTests : IAsyncLifetime
{
    private readonly Bench _bench = new();
    private Book _book = null!;

    public async ValueTask InitializeAsync() => _book = await _bench.OpenAsync();

    public async ValueTask DisposeAsync()
    {
        await _book.DisposeAsync();
        _bench.Dispose();
    }

    [Fact]
    public async Task The_recipe_last_worked_on_comes_first()
    {
        Guid mild = await CreateAsync("Chestnut Mild");
        Later();
        Guid wheat = await CreateAsync("Apricot Wheat");
        Later();
        await _book.Drafts.SaveAsync(mild, 1, Bench.Recipe("Chestnut Mild", "less water"), "Notes", "tab", Bench.Cancellation);

        Assert.Equal([mild, wheat], (await ListAsync()).Select(line => line.Id));
    }

    [Theory]
    [InlineData("brulee", "Crème Brûlée Stout")]
    [InlineData("CRÈME", "Crème Brûlée Stout")]
    [InlineData("  stout ", "Crème Brûlée Stout")]
    [InlineData("100%", "100% Wheat_Beer")]
    [InlineData("t_b", "100% Wheat_Beer")]
    public async Task Search_finds_a_name_however_it_is_typed(string typed, string found)
    {
        await CreateAsync("Crème Brûlée Stout");
        await CreateAsync("100% Wheat_Beer");
        await CreateAsync("1000 Wheats");

        Assert.Equal([found], (await ListAsync(typed)).Select(line => line.Name));
    }

    [Fact]
    public async Task Renaming_moves_nothing_else_in_the_text_and_can_be_undone()
    {
        const string Before = """{"notes":"a \"name\": inside","format":"gylebook-recipe/1",  "name" : "Old", "yeast":{"name":"not this"}}""";
        Guid recipe = await _book.Recipes.CreateAsync(Before, cancellation: Bench.Cancellation);

        long revision = await _book.Recipes.RenameAsync(recipe, " Né \"Quoted\" ", "tab", Bench.Cancellation);

        Draft draft = (await _book.Drafts.FindAsync(recipe, Bench.Cancellation))!;
        Assert.Equal(Before.Replace("\"Old\"", "\"Né \\\"Quoted\\\"\"", StringComparison.Ordinal), draft.Document);
        Assert.Equal("Né \"Quoted\"", Assert.Single(await ListAsync()).Name);
        await _book.Drafts.UndoAsync(recipe, revision, "tab", Bench.Cancellation);
        Assert.Equal(Before, (await _book.Drafts.FindAsync(recipe, Bench.Cancellation))!.Document);
    }

    [Fact]
    public async Task A_copy_starts_from_the_draft_with_a_life_of_its_own()
    {
        Guid recipe = await CreateAsync("Hedgerow Brown", isDemo: true);
        await _book.Versions.KeepAsync(recipe, cancellation: Bench.Cancellation);

        Guid copy = await _book.Recipes.DuplicateAsync(recipe, "Hedgerow Black", Bench.Cancellation);
        await _book.Drafts.SaveAsync(copy, 1, Bench.Recipe("Hedgerow Blue"), "Name", "tab", Bench.Cancellation);

        RecipeLine line = (await _book.Recipes.FindAsync(copy, Bench.Cancellation))!;
        Assert.Equal(("Hedgerow Blue", null, false), (line.Name, line.LatestVersion, line.IsDemo));
        Assert.Equal(Bench.Recipe("Hedgerow Brown"), (await _book.Drafts.FindAsync(recipe, Bench.Cancellation))!.Document);
    }

    [Fact]
    public async Task A_deleted_recipe_comes_back_with_all_its_history()
    {
        Guid recipe = await CreateAsync("Plain Bitter");
        await _book.Drafts.SaveAsync(recipe, 1, Bench.Recipe("Best Bitter"), "Name", "tab", Bench.Cancellation);
        await _book.Versions.KeepAsync(recipe, cancellation: Bench.Cancellation);

        await _book.Recipes.DeleteAsync(recipe, Bench.Cancellation);
        Assert.Empty(await ListAsync());
        Assert.Empty(await ListAsync("bitter"));
        Assert.Equal(_bench.Clock.Now, Assert.Single(await _book.Recipes.DeletedAsync(Bench.Cancellation)).Deleted);

        await _book.Recipes.RestoreAsync(recipe, Bench.Cancellation);
        Assert.Equal(("Best Bitter", 2L, 1, null), Shown(Assert.Single(await ListAsync())));
        Assert.Empty(await _book.Recipes.DeletedAsync(Bench.Cancellation));
        Assert.Single(await _book.Drafts.HistoryAsync(recipe, cancellation: Bench.Cancellation));
    }

    [Fact]
    public async Task What_is_not_in_the_book_is_not_found()
    {
        Assert.Null(await _book.Recipes.FindAsync(Guid.Empty, Bench.Cancellation));
        Assert.Null(await _book.Drafts.FindAsync(Guid.Empty, Bench.Cancellation));
        await Assert.ThrowsAsync<ArgumentOutOfRangeException>(() => _book.Recipes.DeleteAsync(Guid.Empty, Bench.Cancellation));
    }

    private static (string, long, int?, DateTimeOffset?) Shown(RecipeLine line) =>
        (line.Name, line.Revision, line.LatestVersion, line.Deleted);

    private void Later() => _bench.Clock.Now += TimeSpan.FromHours(1);

    private Task<Guid> CreateAsync(string name, bool isDemo = false) =>
        _book.Recipes.CreateAsync(Bench.Recipe(name), isDemo, Bench.Cancellation);

    private Task<List<RecipeLine>> ListAsync(string? search = null) => _book.Recipes.ListAsync(search, Bench.Cancellation);
}
