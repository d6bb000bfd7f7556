using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Interchange;

/// <summary>Quantities as text with a unit, one number and one unit: "4.2 kg".</summary>
internal static class QuantityText
{
    // A factor below zero divides: 250 g is 250 / 1000, to the last bit.
    private static readonly Dictionary<string, (string Unit, double Factor)[]> Units = new(StringComparer.Ordinal)
    {
        ["Mass"] = [("kg", 1), ("g", -1e3), ("mg", -1e6)],
        ["VolumeAt20C"] = [("L", 1), ("mL", -1e3)],
        ["Temperature"] = [("°C", 1)],
        ["Duration"] = [("min", 1), ("h", 60), ("d", 1440)],
        ["Fraction"] = [("%", -100)],
        ["Carbonation"] = [("volumes", Carbonation.GramsPerLitreInOneVolume), ("g/L", 1)],
        ["MaltColour"] = [("EBC", 1)],
        ["Evaporation"] = [("L/h", 1)],
        ["SpecificVolume"] = [("L/kg", 1)],
        ["HeatCapacity"] = [("kJ/K", 1)],
        ["Power"] = [("kW", 1)],
        ["Length"] = [("m", 1)],
        ["GaugePressure"] = [("bar", 1)],
    };

    /// <summary>Reads a quantity, or says what is wrong with the text.</summary>
    internal static bool TryParse<T>(string text, out Entered<T> entered, [NotNullWhen(false)] out string? problem)
        where T : struct, IQuantity<T>
    {
        entered = default;
        var (unit, factor) = Units[T.Limits.Name].FirstOrDefault(row => EndsWithUnit(text, row.Unit));
        if (unit is null)
        {
            problem = $"{text}: needs a number and a unit; the units are {string.Join(", ", Units[T.Limits.Name].Select(row => row.Unit))}";
            return false;
        }

        var digits = text.AsSpan().Trim()[..^unit.Length].TrimEnd();
        if (!double.TryParse(digits, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) || !double.IsFinite(number))
        {
            problem = $"{text}: \"{digits}\" is not a number";
            return false;
        }

        var value = factor < 0 ? number / -factor : number * factor;
        if (!T.Limits.Allow(value))
        {
            problem = $"{text}; must be from {Limit<T>()}";
            return false;
        }

        entered = new Entered<T>(T.FromCanonical(value), text);
        problem = null;
        return true;
    }

    /// <summary>The range a quantity can have, in words.</summary>
    internal static string Limit<T>()
        where T : struct, IQuantity<T> => T.Limits.Name == "Fraction"
        ? "0 % to 100 %"
        : $"{T.Limits.Format(T.Limits.Low)} to {T.Limits.Format(T.Limits.High)}";

    /// <summary>How a quantity of this sort is written.</summary>
    internal static string Example<T>()
        where T : struct, IQuantity<T> => $"1 {Units[T.Limits.Name][0].Unit}";

    /// <summary>Whether the text has a unit of that sort, whatever its number.</summary>
    internal static bool LooksLike<T>(string text)
        where T : struct, IQuantity<T> => Units[T.Limits.Name].Any(row => EndsWithUnit(text, row.Unit));

    private static bool EndsWithUnit(string text, string unit)
    {
        var trimmed = text.AsSpan().Trim();
        return trimmed.EndsWith(unit, StringComparison.Ordinal)
            && (trimmed.Length == unit.Length || !char.IsLetter(trimmed[^(unit.Length + 1)]) || !char.IsLetter(unit[0]))
            && !trimmed[..^unit.Length].Contains('/');
    }
}
