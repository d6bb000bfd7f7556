using Microsoft.Playwright;

namespace Gylebook.Browser.Tests;

/// <summary>The page of devices with a device on it: its token, and all that opens, on a phone and for all readers.</summary>
public sealed class DevicesTests(ChromiumFixture chromium)
{
    [Fact]
    public async Task A_device_is_added_on_a_phone_and_neither_its_token_nor_what_opens_is_in_the_way()
    {
        foreach (ColorScheme scheme in new[] { ColorScheme.Light, ColorScheme.Dark })
        {
            IPage page = await chromium.TabAsync(chromium.Url, width: 360, height: 740, scheme: scheme, touch: true);
            await page.OpenAsync("/settings/devices");
            await page.GetByLabel("What to call it").FillAsync($"Float, {scheme}");
            await page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Add it" }).ClickAsync();
            await Assertions.Expect(page.GetByRole(AriaRole.Heading, new PageGetByRoleOptions { Name = $"The token of Float, {scheme}" })).ToBeVisibleAsync();
            await page.Locator("summary").First.ClickAsync();
            await page.PictureAsync($"device-{scheme}-phone");
            Assert.True(await page.EvaluateAsync<int>("() => document.documentElement.scrollWidth - innerWidth") <= 0);
            await page.HasNoBarrierAsync($"devices, {scheme}");
            await page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "I have it" }).ClickAsync();
            await Assertions.Expect(page.Locator(".token")).ToHaveCountAsync(0);
            await page.Context.CloseAsync();
        }
    }
}
