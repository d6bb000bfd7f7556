using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Gylebook.Browser.Tests;

/// <summary>What every test does with a tab.</summary>
internal static class Tabs
{
    /// <summary>Goes there and waits until the page answers.</summary>
    public static async Task OpenAsync(this IPage page, string path)
    {
        await page.GotoAsync(path);
        await page.LiveAsync();
    }

    /// <summary>Until then the page is inert, so that nothing typed is lost.</summary>
    public static Task LiveAsync(this IPage page) => page.WaitForSelectorAsync("main:not([inert])");

    /// <summary>A computed style of the first such element.</summary>
    public static Task<string> StyleAsync(this IPage page, string selector, string property) => page.EvaluateAsync<string>(
        "([selector, property]) => getComputedStyle(document.querySelector(selector)).getPropertyValue(property)", new[] { selector, property });

    /// <summary>Presses Tab until that is focused: what it is labelled, or what it says.</summary>
    public static async Task TabToAsync(this IPage page, string name, int most)
    {
        for (int i = 0; i < most; i++)
        {
            await page.Keyboard.PressAsync("Tab");
            string focused = await page.EvaluateAsync<string>(
                "() => (document.activeElement?.labels?.[0] ?? document.activeElement)?.textContent?.trim() ?? ''");
            if (focused == name)
            {
                return;
            }
        }

        Assert.Fail($"{most} times Tab did not reach {name}.");
    }

    /// <summary>Axe looked, and found no barrier.</summary>
    public static async Task HasNoBarrierAsync(this IPage page, string name)
    {
        AxeResult result = await page.RunAxe();
        Assert.True(result.Passes.Length > 0, "axe looked at nothing.");
        Assert.True(
            result.Violations.Length == 0,
            $"{name}: " + string.Join("; ", result.Violations.Select(v => $"{v.Id}: {v.Help} at {string.Join(", ", v.Nodes.Take(3).Select(n => n.Html))}")));
    }

    /// <summary>Keeps a picture, when somebody asked for pictures by naming a folder.</summary>
    public static async Task PictureAsync(this IPage page, string name)
    {
        if (Environment.GetEnvironmentVariable("GYLEBOOK_PICTURES") is { Length: > 0 } folder)
        {
            await page.ScreenshotAsync(new PageScreenshotOptions { Path = Path.Combine(folder, name + ".png"), FullPage = true });
        }
    }
}
