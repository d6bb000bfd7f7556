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
    public async Task A_choice_is_seen_at_once_in_every_tab_of_the_browser_and_after_a_reload()
    {
        IPage page = await chromium.TabAsync(chromium.Url);
        IPage other = await page.Context.NewPageAsync();
        await other.OpenAsync("/settings");
        await page.OpenAsync("/settings");
        await page.GetByLabel("dark", new PageGetByLabelOptions { Exact = true }).CheckAsync();
        await Assertions.Expect(page.Locator("body")).ToHaveCSSAsync("background-color", PaperByNight);
        await Assertions.Expect(other.Locator("body")).ToHaveCSSAsync("background-color", PaperByNight);
        await page.GetByLabel("comma, 4,2").CheckAsync();
        await Assertions.Expect(other.Locator(".sample")).ToContainTextAsync("4,20\u00A0kg");
        await page.ReloadAsync();
        Assert.Equal(PaperByNight, await page.StyleAsync("body", "background-color"));
    }

    /// <summary>5.28 US gal and 66 °F (66.2, shown in whole degrees) are the sample's 20 L and 19 °C: 3.785411784 L and 1.8 °F + 32, by definition.</summary>
    [Fact]
    public async Task Two_browsers_have_their_own_units_and_theme_and_the_server_writes_each_right_at_once()
    {
        IPage american = await chromium.TabAsync(chromium.Url, scheme: ColorScheme.Light);
        IPage metric = await chromium.TabAsync(chromium.Url, scheme: ColorScheme.Dark);
        await american.OpenAsync("/settings");
        await metric.OpenAsync("/settings");
        await american.GetByLabel("US gallon").CheckAsync();
        await american.GetByLabel("°F").CheckAsync();
        await american.GetByLabel("dark", new PageGetByLabelOptions { Exact = true }).CheckAsync();
        await Assertions.Expect(american.Locator(".sample")).ToContainTextAsync("66\u00A0°F");
        await metric.GetByLabel("light", new PageGetByLabelOptions { Exact = true }).CheckAsync();
        await Assertions.Expect(metric.Locator("body")).ToHaveCSSAsync("background-color", PaperByDay);

        foreach ((IPage page, string volume, string temperature, string theme, string paper) in ((IPage, string, string, string, string)[])
            [(american, "5.28\u00A0US gal", "66\u00A0°F", "dark", PaperByNight), (metric, "20.0\u00A0L", "19\u00A0°C", "light", PaperByDay)])
        {
            // As the server wrote it, before any script ran: what it says first is what is drawn first.
            string written = await (await page.Context.APIRequest.GetAsync("/settings")).TextAsync();
            written = System.Net.WebUtility.HtmlDecode(written);
            Assert.Contains($"data-theme=\"{theme}\"", written, StringComparison.Ordinal);
            Assert.Contains(volume, written, StringComparison.Ordinal);
            Assert.Contains(temperature, written, StringComparison.Ordinal);
            await page.ReloadAsync();
            await page.LiveAsync();
            Assert.Equal(paper, await page.StyleAsync("body", "background-color"));
            string sample = (await page.Locator(".sample").TextContentAsync())!;
            Assert.Contains(volume, sample, StringComparison.Ordinal);
            Assert.Contains(temperature, sample, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Other_units_are_seen_on_the_kit_and_nothing_is_rewritten()
    {
        await using OpenedBook gylebook = await OpenedBook.OpenAsync();
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
        await Assertions.Expect(page.GetByRole(AriaRole.Search).GetByRole(AriaRole.Status)).ToContainTextAsync(new Regex("^[1-9][0-9]+ foods"));
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
