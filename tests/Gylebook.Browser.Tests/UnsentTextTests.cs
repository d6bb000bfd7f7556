using Gylebook.Browser.Tests.Recipes;
using Microsoft.Data.Sqlite;
using Microsoft.Playwright;

namespace Gylebook.Browser.Tests;

/// <summary>What is typed is in the book or still on the page, whatever becomes of the connection, the server and the page.</summary>
public sealed class UnsentTextTests(ChromiumFixture chromium)
{
    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Typed_into_a_recipe_while_the_wire_is_cut_it_is_marked_and_goes_into_the_book_when_the_wire_is_mended()
    {
        await using OpenedBook gylebook = await OpenedBook.OpenAsync();
        await using Wire wire = new(gylebook.Url);
        RecipeTab one = await RecipeTab.OpenAsync(await chromium.TabAsync(wire.Url), "Hedgerow Brown");
        wire.Cut();
        await one.PaleAle.FillAsync("4.2");
        ILocator munich = one.Page.GetByLabel("Amount of Munich malt", new PageGetByLabelOptions { Exact = true });
        await munich.FillAsync("700 g");
        await munich.BlurAsync();
        await Assertions.Expect(Bar(one.Page)).ToContainTextAsync("there is no connection");
        await Assertions.Expect(Bar(one.Page)).ToContainTextAsync("Amount of Pale ale malt: you typed 4.2");
        await Assertions.Expect(one.Page.Locator("[data-saved]")).ToBeHiddenAsync();
        await PicturesAsync(one.Page, "unsent-recipe");

        // Another tab on another wire changes another line meanwhile.
        RecipeTab two = await one.AgainAsync(await chromium.TabAsync(gylebook.Url));
        await two.TypeAsync(two.Page.GetByLabel("Amount of Chocolate malt", new PageGetByLabelOptions { Exact = true }), "150 g");

        wire.Mend();
        await Assertions.Expect(two.PaleAle).ToHaveValueAsync("4.2 kg");
        await Assertions.Expect(two.Page.GetByLabel("Amount of Munich malt", new PageGetByLabelOptions { Exact = true })).ToHaveValueAsync("700 g");
        await Assertions.Expect(one.Page.GetByLabel("Amount of Chocolate malt", new PageGetByLabelOptions { Exact = true })).ToHaveValueAsync("150 g");
        await Assertions.Expect(Bar(one.Page)).ToBeHiddenAsync();
        await Assertions.Expect(one.Page.Locator("[data-saved]")).ToBeVisibleAsync();
        await StaysEmptyAsync(one.Page);
    }

    [Fact]
    public async Task Typed_where_another_tab_changed_the_same_meanwhile_both_texts_stand_until_the_brewer_chooses()
    {
        await using OpenedBook gylebook = await OpenedBook.OpenAsync();
        await using Wire wire = new(gylebook.Url);
        RecipeTab one = await RecipeTab.OpenAsync(await chromium.TabAsync(wire.Url), "Hedgerow Brown");
        wire.Cut();
        await one.PaleAle.FillAsync("4.2");
        await one.PaleAle.BlurAsync();
        RecipeTab two = await one.AgainAsync(await chromium.TabAsync(gylebook.Url));
        await two.TypeAsync(two.PaleAle, "5 kg");
        wire.Mend();
        await Assertions.Expect(Bar(one.Page)).ToContainTextAsync("you typed 4.2; the book says 5 kg");
        await Assertions.Expect(one.PaleAle).ToHaveValueAsync("5 kg");
        await PicturesAsync(one.Page, "unsent-both");
        await Bar(one.Page).GetByRole(AriaRole.Button, new LocatorGetByRoleOptions { Name = "Use what I typed" }).ClickAsync();
        await Assertions.Expect(two.PaleAle).ToHaveValueAsync("4.2 kg");
        await StaysEmptyAsync(one.Page);
    }

