using System.Text;
using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Gylebook.Browser.Tests;

/// <summary>The brew-day sheet: one page of A4 for every sample, from the gyle's page; and its days for a calendar.</summary>
public sealed partial class GyleSheetTests(ChromiumFixture chromium)
{
    private static readonly string[] Samples = ["Plain Bitter", "Chestnut Mild", "Hedgerow Brown", "Apricot & Cardamom Wheat"];

    [Fact]
    public async Task Every_sample_prints_on_one_page_of_A4_with_its_boxes_and_blanks()
    {
        await using OpenedBook gylebook = await OpenedBook.OpenAsync();
        foreach (string recipe in Samples)
        {
            IPage sheet = await PrintAsync(await chromium.TabAsync(gylebook.Url), recipe);
            byte[] pdf = await sheet.PdfAsync(new PagePdfOptions { Format = "A4", PrintBackground = true, PreferCSSPageSize = true });
            Assert.Single(PageObjects().Matches(Encoding.Latin1.GetString(pdf)));
            Assert.True(await sheet.Locator("tbody tr").CountAsync() >= 12);
            Assert.True(await sheet.Locator("tbody .box").CountAsync() > await sheet.Locator("tbody tr").CountAsync());
            Assert.Matches(@"gravity \(1\.\d{3} to 1\.\d{3}\)", await sheet.Locator("tr", new PageLocatorOptions { HasText = "Copper-up" }).InnerTextAsync());
            Assert.Contains("By today's engine", await sheet.Locator(".after").InnerTextAsync(), StringComparison.Ordinal);
            await sheet.Context.CloseAsync();
        }
    }

    [Fact]
    public async Task On_a_phone_it_has_no_barrier_follows_the_readers_units_and_leads_back_to_the_days()
    {
        await using OpenedBook gylebook = await OpenedBook.OpenAsync();
        IPage sheet = await PrintAsync(await chromium.TabAsync(gylebook.Url, 360), "Plain Bitter");
        await sheet.HasNoBarrierAsync("brew-day sheet");
        await sheet.PictureAsync("brew-day-sheet");
        Assert.True(await sheet.EvaluateAsync<int>("() => document.documentElement.scrollWidth - innerWidth") <= 0);
        Assert.Contains("3.60\u00A0kg", await sheet.Locator("main").InnerTextAsync(), StringComparison.Ordinal);
        await sheet.Context.AddCookiesAsync([new Cookie { Name = "gylebook-reader", Value = Uri.EscapeDataString("units.volume=US gal&units.mass=lb&units.temperature=F"), Url = gylebook.Url }]);
        await sheet.ReloadAsync();
        string american = await sheet.Locator("main").InnerTextAsync();
        Assert.Contains("7.94\u00A0lb", american, StringComparison.Ordinal);
        Assert.DoesNotContain("°C", american, StringComparison.Ordinal);

        await sheet.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Back to the gyle" }).ClickAsync();
        IDownload days = await sheet.RunAndWaitForDownloadAsync(() => sheet.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Days for a calendar" }).ClickAsync());
        Assert.EndsWith(".ics", days.SuggestedFilename, StringComparison.Ordinal);
        Assert.StartsWith("BEGIN:VCALENDAR", await File.ReadAllTextAsync((await days.PathAsync())!, TestContext.Current.CancellationToken), StringComparison.Ordinal);
        IResponse? missing = await sheet.GotoAsync("/gyles/00000000-0000-0000-0000-000000000001/sheet");
        Assert.Equal(404, missing!.Status);
    }

    /// <summary>Starts a gyle as a brewer would, and follows the link on its page.</summary>
    private static async Task<IPage> PrintAsync(IPage page, string recipe)
    {
        BrewTab brew = await BrewTab.StartAsync(page, recipe);
        await page.GotoAsync($"/gyles/{brew.Gyle}");
        return await page.Context.RunAndWaitForPageAsync(() => page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Print", Exact = true }).ClickAsync());
    }

    /// <summary>A page, not the tree of pages.</summary>
    [GeneratedRegex(@"/Type\s*/Page(?![A-Za-z])")]
    private static partial Regex PageObjects();
}
