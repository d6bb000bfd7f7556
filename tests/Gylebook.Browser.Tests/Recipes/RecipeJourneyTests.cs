using Microsoft.Playwright;

namespace Gylebook.Browser.Tests.Recipes;

/// <summary>What a brewer does on a recipe's page, in a real browser.</summary>
public sealed class RecipeJourneyTests(ChromiumFixture chromium)
{
    [Fact]
    public async Task A_changed_malt_changes_the_run_is_kept_is_undone_and_reaches_the_second_tab()
    {
        await using OpenedBook gylebook = await OpenedBook.OpenAsync();
        RecipeTab one = await RecipeTab.OpenAsync(await chromium.TabAsync(gylebook.Url), "Hedgerow Brown");
        double gravity = await one.NumberAsync("originalGravity");
        string run = await one.RunAsync();
        await one.TypeAsync(one.PaleAle, "4.2");
        await Assertions.Expect(one.PaleAle).ToHaveValueAsync("4.2 kg");
        Assert.True(await one.NumberAsync("originalGravity") > gravity + 0.003, "600 g more malt in 20 L is more than three points.");
        Assert.NotEqual(run, await one.RunAsync());

        await one.Page.ReloadAsync();
        await one.Page.LiveAsync();
        await Assertions.Expect(one.PaleAle).ToHaveValueAsync("4.2 kg");
        await Assertions.Expect(one.Undo).ToHaveAccessibleNameAsync("Undo pale ale malt: 3.6 kg → 4.2 kg");

        RecipeTab two = await one.AgainAsync(await chromium.TabAsync(gylebook.Url));
        await one.Undo.ClickAsync();
        await Assertions.Expect(one.PaleAle).ToHaveValueAsync("3.6 kg");
        await Assertions.Expect(two.PaleAle).ToHaveValueAsync("3.6 kg");
        Assert.Equal(gravity, await two.NumberAsync("originalGravity"));

        await one.Page.Locator("h2").First.ClickAsync();
        await one.Page.Keyboard.PressAsync("Control+Shift+Z");
        await Assertions.Expect(two.PaleAle).ToHaveValueAsync("4.2 kg");
        await one.Page.Keyboard.PressAsync("Control+z");
        await Assertions.Expect(two.PaleAle).ToHaveValueAsync("3.6 kg");
    }

