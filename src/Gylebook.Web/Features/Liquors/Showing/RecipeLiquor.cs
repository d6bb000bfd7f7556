using Gylebook.Recipes.Editing;
using Gylebook.Store;
using Gylebook.Web.Reading;

namespace Gylebook.Web.Features.Liquors.Showing;

/// <summary>How a recipe's water plan begins.</summary>
public static class RecipeLiquor
{
    /// <summary>An empty plan.</summary>
    /// <param name="recipe">What the recipe is called.</param>
    public static WaterDraft Empty(string recipe) => WaterDraft.New($"Liquor for {recipe}");

    /// <summary>A plan like another: waters, shelf and wishes go along; litres, grist and a meter's reading belong to the brew they were made for.</summary>
    /// <param name="recipe">What the recipe is called.</param>
    /// <param name="like">The other plan.</param>
    public static WaterDraft Like(string recipe, WaterDraft like) => (like.Put("name", Empty(recipe).Name)?.After ?? like).WithoutBrew();

    /// <summary>Gives a recipe a plan like that of another recipe, if that one has a plan that is whole.</summary>
    /// <param name="book">The book.</param>
    /// <param name="recipeId">Which recipe.</param>
    /// <param name="recipe">What it is called.</param>
    /// <param name="like">The other recipe.</param>
    public static async Task CopyAsync(Book book, Guid recipeId, string recipe, Guid like)
    {
        if (await book.Waters.OfRecipeAsync(like) is { } plan && WholeText.Is(plan))
        {
            await book.Waters.CreateForAsync(recipeId, Like(recipe, WaterDraft.Of(plan.Document)).Text);
        }
    }
}
