using Bunit;
using Gylebook.Recipes.Interchange;
using Gylebook.Store;
using Gylebook.Web.Demo;
using Gylebook.Web.Features.Kits;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace Gylebook.Web.Tests.Features;

/// <summary>The list of kits.</summary>
public sealed class KitsPageTests : GylebookTestContext
{
    [Fact]
    public async Task A_copy_is_used_and_the_original_thrown_away_and_brought_back()
    {
        await LanternShed.MoveInAsync(Book, Cancellation);
        IRenderedComponent<KitsPage> page = RenderMetric<KitsPage>();
        Click(page, "Copy Lantern Shed");
        Click(page, "Use Lantern Shed, copy");
        page.WaitForAssertion(() => Assert.Contains("planned for Lantern Shed, copy", page.Markup, StringComparison.Ordinal));
        Assert.Equal("Lantern Shed, copy", (await KitInUse.FindAsync(Book, Cancellation)).Kit.Name);
        Click(page, "Delete Lantern Shed");
        Click(page, "Restore Lantern Shed");
        page.WaitForAssertion(() => Assert.Equal(2, page.FindAll("ul.rows > li").Count));
    }

    [Fact]
    public async Task A_new_kit_opens_on_its_own_page()
    {
        IRenderedComponent<KitsPage> page = RenderMetric<KitsPage>();
        page.FindAll("button").Single(button => button.TextContent == "New kit").Click();
        Sheet kit = Assert.Single(await Book.Kits.ListAsync(cancellation: Cancellation));
        Assert.Equal("90 %", KitFile.Read(kit.Document).Value!.Conversion.Text);
        page.WaitForAssertion(() => Assert.EndsWith(PageUrls.Kit(kit.Id), Services.GetRequiredService<NavigationManager>().Uri, StringComparison.Ordinal));
    }

    private static void Click(IRenderedComponent<KitsPage> page, string label) =>
        page.WaitForElement($"button[aria-label=\"{label}\"]").Click();
}
