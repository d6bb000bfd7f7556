using System.Globalization;
using System.Text.RegularExpressions;
using Gylebook.Science.Quantities;

namespace Gylebook.Pictures;

/// <summary>Sentences of the forecast, which are metric, as a reader of other units is told them.</summary>
/// <remarks>
/// What stands in them as a number with L, kg, °C, bar, m or cm is told in the reader's unit with as many figures as it had, and
/// two at least. Grams and millilitres stay: labels, salts, acids and doses are weighed and measured in them everywhere.
/// </remarks>
public static partial class ToldText
{
    private const int FewestFigures = 2;

    /// <summary>A sentence in that reader's units.</summary>
    public static string Of(string text, ReaderUnits units) => units is { Volume: VolumeUnit.Litre, Mass: MassUnit.Kilogram, Temperature: TemperatureUnit.Celsius }
        ? text
        : Quantity().Replace(text, found => Told(found, units));

    /// <summary>A sentence with both: <c>66 °C (151 °F)</c>. What is told in two units already stays as it is.</summary>
    public static string Both(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return Quantity().Replace(text, found => IsToldTwice(text, found) || Told(found, ReaderUnits.UnitedStates) is not { } other || other == found.Value ? found.Value : $"{found.Value} ({other})");
    }

    private static bool IsToldTwice(string text, Match found) => text.AsSpan(found.Index + found.Length) is [' ', '(', var first, ..] && char.IsAsciiDigit(first);

    private static string Told(Match found, ReaderUnits units) => found.Groups["unit"].Value switch
    {
        "L" when units.Volume == VolumeUnit.UsGallon => In(found, VolumeAt20C.FromLitres, "US gal"),
        "L" when units.Volume == VolumeUnit.ImperialGallon => In(found, VolumeAt20C.FromLitres, "imp gal"),
        "kg" when units.Mass == MassUnit.Pound => In(found, Mass.FromKilograms, "lb"),
        "bar" when units.Mass == MassUnit.Pound => In(found, GaugePressure.FromBar, "psi"),
        "m" when units.Mass == MassUnit.Pound => In(found, Length.FromMetres, "ft"),
        "cm" when units.Mass == MassUnit.Pound => In(found, centimetres => Length.FromMetres(centimetres / 100), "in"),
        "°C" when units.Temperature == TemperatureUnit.Fahrenheit => Written(found, "°F", text => Decimals(text) == 0
            ? Math.Round(Fahrenheit(text)).ToString(CultureInfo.InvariantCulture)
            : Fahrenheit(text).ToString("0.0", CultureInfo.InvariantCulture)),
        _ => found.Value,
    };

    private static string In<T>(Match found, Func<double, T> of, string unit)
        where T : struct, IQuantity<T> => Written(found, unit, text => UnitTable.TryIn(of(Read(text)), unit, out double number)
            ? UnitTable.Digits(number, Math.Max(FewestFigures, Figures(text)))
            : text);

    private static string Written(Match found, string unit, Func<string, string> told)
    {
        string first = found.Groups["first"].Value, between = found.Groups["to"].Value, second = found.Groups["second"].Value;
        return $"{told(first)}{(second.Length > 0 ? between + told(second) : "")}{found.Groups["space"].Value}{unit}";
    }

    private static double Fahrenheit(string celsius) => (Read(celsius) * 9 / 5) + 32;

    private static double Read(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static int Decimals(string text) => text.IndexOf('.', StringComparison.Ordinal) is var dot && dot < 0 ? 0 : text.Length - dot - 1;

    private static int Figures(string text) => text.TrimStart('0', '.', '-').Count(char.IsAsciiDigit);

    [GeneratedRegex(@"(?<![\w.,\-])(?<first>\d+(?:\.\d+)?)(?:(?<to> (?:to|and|or) )(?<second>\d+(?:\.\d+)?))?(?<space>[ \u00A0])(?<unit>L|kg|°C|bar|m|cm)(?![\w/·°²³])", RegexOptions.CultureInvariant)]
    private static partial Regex Quantity();
}
