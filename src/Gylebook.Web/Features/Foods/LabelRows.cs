using Gylebook.Recipes.Foods;
using Gylebook.Science.Quantities;

namespace Gylebook.Web.Features.Foods;

/// <summary>A label's printed figures brought to 100 g, for the table; an analysis goes before them.</summary>
internal static class LabelRows
{
    // A European panel prints carbohydrate without fibre, and salt for sodium (Regulation (EU) No 1169/2011, Annex I).
    private const double SaltPerSodium = 2.5;

    public static FoodComposition Of(FoodSheet food)
    {
        FoodComposition label = food.Label is { } panel ? Printed(panel) : new FoodComposition();
        return food.Composition is { } composition ? composition.OrElse(label) : label;
    }

    private static FoodComposition Printed(LabelPanel panel)
    {
        double servings = 100 / (panel.Serving?.Value.Grams ?? 100);
        double? Gram(Entered<Mass>? printed) => printed?.Value.Grams * servings;
        double? carbohydrate = Gram(panel.Carbohydrate);
        return new FoodComposition
        {
            Protein = Gram(panel.Protein),
            Fat = Gram(panel.Fat),
            Carbohydrate = panel.Style == LabelStyle.Eu && Gram(panel.Fibre) is { } fibre ? carbohydrate + fibre : carbohydrate,
            Fibre = Gram(panel.Fibre),
            Starch = Gram(panel.Starch),
            Sugars = Gram(panel.Sugars),
            Polyols = Gram(panel.SugarAlcohols),
            SodiumMilligrams = (Gram(panel.Sodium) ?? (Gram(panel.Salt) / SaltPerSodium)) * 1000,
        };
    }
}
