using Microsoft.Playwright;

namespace Gylebook.Browser.Tests.Recipes;

/// <summary>From a wish to a draft, on a phone.</summary>
public sealed class WishTests(ChromiumFixture chromium)
{
    private const int ThumbPixels = 44;

    [Theory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public async Task A_wish_on_a_phone_becomes_a_draft(ColorScheme scheme)
    {
        await using OpenedBook gylebook = await OpenedBook.OpenAsync();
        IPage page = await chromium.TabAsync(gylebook.Url, 360, 740, scheme, touch: true);
        await page.OpenAsync("/");
        await page.GetByText("A first recipe from a wish").ClickAsync();
        await page.GetByLabel("Alcohol", new PageGetByLabelOptions { Exact = true }).FillAsync("99 %");
        await page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Make a first draft" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("must be from 0.5 to 12 %");
        await page.PictureAsync($"wish-{scheme}");
        await page.HasNoBarrierAsync($"wish, {scheme}");
        string[] small = await page.EvaluateAsync<string[]>(
            """
            least => [...document.querySelectorAll('.from-wish button, .from-wish input, .from-wish summary')]
              .filter(e => e.getBoundingClientRect().height < least - 0.5).map(e => e.outerHTML.slice(0, 120))
            """,
            ThumbPixels);
        Assert.True(small.Length == 0, string.Join("; ", small));
        Assert.True(await page.EvaluateAsync<int>("() => document.documentElement.scrollWidth - innerWidth") <= 0, "Wider than the phone.");

        await page.GetByLabel("Alcohol", new PageGetByLabelOptions { Exact = true }).FillAsync("6");
        await page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Make a first draft" }).ClickAsync();
        await page.WaitForURLAsync("**/recipes/*-*");
        await Assertions.Expect(page.Locator("[data-headline=alcoholByVolume] dd").First).ToContainTextAsync("6.0");
    }
}
