using Microsoft.Playwright;

namespace Gylebook.Browser.Tests;

/// <summary>The first start, the demo, and its going.</summary>
public sealed class FirstStartTests(ChromiumFixture chromium)
{
    private const int MostTabs = 60;

    [Fact]
    public async Task The_demo_is_there_on_the_first_start_and_stays_away_once_removed()
    {
        string book = RunningGylebook.NewBook();
        RunningGylebook first = await RunningGylebook.StartAsync(book);
        Assert.Equal($"Gylebook is open at {first.Url} with the book {book}; Ctrl+C closes it.", first.FirstLine);
        IPage page = await chromium.TabAsync(first.Url);
        await page.OpenAsync("/");
        foreach (string recipe in new[] { "Hedgerow Brown", "Apricot & Cardamom Wheat", "Chestnut Mild", "Plain Bitter" })
        {
            await Assertions.Expect(page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = recipe, Exact = true })).ToBeVisibleAsync();
        }

        await page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Remove the demo" }).ClickAsync();
        await Assertions.Expect(page.GetByText("The demo is removed.")).ToBeVisibleAsync();
        await Assertions.Expect(page.GetByText("There is no recipe in the book yet.")).ToBeVisibleAsync();
        await page.PictureAsync("today-empty");
        (int exitCode, string errors) = await first.StopAsync();
        Assert.Equal(0, exitCode);
        Assert.Equal("", errors);

        await using RunningGylebook second = await RunningGylebook.StartAsync(book);
        IPage again = await chromium.TabAsync(second.Url);
        await again.OpenAsync("/");
        await Assertions.Expect(again.GetByText("There is no recipe in the book yet.")).ToBeVisibleAsync();
        Assert.Equal(0, await again.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Remove the demo" }).CountAsync());
    }

    [Fact]
    public async Task A_kit_changed_by_keyboard_alone_is_kept()
    {
        await using OpenedBook gylebook = await OpenedBook.OpenAsync();
        IPage page = await chromium.TabAsync(gylebook.Url);
        await page.OpenAsync("/");
        await page.TabToAsync("Kit", MostTabs);
        await page.Keyboard.PressAsync("Enter");
        await page.WaitForURLAsync("**/kits");
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new PageGetByRoleOptions { Name = "Kit", Level = 1 })).ToBeFocusedAsync();
        await page.TabToAsync("Lantern Shed", MostTabs);
        await page.Keyboard.PressAsync("Enter");
        await page.WaitForURLAsync("**/kits/*");
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new PageGetByRoleOptions { Name = "Lantern Shed", Level = 1 })).ToBeFocusedAsync();
        await page.TabToAsync("Boiled off", MostTabs);
        await page.Keyboard.PressAsync("Control+A");
        await page.Keyboard.TypeAsync("3,2");
        await page.Keyboard.PressAsync("Tab");
        await Assertions.Expect(page.Locator(".saved")).ToContainTextAsync("Saved");
        await page.ReloadAsync();
        await page.LiveAsync();
        await Assertions.Expect(page.GetByLabel("Boiled off", new PageGetByLabelOptions { Exact = true })).ToHaveValueAsync("3,2 L/h");
    }

    [Fact]
    public async Task What_is_typed_stays_as_typed_while_the_field_has_the_focus_and_reaches_the_second_tab()
    {
        await using OpenedBook gylebook = await OpenedBook.OpenAsync();
        IPage one = await chromium.TabAsync(gylebook.Url);
        await one.OpenAsync("/kits");
        await one.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Lantern Shed" }).ClickAsync();
        await one.WaitForURLAsync("**/kits/*");
        IPage two = await chromium.TabAsync(gylebook.Url);
        await two.OpenAsync(new Uri(one.Url).PathAndQuery);

        ILocator conversion = one.GetByRole(AriaRole.Textbox, new PageGetByRoleOptions { Name = "Conversion", Exact = true });
        await conversion.FillAsync("88.50");
        ILocator theirs = two.GetByRole(AriaRole.Textbox, new PageGetByRoleOptions { Name = "Conversion", Exact = true });
        await Assertions.Expect(theirs).ToHaveValueAsync("88.50 %");
        await Assertions.Expect(conversion).ToHaveValueAsync("88.50");
        await Assertions.Expect(conversion).ToBeFocusedAsync();

        await conversion.FillAsync("150 %");
        await Assertions.Expect(one.GetByText("Cannot be:")).ToBeVisibleAsync();
        Assert.Equal("true", await conversion.GetAttributeAsync("aria-invalid"));

        // Text that cannot be is kept as text that can: with its finding, in every tab.
        await Assertions.Expect(theirs).ToHaveValueAsync("150 %");
        await Assertions.Expect(two.GetByText("Cannot be:")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task A_page_says_that_Gylebook_is_gone_and_comes_back_with_it()
    {
        RunningGylebook first = await RunningGylebook.StartAsync();
        IPage page = await chromium.TabAsync(first.Url);
        await page.OpenAsync("/kits");
        await first.StopAsync();
        await Assertions.Expect(page.Locator("#components-reconnect-modal")).ToBeVisibleAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Lantern Shed" })).ToBeVisibleAsync();

        await using RunningGylebook second = await RunningGylebook.StartAsync(first.Book, first.Url);
        await Assertions.Expect(page.Locator("#components-reconnect-modal")).ToBeHiddenAsync(new LocatorAssertionsToBeHiddenOptions { Timeout = 60_000 });
        await page.LiveAsync();
        await page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Copy Lantern Shed" }).ClickAsync();
        await Assertions.Expect(page.GetByText("Lantern Shed, copy is made.")).ToBeVisibleAsync();
    }
}
