using Gylebook.Engine.State;
using Gylebook.Engine.Parameters;
using Gylebook.Forecast.Ingredients;
using Gylebook.Forecast.Planning;
using Gylebook.Recipes.Foods;

namespace Gylebook.Forecast.Report.Acidity;

/// <summary>Which foods' acids are in the pH, and which way those pull that are not.</summary>
internal static class FoodAcidCautions
{
    /// <summary>All of them.</summary>
    public static IEnumerable<Caution> Of(BrewPlan brew)
    {
        List<FoodMakeup> foods = [.. brew.Lines.Select(line => line.NamedFood).OfType<FoodMakeup>().DistinctBy(food => food.Name)];
        if (NamesOf(foods, food => food.Acids > 0) is { Length: > 0 } counted)
        {
            yield return new("ph.foodsCounted", Stage.Pour, $"Acid and salt of {counted} are in the pH, each anchored at the food's own. Counted as all given up; what yeast takes of malic acid, and a fruit's tannin and phosphate, are not. No measured beer with its dose was to be had: your meter decides.", "docs/science/beer-ph.md");
        }

        string[] told =
        [
            .. Told(NamesOf(foods, food => PullOf(food) == PhPull.Lowers), "more sour than beer, and can bring pH below the low end"),
            .. Told(NamesOf(foods, food => PullOf(food) == PhPull.Raises), "less sour than beer, so its salts take acid up and can bring pH above the high end"),
            .. Told(NamesOf(foods, food => PullOf(food) == PhPull.Either), "of a pH not known here, and can move it either way, out of the band"),
        ];
        if (told.Length > 0)
        {
            yield return new("ph.foodAcids", Stage.Pour, $"No table here knows the acid of some foods, and it is not counted: {string.Join("; ", told)}.", "data/food-ph.csv; families from memory");
        }
    }

    /// <summary>Which way a food pulls whose acids are not counted: by its own pH where that is known, otherwise as its family does.</summary>
    private static PhPull PullOf(FoodMakeup food)
    {
        PhPull family = FoodFamilies.Of(food.FamilyId).BeerPh;
        if (food.Acids > 0 || family == PhPull.None)
        {
            return PhPull.None;
        }

        double beer = StartingParameters.Medians[(int)Known.PhOfTopFermented];
        return food.OwnPh is not { } own ? family : own.Low > beer ? PhPull.Raises : own.High < beer ? PhPull.Lowers : PhPull.Either;
    }

    private static string NamesOf(IEnumerable<FoodMakeup> foods, Func<FoodMakeup, bool> which) => string.Join(", ", foods.Where(which).Select(food => food.Name));

    private static IEnumerable<string> Told(string names, string what) => names.Length > 0 ? [$"{names}, {what}"] : [];
}
