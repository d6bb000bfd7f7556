using Gylebook.Recipes.Foods;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Tests.Foods;

internal static class FoodFixture
{
    public static double Total(FoodMakeup food) => Parts(food).Sum();

    public static double[] Parts(FoodMakeup food) =>
    [
        food.Water, food.Sucrose, food.Glucose, food.Fructose, food.Maltose, food.Lactose, food.Polyols, food.Starch, food.Dextrin,
        food.SolubleProtein, food.Minerals, food.Ethanol, food.Acids, food.Fat, food.Insoluble,
    ];

    public static double Sugars(FoodMakeup food) => food.Sucrose + food.Glucose + food.Fructose + food.Maltose + food.Lactose;

    public static Entered<Mass> G(double grams) => new(Mass.FromGrams(grams), FormattableString.Invariant($"{grams} g"));

    public static PrintedMass P(double grams) => PrintedMass.Of(G(grams));

    public static PrintedMass Below(double grams) => PrintedMass.LessThan(Mass.FromGrams(grams), FormattableString.Invariant($"< {grams} g"));

    public static FoodMakeup OfTable(string id) => FoodMakeups.From(FoodTable.Find(id).Match!).Makeup!;

    public static FoodSheet Sheet(string family, LabelPanel? label = null) =>
        new() { Id = "food", Name = "Food", Family = family, Label = label };
}
