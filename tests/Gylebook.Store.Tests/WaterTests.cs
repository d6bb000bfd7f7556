namespace Gylebook.Store.Tests;

public sealed class WaterTests : IAsyncLifetime
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
    public async Task A_recipe_has_one_plan_and_the_second_wish_for_one_finds_it()
    {
        Guid recipe = await RecipeAsync();

        Guid first = await _book.Waters.CreateForAsync(recipe, Bench.Water("Soft"), cancellation: Bench.Cancellation);
        Guid second = await _book.Waters.CreateForAsync(recipe, Bench.Water("Hard"), cancellation: Bench.Cancellation);

        Assert.Equal(first, second);
        Assert.Equal("Soft", (await _book.Waters.OfRecipeAsync(recipe, Bench.Cancellation))!.Name);
    }

    [Fact]
    public async Task Plans_are_listed_with_the_recipe_they_are_for_and_kept_ones_with_none()
    {
        Guid recipe = await RecipeAsync();
        Guid made = await _book.Waters.CreateForAsync(recipe, Bench.Water("Soft"), cancellation: Bench.Cancellation);
        Guid kept = await _book.Waters.CreateAsync(Bench.Water("My tap"), cancellation: Bench.Cancellation);

        List<WaterOf> all = await _book.Waters.ListWithRecipesAsync(Bench.Cancellation);

        Assert.Equal(
            [(kept, null, null), (made, (Guid?)recipe, "Plain Bitter")],
            all.Select(water => (water.Sheet.Id, water.RecipeId, water.Recipe)));
        Assert.Equal("Plain Bitter", (await _book.Waters.FindWithRecipeAsync(made, Bench.Cancellation))!.Recipe);
        Assert.Null(await _book.Waters.FindWithRecipeAsync(Guid.NewGuid(), Bench.Cancellation));
    }

    [Fact]
    public async Task A_plan_in_the_bin_makes_room_and_comes_back_as_one_kept_for_any()
    {
        Guid recipe = await RecipeAsync();
        Guid old = await _book.Waters.CreateForAsync(recipe, Bench.Water("Old"), cancellation: Bench.Cancellation);
        await _book.Waters.DeleteAsync(old, Bench.Cancellation);
        Assert.Null(await _book.Waters.OfRecipeAsync(recipe, Bench.Cancellation));
        Guid young = await _book.Waters.CreateForAsync(recipe, Bench.Water("Young"), cancellation: Bench.Cancellation);

        await _book.Waters.RestoreAsync(old, Bench.Cancellation);

        Assert.Equal(young, (await _book.Waters.OfRecipeAsync(recipe, Bench.Cancellation))!.Id);
        Assert.Null((await _book.Waters.FindWithRecipeAsync(old, Bench.Cancellation))!.RecipeId);
    }

    [Fact]
    public async Task A_plan_alone_in_the_bin_comes_back_to_its_recipe()
    {
        Guid recipe = await RecipeAsync();
        Guid plan = await _book.Waters.CreateForAsync(recipe, Bench.Water("Soft"), cancellation: Bench.Cancellation);
        await _book.Waters.DeleteAsync(plan, Bench.Cancellation);

        await _book.Waters.RestoreAsync(plan, Bench.Cancellation);

        Assert.Equal(plan, (await _book.Waters.OfRecipeAsync(recipe, Bench.Cancellation))!.Id);
    }

    private Task<Guid> RecipeAsync() => _book.Recipes.CreateAsync(Bench.Recipe("Plain Bitter"), cancellation: Bench.Cancellation);
}
