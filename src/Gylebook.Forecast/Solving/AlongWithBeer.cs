using Gylebook.Forecast.Ingredients;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;

namespace Gylebook.Forecast.Solving;

/// <summary>What goes into a beer, for so many times the beer: every weight by the same factor, rounded to what a scale shows.</summary>
/// <remarks>
/// Yeast stays: it is pitched by a rate that the forecast tells, or by the packet. It is a start, no solution: boil-off and what
/// kettle and hops hold do not grow with the beer, so gravity and bitterness move a little, and the page says by how much.
/// </remarks>
public static class AlongWithBeer
{
    /// <summary>Whether anything of it would be taken along for its extract: malt, extract, sugar, food.</summary>
    public static bool HasGrist(Recipe recipe) => recipe.Ingredients.Any(line =>
        line.Kind is IngredientKind.Malt or IngredientKind.Extract or IngredientKind.Sugar or IngredientKind.Food && !line.Amount.IsNothing);

    /// <summary>New texts by number of the line.</summary>
    /// <param name="recipe">The recipe, weighed for the beer before.</param>
    /// <param name="times">How many times as much beer; above 0.</param>
    public static IReadOnlyDictionary<int, string> Amounts(Recipe recipe, double times) => recipe.Ingredients
        .Select((line, number) => (line, number))
        .Where(entry => entry.line.Kind != IngredientKind.Yeast && !entry.line.Amount.IsNothing)
        .ToDictionary(entry => entry.number, entry => AmountText.Of(entry.line, entry.line.Amount.Times(times)).Text);
}
