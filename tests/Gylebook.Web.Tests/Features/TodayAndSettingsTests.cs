using Bunit;
using Gylebook.Pictures;
using Gylebook.Recipes;
using Gylebook.Recipes.Interchange;
using Gylebook.Store;
using Gylebook.Web.Features.Settings;
using Gylebook.Web.Features.Today;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace Gylebook.Web.Tests.Features;

/// <summary>The first page and the settings.</summary>
public sealed class TodayAndSettingsTests : GylebookTestContext
{
    [Fact]
    public void An_empty_book_says_what_to_do()
    {
        IRenderedComponent<TodayPage> page = RenderMetric<TodayPage>();
        Assert.Contains("There is no recipe in the book yet.", page.Markup, StringComparison.Ordinal);
        Assert.Contains("Your book has no kit yet", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_new_recipe_is_a_sheet_that_reads_and_its_page_opens()
    {
        IRenderedComponent<TodayPage> page = RenderMetric<TodayPage>();
        page.Find("button.big").Click();
        RecipeLine made = Assert.Single(await Book.Recipes.ListAsync(cancellation: Cancellation));
        page.WaitForAssertion(() => Assert.EndsWith(PageUrls.Recipe(made.Id), Services.GetRequiredService<NavigationManager>().Uri, StringComparison.Ordinal));
        Draft draft = (await Book.Drafts.FindAsync(made.Id, Cancellation))!;
        Reading<Recipe> reading = RecipeFile.Read(draft.Document);
        Assert.NotNull(reading.Value);
        Assert.DoesNotContain(reading.Findings, finding => finding.Severity == Severity.Error);
    }

    [Fact]
    public async Task A_choice_is_written_into_the_book()
    {
        IRenderedComponent<SettingsPage> page = RenderMetric<SettingsPage>();
        page.FindAll("label").First(label => label.TextContent.Trim() == "US gallon").QuerySelector("input")!.Change("on");
        page.WaitForAssertion(() => Assert.Equal(VolumeUnit.UsGallon, Reader.Shown.Units.Volume));
        Assert.Equal("US gal", await Book.Settings.FindAsync("units.volume", Cancellation));
    }

    [Fact]
    public async Task A_choice_that_a_full_disk_keeps_out_is_told_and_saved_again()
    {
        // A table that is full to the page: the next row needs one more.
        Disk.IsFull = true;
        IRenderedComponent<SettingsPage> page = RenderMetric<SettingsPage>();
        await FillSettingsAsync();
        Disk.IsFull = true;
        page.FindAll("label").First(label => label.TextContent.Trim() == "US gallon").QuerySelector("input")!.Change("on");
        page.WaitForAssertion(() => Assert.Contains("Not saved: There is no room left", page.Find(".saved").TextContent, StringComparison.Ordinal));
        Assert.Null(await Book.Settings.FindAsync("units.volume", Cancellation));
        Disk.IsFull = false;
        page.FindAll("button").First(button => button.TextContent == "Save again").Click();
        page.WaitForAssertion(() => Assert.Empty(page.FindAll(".saved")));
        Assert.Equal("US gal", await Book.Settings.FindAsync("units.volume", Cancellation));
    }

    /// <summary>Rows until the last one found no room.</summary>
    private async Task FillSettingsAsync()
    {
        for (int i = 0; ; i++)
        {
            try
            {
                await Book.Settings.SetAsync($"test.{i:D5}", "of no meaning", Cancellation);
            }
            catch (BookUnavailableException full) when (full.Trouble == BookTrouble.DiskFull)
            {
                return;
            }
        }
    }
}
