using Microsoft.Playwright;

namespace Gylebook.Browser.Tests;

/// <summary>Kits, waters and foods are drafts as recipes are: undone over a reload, merged between tabs, half-typed and kept.</summary>
public sealed class SheetDraftTests(ChromiumFixture chromium)
{
    private static readonly Dictionary<string, Sample> Samples = new(StringComparer.Ordinal)
    {
        ["kit"] = new("/kits", "Lantern Shed", null, "conversion", "95 %", "88 %", "kettle.evaporation", "5 L/h"),
        ["water"] = new("/liquor", "Hard well for a pale beer", null, "sources[0].report.magnesium", "", "7", "sources[0].report.sodium", "21"),
        ["food"] = new("/foods?search=pumpkin-seed", "Pumpkin-seed flour, toasted, defatted", "Change its label", "label.protein", "18", "17", "label.fat", "4"),
    };

    public static TheoryData<string> Sheets => [.. Samples.Keys];

    [Theory]
    [MemberData(nameof(Sheets))]
    public async Task An_edit_is_undone_after_a_reload_and_brought_back(string noun)
    {
        Sample sheet = Samples[noun];
        await using OpenedBook gylebook = await OpenedBook.OpenAsync();
        IPage page = await OpenAsync(gylebook, sheet);
        string before = await Field(page, sheet.One).InputValueAsync();
        Assert.Contains(sheet.Before, before, StringComparison.Ordinal);
        await TypeAsync(page, sheet.One, sheet.After);
        await page.ReloadAsync();
        await page.LiveAsync();
        await Assertions.Expect(Field(page, sheet.One)).ToHaveValueAsync(sheet.After);
        await page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { NameRegex = new("^Undo") }).ClickAsync();
        await Assertions.Expect(Field(page, sheet.One)).ToHaveValueAsync(before);
        await page.Locator("h1").FocusAsync();
        await page.Keyboard.PressAsync("Control+Shift+Z");
        await Assertions.Expect(Field(page, sheet.One)).ToHaveValueAsync(sheet.After);
        await page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "History" }).ClickAsync();
        await Assertions.Expect(page.Locator("section[aria-labelledby=history] li")).ToHaveCountAsync(1);
        await page.HasNoBarrierAsync(noun);
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public async Task Two_tabs_that_change_different_fields_have_both_and_of_the_same_field_a_choice(string noun)
    {
        Sample sheet = Samples[noun];
        await using OpenedBook gylebook = await OpenedBook.OpenAsync();
        IPage one = await OpenAsync(gylebook, sheet);
        IPage two = await chromium.TabAsync(gylebook.Url);
        await two.OpenAsync(new Uri(one.Url).PathAndQuery);
        await Field(two, sheet.Other).FocusAsync();
        await TypeAsync(one, sheet.One, sheet.After);
        await Assertions.Expect(Field(two, sheet.One)).ToHaveValueAsync(sheet.After);
        await TypeAsync(two, sheet.Other, sheet.OtherAfter);
        await Assertions.Expect(Field(one, sheet.Other)).ToHaveValueAsync(sheet.OtherAfter);
        await Assertions.Expect(two.GetByRole(AriaRole.Alertdialog)).ToHaveCountAsync(0);

        string seen = await Field(one, sheet.Other).InputValueAsync();
        await Field(one, sheet.Other).FocusAsync();
        // The page has to hear of the focus before the other tab's text arrives; nothing on it shows that it has.
        await one.WaitForTimeoutAsync(1000);
        string before = await RevisionAsync(one);
        await TypeAsync(two, sheet.Other, "8");
        await SavedAfterAsync(one, before);
        await Assertions.Expect(Field(one, sheet.Other)).ToHaveValueAsync(seen);
        await Field(one, sheet.Other).FillAsync("9");
        await Field(one, sheet.Other).BlurAsync();
        await Assertions.Expect(one.GetByRole(AriaRole.Alertdialog)).ToContainTextAsync("Two tabs changed the same thing");
        await one.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "All mine", Exact = true }).ClickAsync();
        await Assertions.Expect(Field(two, sheet.Other)).ToHaveValueAsync(new System.Text.RegularExpressions.Regex("^9"));
    }

    [Fact]
    public async Task Half_typed_into_a_label_it_is_kept_with_its_finding_over_a_reload_and_the_answer_says_it_is_of_before()
    {
        await using OpenedBook gylebook = await OpenedBook.OpenAsync();
        IPage page = await OpenAsync(gylebook, Samples["food"]);
        await TypeAsync(page, "label.protein", "seven");
        await Assertions.Expect(Field(page, "label.protein")).ToHaveAttributeAsync("aria-invalid", "true");
        await Assertions.Expect(page.Locator(".old")).ToContainTextAsync("cannot be read");
        await page.ReloadAsync();
        await page.LiveAsync();
        await Assertions.Expect(Field(page, "label.protein")).ToHaveValueAsync("seven");
        await Assertions.Expect(page.Locator(".old")).ToContainTextAsync("This is of the label before it");
        await Assertions.Expect(page.Locator("#does")).ToBeVisibleAsync();
        await page.PictureAsync("label-half-typed");
        await TypeAsync(page, "label.protein", "17");
        await Assertions.Expect(page.Locator(".old")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task A_new_food_is_in_the_book_with_its_first_figure_keeps_the_focus_and_what_is_typed_on_and_undo_empties_it()
    {
        await using OpenedBook gylebook = await OpenedBook.OpenAsync();
        IPage page = await chromium.TabAsync(gylebook.Url);
        await page.OpenAsync("/foods/new");
        await page.WaitForSelectorAsync("form[data-keys]");
        await Assertions.Expect(page.Locator("[data-saved]")).ToHaveCountAsync(0);
        await Field(page, "label.fat").FocusAsync();
        await page.Keyboard.TypeAsync("1");
        await page.WaitForURLAsync("**/foods/own/*/label*");
        await page.Keyboard.TypeAsync("2.5");
        await Assertions.Expect(Field(page, "label.fat")).ToBeFocusedAsync();
        await Assertions.Expect(Field(page, "label.fat")).ToHaveValueAsync("12.5");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(Field(page, "label.saturated")).ToBeFocusedAsync();
        await page.Keyboard.TypeAsync("<1");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(Field(page, "label.saturated")).ToHaveAttributeAsync("data-stored", "<1");
        await page.ReloadAsync();
        await page.LiveAsync();
        await Assertions.Expect(Field(page, "label.saturated")).ToHaveValueAsync("<1");
        ILocator undo = page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { NameRegex = new("^Undo") });
        await undo.ClickAsync();
        await Assertions.Expect(Field(page, "label.saturated")).ToHaveValueAsync("");
        await undo.ClickAsync();
        await Assertions.Expect(Field(page, "label.fat")).ToHaveValueAsync("");
        await Assertions.Expect(undo).ToBeDisabledAsync();
    }

    private static ILocator Field(IPage page, string path) => page.Locator($"[data-field='{path}']");

    /// <summary>Types a text, leaves the field, and waits until it is on disk.</summary>
    private static async Task TypeAsync(IPage page, string path, string text)
    {
        string before = await RevisionAsync(page);
        await Field(page, path).FillAsync(text);
        await Field(page, path).BlurAsync();
        await SavedAfterAsync(page, before);
    }

    private static async Task<string> RevisionAsync(IPage page) => (await page.Locator("[data-revision]").GetAttributeAsync("data-revision"))!;

    private static async Task SavedAfterAsync(IPage page, string revision) => await page.WaitForFunctionAsync(
        "seen => document.querySelector('[data-revision]').dataset.revision !== seen", revision, new PageWaitForFunctionOptions { PollingInterval = 50 });

    private async Task<IPage> OpenAsync(OpenedBook gylebook, Sample sheet)
    {
        IPage page = await chromium.TabAsync(gylebook.Url);
        await page.OpenAsync(sheet.List);
        await page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = sheet.Name, Exact = true }).ClickAsync();
        if (sheet.Then is { } then)
        {
            await page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = then, Exact = true }).ClickAsync();
        }

        await Field(page, sheet.One).WaitForAsync();
        await page.LiveAsync();
        return page;
    }

    /// <summary>A sheet of the demo, and two fields of it.</summary>
    /// <param name="List">Where it is found.</param>
    /// <param name="Name">What it is called.</param>
    /// <param name="Then">A link to follow there; null when the first leads to its fields.</param>
    /// <param name="One">One field.</param>
    /// <param name="Before">What it says in the demo.</param>
    /// <param name="After">What is typed.</param>
    /// <param name="Other">Another field.</param>
    /// <param name="OtherAfter">What is typed there.</param>
    private sealed record Sample(string List, string Name, string? Then, string One, string Before, string After, string Other, string OtherAfter);
}
