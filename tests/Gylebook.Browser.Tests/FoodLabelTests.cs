using Microsoft.Playwright;

namespace Gylebook.Browser.Tests;

/// <summary>A label typed on a phone.</summary>
public sealed class FoodLabelTests(ChromiumFixture chromium)
{
    private const int MostPresses = 60;

    // Sweetened chocolate puffed-corn cereal, 36 g serving: USDA SR26 NDB 08271 rounded by 21 CFR 101.9 prints fat 2, carbohydrate 30,
    // fibre 2, sugars 13, protein 2 g. Read back per 100 g by the same rules: fat [1.75, 2.25) g, all others half a gram either way,
    // over 36 g; starch and the like is what carbohydrate leaves of fibre and sugars: [29.5 - 2.5 - 13.5, 30.5 - 1.5 - 12.5].
    private static readonly (string Part, string Ends)[] Expected =
    [
        ("protein", "4.17 to 6.94"), ("fat", "4.86 to 6.25"), ("carbohydrate, fibre included", "81.9 to 84.7"), ("fibre", "4.17 to 6.94"),
        ("sugars", "34.7 to 37.5"), ("starch and the like", "37.5 to 45.8"),
    ];

    [Fact]
    public async Task A_cereal_packet_is_typed_on_a_phone_in_at_most_sixty_presses()
    {
        await using OpenedBook gylebook = await OpenedBook.OpenAsync();
        IPage page = await chromium.TabAsync(gylebook.Url, 360, 740, touch: true);
        await page.OpenAsync("/foods/new");
        await page.WaitForSelectorAsync("form[data-keys]");
        Thumb thumb = new(page);

        await thumb.TapAsync(page.GetByLabel("US: a serving"));
        await Assertions.Expect(page.GetByLabel("Serving size", new PageGetByLabelOptions { Exact = true })).ToBeVisibleAsync();
        await thumb.TapAsync(page.GetByLabel("Serving size", new PageGetByLabelOptions { Exact = true }));
        string[] lines = ["36", "", "2", "", "", "30", "2", "13", "", "", "2", "", ""];
        foreach (string line in lines)
        {
            await thumb.TypeAsync(line);
            await thumb.NextAsync();
        }

        await thumb.TypeAsync("puff");
        await Assertions.Expect(page.Locator("li[role=option]")).ToHaveCountAsync(1);
        await Assertions.Expect(page.Locator("li[role=option]")).ToContainTextAsync("puffed cereal");
        await thumb.NextAsync();
        await thumb.TypeAsync("Chocolate puffs");
        await thumb.NextAsync();

        TestContext.Current.SendDiagnosticMessage($"{thumb.Presses} presses");
        TestContext.Current.TestOutputHelper?.WriteLine($"{thumb.Presses} presses");
        Assert.InRange(thumb.Presses, 1, MostPresses);
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new PageGetByRoleOptions { Level = 1 })).ToHaveTextAsync("Chocolate puffs");
        await Assertions.Expect(page.GetByText("Behaves like: baked, flaked or puffed cereal")).ToBeVisibleAsync();
        foreach ((string part, string ends) in Expected)
        {
            ILocator row = page.Locator("section[aria-labelledby=means] tr").Filter(new LocatorFilterOptions
            {
                Has = page.GetByRole(AriaRole.Rowheader, new PageGetByRoleOptions { Name = part, Exact = true }),
            });
            await Assertions.Expect(row.Locator("td").Last).ToHaveTextAsync(ends);
        }

        await Assertions.Expect(page.GetByLabel("One place")).ToHaveValueAsync("mash");
        await Assertions.Expect(page.GetByLabel("The other place")).ToHaveValueAsync("knock-out");
        Assert.True(await page.EvaluateAsync<int>("() => document.documentElement.scrollWidth - innerWidth") <= 0, "It is wider than the phone.");
        await page.PictureAsync("label-phone");
        await page.ReloadAsync();
        await page.LiveAsync();
        await Assertions.Expect(page.GetByLabel("Total carbohydrate", new PageGetByLabelOptions { Exact = true })).ToHaveValueAsync("30");
        await AxeAsync(page, "phone");
        foreach (ColorScheme scheme in new[] { ColorScheme.Light, ColorScheme.Dark })
        {
            IPage wide = await chromium.TabAsync(gylebook.Url, scheme: scheme);
            await wide.OpenAsync(new Uri(page.Url).PathAndQuery);
            await wide.PictureAsync($"label-{scheme}");
            await AxeAsync(wide, scheme.ToString());
        }
    }

    private static async Task AxeAsync(IPage page, string name)
    {
        await page.WaitForSelectorAsync("#assumed");
        await page.HasNoBarrierAsync(name);
    }

    /// <summary>Counts every press: each key, each tap, each "next".</summary>
    private sealed class Thumb(IPage page)
    {
        public int Presses { get; private set; }

        public async Task TapAsync(ILocator target)
        {
            Presses++;
            await target.TapAsync();
        }

        public async Task TypeAsync(string text)
        {
            Presses += text.Length;
            await page.Keyboard.TypeAsync(text);
        }

        public async Task NextAsync()
        {
            Presses++;
            await page.Keyboard.PressAsync("Enter");
        }
    }
}
