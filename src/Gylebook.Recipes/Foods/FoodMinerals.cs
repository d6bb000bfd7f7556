using Gylebook.Recipes.Data;

namespace Gylebook.Recipes.Foods;

/// <summary>Minerals of a food, mg/100 g as is; null where nobody measured them.</summary>
/// <param name="Potassium">Potassium.</param>
/// <param name="Calcium">Calcium.</param>
/// <param name="Magnesium">Magnesium.</param>
/// <param name="Phosphorus">Phosphorus, as the element.</param>
/// <param name="Chloride">Chloride.</param>
public sealed record FoodMinerals(double? Potassium, double? Calcium, double? Magnesium, double? Phosphorus, double? Chloride);

/// <summary>What foods hold besides their main constituents: <c>data/food-minerals.csv</c> and <c>data/food-polyols.csv</c>.</summary>
public static class FoodMineralTable
{
    private static readonly Lazy<Dictionary<string, FoodMinerals>> Rows = new(() => ReferenceData.Table("food-minerals.csv").Rows.ToDictionary(
        row => row.Required("food"),
        row => new FoodMinerals(
            row.NumberOrNull("potassium_mg"), row.NumberOrNull("calcium_mg"), row.NumberOrNull("magnesium_mg"),
            row.NumberOrNull("phosphorus_mg"), row.NumberOrNull("chloride_mg")),
        StringComparer.Ordinal));

    private static readonly Lazy<Dictionary<string, double>> Sorbitol = new(() => ReferenceData.Table("food-polyols.csv").Rows.ToDictionary(
        row => row.Required("food"), row => row.Number("polyols_g"), StringComparer.Ordinal));

    /// <summary>The minerals of the food of that id; null where no table here has them.</summary>
    public static FoodMinerals? Find(string food) => Rows.Value.GetValueOrDefault(food);

    /// <summary>Its sugar alcohols, g/100 g; null where no table here has them.</summary>
    public static double? PolyolsOf(string food) => Sorbitol.Value.TryGetValue(food, out double grams) ? grams : null;
}
