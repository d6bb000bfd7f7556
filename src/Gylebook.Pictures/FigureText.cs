using Gylebook.Engine.Parameters;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Quantities;

namespace Gylebook.Pictures;

/// <summary>Figures of a brew (a parameter's, in the engine's unit) as one reader is told them.</summary>
/// <remarks>
/// Parts of a whole are per cent, factors a number of times; differences of temperature have a sign. Volumes, and volumes an hour or a mass, are in the
/// reader's units; chemists' units stay what they are. Three figures count: more, nobody knows of a parameter.
/// </remarks>
public static class FigureText
{
    private const int Figures = 3;

    private static readonly double PoundsInKilogram = UnitTable.TryIn(Mass.FromKilograms(1), "lb", out double pounds)
        ? pounds
        : throw new InvalidOperationException("The unit table has no pound.");

    /// <summary>A figure of a parameter: <c>88 %</c>, <c>4.0 L/h</c>, <c>× 1.1</c>, <c>+1.6 °C</c>.</summary>
    /// <param name="shown">How this reader wants to see numbers.</param>
    /// <param name="parameter">Which parameter.</param>
    /// <param name="value">Its figure, in the parameter's unit.</param>
    public static string Of(Shown shown, Parameter parameter, double value)
    {
        ArgumentNullException.ThrowIfNull(shown);
        ArgumentNullException.ThrowIfNull(parameter);
        bool isPounds = shown.Units.Mass == MassUnit.Pound;
        return parameter.Unit switch
        {
            "1" or "kg/kg" or "kg/kg dry" when ParameterWords.IsShare(parameter.Id) => WithUnit(Number(shown, 100 * value), "%"),
            "1" or "IBU/IBU" => $"×{Shown.Space}{Number(shown, value)}",
            "kg/kg" => WithUnit(Number(shown, value), isPounds ? "lb/lb" : "kg/kg"),
            "L" => shown.Litres(value),
            "L/h" => $"{shown.Litres(value)}/h",
            "L/kg" => $"{shown.Litres(isPounds ? value / PoundsInKilogram : value)}/{(isPounds ? "lb" : "kg")}",
            "K" => Warmer(shown, value),
            "°L" => shown.Malt(MaltColour.FromLovibond(Math.Max(0, value))),
            "% vol" => shown.Percent(value),
            "pH" => Number(shown, value),
            _ => WithUnit(Number(shown, value), parameter.Unit),
        };
    }

    private static string Warmer(Shown shown, double kelvins)
    {
        bool isFahrenheit = shown.Units.Temperature == TemperatureUnit.Fahrenheit;
        double degrees = isFahrenheit ? kelvins * 9 / 5 : kelvins;
        string number = shown.Number(Math.Abs(degrees), 1);
        return WithUnit($"{(Math.Abs(degrees) < 0.05 ? "±" : degrees < 0 ? "−" : "+")}{number}", isFahrenheit ? "°F" : "°C");
    }

    private static string Number(Shown shown, double value) =>
        shown.Number(value, Math.Clamp(Figures - 1 - (int)Math.Floor(Math.Log10(Math.Max(1e-9, Math.Abs(value)))), 0, 4));

    private static string WithUnit(string number, string unit) => number + Shown.Space + unit;
}
