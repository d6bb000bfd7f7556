using Microsoft.Playwright;

[assembly: AssemblyFixture(typeof(Gylebook.Browser.Tests.ChromiumFixture))]

namespace Gylebook.Browser.Tests;

/// <summary>What holds on every page.</summary>
public sealed class EveryPageTests(ChromiumFixture chromium)
{
    private const int ThumbPixels = 44;

    /// <summary>Pages by a name and the way to them: a path, or a link to follow from a path.</summary>
    public static TheoryData<string, string, string?> Pages => new()
    {
        { "today", "/", null },
        { "recipes", "/recipes", null },
        { "recipe", "/", "Hedgerow Brown" },
        { "parted-recipe", "/", "Apricot & Cardamom Wheat" },
        { "waters", "/liquor", null },
        { "liquor", "/liquor", "Soft blend for Hedgerow Brown" },
        { "kept-water", "/liquor", "Hard well for a pale beer" },
        { "kits", "/kits", null },
        { "kit", "/kits", "Lantern Shed" },
        { "foods", "/foods", null },
        { "food", "/foods/milk-chocolate", null },
        { "own-food", "/foods?search=pumpkin-seed", "Pumpkin-seed flour, toasted, defatted" },
        { "new-food", "/foods/new", null },
        { "larder", "/larder", null },
        { "larder-sheet", "/larder", "North Field pale" },
        { "settings", "/settings", null },
        { "devices", "/settings/devices", null },
        { "no-such-page", "/no-such-page", null },
    };

    /// <summary>One visit for both: a page is a second of work for the browser, and axe's own scripts come after the complaints are heard.</summary>
    [Theory]
    [MemberData(nameof(Pages))]
    public async Task The_browser_has_nothing_to_complain_of_and_axe_finds_no_barrier_in_light_and_dark(string name, string path, string? link)
    {
        List<string> complaints = [];
        IPage page = await chromium.TabAsync(chromium.Url);
        page.Console += (_, message) =>
        {
            // The page that is not there is meant to be answered by 404, which the browser logs.
            if (message.Type is "error" or "warning" && !(name == "no-such-page" && message.Text.Contains("404", StringComparison.Ordinal)))
            {
                complaints.Add(message.Text);
            }
        };
        page.PageError += (_, error) => complaints.Add(error);
        await FollowAsync(page, path, link);
        Assert.Empty(complaints);
        Assert.Equal(1, await page.Locator("h1").CountAsync());
        foreach (ColorScheme scheme in new[] { ColorScheme.Light, ColorScheme.Dark })
        {
            await page.EmulateMediaAsync(new PageEmulateMediaOptions { ColorScheme = scheme });
            await page.PictureAsync($"{name}-{scheme}");
            await page.HasNoBarrierAsync($"{name}, {scheme}");
        }

        await page.Context.CloseAsync();
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task A_phone_shows_it_whole_with_room_for_a_thumb(string name, string path, string? link)
    {
        IPage page = await chromium.TabAsync(chromium.Url, width: 360, height: 740, touch: true);
        await FollowAsync(page, path, link);
        await page.PictureAsync($"{name}-phone");
        int tooWide = await page.EvaluateAsync<int>("() => document.documentElement.scrollWidth - innerWidth");
        Assert.True(tooWide <= 0, $"{name} is {tooWide} px wider than the phone.");
        string[] small = await page.EvaluateAsync<string[]>(
            """
            least => [...document.querySelectorAll('button, nav a, select, summary, input:not([type=radio]):not([type=checkbox]), label:has(> input[type=radio]), label:has(> input[type=checkbox])')]
              .filter(e => e.getClientRects().length > 0 && e.getBoundingClientRect().height < least - 0.5)
              .map(e => e.outerHTML.slice(0, 120) + ' ' + e.getBoundingClientRect().height)
            """,
            ThumbPixels);
        Assert.True(small.Length == 0, $"{name}: " + string.Join("; ", small));
        await page.Context.CloseAsync();
    }

    private static async Task FollowAsync(IPage page, string path, string? link)
    {
        await page.OpenAsync(path);
        if (link is not null)
        {
            string address = page.Url;
            await page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = link, Exact = true }).First.ClickAsync();
            await page.WaitForURLAsync(url => url != address);
            await page.ReloadAsync();
            await page.LiveAsync();
        }
    }
}