    [Fact]
    public async Task Two_tabs_that_change_one_field_keep_both_texts_until_the_brewer_chooses()
    {
        await using OpenedBook gylebook = await OpenedBook.OpenAsync();
        RecipeTab one = await RecipeTab.OpenAsync(await chromium.TabAsync(gylebook.Url), "Hedgerow Brown");
        RecipeTab two = await one.AgainAsync(await chromium.TabAsync(gylebook.Url));
        await two.PaleAle.FocusAsync();
        long seen = await two.RevisionAsync();
        await one.TypeAsync(one.PaleAle, "4 kg");
        await two.SavedAfterAsync(seen);
        await Assertions.Expect(two.PaleAle).ToHaveValueAsync("3.6 kg");

        await two.PaleAle.FillAsync("5 kg");
        ILocator clash = two.Page.GetByRole(AriaRole.Alertdialog);
        await Assertions.Expect(clash).ToContainTextAsync("The other tab: 4 kg");
        await Assertions.Expect(clash).ToContainTextAsync("Yours: 5 kg");
        await two.Page.PictureAsync("recipe-clash");
        await clash.GetByLabel("Yours: 5 kg").CheckAsync();
        await clash.GetByRole(AriaRole.Button, new LocatorGetByRoleOptions { Name = "Save this choice" }).ClickAsync();
        await Assertions.Expect(one.PaleAle).ToHaveValueAsync("5 kg");
        await Assertions.Expect(clash).ToHaveCountAsync(0);

        await one.Page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "History" }).ClickAsync();
        await Assertions.Expect(one.Page.GetByText("came too late, set aside")).ToBeVisibleAsync();
        await one.Page.PictureAsync("recipe-history");
    }

    [Fact]
    public async Task Two_tabs_that_change_different_fields_have_both_without_being_asked()
    {
        await using OpenedBook gylebook = await OpenedBook.OpenAsync();
        RecipeTab one = await RecipeTab.OpenAsync(await chromium.TabAsync(gylebook.Url), "Hedgerow Brown");
        RecipeTab two = await one.AgainAsync(await chromium.TabAsync(gylebook.Url));
        ILocator munich = two.Page.GetByLabel("Amount of Munich malt", new PageGetByLabelOptions { Exact = true });
        await munich.FocusAsync();
        long seen = await two.RevisionAsync();
        await one.TypeAsync(one.PaleAle, "4 kg");
        await two.SavedAfterAsync(seen);
        await two.TypeAsync(munich, "700 g");
        await Assertions.Expect(two.PaleAle).ToHaveValueAsync("4 kg");
        await Assertions.Expect(one.Page.GetByLabel("Amount of Munich malt", new PageGetByLabelOptions { Exact = true })).ToHaveValueAsync("700 g");
        await Assertions.Expect(two.Page.GetByRole(AriaRole.Alertdialog)).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task Text_that_cannot_be_read_is_kept_with_its_finding_and_the_run_says_it_is_of_before()
    {
        await using OpenedBook gylebook = await OpenedBook.OpenAsync();
        RecipeTab one = await RecipeTab.OpenAsync(await chromium.TabAsync(gylebook.Url), "Hedgerow Brown");
        double gravity = await one.NumberAsync("originalGravity");
        await one.TypeAsync(one.PaleAle, "a good bag");
        await Assertions.Expect(one.PaleAle).ToHaveAttributeAsync("aria-invalid", "true");
        await Assertions.Expect(one.Page.Locator("#run .old")).ToContainTextAsync("cannot be read");
        await one.Page.ReloadAsync();
        await one.Page.LiveAsync();
        await Assertions.Expect(one.PaleAle).ToHaveValueAsync("a good bag");
        Assert.Equal(gravity, await one.NumberAsync("originalGravity"));
        await one.TypeAsync(one.PaleAle, "3.6 kg");
        await Assertions.Expect(one.Page.Locator("#run .old")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task Ingredients_are_found_as_one_types_added_copied_moved_and_taken_out()
    {
        await using OpenedBook gylebook = await OpenedBook.OpenAsync();
        RecipeTab one = await RecipeTab.OpenAsync(await chromium.TabAsync(gylebook.Url), "Plain Bitter");
        int lines = await one.Page.Locator("li.line").CountAsync();
        ILocator add = one.Page.GetByRole(AriaRole.Combobox, new PageGetByRoleOptions { Name = "Add to mash" });
        await add.PressSequentiallyAsync("wheat m");
        await Assertions.Expect(one.Page.Locator("[role=option]").First).ToContainTextAsync("wheat");
        await one.Page.PictureAsync("recipe-search");
        await add.PressAsync("Enter");
        ILocator wheat = one.Page.GetByLabel("Amount of Wheat malt", new PageGetByLabelOptions { Exact = true });
        await Assertions.Expect(wheat).ToBeFocusedAsync();
        await one.TypeAsync(wheat, "300 g");

        await one.OpenLineAsync("Wheat malt");
        await one.Page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Once more Wheat malt" }).ClickAsync();
        await Assertions.Expect(one.Page.Locator("li.line")).ToHaveCountAsync(lines + 2);
        long before = await one.RevisionAsync();
        await wheat.First.PressAsync("Alt+ArrowUp");
        await one.SavedAfterAsync(before);
        await Assertions.Expect(one.Page.Locator("li.line").First).Not.ToContainTextAsync("Wheat malt", new LocatorAssertionsToContainTextOptions { Timeout = 1000 });
        await one.Page.Locator("li.line").Filter(new LocatorFilterOptions { HasText = "Wheat malt" }).First.GetByRole(AriaRole.Button).First.ClickAsync();
        await one.Page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Take out Wheat malt" }).ClickAsync();
        await Assertions.Expect(one.Page.Locator("li.line")).ToHaveCountAsync(lines + 1);
    }

    [Fact]
    public async Task Wishes_are_weighed_for_where_they_stand()
    {
        await using OpenedBook gylebook = await OpenedBook.OpenAsync();
        RecipeTab one = await RecipeTab.OpenAsync(await chromium.TabAsync(gylebook.Url), "Hedgerow Brown");
        await one.TypeAsync(one.Page.GetByLabel("Original gravity", new PageGetByLabelOptions { Exact = true }), "1.050");
        await Assertions.Expect(one.Headline("originalGravity")).ToHaveTextAsync("1.050");

        // It holds: more honey, less malt, the same gravity; and one step back takes both back.
        string malt = await one.PaleAle.InputValueAsync();
        await one.TypeAsync(one.Page.GetByLabel("Amount of Buckwheat honey", new PageGetByLabelOptions { Exact = true }), "800 g");
        await Assertions.Expect(one.PaleAle).Not.ToHaveValueAsync(malt);
        await Assertions.Expect(one.Headline("originalGravity")).ToHaveTextAsync("1.050");
        await one.Undo.ClickAsync();
        await Assertions.Expect(one.PaleAle).ToHaveValueAsync(malt);
        await one.Page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Hold the original gravity" }).ClickAsync();
        await Assertions.Expect(one.Page.GetByLabel("Original gravity", new PageGetByLabelOptions { Exact = true })).ToHaveValueAsync("");

        await one.OpenLineAsync("Fuggle");
        await one.Page.GetByLabel("Bitterness of the beer").FillAsync("35");
        await one.Page.GetByLabel("Bitterness of the beer").PressAsync("Enter");
        await Assertions.Expect(one.Headline("bitterness")).ToHaveTextAsync("35\u00A0IBU");
        await one.Page.PictureAsync("recipe-line-open");

        await one.Page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Fix the strike" }).ClickAsync();
        await Assertions.Expect(one.Page.GetByText("fixed by you")).ToBeVisibleAsync();
        await one.Page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Plan it again" }).ClickAsync();
        await Assertions.Expect(one.Page.GetByText("planned backwards from the package")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task A_version_is_kept_compared_and_brought_back()
    {
        await using OpenedBook gylebook = await OpenedBook.OpenAsync();
        RecipeTab one = await RecipeTab.OpenAsync(await chromium.TabAsync(gylebook.Url), "Hedgerow Brown");
        string was = await one.PaleAle.InputValueAsync();
        await one.Page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Keep a version" }).ClickAsync();
        await one.Page.GetByLabel("A word on it").FillAsync("the plain one");
        await one.Page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Keep this version" }).ClickAsync();
        await Assertions.Expect(one.Page.GetByText("They say the same.")).ToBeVisibleAsync();
        await one.TypeAsync(one.PaleAle, "5 kg");
        await Assertions.Expect(one.Page.GetByRole(AriaRole.Row, new PageGetByRoleOptions { Name = $"pale ale malt {was} 5 kg" })).ToBeVisibleAsync();
        await one.Page.PictureAsync("recipe-versions");
        await one.Page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Bring it back version 1" }).ClickAsync();
        await Assertions.Expect(one.PaleAle).ToHaveValueAsync(was);
        await Assertions.Expect(one.Undo).ToHaveAccessibleNameAsync("Undo brought back version 1");
    }
}
