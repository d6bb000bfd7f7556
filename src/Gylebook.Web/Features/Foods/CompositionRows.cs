using Gylebook.Pictures;
using Gylebook.Recipes.Foods;

namespace Gylebook.Web.Features.Foods;

/// <summary>Compositions as rows of a table.</summary>
internal static class CompositionRows
{
    private const string NotMeasured = "not measured";

    /// <summary>In 100 g, as measured or printed.</summary>
    public static IEnumerable<(string Part, string Amount)> Of(FoodComposition food, Shown shown)
    {
        (string Part, double? Grams)[] rows =
        [
            ("water", food.Water), ("protein", food.Protein), ("fat", food.Fat), ("ash", food.Ash),
            ("carbohydrate, fibre included", food.Carbohydrate), ("fibre", food.Fibre), ("starch", food.Starch), ("sugars", food.Sugars),
            ("sucrose", food.Sucrose), ("glucose", food.Glucose), ("fructose", food.Fructose), ("maltose", food.Maltose),
            ("lactose", food.Lactose), ("sugar alcohols", food.Polyols), ("ethanol", food.Ethanol),
        ];
        return rows.Select(row => (row.Part, row.Grams is { } grams ? $"{shown.Number(grams, 1)}{Shown.Space}g" : NotMeasured))
            .Append(("sodium", food.SodiumMilligrams is { } sodium ? $"{shown.Number(sodium, 0)}{Shown.Space}mg" : NotMeasured))
            .Append(("potassium", food.PotassiumMilligrams is { } potassium ? $"{shown.Number(potassium, 0)}{Shown.Space}mg" : NotMeasured));
    }

    /// <summary>In a kilogram, as the balance takes it; what is not in it is left out.</summary>
    public static IEnumerable<(string Part, string Amount)> Of(FoodMakeup food, Shown shown)
    {
        (string Part, double Kilograms)[] rows =
        [
            ("water", food.Water), ("sucrose", food.Sucrose), ("glucose", food.Glucose), ("fructose", food.Fructose), ("maltose", food.Maltose),
            ("lactose", food.Lactose), ("sugar alcohols", food.Polyols), (food.StarchIsOpen ? "starch, open" : "starch, raw", food.Starch),
            ("dextrin and soluble fibre", food.Dextrin), ("protein that dissolves", food.SolubleProtein), ("minerals that dissolve", food.Minerals),
            ("ethanol", food.Ethanol), ("fat", food.Fat), ("what never dissolves", food.Insoluble),
        ];
        return rows.Where(row => row.Kilograms > 0).Select(row => (row.Part, shown.Number(row.Kilograms * 1000, 0)));
    }
}