    [Fact]
    public async Task Typed_while_the_server_is_away_it_goes_into_the_recipe_when_the_page_has_loaded_itself_again()
    {
        RunningGylebook first = await RunningGylebook.StartAsync();
        RecipeTab one = await RecipeTab.OpenAsync(await chromium.TabAsync(first.Url), "Hedgerow Brown");
        await first.StopAsync();
        await one.PaleAle.FillAsync("4.2");
        await one.Page.GetByLabel("Notes", new PageGetByLabelOptions { Exact = true }).FillAsync("typed while nobody was there");
        await Assertions.Expect(Bar(one.Page)).ToContainTextAsync("Notes: you typed typed while nobody was there");

        await using RunningGylebook second = await RunningGylebook.StartAsync(first.Book, first.Url);
        RecipeTab two = await one.AgainAsync(await chromium.TabAsync(second.Url));
        await Assertions.Expect(two.PaleAle).ToHaveValueAsync("4.2 kg", new LocatorAssertionsToHaveValueOptions { Timeout = 60_000 });
        await Assertions.Expect(two.Page.GetByLabel("Notes", new PageGetByLabelOptions { Exact = true })).ToHaveValueAsync("typed while nobody was there");
        await Assertions.Expect(one.PaleAle).ToHaveValueAsync("4.2 kg");
        await StaysEmptyAsync(one.Page);
    }

    [Fact]
    public async Task Typed_into_a_kit_while_the_server_is_away_it_goes_into_the_kit_when_the_page_has_loaded_itself_again()
    {
        RunningGylebook first = await RunningGylebook.StartAsync();
        IPage page = await KitAsync(first.Url);
        ILocator conversion = page.GetByLabel("Conversion", new PageGetByLabelOptions { Exact = true });
        await first.StopAsync();
        await conversion.FillAsync("81 %");
        await conversion.BlurAsync();
        await Assertions.Expect(Bar(page)).ToContainTextAsync("Conversion: you typed 81 %");
        await PicturesAsync(page, "unsent-kit");
        await page.HasNoBarrierAsync("kept text");

        await using RunningGylebook second = await RunningGylebook.StartAsync(first.Book, first.Url);
        await Assertions.Expect(Bar(page)).ToBeHiddenAsync(new LocatorAssertionsToBeHiddenOptions { Timeout = 60_000 });
        await page.ReloadAsync();
        await page.LiveAsync();
        await Assertions.Expect(conversion).ToHaveValueAsync("81 %");
        await StaysEmptyAsync(page);
    }

    [Fact]
    public async Task Typed_into_a_food_that_is_not_in_the_book_yet_while_the_server_is_away_it_makes_the_food_when_the_page_has_loaded_itself_again()
    {
        RunningGylebook first = await RunningGylebook.StartAsync();
        IPage page = await chromium.TabAsync(first.Url);
        await page.OpenAsync("/foods/new");
        ILocator protein = page.GetByLabel("Protein", new PageGetByLabelOptions { Exact = true });
        // The page's scripts come after the page; nothing shows that the one that keeps texts is there.
        await page.WaitForSelectorAsync("form[data-keys]");
        await page.WaitForTimeoutAsync(1000);
        await first.StopAsync();
        await protein.FillAsync("7");
        await page.GetByLabel("May contain", new PageGetByLabelOptions { Exact = true }).FillAsync("sesame");
        await Assertions.Expect(Bar(page)).ToContainTextAsync("Protein: you typed 7");

        await using RunningGylebook second = await RunningGylebook.StartAsync(first.Book, first.Url);
        await page.WaitForURLAsync("**/foods/own/*/label*", new PageWaitForURLOptions { Timeout = 60_000 });
        await Assertions.Expect(Bar(page)).ToBeHiddenAsync(new LocatorAssertionsToBeHiddenOptions { Timeout = 60_000 });
        await page.ReloadAsync();
        await page.LiveAsync();
        await Assertions.Expect(protein).ToHaveValueAsync("7");
        await Assertions.Expect(page.GetByLabel("May contain", new PageGetByLabelOptions { Exact = true })).ToHaveValueAsync("sesame");
        await StaysEmptyAsync(page);
    }

