namespace Gylebook.Store.Tests;

public sealed class SheetTests : IAsyncLifetime
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
    public async Task Kits_are_saved_whole_found_by_name_and_listed_by_name()
    {
        Guid shed = await _book.Kits.CreateAsync(Bench.Kit("The shed"), cancellation: Bench.Cancellation);
        await _book.Kits.CreateAsync(Bench.Kit("A pot"), cancellation: Bench.Cancellation);

        DraftSave answer = await _book.Kits.Drafts.SaveAsync(shed, 1, Bench.Kit("The Élan shed"), "another text", "tab", Bench.Cancellation);

        Assert.Equal(new DraftSave.Saved(2), answer);
        Assert.Equal(["A pot", "The Élan shed"], (await _book.Kits.ListAsync(cancellation: Bench.Cancellation)).Select(kit => kit.Name));
        Assert.Equal(
            new Sheet(shed, "The Élan shed", Bench.Kit("The Élan shed"), 2, _bench.Clock.Now, null, false),
            Assert.Single(await _book.Kits.ListAsync("elan", Bench.Cancellation)));
    }

    [Fact]
    public async Task A_stale_kit_is_answered_with_both_texts()
    {
        Guid kit = await _book.Kits.CreateAsync(Bench.Kit("Old"), cancellation: Bench.Cancellation);
        await _book.Kits.Drafts.SaveAsync(kit, 1, Bench.Kit("From A"), "another text", "A", Bench.Cancellation);

        DraftSave answer = await _book.Kits.Drafts.SaveAsync(kit, 1, Bench.Kit("From B"), "another text", "B", Bench.Cancellation);

        Assert.Equal(new DraftSave.Stale(Bench.Kit("From A"), Bench.Kit("From B"), 2), answer);
        Assert.Equal(Bench.Kit("From A"), (await _book.Kits.FindAsync(kit, Bench.Cancellation))!.Document);
    }

    [Fact]
    public async Task A_food_is_found_by_the_id_that_recipes_use()
    {
        Guid honey = await _book.Foods.CreateAsync(Bench.Food("Dark honey", "honey"), cancellation: Bench.Cancellation);
        await _book.Foods.CreateAsync(Bench.Food("Chestnut", "chestnut"), cancellation: Bench.Cancellation);

        Assert.Equal(honey, (await _book.Foods.FindAsync("honey", Bench.Cancellation))!.Id);
        await _book.Foods.Drafts.SaveAsync(honey, 1, Bench.Food("Dark honey", "dark-honey"), "another text", "tab", Bench.Cancellation);
        Assert.Null(await _book.Foods.FindAsync("honey", Bench.Cancellation));
        Assert.Equal(honey, (await _book.Foods.FindAsync("dark-honey", Bench.Cancellation))!.Id);
    }

    [Fact]
    public async Task A_larder_sheet_is_found_by_its_form_and_the_id_recipes_call_it_by()
    {
        Guid malt = await _book.Larder.CreateAsync(Bench.Malt("North field pale", "north"), cancellation: Bench.Cancellation);
        Guid hop = await _book.Larder.CreateAsync(
            Bench.Malt("North wall hop", "north").Replace("gylebook-malt/1", "gylebook-hop/1", StringComparison.Ordinal), cancellation: Bench.Cancellation);
        Assert.Equal(malt, (await _book.Larder.FindAsync("malt", "north", Bench.Cancellation))!.Id);
        Assert.Equal(hop, (await _book.Larder.FindAsync("hop", "north", Bench.Cancellation))!.Id);
        Assert.Null(await _book.Larder.FindAsync("yeast", "north", Bench.Cancellation));

        ArgumentException refused = await Assert.ThrowsAsync<ArgumentException>(() => _book.Larder.CreateAsync(Bench.Kit("A pot"), cancellation: Bench.Cancellation));
        Assert.Contains("gylebook-malt/N or gylebook-hop/N", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_deleted_food_is_in_the_bin_and_comes_back()
    {
        Guid honey = await _book.Foods.CreateAsync(Bench.Food("Dark honey", "honey"), cancellation: Bench.Cancellation);

        await _book.Foods.DeleteAsync(honey, Bench.Cancellation);
        Assert.Empty(await _book.Foods.ListAsync(cancellation: Bench.Cancellation));
        Assert.Null(await _book.Foods.FindAsync("honey", Bench.Cancellation));
        Assert.Equal(honey, Assert.Single(await _book.Foods.DeletedAsync(Bench.Cancellation)).Id);

        await _book.Foods.RestoreAsync(honey, Bench.Cancellation);
        Assert.Equal(honey, Assert.Single(await _book.Foods.ListAsync(cancellation: Bench.Cancellation)).Id);
    }

    [Fact]
    public async Task A_kit_is_no_food() =>
        await Assert.ThrowsAsync<ArgumentException>(
            () => _book.Foods.CreateAsync(Bench.Kit("A pot"), cancellation: Bench.Cancellation));
}
