using Microsoft.Playwright;

namespace Gylebook.Browser.Tests.Recipes;

/// <summary>The recipe's page at ease: short on a phone, loud only where it must be, the run never far.</summary>
public sealed class RecipeCalmTests(ChromiumFixture chromium)
{
    /// <summary>Less than five windows of a phone, where it was nearly eight before the page was calm.</summary>
    private const int MostPixels = 3500;

    [Fact]
    public async Task On_a_phone_a_recipe_is_not_a_long_way()
    {
        await using OpenedBook gylebook = await OpenedBook.OpenAsync();
        RecipeTab one = await RecipeTab.OpenAsync(await chromium.TabAsync(gylebook.Url, 360, 740, touch: true), "Hedgerow Brown");
        await Assertions.Expect(one.Page.Locator("#run .picture svg")).ToHaveAttributeAsync("viewBox", new System.Text.RegularExpressions.Regex("^0 0 360 "));
        await Assertions.Expect(one.Page.Locator("#run")).ToBeHiddenAsync();
        await one.Page.PictureAsync("calm-phone");
        int height = await one.Page.EvaluateAsync<int>("() => document.documentElement.scrollHeight");
        TestContext.Current.TestOutputHelper!.WriteLine($"Hedgerow Brown at 360 px: {height} px");
        Assert.True(height < MostPixels, $"{height} px high.");
        Assert.Equal(360, await one.Page.EvaluateAsync<int>("() => document.documentElement.scrollWidth"));
    }

    [Fact]
    public async Task A_stage_shows_marks_that_open_and_in_full_only_what_is_grave()
    {
        await using OpenedBook gylebook = await OpenedBook.OpenAsync();
        RecipeTab one = await RecipeTab.OpenAsync(await chromium.TabAsync(gylebook.Url), "Hedgerow Brown");
        ILocator mash = one.Page.Locator("[data-stage=Mash]"), package = one.Page.Locator("[data-stage=Package]");
        await Assertions.Expect(package.GetByText("Bottle only when the gravity has stood still")).ToBeVisibleAsync();
        await Assertions.Expect(mash.GetByText("The bag weighs about")).ToBeHiddenAsync();
        await mash.Locator("summary").Filter(new LocatorFilterOptions { HasText = "heavy bag" }).ClickAsync();
        await Assertions.Expect(mash.GetByText("The bag weighs about")).ToBeVisibleAsync();
        int seen = await one.Page.EvaluateAsync<int>("() => [...document.querySelectorAll('p.caution')].filter(e => e.checkVisibility()).map(e => e.innerText.split(/\\s+/).length).reduce((a, b) => a + b, 0)");
        TestContext.Current.TestOutputHelper!.WriteLine($"{seen} words of cautions with one stage open");
    }

    [Fact]
    public async Task A_stage_of_the_run_leads_to_its_fields_and_on_a_phone_the_strip_leads_there_and_back()
    {
        await using OpenedBook gylebook = await OpenedBook.OpenAsync();
        RecipeTab wide = await RecipeTab.OpenAsync(await chromium.TabAsync(gylebook.Url), "Hedgerow Brown");
        await wide.Page.Locator("#run .picture svg a").Filter(new LocatorFilterOptions { HasText = "Packaged" }).ClickAsync(new LocatorClickOptions { Position = new Position { X = 12, Y = 12 } });
        await Assertions.Expect(wide.Page.Locator("#stage-package")).ToBeInViewportAsync();
        await Assertions.Expect(wide.Headline("originalGravity")).ToBeAttachedAsync();

        RecipeTab phone = await wide.AgainAsync(await chromium.TabAsync(gylebook.Url, 360, 740, touch: true));
        ILocator strip = phone.Page.Locator("a.strip");
        await phone.Page.Locator("#stage-boil").ScrollIntoViewIfNeededAsync();
        const string Top = "() => Math.round(document.querySelector('#stage-boil').getBoundingClientRect().top)";
        int before = await phone.Page.EvaluateAsync<int>(Top);
        await strip.ClickAsync();
        await Assertions.Expect(phone.Page.Locator(".recipe[data-at-run]")).ToBeAttachedAsync();
        await Assertions.Expect(phone.Page.Locator("#run")).ToBeInViewportAsync();
        await phone.Page.PictureAsync("calm-phone-run");
        await strip.ClickAsync();
        await phone.Page.WaitForFunctionAsync($"before => Math.abs(({Top})() - before) < 3", before);

        await strip.ClickAsync();
        await phone.Page.Locator("#run .picture svg a").Filter(new LocatorFilterOptions { HasText = "Packaged" }).ClickAsync(new LocatorClickOptions { Position = new Position { X = 12, Y = 12 } });
        await Assertions.Expect(phone.Page.Locator("#stage-package")).ToBeInViewportAsync();
    }

    [Fact]
    public async Task The_version_kept_last_is_a_dashed_line_once_the_recipe_differs()
    {
        await using OpenedBook gylebook = await OpenedBook.OpenAsync();
        RecipeTab one = await RecipeTab.OpenAsync(await chromium.TabAsync(gylebook.Url), "Hedgerow Brown");
        await one.Page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Keep a version" }).ClickAsync();
        await one.Page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Keep this version" }).ClickAsync();
        await Assertions.Expect(one.Page.Locator("#run .legend")).ToContainTextAsync("Dashed: version 1");
        await Assertions.Expect(one.Page.Locator("#run .ghost")).ToHaveCountAsync(0);
        await one.TypeAsync(one.Page.GetByLabel("Beer", new PageGetByLabelOptions { Exact = true }), "12 L");
        await Assertions.Expect(one.Page.Locator("#run .ghost").First).ToBeAttachedAsync();
        await one.Page.PictureAsync("calm-ghost");
    }
}
