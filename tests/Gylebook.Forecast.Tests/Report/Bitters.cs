using Gylebook.Forecast.Report;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Kits;
using Gylebook.Science.Quantities;

namespace Gylebook.Forecast.Tests.Report;

/// <summary>A plain bitter to hang hops, yeast and foods on, on a kit at the sea that loses nothing it can help.</summary>
internal static class Bitters
{
    public static Kit AtTheSea { get; } = Kits.Lossless with { Altitude = Metres(0) };

    public static Entered<Length> Metres(double metres) => new(Length.FromMetres(metres), $"{metres} m");

    /// <summary>Liquor is fixed, so that nothing but what is asked about moves.</summary>
    public static Recipe With(params IngredientLine[] lines) => new()
    {
        Name = "bitter",
        Package = new PackageWish(Typed.Litres(20), "keg", Typed.Volumes(2)),
        Mash = new MashPlan(MashMethod.Bag, [Typed.Rest(66, 60)], SpargePlan.None),
        Liquor = new LiquorPlan(Typed.Litres(27), null),
        Boil = new BoilPlan(Typed.Minutes(60)),
        Ferment = [Typed.Days(19, 14)],
        Ingredients = lines.Any(l => l.Kind == IngredientKind.Yeast)
            ? [Typed.Malt("pale ale malt", 4), .. lines]
            : [Typed.Malt("pale ale malt", 4), .. lines, Typed.Yeast("English ale")],
    };

    /// <summary>Whole hops of 8 % alpha acids.</summary>
    public static IngredientLine Hop(double grams, AdditionPoint at, double count = 0) =>
        Typed.Line(IngredientKind.Hop, "Challenger", grams / 1000, at, count) with { Alpha = Typed.Share(0.08), Form = IngredientForm.Whole };

    public static BrewForecast Forecast(this Recipe recipe, ForecastRequest? asked = null, Kit? kit = null)
    {
        BrewForecast told = Forecaster.Forecast(recipe, kit ?? AtTheSea, RandomBrews.Foods, "test", asked: asked);
        Assert.True(told.CanBeBrewed, string.Join('\n', told.Findings.Select(f => f.Message)));
        return told;
    }

    public static double Number(this BrewForecast forecast, string headline) =>
        forecast.Headline.Single(h => h.Name == headline).Band!.Likely;
}
