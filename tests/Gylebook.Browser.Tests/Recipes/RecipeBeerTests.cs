using Microsoft.Playwright;

namespace Gylebook.Browser.Tests.Recipes;

/// <summary>Bitterness, glass, yeast and style on the recipe's page, in a real browser.</summary>
public sealed class RecipeBeerTests(ChromiumFixture chromium)
{
    private const int Phone = 360;
    private const int PhoneTall = 740;

    [Theory]
    [InlineData(ColorScheme.Light, 1280)]
    [InlineData(ColorScheme.Dark, 1280)]
    [InlineData(ColorScheme.Light, Phone)]
    public async Task A_hop_is_swapped_the_bitterness_stays_and_nothing_is_in_anybodys_way(ColorScheme scheme, int wide)
    {
        await using OpenedBook gylebook = await OpenedBook.OpenAsync();
        RecipeTab one = await RecipeTab.OpenAsync(
            wide == Phone ? await chromium.TabAsync(gylebook.Url, Phone, PhoneTall, touch: true) : await chromium.TabAsync(gylebook.Url, scheme: scheme),
            "Hedgerow Brown");
        IPage page = one.Page;
        double bitterness = await one.NumberAsync("bitterness");

        await one.OpenLineAsync("Fuggle");
        await page.GetByLabel("Swap it for").SelectOptionAsync("Target");
        await page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Swap, keep the IBU" }).ClickAsync();
        await Assertions.Expect(page.GetByLabel("Amount of Target", new PageGetByLabelOptions { Exact = true })).Not.ToHaveValueAsync("56 g");
        await Assertions.Expect(one.Undo).ToHaveAccessibleNameAsync(new System.Text.RegularExpressions.Regex("^Undo Fuggle: swapped for Target, .* g, IBU kept$"));
        Assert.Equal(bitterness, await one.NumberAsync("bitterness"));

        await YeastAsync(one);
        await one.OpenLineAsync("Target");
        await page.GetByLabel("Kept in").SelectOptionAsync("airless");
        await Assertions.Expect(page.GetByLabel("Kept at")).ToHaveValueAsync("20 °C");
        string band = await page.Locator("[data-headline=bitterness] dd.note").InnerTextAsync();
        await page.GetByLabel("Bitterness by").SelectOptionAsync("isomerisation");
        await page.WaitForURLAsync("**?bitterness=isomerisation");

        // The page is at rest once the other model's band stands there.
        await Assertions.Expect(page.Locator("[data-headline=bitterness] dd.note")).Not.ToHaveTextAsync(band);
        await one.TurnAsync();
        await page.GetByLabel("Beside the style").SelectOptionAsync("munich-helles");
        await page.WaitForURLAsync("**&style=munich-helles");
        await Assertions.Expect(page.GetByText("Munich Helles (")).ToBeVisibleAsync();
        await page.GetByText("About its colour").ClickAsync();
        await page.PictureAsync($"recipe-beer-run-{scheme}-{wide}");
        await one.TurnAsync();
        foreach (string closed in new[] { "How much yeast:", "Hop by hop, by both models", "A starter would bring them", "By whose list" })
        {
            await page.GetByText(closed).ClickAsync();
        }

        await page.PictureAsync($"recipe-beer-{scheme}-{wide}");
        int tooWide = await page.EvaluateAsync<int>("() => document.documentElement.scrollWidth - innerWidth");
        Assert.True(tooWide <= 0, $"{tooWide} px wider than the window.");
        await page.HasNoBarrierAsync($"{scheme}, {wide}");

        // The way it is looked at outlives a panel and a reload.
        await page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "History" }).ClickAsync();
        await page.WaitForURLAsync("**?open=history&bitterness=isomerisation&style=munich-helles");
        await page.ReloadAsync();
        await page.LiveAsync();
        await Assertions.Expect(page.GetByLabel("Bitterness by")).ToHaveValueAsync("isomerisation");
    }

    /// <summary>Two months old, liquid: what starters are made for.</summary>
    private static async Task YeastAsync(RecipeTab one)
    {
        await one.OpenLineAsync("English ale");
        await one.Line("English ale").GetByLabel("Form").SelectOptionAsync("liquid");
        await one.TypeAsync(one.Page.GetByLabel("Cells when fresh"), "100");
        await one.TypeAsync(one.Page.GetByLabel("Time since packed or harvested"), "60");
        await Assertions.Expect(one.Page.GetByLabel("Time since packed or harvested")).ToHaveValueAsync("60 d");
        await Assertions.Expect(one.Page.Locator("[data-pitch=pitched] dd").First).ToContainTextAsync(" to ");
    }
}
