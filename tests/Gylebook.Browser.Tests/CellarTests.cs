using Microsoft.Playwright;

namespace Gylebook.Browser.Tests;

/// <summary>A gyle of the demo from the fermenter to the empty package, on a phone and wide.</summary>
public sealed class CellarTests(ChromiumFixture chromium)
{
    [Theory]
    [InlineData(360, ColorScheme.Dark)]
    [InlineData(1280, ColorScheme.Light)]
    public async Task From_the_fermenter_to_the_empty_bottles(int width, ColorScheme scheme)
    {
        await using OpenedBook gylebook = await OpenedBook.OpenAsync();
        IPage page = await chromium.TabAsync(gylebook.Url, width: width, height: 800, scheme: scheme, touch: width < 500);

        // In the fermenter: the demo's mild still falls, so it is not to be bottled.
        string gyle = await GyleAsync(page, "Chestnut Mild, five days ago");
        await page.OpenAsync($"{gyle}/ferment");
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new PageGetByRoleOptions { Name = "Finished? Not yet." })).ToBeVisibleAsync(new LocatorAssertionsToBeVisibleOptions { Timeout = 30_000 });
        await LooksAsync(page, $"fermenter-{width}");
        await page.OpenAsync($"{gyle}/package");
        await Assertions.Expect(page.GetByText("Nothing to weigh and nothing to set")).ToBeVisibleAsync(new LocatorAssertionsToBeVisibleOptions { Timeout = 30_000 });
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "It is packaged" })).ToHaveCountAsync(0);

        // A slip of the finger is named and nothing is kept.
        await page.OpenAsync($"{gyle}/ferment");
        await Assertions.Expect(page.Locator(".why li").Nth(1)).ToContainTextAsync("above the end expected", new LocatorAssertionsToContainTextOptions { Timeout = 30_000 });
        await ReadAsync(page, "a pint", null);
        await Assertions.Expect(page.Locator("#ferment-problems")).ToContainTextAsync("gravity");
        await page.ReloadAsync();

        // In the glass: the bitter of last month.
        string bitter = await GyleAsync(page, "Plain Bitter, last month");
        await page.OpenAsync($"{bitter}/glass");
        await Assertions.Expect(page.GetByText("By luck alone so many or more would happen")).ToBeVisibleAsync();
        await LooksAsync(page, $"glass-{width}");
        await page.GetByText("Taste it").ClickAsync();
        await page.GetByLabel("Who").FillAsync("Wren");
        await page.Locator("textarea").FillAsync("dry and plain");
        await page.Locator("textarea").BlurAsync();
        await page.Locator("form:has(textarea)").GetByRole(AriaRole.Button, new LocatorGetByRoleOptions { Name = "Put it down" }).ClickAsync();
        await Assertions.Expect(page.Locator("li", new PageLocatorOptions { HasText = "dry and plain" })).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator("textarea")).ToHaveValueAsync("");
        await page.GetByLabel("Poured").FillAsync("900 L");
        await page.GetByLabel("Poured").BlurAsync();
        await page.Locator("form:has-text('Poured')").GetByRole(AriaRole.Button, new LocatorGetByRoleOptions { Name = "Put it down" }).ClickAsync();
        await Assertions.Expect(page.Locator(".warn")).ToContainTextAsync("must be above 0 and at most");
        await page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "It is empty" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new PageGetByRoleOptions { Name = "Empty" })).ToBeVisibleAsync();
        await page.OpenAsync("/gyles");
        await Assertions.Expect(page.Locator("tr", new PageLocatorOptions { HasText = "Plain Bitter, last month" })).ToContainTextAsync("finished", new LocatorAssertionsToContainTextOptions { IgnoreCase = true });
    }

    private static async Task ReadAsync(IPage page, string gravity, string? celsius)
    {
        ILocator form = page.Locator("form[aria-label='A reading']");
        await form.GetByLabel("Gravity").FillAsync(gravity);
        if (celsius is not null)
        {
            await form.GetByLabel("Sample at").FillAsync(celsius);
        }

        await form.GetByRole(AriaRole.Button, new LocatorGetByRoleOptions { Name = "Put it down" }).ClickAsync();
    }

    /// <summary>The way to a gyle of the demo.</summary>
    private static async Task<string> GyleAsync(IPage page, string name)
    {
        await page.OpenAsync("/gyles");
        return "/" + await page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = name, Exact = true }).First.GetAttributeAsync("href");
    }

    private static async Task LooksAsync(IPage page, string name)
    {
        await page.PictureAsync(name);
        Assert.True(await page.EvaluateAsync<int>("() => document.documentElement.scrollWidth - innerWidth") <= 0, $"{name} is wider than the screen");
        await page.HasNoBarrierAsync(name);
    }
}
