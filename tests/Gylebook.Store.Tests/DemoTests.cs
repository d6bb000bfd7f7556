namespace Gylebook.Store.Tests;

public sealed class DemoTests : IDisposable
{
    private readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Fact]
    public async Task A_removed_demo_takes_only_its_own_along_and_stays_removed()
    {
        await using (Book book = await _bench.OpenAsync())
        {
            Assert.Equal(DemoState.NotYet, await book.Demo.StateAsync(Bench.Cancellation));
            Assert.True(await book.Demo.MarkHereAsync(Bench.Cancellation));
            foreach (bool isDemo in (bool[])[true, false])
            {
                string name = isDemo ? "Invented" : "Mine";
                Guid recipe = await book.Recipes.CreateAsync(Bench.Recipe(name), isDemo, Bench.Cancellation);
                await book.Kits.CreateAsync(Bench.Kit(name), isDemo, Bench.Cancellation);
                await book.Foods.CreateAsync(Bench.Food(name, name), isDemo, Bench.Cancellation);
                await book.Larder.CreateAsync(Bench.Malt(name, name), isDemo, Bench.Cancellation);
                await book.Waters.CreateAsync(Bench.Water(name), isDemo, Bench.Cancellation);
                Guid gyle = await book.Gyles.PlanAsync(recipe, name, isDemo: isDemo, cancellation: Bench.Cancellation);
                await book.Gyles.StartAsync(gyle, Bench.Plan, Bench.Cancellation);
            }

            Assert.Equal(DemoState.Here, await book.Demo.StateAsync(Bench.Cancellation));
            await book.RemoveDemoAsync(Bench.Cancellation);
        }

        await using Book again = await _bench.OpenAsync();
        Assert.Equal(DemoState.Removed, await again.Demo.StateAsync(Bench.Cancellation));
        Assert.False(await again.Demo.MarkHereAsync(Bench.Cancellation));
        Assert.Equal(DemoState.Removed, await again.Demo.StateAsync(Bench.Cancellation));
        Assert.Equal("Mine", Assert.Single(await again.Recipes.ListAsync(cancellation: Bench.Cancellation)).Name);
        Assert.Equal("Mine", Assert.Single(await again.Kits.ListAsync(cancellation: Bench.Cancellation)).Name);
        Assert.Equal("Mine", Assert.Single(await again.Foods.ListAsync(cancellation: Bench.Cancellation)).Name);
        Assert.Equal("Mine", Assert.Single(await again.Larder.ListAsync(cancellation: Bench.Cancellation)).Name);
        Assert.Equal("Mine", Assert.Single(await again.Waters.ListAsync(cancellation: Bench.Cancellation)).Name);
        Assert.Equal("Mine", Assert.Single(await again.Gyles.ListAsync(Bench.Cancellation)).Name);
    }

    [Fact]
    public async Task Settings_are_remembered_and_can_change()
    {
        await using (Book book = await _bench.OpenAsync())
        {
            Assert.Null(await book.Settings.FindAsync("units", Bench.Cancellation));
            await book.Settings.SetAsync("units", "US", Bench.Cancellation);
            await book.Settings.SetAsync("units", "metric", Bench.Cancellation);
            await book.Settings.SetAsync("empty", "", Bench.Cancellation);
        }

        await using Book again = await _bench.OpenAsync();
        Assert.Equal("metric", await again.Settings.FindAsync("units", Bench.Cancellation));
        Assert.Equal(["empty", "units"], (await again.Settings.ListAsync(Bench.Cancellation)).Keys.Order());
    }
}
