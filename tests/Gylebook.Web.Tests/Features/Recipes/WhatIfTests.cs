using AngleSharp.Dom;
using Bunit;
using Gylebook.Store;
using Gylebook.Tests.Shared;
using Gylebook.Web.Features.Recipes;
using Gylebook.Web.Features.Recipes.Showing;
using Microsoft.Extensions.DependencyInjection;

namespace Gylebook.Web.Tests.Features.Recipes;

/// <summary>Sliders that move the run and save nothing.</summary>
public sealed class WhatIfTests : GylebookTestContext
{
    private const string Conversion = "How much of the malt your mash converts";
    private static readonly TimeSpan Beat = TimeSpan.FromMilliseconds(60);

    private Guid _id;

    [Fact]
    public async Task Five_figures_by_name_with_their_ends_and_a_way_back()
    {
        IRenderedComponent<RecipePage> page = await PageAsync();
        IReadOnlyList<IElement> sliders = page.FindAll("input[type=range]");
        Assert.Equal(5, sliders.Count);
        Assert.All(sliders, slider =>
        {
            Assert.Equal("0", slider.GetAttribute("value"));
            Assert.NotEmpty(page.Find($"label[for={slider.Id}]").TextContent);
            Assert.Contains(" to ", page.Find($"#{slider.GetAttribute("aria-describedby")}").TextContent, StringComparison.Ordinal);
        });
        Assert.Equal(5, page.FindAll(".figure button").Count(button => button.TextContent.StartsWith("As likely", StringComparison.Ordinal)));
    }

    [Fact]
    public async Task Less_conversion_is_less_gravity_and_as_likely_is_the_very_same_picture()
    {
        IRenderedComponent<RecipePage> page = await PageAsync();
        string likely = Picture(page), row = Row(page, "originalGravity").TextContent;
        await SlideAsync(page, Conversion, -50);
        page.WaitForAssertion(() => Assert.True(Gravity(page, 2) < Gravity(page, 1), Row(page, "originalGravity").TextContent));
        Assert.Contains("nothing of it is saved", page.Find("#run .if").TextContent, StringComparison.Ordinal);
        Assert.Contains("What if: ", page.Find("#run svg").GetAttribute("aria-label"), StringComparison.Ordinal);
        Assert.NotEqual(likely, Picture(page));

        await SlideAsync(page, Conversion, 50);
        page.WaitForAssertion(() => Assert.True(Gravity(page, 2) > Gravity(page, 1)));

        await page.FindAll(".figure button").Single(button => button.TextContent == $"As likely: {char.ToLowerInvariant(Conversion[0])}{Conversion[1..]}").ClickAsync();
        page.WaitForAssertion(() => Assert.Equal(likely, Picture(page)));
        Assert.Equal(row, Row(page, "originalGravity").TextContent);
        Assert.Empty(page.FindAll("#run .if"));
    }

    [Fact]
    public async Task Nothing_is_saved_and_no_edit_is_logged()
    {
        IRenderedComponent<RecipePage> page = await PageAsync();
        Draft before = (await Book.Drafts.FindAsync(_id, Cancellation))!;
        await SlideAsync(page, Conversion, -50);
        page.WaitForElement("#run .if");
        Draft after = (await Book.Drafts.FindAsync(_id, Cancellation))!;
        Assert.Equal((before.Revision, before.Document), (after.Revision, after.Document));
        Assert.DoesNotContain(page.FindAll("button"), button => button.TextContent.StartsWith("Undo ", StringComparison.Ordinal));
    }

    /// <summary>However fast a thumb slides, one run a beat is made, and it is of the place where the thumb is then.</summary>
    [Fact]
    public async Task Between_two_beats_only_the_last_place_counts()
    {
        IRenderedComponent<RecipePage> page = await PageAsync();
        Task first = Slider(page, Conversion).InputAsync("-10");
        await Slider(page, Conversion).InputAsync("50");
        Assert.Empty(page.FindAll("#run .if"));
        Clock.Step(Beat);
        await first;
        page.WaitForAssertion(() => Assert.True(Gravity(page, 2) > Gravity(page, 1)));
    }

    [Fact]
    public async Task An_edit_returns_to_likely()
    {
        IRenderedComponent<RecipePage> page = await PageAsync();
        await SlideAsync(page, Conversion, -50);
        page.WaitForElement("#run .if");
        IElement malt = page.Find($"#{page.FindAll("label").Single(label => label.TextContent == "Amount of Pale ale malt").GetAttribute("for")}");
        Task typed = malt.InputAsync("4.6");
        page.WaitForAssertion(() => Assert.Empty(page.FindAll("#run .if")));
        Clock.Step(TimeSpan.FromMilliseconds(300));
        await typed;
        page.WaitForAssertion(() => Assert.Equal("0", Slider(page, Conversion).GetAttribute("value")));
    }

    [Fact]
    public async Task Closing_it_returns_to_likely()
    {
        IRenderedComponent<RecipePage> page = await PageAsync();
        string likely = Picture(page);
        await SlideAsync(page, Conversion, -50);
        page.WaitForElement("#run .if");
        await ToggleAsync(page);
        page.WaitForAssertion(() => Assert.Equal(likely, Picture(page)));
        Assert.Empty(page.FindAll("#run .if"));
    }

    private static string Picture(IRenderedComponent<RecipePage> page) => page.Find("#run .picture").InnerHtml;

    private static IElement Row(IRenderedComponent<RecipePage> page, string name) => page.Find($"[data-what-if={name}]");

    private static double Gravity(IRenderedComponent<RecipePage> page, int cell) =>
        double.Parse(Row(page, "originalGravity").Children[cell].TextContent, System.Globalization.CultureInfo.InvariantCulture);

    private static IElement Slider(IRenderedComponent<RecipePage> page, string label) =>
        page.Find($"#{page.FindAll(".figure label").Single(l => l.TextContent == label).GetAttribute("for")}");

    private static Task ToggleAsync(IRenderedComponent<RecipePage> page) =>
        page.FindAll("#run details").Single(d => d.TextContent.TrimStart().StartsWith("What if?", StringComparison.Ordinal)).TriggerEventAsync("ontoggle", EventArgs.Empty);

    private async Task SlideAsync(IRenderedComponent<RecipePage> page, string label, int to)
    {
        Task moved = Slider(page, label).InputAsync(to.ToString(System.Globalization.CultureInfo.InvariantCulture));
        Clock.Step(Beat);
        await moved;
    }

    private async Task<IRenderedComponent<RecipePage>> PageAsync()
    {
        Services.AddSingleton(new BandDraws(400));
        await Book.Foods.CreateAsync(await TextAsync("samples/recipes/foods/pumpkin-seed-flour.json"), cancellation: Cancellation);
        _id = await Book.Recipes.CreateAsync(await TextAsync("samples/recipes/hedgerow-brown.json"), cancellation: Cancellation);
        IRenderedComponent<RecipePage> page = RenderMetric<RecipePage>(p => p.Add(x => x.Id, _id));
        page.WaitForAssertion(() => Assert.Contains("What if?", page.Find("#run").TextContent, StringComparison.Ordinal));
        await ToggleAsync(page);
        page.WaitForAssertion(() => Assert.NotEmpty(page.FindAll("[data-what-if]")));
        return page;
    }

    private static Task<string> TextAsync(string file) => File.ReadAllTextAsync(RepositoryFile.PathOf(file), Cancellation);
}
