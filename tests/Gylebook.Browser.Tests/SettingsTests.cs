using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Gylebook.Browser.Tests;

/// <summary>Units and theme, seen where they matter.</summary>
public sealed class SettingsTests(ChromiumFixture chromium)
{
    private const string PaperByDay = "rgb(247, 243, 234)";
    private const string PaperByNight = "rgb(20, 24, 26)";

    [Fact]
    public async Task The_paper_is_ours_and_follows_the_device()
    {
        IPage day = await chromium.TabAsync(chromium.Url, scheme: ColorScheme.Light);
        await day.OpenAsync("/");
        Assert.Equal(PaperByDay, await day.StyleAsync("body", "background-color"));
        IPage night = await chromium.TabAsync(chromium.Url, scheme: ColorScheme.Dark);
        await night.OpenAsync("/");
        Assert.Equal(PaperByNight, await night.StyleAsync("body", "background-color"));
    }

    [Fact]
    public async Task A_theme_chosen_is_worn_at_once_in_every_tab_and_after_a_reload()
    {
        await using RunningGylebook gylebook = await RunningGylebook.StartAsync();
        IPage page = await chromium.TabAsync(gylebook.Url);
        IPage other = await chromium.TabAsync(gylebook.Url);
        await other.OpenAsync("/");
        await page.OpenAsync("/settings");
        await page.GetByLabel("dark", new PageGetByLabelOptions { Exact = true }).CheckAsync();
        await Assertions.Expect(page.Locator("body")).ToHaveCSSAsync("background-color", PaperByNight);
        await Assertions.Expect(other.Locator("body")).ToHaveCSSAsync("background-color", PaperByNight);
        await page.ReloadAsync();
        Assert.Equal(PaperByNight, await page.StyleAsync("body", "background-color"));
    }

    [Fact]
    public async Task Other_units_are_seen_on_the_kit_and_nothing_is_rewritten()
    {
        await using RunningGylebook gylebook = await RunningGylebook.StartAsync();
        IPage page = await chromium.TabAsync(gylebook.Url);
        await page.OpenAsync("/settings");
        await page.GetByLabel("US gallon").CheckAsync();
        await page.GetByLabel("°F").CheckAsync();
        await page.GetByLabel("comma, 4,2").CheckAsync();
        await Assertions.Expect(page.Locator(".sample")).ToContainTextAsync("5,28\u00A0US gal");
        await page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Kit", Exact = true }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Lantern Shed" }).ClickAsync();

        // 35 L / 3.785411784 = 9.246 US gal; 18 °C = 64.4 °F: by definition.
        await Assertions.Expect(page.GetByLabel("To the brim", new PageGetByLabelOptions { Exact = true })).ToHaveValueAsync("9,246 US gal");
        await Assertions.Expect(page.GetByLabel("Grain before mashing")).ToHaveValueAsync("64,4 °F");
        await page.GetByLabel("Grain before mashing").FocusAsync();
        await page.Keyboard.PressAsync("Tab");
        await page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Settings" }).ClickAsync();
        await page.GetByLabel("°C").CheckAsync();
        await page.GoBackAsync();
        await Assertions.Expect(page.GetByLabel("Grain before mashing")).ToHaveValueAsync("18 °C");
    }

    [Fact]
    public async Task Foods_are_searched_as_one_types_and_the_address_says_so()
    {
        IPage page = await chromium.TabAsync(chromium.Url);
        await page.OpenAsync("/foods");
        await Assertions.Expect(page.GetByRole(AriaRole.Status)).ToContainTextAsync(new Regex("^[1-9][0-9]+ foods"));
        await page.GetByLabel("Search by name").FillAsync("chocolate milk");
        await page.WaitForURLAsync("**/foods?search=chocolate%20milk");
        await Assertions.Expect(page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "milk chocolate", Exact = true })).ToBeVisibleAsync();
        Assert.True(await page.Locator("ul.rows li").CountAsync() < 10);
        await page.ReloadAsync();
        await page.LiveAsync();
        await Assertions.Expect(page.GetByLabel("Search by name")).ToHaveValueAsync("chocolate milk");
        await page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "milk chocolate", Exact = true }).ClickAsync();

        // USDA SR26 NDB 19120: 51.5 g of sugars in 100 g.
        await Assertions.Expect(page.GetByRole(AriaRole.Row, new PageGetByRoleOptions { Name = "sugars 51.5" })).ToBeVisibleAsync();
    }
}
