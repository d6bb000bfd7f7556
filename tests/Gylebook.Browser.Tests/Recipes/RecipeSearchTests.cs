using Microsoft.Playwright;

namespace Gylebook.Browser.Tests.Recipes;

/// <summary>The search of a stage, where a window has an end and a field a selection.</summary>
public sealed class RecipeSearchTests(ChromiumFixture chromium)
{
    [Theory]
    [InlineData(360, 640, "Mash")]
    [InlineData(360, 640, "Package")]
    [InlineData(1280, 720, "Ferment")]
    [InlineData(1280, 720, "Package")]
    public async Task The_list_stays_in_the_window_wherever_its_field_stands(int width, int height, string stage)
    {
        await using OpenedBook gylebook = await OpenedBook.OpenAsync();
        RecipeTab tab = await RecipeTab.OpenAsync(await chromium.TabAsync(gylebook.Url), "Hedgerow Brown");
        await tab.Page.SetViewportSizeAsync(width, height);
        ILocator field = tab.Page.Locator($"[data-stage={stage}] [role=combobox]");
        ILocator list = tab.Page.Locator($"[data-stage={stage}] [role=listbox]");

        // At the foot of the window, where there is least room under it, and near its head.
        foreach (string block in new[] { "end", "start" })
        {
            await field.EvaluateAsync("(field, block) => { field.blur(); field.scrollIntoView({ block }); }", block);
            await field.FocusAsync();
            await list.WaitForAsync();

            // Bands that arrive meanwhile move the page: it is to settle, and the list with it.
            await tab.Page.WaitForTimeoutAsync(500);
            double[] ends = await list.EvaluateAsync<double[]>("list => { const box = list.getBoundingClientRect(); return [box.top, box.bottom, box.left, box.right]; }");
            Assert.True(ends[0] >= 0 && ends[1] <= height && ends[2] >= 0 && ends[3] <= width, $"{stage} at its {block}: {string.Join(", ", ends)}");
            Assert.True(ends[1] - ends[0] > 100, $"{stage} at its {block}: {ends[1] - ends[0]} px is no list.");
        }

        await tab.Page.PictureAsync($"recipe-search-{stage}-{width}");
    }

    [Fact]
    public async Task The_weight_of_a_new_line_is_typed_over()
    {
        await using OpenedBook gylebook = await OpenedBook.OpenAsync();
        RecipeTab tab = await RecipeTab.OpenAsync(await chromium.TabAsync(gylebook.Url), "Hedgerow Brown");
        await tab.Page.Locator("[data-stage=Mash] [role=combobox]").FillAsync("biscuit");
        await Assertions.Expect(tab.Page.Locator("[data-stage=Mash] [role=option]").First).ToContainTextAsync("toasted malt");
        await tab.Page.Keyboard.PressAsync("Enter");
        ILocator weight = tab.Page.GetByLabel("Amount of Toasted malt", new PageGetByLabelOptions { Exact = true });
        await Assertions.Expect(weight).ToBeFocusedAsync();
        await tab.Page.Keyboard.TypeAsync("250 g");
        await Assertions.Expect(weight).ToHaveValueAsync("250 g");
    }
}
