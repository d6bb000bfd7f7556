using Gylebook.Recipes.Data;

namespace Gylebook.Recipes.Foods;

/// <summary>Caffeine and theobromine in foods: <c>data/foods-stimulants.csv</c>.</summary>
public static class Stimulants
{
    private static readonly Lazy<Dictionary<string, double>> Caffeine = new(() => CsvTable.Embedded("foods-stimulants.csv").Rows
        .Where(row => row.NumberOrNull("caffeine_mg") is not null)
        .ToDictionary(row => row.Required("name"), row => row.Number("caffeine_mg"), StringComparer.OrdinalIgnoreCase));

    /// <summary>Caffeine, mg per 100 g, of the food of that name; null when nobody read it.</summary>
    public static double? CaffeineMilligramsPer100Grams(string food) =>
        Caffeine.Value.TryGetValue(food, out double milligrams) ? milligrams : null;
}
