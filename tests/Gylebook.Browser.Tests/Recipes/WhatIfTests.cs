using Microsoft.Playwright;

namespace Gylebook.Browser.Tests.Recipes;

/// <summary>What if: five sliders under the run, by thumb and by keyboard.</summary>
public sealed class WhatIfTests(ChromiumFixture chromium)
{
    private const int ThumbPixels = 44;

    [Theory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public async Task On_a_phone_a_slider_moves_the_run_and_has_room_for_a_thumb(ColorScheme scheme)
    {
        await using OpenedBook gylebook = await OpenedBook.OpenAsync();
        RecipeTab one = await RecipeTab.OpenAsync(await chromium.TabAsync(gylebook.Url, 360, 740, scheme, touch: true), "Plain Bitter");
        await one.TurnAsync();
        ILocator slider = await OpenAsync(one.Page);
        ILocator row = one.Page.Locator("[data-what-if=originalGravity] td");
        string likely = await row.Last.InnerTextAsync();

        // By finger: a tap near the left end of the track.
        LocatorBoundingBoxResult box = (await slider.BoundingBoxAsync())!;
        Assert.True(box.Height >= ThumbPixels - 0.5, $"{box.Height} px high.");
        await slider.ClickAsync(new LocatorClickOptions { Position = new Position { X = 12, Y = box.Height / 2 } });
        await Assertions.Expect(row.Last).Not.ToHaveTextAsync(likely);
        Assert.True(string.CompareOrdinal(await row.Last.InnerTextAsync(), likely) < 0, "Less is converted, and the wort is no thinner.");
        await Assertions.Expect(one.Page.Locator("#run .if")).ToContainTextAsync("nothing of it is saved");
        await Assertions.Expect(one.Page.Locator("#run .picture svg")).ToHaveAttributeAsync("aria-label", new System.Text.RegularExpressions.Regex("^What if: "));
        await one.Page.PictureAsync($"what-if-phone-{scheme}");
        int tooWide = await one.Page.EvaluateAsync<int>("() => document.documentElement.scrollWidth - innerWidth");
        Assert.True(tooWide <= 0, $"{tooWide} px wider than the phone.");
        string[] small = await one.Page.EvaluateAsync<string[]>(
            """
            least => [...document.querySelectorAll('.what button, .what input')]
              .filter(e => e.getBoundingClientRect().height < least - 0.5 || e.getBoundingClientRect().width < least - 0.5)
              .map(e => e.outerHTML.slice(0, 120))
            """,
            ThumbPixels);
        Assert.True(small.Length == 0, string.Join("; ", small));
        await one.Page.HasNoBarrierAsync($"what if, {scheme}");
    }

    [Fact]
    public async Task By_keyboard_there_and_back_and_nothing_was_saved()
    {
        await using OpenedBook gylebook = await OpenedBook.OpenAsync();
        RecipeTab one = await RecipeTab.OpenAsync(await chromium.TabAsync(gylebook.Url), "Plain Bitter");
        long revision = await one.RevisionAsync();
        ILocator slider = await OpenAsync(one.Page), row = one.Page.Locator("[data-what-if=originalGravity]");
        string likely = await row.InnerTextAsync(), now = (await slider.GetAttributeAsync("aria-valuetext"))!;
        await slider.FocusAsync();
        await one.Page.Keyboard.PressAsync("End");
        await Assertions.Expect(row).Not.ToHaveTextAsync(likely);
        await Assertions.Expect(slider).Not.ToHaveAttributeAsync("aria-valuetext", now);
        await one.Page.PictureAsync("what-if-wide");
        await one.Page.HasNoBarrierAsync("what if, wide");
        await one.Page.Keyboard.PressAsync("Tab");
        await one.Page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(one.Page.Locator("#run .if")).ToHaveCountAsync(0);
        Assert.Equal(likely, await row.InnerTextAsync());
        await Assertions.Expect(slider).ToHaveValueAsync("0");
        Assert.Equal(revision, await one.RevisionAsync());
    }

    private static async Task<ILocator> OpenAsync(IPage page)
    {
        await page.Locator("#run summary").Filter(new LocatorFilterOptions { HasText = "What if?" }).ClickAsync();
        ILocator slider = page.GetByLabel("How much of the malt your mash converts", new PageGetByLabelOptions { Exact = true });
        await Assertions.Expect(slider).ToBeEnabledAsync();
        return slider;
    }
}
