using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Quantities;

namespace Gylebook.Forecast.Tests;

/// <summary>Quantities as a brewer would have typed them, and recipe lines made of them.</summary>
internal static class Typed
{
    public static Entered<Mass> Kilograms(double value) => new(Mass.FromKilograms(value), $"{value} kg");

    public static Entered<VolumeAt20C> Litres(double value) => new(VolumeAt20C.FromLitres(value), $"{value} L");

    public static Entered<Carbonation> Volumes(double value) => new(Carbonation.FromVolumes(value), $"{value} volumes");

    public static Entered<Fraction> Share(double ratio) => new(Fraction.FromRatio(ratio), $"{100 * ratio} %");

    public static Entered<SpecificVolume> LitresPerKilogram(double value) => new(SpecificVolume.FromLitresPerKilogram(value), $"{value} L/kg");

    public static Entered<GaugePressure> Bar(double value) => new(GaugePressure.FromBar(value), $"{value} bar");

    public static Entered<Duration> Minutes(double value) => new(Duration.FromMinutes(value), $"{value} min");

    public static Rest Rest(double celsius, double minutes) => new(new(Temperature.FromCelsius(celsius), $"{celsius} °C"), Minutes(minutes));

    public static Rest Days(double celsius, double days) => new(new(Temperature.FromCelsius(celsius), $"{celsius} °C"), new(Duration.FromDays(days), $"{days} d"));

    public static SouringPlan Souring(string culture, double celsius, double ph) => new(
        culture, new(Temperature.FromCelsius(celsius), $"{celsius} °C"), new PhTarget(ph, $"{ph}"), Minutes(1800));

    public static IngredientLine Line(IngredientKind kind, string of, double kilograms, AdditionPoint at, double count = 0) => new()
    {
        Kind = kind,
        Of = of,
        Amount = new Amount(Kilograms(kilograms), null),
        At = new AdditionTime(at, count),
        Form = kind switch
        {
            IngredientKind.Hop => IngredientForm.Pellet,
            IngredientKind.Yeast => IngredientForm.Dry,
            _ => null,
        },
    };

    public static IngredientLine Malt(string of, double kilograms) => Line(IngredientKind.Malt, of, kilograms, AdditionPoint.Mash);

    public static IngredientLine Yeast(string of) => Line(IngredientKind.Yeast, of, 0.0115, AdditionPoint.Pitch);
}
