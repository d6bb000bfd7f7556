using AngleSharp.Dom;
using Bunit;
using Gylebook.Forecast.Report;
using Gylebook.Pictures;
using Gylebook.Recipes;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Larders;
using Gylebook.Store;
using Gylebook.Web.Features.Recipes;
using Gylebook.Web.Features.Today;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace Gylebook.Web.Tests.Features;

/// <summary>From a wish to a draft in the book.</summary>
public sealed class WishFormTests : GylebookTestContext
{
    [Fact]
    public async Task A_wish_becomes_an_ordinary_recipe_that_comes_to_it()
    {
        IRenderedComponent<WishForm> form = await OpenAsync(ReaderUnits.Metric);
        await FillAsync(form, "Alcohol", "6");
        await FillAsync(form, "Colour", "12");
        await FillAsync(form, "With a food", "roasted chestnuts");
        await FillAsync(form, "How much of it", "700 g");
        await form.Find("form").SubmitAsync();
        RecipeLine line = Assert.Single(await Book.Recipes.ListAsync(cancellation: Cancellation));
        Assert.EndsWith(line.Id.ToString(), Services.GetRequiredService<NavigationManager>().Uri, StringComparison.Ordinal);
        Recipe recipe = RecipeFile.Read((await Book.Drafts.FindAsync(line.Id, Cancellation))!.Document).Value!;
        BrewForecast told = Forecaster.Forecast(recipe, BuiltInKit.LanternShed, Larder.Empty, "wish");

        // Weights as a scale shows them: FirstRecipeTests.
        Assert.Equal(6, told.Headline.Single(headline => headline.Name == "alcoholByVolume").Band!.Likely, 0.01);
        Assert.Equal(12, told.Headline.Single(headline => headline.Name == "colourSrm").Band!.Likely, 0.16);
        Assert.Contains(recipe.Ingredients, ingredient => ingredient.Amount.Text == "700 g");
    }

    [Fact]
    public async Task What_cannot_be_is_told_at_its_field_with_its_limit_and_nothing_is_made()
    {
        IRenderedComponent<WishForm> form = await OpenAsync(ReaderUnits.Metric);
        await FillAsync(form, "Alcohol", "40 %");
        await FillAsync(form, "Beer", "much");
        await form.Find("form").SubmitAsync();
        Assert.Equal("true", Field(form, "Beer").GetAttribute("aria-invalid"));
        await FillAsync(form, "Beer", "20 L");
        await form.Find("form").SubmitAsync();
        form.WaitForAssertion(() => Assert.Contains("40 %: must be from 0.5 to 12 %", form.Find("[role=alert]").TextContent, StringComparison.Ordinal));
        Assert.Equal("true", Field(form, "Alcohol").GetAttribute("aria-invalid"));
        Assert.Equal("40 %", Field(form, "Alcohol").GetAttribute("value"));
        Assert.Empty(await Book.Recipes.ListAsync(cancellation: Cancellation));
    }

    [Fact]
    public async Task A_reader_of_gallons_and_EBC_is_asked_in_them()
    {
        IRenderedComponent<WishForm> form = await OpenAsync(ReaderUnits.UnitedStates with { Colour = ColourUnit.Ebc });
        Assert.Equal(("5 US gal", "20 EBC"), (Field(form, "Beer").GetAttribute("value"), Field(form, "Colour").GetAttribute("value")));
        await FillAsync(form, "Beer", "4");
        await form.Find("form").SubmitAsync();
        RecipeLine line = Assert.Single(await Book.Recipes.ListAsync(cancellation: Cancellation));
        Assert.Contains("\"4 US gal\"", (await Book.Drafts.FindAsync(line.Id, Cancellation))!.Document, StringComparison.Ordinal);
    }

    [Fact]
    public void It_stands_where_recipes_begin()
    {
        SetRendererInfo(new("Server", true));
        Assert.Contains("A first recipe from a wish", RenderMetric<TodayPage>().Markup, StringComparison.Ordinal);
        Assert.Contains("A first recipe from a wish", RenderMetric<RecipesPage>().Markup, StringComparison.Ordinal);
    }

    private static IElement Field(IRenderedComponent<WishForm> form, string label) =>
        form.Find($"#{form.FindAll("label").Single(l => l.TextContent == label).GetAttribute("for")}");

    private static Task FillAsync(IRenderedComponent<WishForm> form, string label, string text) => Field(form, label).ChangeAsync(text);

    private async Task<IRenderedComponent<WishForm>> OpenAsync(ReaderUnits units)
    {
        IRenderedComponent<WishForm> form = RenderFor<WishForm>(units, _ => { });
        await form.Find("details").TriggerEventAsync("ontoggle", EventArgs.Empty);
        form.WaitForElement("form");
        return form;
    }
}
