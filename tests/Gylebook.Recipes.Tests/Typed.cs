using System.Globalization;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Tests;

/// <summary>Quantities as somebody typed them.</summary>
public static class Typed
{
    // Each value is read back from its own text, so that the two cannot differ.
    private static (double Number, string Digits) Rounded(double number, string form)
    {
        var digits = number.ToString(form, CultureInfo.InvariantCulture);
        return (double.Parse(digits, CultureInfo.InvariantCulture), digits);
    }

    public static Entered<Mass> Kilograms(double kilograms) =>
        Rounded(kilograms, "0.####") is var (number, digits) ? new(Mass.FromKilograms(number), $"{digits} kg") : default;

    public static Entered<Mass> Grams(double grams) =>
        Rounded(grams, "0.00") is var (number, digits) ? new(Mass.FromGrams(number), $"{digits} g") : default;

    public static Entered<VolumeAt20C> Litres(double litres) =>
        Rounded(litres, "0.##") is var (number, digits) ? new(VolumeAt20C.FromLitres(number), $"{digits} L") : default;

    public static Entered<Carbonation> Volumes(double volumes) =>
        Rounded(volumes, "0.0") is var (number, digits) ? new(Carbonation.FromVolumes(number), $"{digits} volumes") : default;

    public static Entered<Fraction> Percent(int percent) => new(Fraction.FromPercent(percent), $"{percent} %");

    public static Entered<Temperature> Celsius(int degrees) => new(Temperature.FromCelsius(degrees), $"{degrees} °C");

    public static Entered<Duration> Minutes(int minutes) => new(Duration.FromMinutes(minutes), $"{minutes} min");

    public static Entered<VolumeAt20C> Millilitres(double millilitres) =>
        Rounded(millilitres, "0.#") is var (number, digits) ? new(VolumeAt20C.FromMillilitres(number), $"{digits} mL") : default;
}
