using Microsoft.Playwright;

namespace Gylebook.Browser.Tests;

/// <summary>A laboratory's report typed on a phone, and what comes of it in the recipe.</summary>
public sealed class LiquorTests(ChromiumFixture chromium)
{
    [Fact]
    public async Task A_recipe_gets_its_water_on_a_phone_and_keeps_it_over_a_reload()
    {
        await using OpenedBook gylebook = await OpenedBook.OpenAsync();
        IPage page = await chromium.TabAsync(gylebook.Url, 360, 740, touch: true);
        await page.OpenAsync("/recipes");
        await page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Plain Bitter", Exact = true }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Plan the water" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Type the report" }).ClickAsync();

        foreach ((string line, string number) in new[] { ("pH", "7.3"), ("Calcium", "100"), ("Magnesium", "10"), ("Alkalinity", "250"), ("Sulphate", "40"), ("Chloride", "35"), ("Sodium", "20") })
        {
            await Field(page, line).FillAsync(number);
        }

        await Field(page, "Mash pH, cooled to 20 °C").FillAsync("5.4");
        await page.GetByLabel("Add an acid").SelectOptionAsync("lactic acid 88 %");
        ILocator acid = page.Locator(".doses li").Filter(new LocatorFilterOptions { HasText = "lactic acid 88 %" });
        await Assertions.Expect(acid).ToHaveCountAsync(1);
        await Assertions.Expect(page.Locator("[data-headline=mashPh] b")).ToHaveTextAsync("5.40");
        await Assertions.Expect(page.GetByText("Take care.").First).ToBeVisibleAsync();
        string dose = await acid.InnerTextAsync();

        // A text that is no number is said at its field; the answer of before stays, marked; nothing is lost.
        await Field(page, "Calcium").FillAsync("a lot");
        await Assertions.Expect(page.Locator(".answer.stale")).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator(".saved")).ToContainTextAsync("Saved");
        await page.ReloadAsync();
        await page.LiveAsync();
        await Assertions.Expect(Field(page, "Calcium")).ToHaveValueAsync("a lot");
        await Field(page, "Calcium").FillAsync("100");
        await Assertions.Expect(acid).ToHaveTextAsync(dose);

        await page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Plain Bitter", Exact = true }).ClickAsync();
        await Assertions.Expect(page.Locator(".water")).ToContainTextAsync("lactic acid 88 %");
        await Assertions.Expect(page.Locator(".water")).ToContainTextAsync("Mash pH 5.40");
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task A_change_of_the_recipe_in_another_tab_changes_what_is_weighed_out()
    {
        await using OpenedBook gylebook = await OpenedBook.OpenAsync();
        IPage liquor = await chromium.TabAsync(gylebook.Url);
        await liquor.OpenAsync("/liquor");
        await liquor.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Soft blend for Hedgerow Brown" }).ClickAsync();
        ILocator litres = liquor.Locator(".doses section").First.Locator("h3 span");
        await Assertions.Expect(litres).ToBeVisibleAsync();
        string before = await litres.InnerTextAsync();

        Recipes.RecipeTab recipe = await Recipes.RecipeTab.OpenAsync(await liquor.Context.NewPageAsync(), "Hedgerow Brown");
        await recipe.TypeAsync(recipe.Page.GetByLabel("Beer", new PageGetByLabelOptions { Exact = true }), "10 L");

        await Assertions.Expect(litres).Not.ToHaveTextAsync(before);
        await liquor.Context.CloseAsync();
    }

    private static ILocator Field(IPage page, string label) => page.GetByLabel(label, new PageGetByLabelOptions { Exact = true });
}
