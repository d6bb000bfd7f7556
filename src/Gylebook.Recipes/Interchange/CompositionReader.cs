using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Interchange.Json;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Interchange;

/// <summary>The keys of an analysis, each a mass in 100 g of the food.</summary>
internal static class CompositionReader
{
    private const double Whole = 100;

    internal static FoodComposition Read(ObjectReader at) => new()
    {
        Water = Grams(at, "water"),
        Protein = Grams(at, "protein"),
        Fat = Grams(at, "fat"),
        Ash = Grams(at, "ash"),
        Carbohydrate = Grams(at, "carbohydrate"),
        Fibre = Grams(at, "fibre"),
        Starch = Grams(at, "starch"),
        Sugars = Grams(at, "sugars"),
        Sucrose = Grams(at, "sucrose"),
        Glucose = Grams(at, "glucose"),
        Fructose = Grams(at, "fructose"),
        Maltose = Grams(at, "maltose"),
        Lactose = Grams(at, "lactose"),
        Polyols = Grams(at, "polyols"),
        Ethanol = Grams(at, "ethanol"),
        SodiumMilligrams = Grams(at, "sodium") * 1000,
        PotassiumMilligrams = Grams(at, "potassium") * 1000,
        EnergyKilocalories = EnergyText.Read(at, "energy"),
        Source = Source(at),
    };

    private static string? Source(ObjectReader at)
    {
        var source = at.OptionalName("source");
        if (source is null)
        {
            at.Findings.Warning("composition.source", at.PathOf("source"), "no source; say who measured or stated this, so that others can check it");
        }

        return source;
    }

    private static double? Grams(ObjectReader at, string key)
    {
        if (at.OptionalQuantity<Mass>(key) is not { } entered)
        {
            return null;
        }

        if (entered.Value.Grams > Whole)
        {
            at.Findings.Error("composition.range", at.PathOf(key), Invariant($"{entered}; must be at most {Whole} g in {Whole} g of the food"), entered.Text, Invariant($"{Whole} g"));
        }

        return entered.Value.Grams;
    }
}
