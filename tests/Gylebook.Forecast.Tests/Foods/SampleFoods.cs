using Gylebook.Forecast.Foods;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;
using Gylebook.Science.Quantities;

namespace Gylebook.Forecast.Tests.Foods;

/// <summary>Foods of the table, tried in the plain brew.</summary>
internal static class SampleFoods
{
    public static MadeUpFood OfTable(string id) => FoodMakeups.From(FoodTable.Find(id).Match!);

    public static FoodEffect Effect(string id, double kilograms, string at, double litres) => Effect(OfTable(id), kilograms, at, litres);

    public static FoodEffect Effect(MadeUpFood food, double kilograms, string at, double litres) =>
        FoodTrial.Of(food, new Dose(Mass.FromKilograms(kilograms), At(at), VolumeAt20C.FromLitres(litres)))!;

    public static AdditionTime At(string text) =>
        AdditionTimeText.TryParse(text, out AdditionTime at, out string? problem) ? at : throw new ArgumentException(problem);
}
