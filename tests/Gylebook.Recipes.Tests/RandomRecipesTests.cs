using System.Collections.Concurrent;
using CsCheck;
using Gylebook.Recipes.Ingredients;

namespace Gylebook.Recipes.Tests;

public sealed class RandomRecipesTests
{
    /// <summary>A property that never met a dry hop says nothing about dry hops.</summary>
    [Fact]
    public void Random_recipes_reach_every_kind_place_and_method()
    {
        var met = new ConcurrentDictionary<object, bool>();
        RandomRecipes.Any.Sample(
            recipe =>
            {
                foreach (var line in recipe.Ingredients)
                {
                    met[line.Kind] = met[line.At.Point] = true;
                }

                met[recipe.Mash?.Method ?? MashMethod.None] = met[recipe.Mash?.Sparge.Method ?? SpargeMethod.None] = true;
                met[$"portions {recipe.Portions.Count > 0}, line {recipe.Ingredients.Any(line => line.Portion is not null)}"] = true;
                met[$"jug {recipe.Ingredients.Any(line => line.Amount.Volume is not null)}, boil {recipe.Boil is not null}"] = true;
            },
            iter: 1000);
        var missed = Enum.GetValues<IngredientKind>().Cast<object>()
            .Concat(Enum.GetValues<AdditionPoint>().Cast<object>())
            .Concat(Enum.GetValues<MashMethod>().Cast<object>())
            .Concat(Enum.GetValues<SpargeMethod>().Cast<object>())
            .Concat(["portions True, line True", "portions False, line False", "jug True, boil True", "jug True, boil False"])
            .Where(thing => !met.ContainsKey(thing));
        Assert.Empty(missed);
    }
}
