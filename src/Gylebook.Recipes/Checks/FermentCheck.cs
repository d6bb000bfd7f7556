using System.Globalization;
using Gylebook.Recipes.Ingredients;

namespace Gylebook.Recipes.Checks;

/// <summary>Fermentation: how warm, how long, and whether there is yeast.</summary>
internal static class FermentCheck
{
    private const double Coldest = -2;
    private const double Warmest = 45;
    private const double MostDays = 400;

    internal static void Check(Recipe recipe, FindingList findings)
    {
        if (recipe.Ferment.Count == 0)
        {
            findings.Error("ferment.none", "ferment", "no fermentation; write at least one temperature and time", "0 rests", "1 rest");
        }

        for (var i = 0; i < recipe.Ferment.Count; i++)
        {
            var temperature = recipe.Ferment[i].Temperature;
            if (temperature.Value.Celsius is < Coldest or > Warmest)
            {
                findings.Error(
                    "ferment.temperature", $"ferment[{i}].temperature",
                    $"{temperature}; must be {Coldest} °C to {Warmest} °C: below, beer freezes; above, yeast dies",
                    temperature.Text, $"{Coldest} °C to {Warmest} °C");
            }
        }

        var days = Days(recipe);
        if (days > MostDays)
        {
            var total = string.Create(CultureInfo.InvariantCulture, $"{days:0.#} d");
            findings.Warning("ferment.long", "ferment", $"{total} in all; longer than {MostDays} d is ageing, which is not modelled", total, $"{MostDays} d");
        }

        if (!recipe.Ingredients.Any(line => line.Kind == IngredientKind.Yeast))
        {
            findings.Warning("yeast.none", "ingredients", "no yeast; nothing ferments", "none", "a yeast");
        }
    }

    /// <summary>Days from pitching to the end of fermentation.</summary>
    internal static double Days(Recipe recipe) => recipe.Ferment.Sum(rest => rest.Time.Value.Days);
}
