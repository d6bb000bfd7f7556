using Gylebook.Recipes.Data;
using Gylebook.Recipes.Ingredients;

namespace Gylebook.Recipes.Foods;

/// <summary>pH of a food as it is.</summary>
/// <param name="Low">Low end.</param>
/// <param name="Likely">Likely.</param>
/// <param name="High">High end.</param>
/// <param name="Provenance">Where it comes from.</param>
public sealed record FoodPh(double Low, double Likely, double High, Provenance Provenance);

/// <summary>pH of foods: <c>data/food-ph.csv</c>.</summary>
public static class FoodPhTable
{
    private static readonly Lazy<Dictionary<string, FoodPh>> Rows = new(() => ReferenceData.Table("food-ph.csv").Rows.ToDictionary(
        row => row.Required("food"),
        row => new FoodPh(row.Number("low"), row.Number("likely"), row.Number("high"), Provenance.Of(row)),
        StringComparer.Ordinal));

    /// <summary>The pH of the food of that id; null where no list here has it.</summary>
    public static FoodPh? Find(string food) => Rows.Value.GetValueOrDefault(food);
}
