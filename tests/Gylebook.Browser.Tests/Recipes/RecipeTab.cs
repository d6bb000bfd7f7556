using System.Globalization;
using Microsoft.Playwright;

namespace Gylebook.Browser.Tests.Recipes;

/// <summary>A recipe's page in a tab, by what stands on it.</summary>
internal sealed class RecipeTab(IPage page)
{
    public IPage Page => page;

    public ILocator PaleAle => page.GetByLabel("Amount of Pale ale malt", new PageGetByLabelOptions { Exact = true });

    public ILocator Undo => page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { NameRegex = new("^Undo") });

    public ILocator Redo => page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { NameRegex = new("^Redo") });

    /// <summary>Opens a recipe of the demo as a brewer would: from the list.</summary>
    public static async Task<RecipeTab> OpenAsync(IPage page, string recipe)
    {
        await page.OpenAsync("/recipes");
        await page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = recipe, Exact = true }).ClickAsync();
        await page.WaitForURLAsync("**/recipes/*-*");
        await Assertions.Expect(page.Locator("[data-headline=originalGravity]")).ToBeVisibleAsync();
        await page.LiveAsync();
        return new RecipeTab(page);
    }

    /// <summary>The same recipe in another tab.</summary>
    public async Task<RecipeTab> AgainAsync(IPage other)
    {
        await other.OpenAsync(new Uri(page.Url).PathAndQuery);
        await Assertions.Expect(other.Locator("[data-headline=originalGravity]")).ToBeVisibleAsync();
        return new RecipeTab(other);
    }

    public ILocator Headline(string name) => page.Locator($"[data-headline={name}] dd").First;

    public async Task<double> NumberAsync(string headline)
    {
        string text = await Headline(headline).InnerTextAsync();
        return double.Parse(text.Split('\u00A0', ' ')[0], CultureInfo.InvariantCulture);
    }

    /// <summary>On a phone, from the fields to the run or back; where there is room for both, nothing.</summary>
    public async Task TurnAsync()
    {
        ILocator strip = page.Locator("a.strip");
        if (await strip.IsVisibleAsync())
        {
            await strip.ClickAsync();
        }
    }

    public Task<string> RunAsync() => page.Locator("#run .picture svg").InnerHTMLAsync();

    public ILocator Line(string name) => page.Locator("li.line").Filter(new LocatorFilterOptions { Has = page.GetByLabel($"Amount of {name}", new PageGetByLabelOptions { Exact = true }) });

    public Task OpenLineAsync(string name) => Line(name).GetByRole(AriaRole.Button, new LocatorGetByRoleOptions { Name = $"More of {name}" }).ClickAsync();

    /// <summary>Types a text, leaves the field, and waits until it is on disk.</summary>
    public async Task TypeAsync(ILocator field, string text)
    {
        long before = await RevisionAsync();
        await field.FillAsync(text);
        await field.BlurAsync();
        await SavedAfterAsync(before);
    }

    public async Task<long> RevisionAsync() =>
        long.Parse((await page.Locator("[data-revision]").GetAttributeAsync("data-revision"))!, CultureInfo.InvariantCulture);

    public Task SavedAfterAsync(long revision) => page.WaitForFunctionAsync(
        "seen => Number(document.querySelector('[data-revision]').dataset.revision) > seen",
        revision,
        // By the clock: a busy machine may draw no frame for long.
        new PageWaitForFunctionOptions { PollingInterval = 50 });
}
