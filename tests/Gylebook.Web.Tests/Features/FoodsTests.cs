using AngleSharp.Dom;
using Bunit;
using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Store;
using Gylebook.Web.Demo;
using Gylebook.Web.Features.Foods;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace Gylebook.Web.Tests.Features;

/// <summary>Foods: found, and told.</summary>
public sealed class FoodsTests : GylebookTestContext
{
    [Theory]
    [InlineData("PEANUT defatted", "peanut flour, defatted")]
    [InlineData("peanut flour", "peanut flour, defatted")]
    [InlineData("oats rolled", "rolled oats, dry")]
    public void A_search_finds_all_words_wherever_they_stand(string search, string expected) =>
        Assert.Contains(FoodSearch.Find([], search), food => food.Name.StartsWith(expected, StringComparison.OrdinalIgnoreCase));

    [Fact]
    public void An_allergen_is_a_way_to_search_and_nonsense_finds_nothing()
    {
        IReadOnlyList<FoodLine> milk = FoodSearch.Find([], "milk");
        Assert.All(milk, food => Assert.Contains("milk", $"{food.Name} {food.Family} {string.Join(' ', food.Allergens)}", StringComparison.OrdinalIgnoreCase));
        Assert.NotEmpty(milk);
        Assert.Empty(FoodSearch.Find([], "xyzzy"));
        Assert.Equal(FoodTable.All.Count, FoodSearch.Find([], " ").Count);
    }

    [Fact]
    public void Foods_stand_in_families_that_open_until_one_is_searched_for()
    {
        IRenderedComponent<FoodsPage> page = RenderMetric<FoodsPage>();
        Assert.Equal(FoodTable.All.Select(food => food.Family.Name).Distinct().Count(), page.FindAll("details.family").Count);
        Assert.Equal(FoodTable.All.Count, page.FindAll("details.family li").Count);
        page.Find("#food-search").Input("milk chocolate");
        Assert.Empty(page.FindAll("details.family"));
        Assert.Contains(page.FindAll("li a"), link => link.TextContent == "milk chocolate");
    }

    [Fact]
    public void Every_food_of_the_table_has_a_page_that_tells_source_and_composition()
    {
        foreach (Food food in FoodTable.All)
        {
            IRenderedComponent<FoodPage> page = RenderMetric<FoodPage>(p => p.Add(f => f.FoodId, food.Id));
            Assert.Equal(food.Name, page.Find("h1").TextContent);
            Assert.Contains(food.Provenance.Source, page.Markup.Replace("&amp;", "&", StringComparison.Ordinal), StringComparison.Ordinal);
            Assert.Equal(2, page.FindAll("table").Count);
            Assert.DoesNotContain("NaN", page.Markup, StringComparison.Ordinal);
        }
    }

    // USDA SR26 NDB 19120, milk chocolate: 51.5 g sugars, 79 mg sodium, allergen milk; starch not measured.
    [Fact]
    public void A_page_tells_what_was_measured_and_what_was_not()
    {
        IRenderedComponent<FoodPage> page = RenderMetric<FoodPage>(p => p.Add(f => f.FoodId, "milk-chocolate"));
        Assert.Equal("51.5\u00A0g", Cell(page, "sugars"));
        Assert.Equal("79\u00A0mg", Cell(page, "sodium"));
        Assert.Equal("not measured", Cell(page, "starch"));
        string care = page.Find("section.care").TextContent;
        Assert.Contains("Allergens: milk", care, StringComparison.Ordinal);

        // 20 mg in 100 g (USDA SR26), a kilogram into twenty litres, half a litre of it.
        Assert.Contains("brings up to 5 mg of caffeine", care, StringComparison.Ordinal);
    }

    // Its label, 30 g serving: 18 g protein, so 60 g in 100 g; invented, part of the demo.
    [Fact]
    public async Task A_sheet_of_the_book_tells_its_label_in_100_grams_and_its_traces()
    {
        await LanternShed.MoveInAsync(Book, Cancellation);
        Sheet sheet = Assert.Single(await Book.Foods.ListAsync(cancellation: Cancellation));
        IRenderedComponent<FoodPage> page = RenderMetric<FoodPage>(p => p.Add(f => f.SheetId, sheet.Id));
        page.WaitForElement("table");
        Assert.Equal("60.0\u00A0g", Cell(page, "protein"));
        Assert.Contains("May contain: sesame.", page.Markup, StringComparison.Ordinal);
        Assert.Contains("(invented)", page.Markup, StringComparison.Ordinal);
    }

    // The height of the kit in use goes in as it was typed; without a kit of the book it is the sea's.
    [Theory]
    [InlineData(null, "against the air of sea level, no height being known", 0)]
    [InlineData("5000 ft", "against the air of 5000 ft", 0)]
    [InlineData("9000 m", "against the air of sea level, no height being known", 1)]
    public async Task Sugar_in_a_bottle_is_told_against_the_air_of_the_kit_in_use(string? height, string told, int findings)
    {
        if (height is not null)
        {
            await Book.Kits.CreateAsync(KitFile.Write(BuiltInKit.LanternShed).Replace("120 m", height, StringComparison.Ordinal), cancellation: Cancellation);
        }

        IRenderedComponent<FoodPage> page = RenderMetric<FoodPage>(p => p.Add(f => f.FoodId, "raisins-seedless"));
        page.WaitForAssertion(() => Assert.Contains(told, page.Find("section.care").TextContent, StringComparison.Ordinal));
        Assert.Equal(findings, page.FindAll("section.care [data-code='kit.altitude']").Count);
        if (findings > 0)
        {
            Assert.Contains("the kit, height above the sea: 9000 m; must be -450 m to 6000 m", page.Find("section.care").TextContent, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task A_food_of_the_table_is_put_into_a_recipe_by_an_edit_that_undo_takes_back()
    {
        Guid recipe = await Book.Recipes.CreateAsync(await File.ReadAllTextAsync(Gylebook.Tests.Shared.RepositoryFile.PathOf("samples/recipes/plain-bitter.json"), Cancellation), cancellation: Cancellation);
        IRenderedComponent<FoodPage> page = RenderMetric<FoodPage>(p => p.Add(f => f.FoodId, "raisins-seedless"));
        page.WaitForElement(".put form");
        page.FindAll(".put select")[1].Change("knock-out");
        await page.Find(".put form").SubmitAsync();
        Draft draft = (await Book.Drafts.FindAsync(recipe, Cancellation))!;
        DraftLine added = RecipeDraft.Of(draft.Document).Lines.Single(line => line.Of == "raisins-seedless");
        Assert.Equal(("knock-out", "200 g"), (added.At, added.Amount));
        Assert.EndsWith(PageUrls.RecipeAt(recipe, added.Number), Services.GetRequiredService<NavigationManager>().Uri, StringComparison.Ordinal);
        Assert.Equal("raisins-seedless: added, 200 g", draft.UndoLabel);
    }

    [Fact]
    public void A_food_nobody_knows_names_the_nearest()
    {
        IRenderedComponent<FoodPage> page = RenderMetric<FoodPage>(p => p.Add(f => f.FoodId, "milk-chocolat"));
        Assert.Contains("milk chocolate", page.Markup, StringComparison.Ordinal);
        Assert.Equal("There is no such food", page.Find("h1").TextContent);
    }

    private static string Cell(IRenderedComponent<FoodPage> page, string part)
    {
        IElement head = page.FindAll("th[scope=row]").First(element => element.TextContent == part);
        return head.NextElementSibling!.TextContent;
    }
}
