namespace Gylebook.Store.Tests;

public sealed class VersionTests : IAsyncLifetime
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
    public async Task Keeping_cuts_numbered_versions_that_later_edits_do_not_touch()
    {
        NumberedVersion first = await KeepAsync("before the honey");
        await EditAsync(1, "Two");
        NumberedVersion second = await KeepAsync(null);
        await EditAsync(2, "Three");

        Assert.Equal(new NumberedVersion(_recipe, 1, Bench.Recipe("One"), CutReason.Kept, "before the honey", _bench.Clock.Now), first);
        Assert.Equal((2, Bench.Recipe("Two")), (second.Number, second.Document));
        Assert.Equal([second, first], await _book.Versions.ListAsync(_recipe, Bench.Cancellation));
        Assert.Equal(first, await _book.Versions.FindAsync(_recipe, 1, Bench.Cancellation));
        Assert.Null(await _book.Versions.FindAsync(_recipe, 3, Bench.Cancellation));
    }

    [Fact]
    public async Task The_same_text_does_not_get_two_numbers_in_a_row()
    {
        NumberedVersion first = await KeepAsync("kept");

        Assert.Equal(first, await KeepAsync("kept again"));
        Assert.Equal(1, (await PublishAsync()).Number);
    }

    [Fact]
    public async Task A_text_that_returns_after_another_gets_a_number_of_its_own()
    {
        await KeepAsync(null);
        await EditAsync(1, "Two");
        await KeepAsync(null);
        await EditAsync(2, "One");

        Assert.Equal(3, (await KeepAsync(null)).Number);
    }

    [Fact]
    public async Task Publishing_cuts_a_version_and_the_draft_goes_on_without_it()
    {
        NumberedVersion published = await PublishAsync();
        await EditAsync(1, "Two");

        Assert.Equal(CutReason.Published, published.Reason);
        Assert.Equal(1, (await LineAsync()).PublishedVersion);
        await _book.Publications.WithdrawAsync(_recipe, Bench.Cancellation);
        Assert.Equal((null, 1), ((await LineAsync()).PublishedVersion, (await LineAsync()).LatestVersion));
    }

    [Fact]
    public async Task Two_tabs_that_keep_at_once_share_one_version()
    {
        NumberedVersion[] kept = await Task.WhenAll(Enumerable.Range(0, 6).Select(_ => Task.Run(() => KeepAsync(null))));

        Assert.All(kept, version => Assert.Equal(1, version.Number));
        Assert.Single(await _book.Versions.ListAsync(_recipe, Bench.Cancellation));
    }

    private Task<NumberedVersion> KeepAsync(string? note) => _book.Versions.KeepAsync(_recipe, note, Bench.Cancellation);

    private async Task<NumberedVersion> PublishAsync()
    {
        KeptPublication published = await _book.Publications.PublishAsync(_recipe, null, null, to => to.Version.Document, Bench.Cancellation);
        return (await _book.Versions.FindAsync(_recipe, published.Version, Bench.Cancellation))!;
    }

    private Task<DraftSave> EditAsync(long seen, string name) =>
        _book.Drafts.SaveAsync(_recipe, seen, Bench.Recipe(name), "Name", "tab", Bench.Cancellation);

    private async Task<RecipeLine> LineAsync() => (await _book.Recipes.FindAsync(_recipe, Bench.Cancellation))!;
}
