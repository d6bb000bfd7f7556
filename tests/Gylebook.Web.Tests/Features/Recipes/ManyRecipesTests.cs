using Bunit;
using Gylebook.Web.Features.Recipes;

namespace Gylebook.Web.Tests.Features.Recipes;

/// <summary>The list of recipes of a book that has more than a screen of them.</summary>
public sealed class ManyRecipesTests : GylebookTestContext
{
    private const int Many = 60;

    [Fact]
    public async Task The_list_shows_a_part_says_how_many_there_are_and_gives_the_rest_when_asked()
    {
        await FillAsync();
        IRenderedComponent<RecipesPage> page = RenderMetric<RecipesPage>();
        page.WaitForAssertion(() => Assert.Contains("50 of 60", page.Markup, StringComparison.Ordinal));
        Assert.Equal(50, Rows(page));

        await page.FindAll("button").Single(b => b.TextContent == "Show more recipes").ClickAsync();

        page.WaitForAssertion(() => Assert.Equal(Many, Rows(page)));
        Assert.DoesNotContain("Show more recipes", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_search_looks_through_all_of_them()
    {
        await FillAsync();
        IRenderedComponent<RecipesPage> page = RenderMetric<RecipesPage>();
        page.WaitForAssertion(() => Assert.Equal(50, Rows(page)));

        await page.Find("#find").InputAsync("number 03");

        // The oldest but few: none of the fifty that were shown.
        page.WaitForAssertion(() => Assert.Equal("Number 03", Assert.Single(page.FindAll("ul[aria-label=Recipes] a")).TextContent));
    }

    private static int Rows(IRenderedComponent<RecipesPage> page) => page.FindAll("ul[aria-label=Recipes] li").Count;

    private async Task FillAsync()
    {
        for (int i = 0; i < Many; i++)
        {
            await Book.Recipes.CreateAsync($$"""{ "format": "gylebook-recipe/1", "name": "Number {{i:00}}" }""", cancellation: Cancellation);
            Clock.Step(TimeSpan.FromMinutes(1));
        }
    }
}
