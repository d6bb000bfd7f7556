using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Quantities;

namespace Gylebook.Forecast.Ingredients;

/// <summary>A recipe tried with other weights.</summary>
public static class RecipeWeights
{
    /// <summary>As much of everything as there is to be beer, the sparge too; a strike fixed by hand is planned anew.</summary>
    public static Recipe Grown(this Recipe recipe, Entered<VolumeAt20C> package)
    {
        double times = package.Value.Litres / recipe.Package.Volume.Value.Litres;
        Recipe grown = recipe with { Package = recipe.Package with { Volume = package } };
        return times == 1 ? grown : grown with
        {
            Ingredients = [.. recipe.Ingredients.Select(line => line with { Amount = line.Amount.Times(times) })],
            Mash = recipe.Mash is { Sparge: { Volume: { } sparge } rinse } mash ? mash with { Sparge = rinse with { Volume = AmountText.Of(sparge, sparge.Value.Litres * times) } } : recipe.Mash,
            Liquor = null,
        };
    }

    /// <summary>Numbers of the lines that pitch yeast.</summary>
    public static int[] YeastLines(this Recipe recipe) =>
        [.. recipe.Ingredients.Index().Where(entry => entry.Item is { Kind: IngredientKind.Yeast, At.Point: AdditionPoint.Pitch }).Select(entry => entry.Index)];

    /// <summary>Numbers of the lines of sugar or extract that prime the package.</summary>
    public static int[] PrimingLines(this Recipe recipe) => [.. recipe.Ingredients.Index()
        .Where(entry => entry.Item is { At.Point: AdditionPoint.Package, Kind: IngredientKind.Sugar or IngredientKind.Extract, Amount.Mass: not null })
        .Select(entry => entry.Index)];

    /// <summary>The recipe with so many times the amount of some lines, told as <paramref name="told"/> tells it.</summary>
    public static Recipe Times(this Recipe recipe, int[] numbers, double times, Func<IngredientLine, Amount, Amount> told) => recipe with
    {
        Ingredients = [.. recipe.Ingredients.Index().Select(entry => numbers.Contains(entry.Index) ? entry.Item with { Amount = told(entry.Item, entry.Item.Amount.Times(times)) } : entry.Item)],
    };

    /// <summary>The recipe with some lines weighed anew; such weights have no text of their own.</summary>
    public static Recipe WithKilograms(this Recipe recipe, IReadOnlyCollection<(int Line, double Kilograms)> weights)
    {
        IngredientLine[] lines = [.. recipe.Ingredients];
        foreach ((int line, double kilograms) in weights)
        {
            lines[line] = lines[line] with { Amount = new Amount(new Entered<Mass>(Mass.FromKilograms(kilograms), ""), null) };
        }

        return recipe with { Ingredients = lines };
    }
}
