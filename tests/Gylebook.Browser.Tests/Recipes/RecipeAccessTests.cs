using Microsoft.Playwright;

namespace Gylebook.Browser.Tests.Recipes;

/// <summary>The recipe's page for everybody: by keyboard, by thumb, in both themes, with all its parts open.</summary>
public sealed class RecipeAccessTests(ChromiumFixture chromium)
{
    private const int MostTabs = 80;
    private const int ThumbPixels = 44;

    [Fact]
    public async Task By_keyboard_alone_from_the_first_page_to_a_changed_recipe()
    {
        await using OpenedBook gylebook = await OpenedBook.OpenAsync();
        IPage page = await chromium.TabAsync(gylebook.Url);
        await page.OpenAsync("/");
        await page.TabToAsync("Recipes", MostTabs);
        await page.Keyboard.PressAsync("Enter");
        await page.WaitForURLAsync("**/recipes");
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new PageGetByRoleOptions { Name = "Recipes", Level = 1 })).ToBeFocusedAsync();
        await page.TabToAsync("Plain Bitter", MostTabs);
        await page.Keyboard.PressAsync("Enter");
        await page.WaitForURLAsync("**/recipes/*-*");
        RecipeTab recipe = new(page);
        await Assertions.Expect(recipe.Headline("originalGravity")).ToBeVisibleAsync();
        string gravity = await recipe.Headline("originalGravity").InnerTextAsync();
        await page.TabToAsync("Amount of Pale ale malt", MostTabs);
        await page.Keyboard.PressAsync("Control+A");
        await page.Keyboard.TypeAsync("6");
        await page.Keyboard.PressAsync("Tab");
        await Assertions.Expect(recipe.Headline("originalGravity")).Not.ToHaveTextAsync(gravity);
        await Assertions.Expect(recipe.PaleAle).ToHaveValueAsync("6 kg");
        await page.Keyboard.PressAsync("Tab");
        await Assertions.Expect(recipe.Undo).ToBeEnabledAsync();
    }

    [Theory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public async Task Axe_finds_no_barrier_with_everything_open(ColorScheme scheme)
    {
        await using OpenedBook gylebook = await OpenedBook.OpenAsync();
        RecipeTab one = await RecipeTab.OpenAsync(await chromium.TabAsync(gylebook.Url, scheme: scheme), "Apricot & Cardamom Wheat");
        await one.OpenLineAsync("Hallertau Mittelfrüh");
        await one.Page.GetByText("The run as a table").ClickAsync();
        await one.Page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Keep a version" }).ClickAsync();
        await one.Page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Keep this version" }).ClickAsync();
        await one.TypeAsync(one.Page.GetByLabel("Amount of Wheat malt", new PageGetByLabelOptions { Exact = true }), "much");
        await one.Page.GetByRole(AriaRole.Combobox, new PageGetByRoleOptions { Name = "Add to boil" }).PressSequentiallyAsync("saaz");
        await Assertions.Expect(one.Page.Locator("[role=option]").First).ToBeVisibleAsync();
        await one.Page.PictureAsync($"recipe-all-open-{scheme}");
        await one.Page.HasNoBarrierAsync($"all open, {scheme}");
        await one.Page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "History" }).ClickAsync();
        await Assertions.Expect(one.Page.GetByRole(AriaRole.Heading, new PageGetByRoleOptions { Name = "History" })).ToBeVisibleAsync();
        await one.Page.HasNoBarrierAsync($"history, {scheme}");
    }

    [Fact]
    public async Task On_a_phone_everything_open_fits_and_has_room_for_a_thumb()
    {
        await using OpenedBook gylebook = await OpenedBook.OpenAsync();
        RecipeTab one = await RecipeTab.OpenAsync(await chromium.TabAsync(gylebook.Url, 360, 740, touch: true), "Apricot & Cardamom Wheat");
        await Assertions.Expect(one.Page.Locator("#run .picture svg")).ToHaveAttributeAsync("viewBox", new System.Text.RegularExpressions.Regex("^0 0 360 "));
        await one.OpenLineAsync("Hallertau Mittelfrüh");
        await one.Page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Keep a version" }).ClickAsync();
        await one.Page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Keep this version" }).ClickAsync();
        await Assertions.Expect(one.Page.GetByText("They say the same.")).ToBeVisibleAsync();
        await one.Page.PictureAsync("recipe-phone-open");
        int tooWide = await one.Page.EvaluateAsync<int>("() => document.documentElement.scrollWidth - innerWidth");
        Assert.True(tooWide <= 0, $"{tooWide} px wider than the phone.");
        // A word in a text is as high as its line, which the guidelines except.
        string[] small = await one.Page.EvaluateAsync<string[]>(
            """
            least => [...document.querySelectorAll('main button:not(.term), main a.button, main a.strip, main select, main summary, main input:not([type=radio]):not([type=checkbox])')]
              .filter(e => e.getClientRects().length > 0 && (e.getBoundingClientRect().height < least - 0.5 || e.getBoundingClientRect().width < least - 0.5))
              .map(e => e.outerHTML.slice(0, 120) + ' ' + e.getBoundingClientRect().width + ' x ' + e.getBoundingClientRect().height)
            """,
            ThumbPixels);
        Assert.True(small.Length == 0, string.Join("; ", small));
    }
}
