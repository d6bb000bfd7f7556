using Microsoft.Playwright;

namespace Gylebook.Browser.Tests.Recipes;

/// <summary>Undo by key and the comparison of versions, where only a browser shows what it does by itself.</summary>
public sealed class RecipeWaysBackTests(ChromiumFixture chromium)
{
    /// <summary>The browser remembers what was typed into a field that was left: it may not type 5 over a saved 5.5.</summary>
    [Fact]
    public async Task Ctrl_Z_in_a_field_that_was_left_takes_back_the_edit_and_never_half_of_what_was_typed()
    {
        await using OpenedBook gylebook = await OpenedBook.OpenAsync();
        RecipeTab tab = await RecipeTab.OpenAsync(await chromium.TabAsync(gylebook.Url), "Hedgerow Brown");
        await TypeAsync(tab, "5.5");
        await Assertions.Expect(tab.PaleAle).ToHaveValueAsync("5.5 kg");

        await tab.PaleAle.FocusAsync();
        await tab.Page.Keyboard.PressAsync("Control+z");
        await Assertions.Expect(tab.PaleAle).ToHaveValueAsync("3.6 kg");
        await Assertions.Expect(tab.Redo).ToHaveAccessibleNameAsync("Redo pale ale malt: 3.6 kg → 5.5 kg");
        await Assertions.Expect(tab.PaleAle).ToBeFocusedAsync();
        await tab.Page.Keyboard.PressAsync("Control+Shift+Z");
        await Assertions.Expect(tab.PaleAle).ToHaveValueAsync("5.5 kg");

        // What is typed and not left yet is the browser's own to take back, and nothing beyond it.
        ILocator munich = tab.Page.GetByLabel("Amount of Munich malt", new PageGetByLabelOptions { Exact = true });
        string before = await munich.InputValueAsync();
        await munich.ClickAsync();
        await munich.PressSequentiallyAsync("7");
        await tab.Page.Keyboard.PressAsync("Control+z");
        await Assertions.Expect(munich).ToHaveValueAsync(before);
        await Assertions.Expect(tab.PaleAle).ToHaveValueAsync("5.5 kg");
    }

    /// <summary>The list of versions grew above the chosen one: the browser may not show another than is compared.</summary>
    [Fact]
    public async Task The_versions_that_are_chosen_are_the_ones_compared()
    {
        await using OpenedBook gylebook = await OpenedBook.OpenAsync();
        RecipeTab tab = await RecipeTab.OpenAsync(await chromium.TabAsync(gylebook.Url), "Hedgerow Brown");
        await tab.Page.Locator("a[href*='open=versions']").ClickAsync();
        ILocator keep = tab.Page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Keep this version" });
        ILocator compared = tab.Page.Locator(".compare select").First;
        ILocator column = tab.Page.Locator(".panel thead th").Nth(1);
        await keep.ClickAsync();
        await Assertions.Expect(compared.Locator("option")).ToHaveCountAsync(2);
        await tab.TypeAsync(tab.PaleAle, "4");
        await keep.ClickAsync();
        await Assertions.Expect(compared.Locator("option")).ToHaveCountAsync(3);
        await tab.TypeAsync(tab.PaleAle, "5");

        await Assertions.Expect(column).ToHaveTextAsync(await ChosenAsync());
        await compared.SelectOptionAsync(new SelectOptionValue { Label = "version 2" });
        await Assertions.Expect(column).ToHaveTextAsync("version 2");
        await Assertions.Expect(tab.Page.Locator(".panel tbody tr")).ToHaveTextAsync(["pale ale malt4 kg5 kg"]);

        Task<string> ChosenAsync() => compared.EvaluateAsync<string>("select => select.selectedOptions[0].textContent");
    }

    /// <summary>Key by key, as a brewer types.</summary>
    private static async Task TypeAsync(RecipeTab tab, string text)
    {
        long before = await tab.RevisionAsync();
        await tab.PaleAle.ClickAsync();
        await tab.Page.Keyboard.PressAsync("Control+a");
        await tab.PaleAle.PressSequentiallyAsync(text);
        await tab.PaleAle.BlurAsync();
        await tab.SavedAfterAsync(before);
    }
}
