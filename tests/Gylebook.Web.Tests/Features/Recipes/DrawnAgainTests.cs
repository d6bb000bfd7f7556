using AngleSharp.Dom;
using Bunit;
using Gylebook.Tests.Shared;
using Gylebook.Web.Features.Recipes;
using Gylebook.Web.Widgets;
using Gylebook.Web.Widgets.Fields;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace Gylebook.Web.Tests.Features.Recipes;

/// <summary>At a key and at a save only that is drawn which shows something else than before.</summary>
public sealed class DrawnAgainTests : GylebookTestContext
{
    private const string Amount = "Amount of Pale ale malt";
    private readonly DrawCounts _counts = new();

    [Fact]
    public async Task A_key_draws_the_field_typed_into_and_what_is_reckoned_anew()
    {
        IRenderedComponent<RecipePage> page = await PageAsync();
        Task typed = await TypeAsync(page, "4.6 kg");
        Dictionary<string, int> key = _counts.Take();
        Assert.Equal(1, key[nameof(BitternessPicker)]);
        // The amount, and the numbers that stand in fields while they are empty: strike liquor, gravity, bitterness.
        Assert.InRange(key[nameof(DraftField)], 1, 4);
        Assert.True(key.GetValueOrDefault(nameof(FindingList)) < page.FindComponents<FindingList>().Count / 2, "Most findings are the same.");
        Clock.Step(TimeSpan.FromMilliseconds(300));
        await typed;
    }

    [Fact]
    public async Task A_save_draws_no_number_caution_or_finding_again()
    {
        IRenderedComponent<RecipePage> page = await PageAsync();
        Task typed = await TypeAsync(page, "4.6 kg");
        _counts.Take();
        Clock.Step(TimeSpan.FromMilliseconds(300));
        await typed;
        page.WaitForAssertion(() => Assert.Contains("Undo pale ale malt: 3.6 kg → 4.6 kg", page.Markup, StringComparison.Ordinal));
        Dictionary<string, int> save = _counts.Take();
        Assert.Equal((1, 1), (save[nameof(DraftField)], save[nameof(LineRow)]));
        Assert.Equal([], new[] { nameof(BandLine), nameof(CautionNote), nameof(FindingList), nameof(DraftChoice) }.Where(save.ContainsKey));
    }

    private async Task<IRenderedComponent<RecipePage>> PageAsync()
    {
        Services.AddSingleton<IComponentActivator>(_counts);
        await Book.Foods.CreateAsync(await TextAsync("samples/recipes/foods/pumpkin-seed-flour.json"), cancellation: Cancellation);
        Guid id = await Book.Recipes.CreateAsync(await TextAsync("samples/recipes/hedgerow-brown.json"), cancellation: Cancellation);
        IRenderedComponent<RecipePage> page = RenderMetric<RecipePage>(p => p.Add(x => x.Id, id));
        page.WaitForElement("[data-headline=originalGravity]");
        return page;
    }

    private async Task<Task> TypeAsync(IRenderedComponent<RecipePage> page, string text)
    {
        string gravity = Gravity(page);
        IElement Field() => page.Find($"#{page.FindAll("label").Single(label => label.TextContent == Amount).GetAttribute("for")}");
        await Field().FocusAsync(new());
        _counts.Take();
        Task typed = Field().InputAsync(text);
        page.WaitForAssertion(() => Assert.NotEqual(gravity, Gravity(page)));
        return typed;
    }

    private static string Gravity(IRenderedComponent<RecipePage> page) => page.Find("[data-headline=originalGravity] dd").TextContent;

    private static Task<string> TextAsync(string file) => File.ReadAllTextAsync(RepositoryFile.PathOf(file), Cancellation);
}
