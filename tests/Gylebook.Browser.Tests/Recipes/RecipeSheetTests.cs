using System.Text;
using System.Text.RegularExpressions;
using Gylebook.Tests.Shared;
using Microsoft.Playwright;

namespace Gylebook.Browser.Tests.Recipes;

/// <summary>The sheet to print: one page of A4, from the page of the recipe.</summary>
public sealed partial class RecipeSheetTests(ChromiumFixture chromium)
{
    private const int PhonePixels = 360;

    [Theory]
    [InlineData("Hedgerow Brown")]
    [InlineData("Apricot & Cardamom Wheat")]
    public async Task The_print_link_leads_to_one_page_of_A4(string recipe)
    {
        IPage sheet = await PrintAsync(recipe, 1280);
        Assert.Equal(recipe, await sheet.Locator("h1").InnerTextAsync());
        byte[] pdf = await sheet.PdfAsync(new PagePdfOptions { Format = "A4", PrintBackground = true, PreferCSSPageSize = true });
        await KeepAsync(pdf, recipe);
        Assert.Single(PageObjects().Matches(Encoding.Latin1.GetString(pdf)));
        await sheet.Context.CloseAsync();
    }

    [Fact]
    public async Task The_largest_sample_is_one_page_from_the_terminal_too()
    {
        string largest = Directory.EnumerateFiles(RepositoryFile.PathOf("samples/recipes"), "*.json")
            .Concat(Directory.EnumerateFiles(RepositoryFile.PathOf("samples/recipes/edges"), "*.json"))
            .MaxBy(file => new FileInfo(file).Length)!;
        string page = Path.Combine(Directory.CreateTempSubdirectory("gylebook-sheet-").FullName, "sheet.html");
        using System.Diagnostics.Process export = System.Diagnostics.Process.Start(RepositoryFile.PathOf("gylebook"), ["export", largest, "--as", "html", "--out", page]);
        await export.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.Equal(0, export.ExitCode);
        IPage tab = await chromium.TabAsync(chromium.Url);
        await tab.SetContentAsync(await File.ReadAllTextAsync(page, TestContext.Current.CancellationToken));
        byte[] pdf = await tab.PdfAsync(new PagePdfOptions { Format = "A4", PrintBackground = true, PreferCSSPageSize = true });
        await KeepAsync(pdf, "largest");
        Assert.Single(PageObjects().Matches(Encoding.Latin1.GetString(pdf)));
        Directory.Delete(Path.GetDirectoryName(page)!, recursive: true);
        await tab.Context.CloseAsync();
    }

    [Theory]
    [InlineData(1280)]
    [InlineData(PhonePixels)]
    public async Task On_a_screen_it_has_no_barrier_and_is_no_wider_than_that(int width)
    {
        List<string> complaints = [];
        IPage sheet = await PrintAsync("Hedgerow Brown", width);
        sheet.Console += (_, message) => complaints.Add(message.Text);
        await sheet.ReloadAsync();
        await sheet.PictureAsync($"recipe-sheet-{width}");
        await sheet.HasNoBarrierAsync($"sheet at {width} px");
        Assert.True(await sheet.EvaluateAsync<int>("() => document.documentElement.scrollWidth - innerWidth") <= 0);
        Assert.Empty(complaints);

        // The strict policy lets our style sheet through: the heading wears the serif.
        Assert.Contains("Georgia", await sheet.StyleAsync("h1", "font-family"), StringComparison.Ordinal);
        await sheet.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Back to the recipe" }).ClickAsync();
        await Assertions.Expect(sheet.Locator("[data-headline=originalGravity]")).ToBeVisibleAsync();
        await sheet.Context.CloseAsync();
    }

    [Fact]
    public async Task It_is_in_the_units_of_this_browser_and_what_is_not_there_is_said_so()
    {
        IPage sheet = await PrintAsync("Hedgerow Brown", 1280);
        Assert.Contains("69.8\u00A0°C", await sheet.Locator("main").InnerTextAsync(), StringComparison.Ordinal);
        await sheet.Context.AddCookiesAsync([new Cookie { Name = "gylebook-reader", Value = Uri.EscapeDataString("units.volume=US gal&units.mass=lb&units.temperature=F"), Url = chromium.Url }]);
        await sheet.ReloadAsync();
        Assert.Contains("\u00A0US gal", await sheet.Locator("main").InnerTextAsync(), StringComparison.Ordinal);
        IResponse? missing = await sheet.GotoAsync("/recipes/00000000-0000-0000-0000-000000000001/sheet");
        Assert.Equal(404, missing!.Status);
        await sheet.Context.CloseAsync();
    }

    private async Task<IPage> PrintAsync(string recipe, int width)
    {
        RecipeTab tab = await RecipeTab.OpenAsync(await chromium.TabAsync(chromium.Url, width), recipe);
        return await tab.Page.Context.RunAndWaitForPageAsync(
            () => tab.Page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Print", Exact = true }).ClickAsync());
    }

    /// <summary>Keeps the print, when somebody asked for pictures by naming a folder.</summary>
    private static async Task KeepAsync(byte[] pdf, string name)
    {
        if (Environment.GetEnvironmentVariable("GYLEBOOK_PICTURES") is { Length: > 0 } folder)
        {
            await File.WriteAllBytesAsync(Path.Combine(folder, $"{name}.pdf"), pdf);
        }
    }

    /// <summary>A page, not the tree of pages.</summary>
    [GeneratedRegex(@"/Type\s*/Page(?![A-Za-z])")]
    private static partial Regex PageObjects();
}