    [Fact]
    public async Task A_text_a_kit_cannot_read_is_kept_with_its_finding_and_outlives_a_reload()
    {
        await using OpenedBook gylebook = await OpenedBook.OpenAsync();
        IPage page = await KitAsync(gylebook.Url);
        ILocator conversion = page.GetByLabel("Conversion", new PageGetByLabelOptions { Exact = true });
        await conversion.FillAsync("150 %");
        await conversion.BlurAsync();
        await Assertions.Expect(page.GetByText("a share is from 0 % to 100 %")).ToBeVisibleAsync();
        await page.ReloadAsync();
        await page.LiveAsync();
        await Assertions.Expect(conversion).ToHaveValueAsync("150 %");
        await Assertions.Expect(page.GetByText("a share is from 0 % to 100 %")).ToBeVisibleAsync();
        await StaysEmptyAsync(page);
        await page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { NameRegex = new("^Undo") }).ClickAsync();
        await Assertions.Expect(conversion).ToHaveValueAsync("95 %");
    }

    [Fact]
    public async Task A_new_food_and_a_setting_and_a_water_typed_while_the_wire_is_cut_are_saved_once_it_is_mended()
    {
        await using OpenedBook gylebook = await OpenedBook.OpenAsync();
        await using Wire wire = new(gylebook.Url);
        IPage food = await chromium.TabAsync(wire.Url);
        await food.OpenAsync("/foods/new");
        IPage settings = await chromium.TabAsync(wire.Url);
        await settings.OpenAsync("/settings");
        IPage water = await chromium.TabAsync(wire.Url);
        await water.OpenAsync("/liquor");
        await water.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Hard well for a pale beer", Exact = true }).ClickAsync();
        await water.WaitForURLAsync("**/liquor/*-*");
        ILocator calcium = water.GetByLabel("Calcium", new PageGetByLabelOptions { Exact = true });
        await calcium.WaitForAsync();
        wire.Cut();
        await food.GetByLabel("Protein", new PageGetByLabelOptions { Exact = true }).FillAsync("7");
        await food.GetByLabel("Name", new PageGetByLabelOptions { Exact = true }).FillAsync("Rye crackers");
        await food.GetByLabel("May contain", new PageGetByLabelOptions { Exact = true }).FillAsync("sesame");
        await settings.GetByLabel("US gallon").CheckAsync();
        await calcium.FillAsync("77");
        await Assertions.Expect(Bar(food)).ToContainTextAsync("Name: you typed Rye crackers");
        await Assertions.Expect(Bar(settings)).ToContainTextAsync("Volume: you typed US gallon");
        wire.Mend();

        await Assertions.Expect(food.GetByRole(AriaRole.Heading, new PageGetByRoleOptions { Level = 1 })).ToHaveTextAsync("Rye crackers");
        await food.WaitForURLAsync("**/foods/own/*/label*");
        await Assertions.Expect(Bar(settings)).ToBeHiddenAsync();
        await Assertions.Expect(Bar(food)).ToBeHiddenAsync();
        await Assertions.Expect(Bar(water)).ToBeHiddenAsync();
        IPage look = await chromium.TabAsync(gylebook.Url);
        await look.OpenAsync(new Uri(food.Url).PathAndQuery);
        await Assertions.Expect(look.GetByLabel("Protein", new PageGetByLabelOptions { Exact = true })).ToHaveValueAsync("7");
        await Assertions.Expect(look.GetByLabel("May contain", new PageGetByLabelOptions { Exact = true })).ToHaveValueAsync("sesame");
        await settings.ReloadAsync();
        await settings.LiveAsync();
        await Assertions.Expect(settings.GetByLabel("US gallon")).ToBeCheckedAsync();
        await look.OpenAsync(new Uri(water.Url).PathAndQuery);
        await Assertions.Expect(look.GetByLabel("Calcium", new PageGetByLabelOptions { Exact = true })).ToHaveValueAsync("77");
    }

    [Fact]
    public async Task A_book_that_cannot_be_written_leaves_the_kit_on_the_page_with_its_text_and_the_reason()
    {
        await using OpenedBook gylebook = await OpenedBook.OpenAsync();
        IPage page = await KitAsync(gylebook.Url);
        ILocator conversion = page.GetByLabel("Conversion", new PageGetByLabelOptions { Exact = true });
        await using (SqliteConnection other = new($"Data Source={gylebook.Book};Pooling=False"))
        {
            await other.OpenAsync(Cancellation);
            await using var held = await other.BeginTransactionAsync(Cancellation);
            await conversion.FillAsync("82 %");
            await conversion.BlurAsync();
            await Assertions.Expect(page.Locator(".saved")).ToContainTextAsync("Not saved: Another program is writing");
            await Assertions.Expect(conversion).ToHaveValueAsync("82 %");
            await Assertions.Expect(Bar(page)).ToContainTextAsync("Conversion: you typed 82 %");
            await PicturesAsync(page, "unsaved-kit");
        }

        await page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Save again" }).ClickAsync();
        await Assertions.Expect(page.Locator(".saved")).ToContainTextAsync("Saved");
        await StaysEmptyAsync(page);
    }

    [Fact]
    public async Task A_note_typed_beside_its_button_is_still_there_after_a_restart()
    {
        RunningGylebook first = await RunningGylebook.StartAsync();
        RecipeTab one = await RecipeTab.OpenAsync(await chromium.TabAsync(first.Url), "Hedgerow Brown");
        await one.Page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Keep a version" }).ClickAsync();
        ILocator note = one.Page.Locator("#note");
        await note.FillAsync("with less honey");
        await first.StopAsync();
        await using RunningGylebook second = await RunningGylebook.StartAsync(first.Book, first.Url);
        await Assertions.Expect(one.Page.Locator("#components-reconnect-modal")).ToBeHiddenAsync(new LocatorAssertionsToBeHiddenOptions { Timeout = 60_000 });
        await one.Page.LiveAsync();
        await Assertions.Expect(note).ToHaveValueAsync("with less honey");
        await one.Page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Keep this version" }).ClickAsync();
        await Assertions.Expect(one.Page.GetByText("with less honey")).ToBeVisibleAsync();
    }

    private static ILocator Bar(IPage page) => page.Locator("#unsent");

    /// <summary>Nothing is owed, here or on the browser's shelf.</summary>
    private static async Task StaysEmptyAsync(IPage page)
    {
        await Assertions.Expect(Bar(page)).ToBeHiddenAsync();
        await page.WaitForFunctionAsync("() => Object.keys(localStorage).every(key => !key.startsWith('gylebook.typed|'))");
    }

    private static async Task PicturesAsync(IPage page, string name)
    {
        await page.PictureAsync(name);
        await page.EmulateMediaAsync(new PageEmulateMediaOptions { ColorScheme = ColorScheme.Dark });
        await page.PictureAsync($"{name}-dark");
        await page.EmulateMediaAsync(new PageEmulateMediaOptions { ColorScheme = ColorScheme.Light });
        PageViewportSizeResult size = page.ViewportSize!;
        await page.SetViewportSizeAsync(360, 740);
        int tooWide = await page.EvaluateAsync<int>("() => document.documentElement.scrollWidth - innerWidth");
        Assert.True(tooWide <= 0, $"{name} is {tooWide} px wider than the phone.");
        await page.PictureAsync($"{name}-phone");
        await page.SetViewportSizeAsync(size.Width, size.Height);
    }

    private async Task<IPage> KitAsync(string url)
    {
        IPage page = await chromium.TabAsync(url);
        await page.OpenAsync("/kits");
        await page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Lantern Shed", Exact = true }).ClickAsync();
        await page.WaitForURLAsync("**/kits/*-*");
        await page.GetByLabel("Conversion", new PageGetByLabelOptions { Exact = true }).WaitForAsync();
        return page;
    }
}
