namespace Gylebook.Store.Tests;

/// <summary>What is given out is one version, keeps its address, is put right by adding, and leaves with its recipe.</summary>
public sealed class PublicationTests : IAsyncLifetime
{
    private readonly Bench _bench = new();
    private Book _book = null!;
    private Guid _recipe;

    public async ValueTask InitializeAsync()
    {
        _book = await _bench.OpenAsync();
        _recipe = await _book.Recipes.CreateAsync(Bench.Recipe("Châtaigne Mild"), cancellation: Bench.Cancellation);
    }

    public async ValueTask DisposeAsync()
    {
        await _book.DisposeAsync();
        _bench.Dispose();
    }

    [Fact]
    public async Task It_is_the_version_it_was_written_from_whatever_the_draft_says_later()
    {
        KeptPublication first = await PublishAsync();
        await _book.Drafts.SaveAsync(_recipe, 1, Bench.Recipe("Other name"), "Name", "tab", Bench.Cancellation);

        Assert.Equal(("chataigne-mild", 1, "chataigne-mild 1 " + Bench.Recipe("Châtaigne Mild")), (first.Slug, first.Version, first.Document));
        KeptPublication kept = Assert.Single(await _book.Publications.ListAsync(Bench.Cancellation));
        Assert.Equal(first.Document, kept.Document);

        KeptPublication again = await PublishAsync();
        Assert.Equal(("chataigne-mild", 2), (again.Slug, again.Version));
        Assert.Single(await _book.Publications.ListAsync(Bench.Cancellation));
        Assert.Equal(2, (await _book.Recipes.FindAsync(_recipe, Bench.Cancellation))!.PublishedVersion);
    }

    [Fact]
    public async Task An_earlier_version_may_go_out_and_one_there_is_not_may_not()
    {
        await _book.Versions.KeepAsync(_recipe, cancellation: Bench.Cancellation);
        await _book.Drafts.SaveAsync(_recipe, 1, Bench.Recipe("Second"), "Name", "tab", Bench.Cancellation);
        var gyle = Guid.NewGuid();
        KeptPublication kept = await _book.Publications.PublishAsync(_recipe, 1, gyle, to => to.Version.Document, Bench.Cancellation);
        Assert.Equal((1, (Guid?)gyle, Bench.Recipe("Châtaigne Mild")), (kept.Version, kept.GyleId, kept.Document));
        await Assert.ThrowsAsync<ArgumentOutOfRangeException>(() => _book.Publications.PublishAsync(_recipe, 9, null, to => to.Version.Document, Bench.Cancellation));
        await Assert.ThrowsAsync<ArgumentOutOfRangeException>(() => _book.Publications.PublishAsync(Guid.NewGuid(), null, null, to => to.Version.Document, Bench.Cancellation));
    }

    [Fact]
    public async Task Two_of_one_name_have_two_addresses_and_none_is_that_of_the_engine()
    {
        Guid twin = await _book.Recipes.CreateAsync(Bench.Recipe("Chataigne  mild!"), cancellation: Bench.Cancellation);
        Guid engine = await _book.Recipes.CreateAsync(Bench.Recipe("Engine"), cancellation: Bench.Cancellation);
        await PublishAsync();
        Assert.Equal("chataigne-mild-2", (await PublishAsync(twin)).Slug);
        Assert.Equal("engine-2", (await PublishAsync(engine)).Slug);
    }

    [Fact]
    public async Task What_was_wrong_is_put_right_for_the_version_that_is_out()
    {
        await Assert.ThrowsAsync<ArgumentOutOfRangeException>(() => _book.Publications.AddErratumAsync(_recipe, "too early", Bench.Cancellation));
        await PublishAsync();
        await _book.Publications.AddErratumAsync(_recipe, " More water. ", Bench.Cancellation);
        await _book.Publications.AddErratumAsync(_recipe, "Less malt.", Bench.Cancellation);
        KeptErratum[] errata = [.. (await FindAsync())!.Errata];
        Assert.Equal(["More water.", "Less malt."], errata.Select(erratum => erratum.Text));
        Assert.All(errata, erratum => Assert.Equal(1, erratum.Version));

        await _book.Publications.RemoveErratumAsync(_recipe, errata[0].Id, Bench.Cancellation);
        Assert.Equal("Less malt.", Assert.Single((await FindAsync())!.Errata).Text);
        await Assert.ThrowsAsync<ArgumentException>(() => _book.Publications.AddErratumAsync(_recipe, " ", Bench.Cancellation));
        await Assert.ThrowsAsync<ArgumentOutOfRangeException>(() => _book.Publications.AddErratumAsync(_recipe, new string('x', BookPublications.LongestErratum + 1), Bench.Cancellation));
    }

    [Fact]
    public async Task A_recipe_in_the_bin_is_not_given_out_and_comes_back_with_its_page()
    {
        await PublishAsync();
        await _book.Recipes.DeleteAsync(_recipe, Bench.Cancellation);
        Assert.Empty(await _book.Publications.ListAsync(Bench.Cancellation));
        await _book.Recipes.RestoreAsync(_recipe, Bench.Cancellation);
        Assert.Single(await _book.Publications.ListAsync(Bench.Cancellation));
    }

    [Fact]
    public async Task Taken_back_it_is_gone_and_what_was_put_right_waits()
    {
        await PublishAsync();
        await _book.Publications.AddErratumAsync(_recipe, "More water.", Bench.Cancellation);
        await _book.Publications.WithdrawAsync(_recipe, Bench.Cancellation);
        Assert.Null(await FindAsync());
        Assert.Null((await _book.Recipes.FindAsync(_recipe, Bench.Cancellation))!.PublishedVersion);
        Assert.Equal("More water.", Assert.Single((await PublishAsync()).Errata).Text);
    }

    private Task<KeptPublication> PublishAsync(Guid? recipe = null) =>
        _book.Publications.PublishAsync(recipe ?? _recipe, null, null, to => Invariant($"{to.Slug} {to.Version.Number} {to.Version.Document}"), Bench.Cancellation);

    private Task<KeptPublication?> FindAsync() => _book.Publications.FindAsync(_recipe, Bench.Cancellation);
}
