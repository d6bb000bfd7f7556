using Microsoft.Playwright;

namespace Gylebook.Browser.Tests;

/// <summary>On a phone: a vessel that is taken is refused by name, the planned gyle starts itself, and the calendar tells who is where.</summary>
public sealed class VesselsTests(ChromiumFixture chromium)
{
    private const int PhoneWidth = 360;

    [Fact]
    public async Task A_vessel_that_is_taken_is_refused_and_the_planned_gyle_starts_in_its_own()
    {
        await using OpenedBook gylebook = await OpenedBook.OpenAsync();
        IPage page = await chromium.TabAsync(gylebook.Url, PhoneWidth);

        await page.OpenAsync("/");
        await Assertions.Expect(page.Locator(".hands h2").First).ToHaveTextAsync("Chestnut Mild, today: to the boil");
        await LooksWellAsync(page, "today");

        await page.Locator(".hands li", new PageLocatorOptions { HasText = "Brew Plain Bitter, next" }).Locator("a").ClickAsync();
        await page.WaitForURLAsync("**/start?gyle=*");
        await page.LiveAsync();
        await Assertions.Expect(page.Locator("#fermenter")).ToHaveValueAsync("Right");
        await page.Locator("#fermenter").SelectOptionAsync("Left");
        await page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Start the gyle" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("Left holds Chestnut Mild, today from");
        await LooksWellAsync(page, "start-refused");

        await page.Locator("#fermenter").SelectOptionAsync("Right");
        await Assertions.Expect(page.GetByRole(AriaRole.Alert)).ToBeEmptyAsync();
        await page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Start the gyle" }).ClickAsync();
        await page.WaitForURLAsync("**/brew");
        await page.OpenAsync("/gyles");
        Assert.Equal(4, await page.Locator("main > table tbody tr").CountAsync());
        await Assertions.Expect(page.Locator("#vessel-calendar ~ table tbody tr").Nth(1)).ToContainTextAsync("Plain Bitter, next brew day, from");
        await LooksWellAsync(page, "gyles-vessels");
    }

    private static async Task LooksWellAsync(IPage page, string name)
    {
        await page.HasNoBarrierAsync(name);
        await page.PictureAsync(name);
        Assert.True(await page.EvaluateAsync<int>("() => document.documentElement.scrollWidth - innerWidth") <= 0, $"{name} is wider than the phone");
    }
}
