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
        await Assertions.Expect(page.Locator(".wrong")).ToContainTextAsync("must be above 0 and at most");
        await page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "It is empty" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new PageGetByRoleOptions { Name = "Empty" })).ToBeVisibleAsync();
        await page.OpenAsync("/gyles");
        await Assertions.Expect(page.Locator("tr", new PageLocatorOptions { HasText = "Plain Bitter, last month" })).ToContainTextAsync("finished", new LocatorAssertionsToContainTextOptions { IgnoreCase = true });
    }

    /// <summary>A gyle of its own: from the pitch over ten days to a keg, and to bottles, that are drunk.</summary>
    [Theory]
    [InlineData(360, ColorScheme.Light, "keg")]
    [InlineData(360, ColorScheme.Dark, "bottle")]
    [InlineData(1280, ColorScheme.Dark, "keg")]
    public async Task From_the_pitch_to_the_empty_package(int width, ColorScheme scheme, string into)
    {
        await using OpenedBook gylebook = await OpenedBook.OpenAsync();
        IPage page = await chromium.TabAsync(gylebook.Url, width: width, height: 800, scheme: scheme, touch: width < 500);
        BrewTab brew = await BrewTab.StartAsync(page, "Plain Bitter");
        await brew.ToAsync("Pitch");
        await page.GetByRole(AriaRole.Checkbox, new PageGetByRoleOptions { Name = "English ale" }).CheckAsync();
        await brew.ToAsync("All done for today");
        await brew.SentAsync();
        string gyle = new Uri(page.Url).AbsolutePath.Replace("/brew", "", StringComparison.Ordinal);

        // A day later it falls: read, and refused.
        await gylebook.GoAheadAsync(1.2);
        await page.OpenAsync($"{gyle}/ferment");
        await AnswersAsync(page, "Finished? Nobody has looked.");
        await ReadAsync(page, "1.030", "20");
        await AnswersAsync(page, "Finished? Not yet.");
        await page.OpenAsync($"{gyle}/package");
        await Assertions.Expect(page.GetByText("Nothing to weigh and nothing to set")).ToBeVisibleAsync(new LocatorAssertionsToBeVisibleOptions { Timeout = 30_000 });

        // Twice the same where it was to end: done.
        foreach (double days in new[] { 5.0, 2.5 })
        {
            await gylebook.GoAheadAsync(days);
            await page.OpenAsync($"{gyle}/ferment");
            await Assertions.Expect(page.Locator(".why li").First).ToBeVisibleAsync(new LocatorAssertionsToBeVisibleOptions { Timeout = 30_000 });
            await ReadAsync(page, "1.012", "20");
            await Assertions.Expect(page.GetByText("In the book.")).ToBeVisibleAsync();
        }

        await AnswersAsync(page, "Finished? Yes.");
        await page.OpenAsync($"{gyle}/package");
        ILocator kinds = page.Locator("label.kind input");
        await Assertions.Expect(kinds.First).ToBeVisibleAsync(new LocatorAssertionsToBeVisibleOptions { Timeout = 30_000 });
        foreach (string kind in new[] { "keg", "bottle" })
        {
            await page.Locator("label.kind", new PageLocatorOptions { HasText = kind }).Locator("input").SetCheckedAsync(kind == into);
        }

        await Assertions.Expect(page.Locator("dl.told")).ToContainTextAsync(into == "keg" ? "Regulator" : "boiled in a little water");
        await page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "It is packaged" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new PageGetByRoleOptions { NameRegex = new("^Packaged on") })).ToBeVisibleAsync(new LocatorAssertionsToBeVisibleOptions { Timeout = 30_000 });

        // Two weeks later Today says that it is ready, it is tasted, and drunk.
        await gylebook.GoAheadAsync(14);
        await page.OpenAsync("/");
        await Assertions.Expect(page.GetByText("ready to taste").First).ToBeVisibleAsync();
        await page.OpenAsync($"{gyle}/glass");
        await page.GetByLabel("Who").FillAsync("Wren");
        await TypeAsync(page.GetByPlaceholder("toasted seed").First, "malt");
        await page.Locator("form:has(textarea)").GetByRole(AriaRole.Button, new LocatorGetByRoleOptions { Name = "Put it down" }).ClickAsync();
        await Assertions.Expect(page.Locator("li", new PageLocatorOptions { HasText = "Wren" })).ToContainTextAsync("2 weeks in its package");
        await page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "It is empty" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new PageGetByRoleOptions { Name = "Empty" })).ToBeVisibleAsync();
        await LooksAsync(page, $"glass-empty-{into}-{width}");
    }

    /// <summary>Half on fruit, half plain: each has its own answer.</summary>
    [Fact]
    public async Task A_beer_is_divided_on_a_phone_and_something_goes_into_one_half()
    {
        await using OpenedBook gylebook = await OpenedBook.OpenAsync();
        IPage page = await chromium.TabAsync(gylebook.Url, width: 360, height: 800, touch: true);
        string gyle = await GyleAsync(page, "Chestnut Mild, five days ago");
        await page.OpenAsync($"{gyle}/ferment");
        await AnswersAsync(page, "Finished? Not yet.");
        await page.GetByText("Divide it").First.ClickAsync();
        ILocator form = page.Locator("form[aria-label='Divide it']");
        await TypeAsync(form.GetByLabel("Portion").Nth(0), "on pears");
        await TypeAsync(form.GetByLabel("Portion").Nth(1), "plain");
        await TypeAsync(form.GetByLabel("Share, %").Nth(1), "40");
        await form.GetByRole(AriaRole.Button, new LocatorGetByRoleOptions { Name = "Divide it" }).ClickAsync();
        await Assertions.Expect(page.Locator(".wrong")).ToContainTextAsync("the shares come to 90 %; must be 100 %");
        await TypeAsync(form.GetByLabel("Share, %").Nth(1), "50");
        await form.GetByRole(AriaRole.Button, new LocatorGetByRoleOptions { Name = "Divide it" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "on pears", Exact = true })).ToHaveAttributeAsync("aria-pressed", "true", new LocatorAssertionsToHaveAttributeOptions { Timeout = 30_000 });

        await page.GetByText("Put something in").First.ClickAsync();
        ILocator put = page.Locator("form[aria-label='Put something in']");
        await TypeAsync(put.GetByLabel("What"), "moon dust");
        await TypeAsync(put.GetByLabel("How much"), "500 g");
        await put.GetByRole(AriaRole.Button).ClickAsync();
        await Assertions.Expect(page.GetByText("neither larder nor tables have it")).ToBeVisibleAsync();
        await TypeAsync(put.GetByLabel("What"), "white sugar");
        await put.GetByRole(AriaRole.Button).ClickAsync();
        await Assertions.Expect(page.Locator(".why")).ToContainTextAsync("500 g white sugar", new LocatorAssertionsToContainTextOptions { Timeout = 30_000 });
        await LooksAsync(page, "fermenter-divided-360");
        await page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "plain", Exact = true }).ClickAsync();
        await Assertions.Expect(page.Locator(".why")).Not.ToContainTextAsync("white sugar", new LocatorAssertionsToContainTextOptions { Timeout = 30_000 });

        // It cannot be put together while one of them has something of its own.
        await page.Locator("li", new PageLocatorOptions { HasText = "divided into" }).GetByRole(AriaRole.Button).ClickAsync();
        await Assertions.Expect(page.GetByText("entries of their own")).ToBeVisibleAsync();
    }

    private static async Task TypeAsync(ILocator field, string text)
    {
        await field.FillAsync(text);
        await field.BlurAsync();
    }

    private static Task AnswersAsync(IPage page, string heading) =>
        Assertions.Expect(page.GetByRole(AriaRole.Heading, new PageGetByRoleOptions { Name = heading })).ToBeVisibleAsync(new LocatorAssertionsToBeVisibleOptions { Timeout = 30_000 });

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
