using Gylebook.Recipes.Forms;
using Bunit;
using Gylebook.Gyles;
using Gylebook.Pictures;
using Gylebook.Recipes;
using Gylebook.Recipes.Interchange;
using Gylebook.Store;
using Gylebook.Web.Demo;
using Gylebook.Web.Features.Gyles;
using Gylebook.Web.Features.Settings;
using Gylebook.Web.Features.Today;
using Gylebook.Web.Layout;
using Gylebook.Web.Reading;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace Gylebook.Web.Tests.Features;

/// <summary>The first page and the settings.</summary>
public sealed class TodayAndSettingsTests : GylebookTestContext
{
    [Fact]
    public void An_empty_book_says_what_to_do()
    {
        SetRendererInfo(new("Server", true));
        IRenderedComponent<TodayPage> page = RenderMetric<TodayPage>();
        Assert.Contains("There is no recipe in the book yet.", page.Markup, StringComparison.Ordinal);
        Assert.Contains("Your book has no kit yet", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_new_recipe_is_a_sheet_that_reads_and_its_page_opens()
    {
        SetRendererInfo(new("Server", true));
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
    public async Task What_wants_a_hand_is_told_the_next_first_and_follows_the_taps()
    {
        await LanternShed.MoveInAsync(Book, Cancellation);
        await LanternShed.BrewAsync(Book, Clock, Cancellation);
        SetRendererInfo(new("Server", true));
        IRenderedComponent<TodayPage> page = RenderMetric<TodayPage>();
        Assert.Equal("Chestnut Mild, today: to the boil", page.Find(".hands h2").TextContent);
        Assert.Contains("Brew Plain Bitter, next", page.FindAll(".hands h2").Select(title => title.TextContent));
        Assert.Contains(page.FindAll(".hands h2").Select(title => title.TextContent), title => title.StartsWith("Chestnut Mild, five days ago: ", StringComparison.Ordinal) && !title.Contains("°c", StringComparison.Ordinal));
        Assert.Equal("Now", page.Find(".hands .w").FirstChild!.TextContent);
        Assert.Contains("One on brew day", page.Find(".lead").TextContent, StringComparison.Ordinal);
        Assert.Contains("In Right", page.FindAll(".hands p").Select(says => says.TextContent[..Math.Min(8, says.TextContent.Length)]));
        Assert.Contains("Chestnut Mild, today", page.Find("#vessel-calendar ~ table tbody").TextContent, StringComparison.Ordinal);

        // A clock begins on a phone; then yeast goes in, and the days of the fermenter are what comes next.
        GyleLine line = (await Book.Gyles.ListAsync(Cancellation)).Single(gyle => gyle.Status == GyleStatus.Brewing);
        OpenGyle gyle = (await Gyles.OpenAsync(line.Id, Cancellation))!;
        await Gyles.DoAsync(gyle, [Tap(ActionKind.Timed, "to-boil") with { Until = Clock.GetUtcNow().AddMinutes(20) }], Cancellation);
        page.WaitForAssertion(() => Assert.Contains("until 09:50", page.Find(".hands .clock").TextContent, StringComparison.Ordinal));
        await Gyles.DoAsync(gyle, [Tap(ActionKind.Done, "pitch")], Cancellation);
        page.WaitForAssertion(() => Assert.DoesNotContain("on brew day", page.Find(".lead").TextContent, StringComparison.Ordinal));
        Assert.DoesNotContain("Now", page.FindAll(".hands .w").Select(when => when.FirstChild!.TextContent));

        BrewAction Tap(ActionKind kind, string step) => new() { At = Clock.GetUtcNow(), EntryId = Guid.CreateVersion7(), What = "", Kind = kind, Step = step };
    }

    [Fact]
    public async Task A_choice_is_kept_in_the_browser_and_not_in_the_book()
    {
        JSInterop.SetupModule(Reader.Script).Setup<bool>("keep", _ => true).SetResult(true);
        IRenderedComponent<SettingsPage> page = RenderMetric<SettingsPage>();
        Choose(page, "US gallon");
        page.WaitForAssertion(() => Assert.Equal(VolumeUnit.UsGallon, Reader.Shown.Units.Volume));
        JSRuntimeInvocation kept = JSInterop.VerifyInvoke("keep");
        Assert.Equal([ReaderChoice.Cookie, Reader.Choice.Words], kept.Arguments);
        Assert.Empty(page.FindAll(".saved"));
        Assert.Empty(await Book.Settings.ListAsync(Cancellation));
    }

    [Fact]
    public void A_choice_that_the_browser_does_not_keep_is_told_and_can_be_kept_again()
    {
        BunitJSModuleInterop browser = JSInterop.SetupModule(Reader.Script);
        JSRuntimeInvocationHandler<bool> keep = browser.Setup<bool>("keep", _ => true).SetResult(false);
        IRenderedComponent<SettingsPage> page = RenderMetric<SettingsPage>();
        Choose(page, "dark");
        page.WaitForAssertion(() => Assert.Contains("takes no cookie", page.Find(".saved").TextContent, StringComparison.Ordinal));
        Assert.Equal(Themes.Dark, Reader.Theme);
        keep.SetResult(true);
        page.FindAll("button").First(button => button.TextContent == "Save again").Click();
        page.WaitForAssertion(() => Assert.Empty(page.FindAll(".saved")));
    }

    private static void Choose(IRenderedComponent<SettingsPage> page, string choice) =>
        page.FindAll("label").First(label => label.TextContent.Trim() == choice).QuerySelector("input")!.Change("on");
}
