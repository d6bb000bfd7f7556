using System.Globalization;
using Gylebook.Science.Quantities;

namespace Gylebook.Gyles.Cellar;

/// <summary>Values of a device, from the numbers and texts that devices and their files use.</summary>
/// <remarks>
/// A bare number is SG, °C, bar or V; a gravity from 900 to 1200 is the SG a thousand times. A text may name another unit: <c>12.1 °P</c>,
/// <c>68 °F</c>, <c>12 psi</c>. The limits are judged, no source: wider than any beer, narrower than a slip of units.
/// </remarks>
public static class SensorText
{
    /// <summary>Gravities a device may show.</summary>
    public static QuantityLimits Gravities { get; } = new("gravity", "SG", 0.9, 1.2);

    /// <summary>Temperatures a device may show.</summary>
    public static QuantityLimits Temperatures { get; } = new("temperature", "°C", -30, 110);

    /// <summary>Pressures a device may show.</summary>
    public static QuantityLimits Pressures { get; } = new("pressure", "bar", -1, 10);

    /// <summary>Voltages of a battery.</summary>
    public static QuantityLimits Batteries { get; } = new("battery", "V", 0, 60);

    private const double Thousand = 1000;

    /// <summary>A gravity from a bare number.</summary>
    /// <param name="number">1.048, or 1048.</param>
    /// <param name="gravity">What it means.</param>
    /// <returns>What is wrong with it: field, value, limit; null when nothing.</returns>
    public static string? Gravity(double number, out SpecificGravity? gravity)
    {
        double ratio = Gravities.Allow(number / Thousand) ? number / Thousand : number;
        gravity = Gravities.Allow(ratio) ? SpecificGravity.FromRatio(ratio) : null;
        return gravity is not null ? null : Invariant($"gravity {number}: an SG is from {Gravities.Low} to {Gravities.High}, or {Gravities.Low * Thousand} to {Gravities.High * Thousand} as a thousandfold; write degrees Plato with their unit, \"12.1 °P\"");
    }

    /// <summary>A gravity from a text: a number as above, or one with SG or °P.</summary>
    public static string? Gravity(string text, out SpecificGravity? gravity) =>
        TryNumber(text, out double number) ? Gravity(number, out gravity) : Quantity(text, Gravities, out gravity);

    /// <summary>A temperature from a bare number, °C.</summary>
    public static string? Temperature(double number, out Temperature? temperature) => Number(number, Temperatures, out temperature);

    /// <summary>A temperature from a text, with °C or °F or bare.</summary>
    public static string? Temperature(string text, out Temperature? temperature) =>
        TryNumber(text, out double number) ? Number(number, Temperatures, out temperature) : Quantity(text, Temperatures, out temperature);

    /// <summary>A pressure from a bare number, bar on the gauge.</summary>
    public static string? Pressure(double number, out GaugePressure? pressure) => Number(number, Pressures, out pressure);

    /// <summary>A pressure from a text, with its unit or bare.</summary>
    public static string? Pressure(string text, out GaugePressure? pressure) =>
        TryNumber(text, out double number) ? Number(number, Pressures, out pressure) : Quantity(text, Pressures, out pressure);

    /// <summary>A battery's voltage, V.</summary>
    public static string? Battery(double number, out double? volts)
    {
        volts = Batteries.Allow(number) ? number : null;
        return volts is not null ? null : OutOf(Batteries, Invariant($"{number}"));
    }

    /// <summary>A battery's voltage from a text, with or without V.</summary>
    public static string? Battery(string text, out double? volts)
    {
        volts = null;
        return TryNumber(text.TrimEnd('V', 'v', ' '), out double number) ? Battery(number, out volts) : OutOf(Batteries, $"\"{text}\"");
    }

    private static string? Number<T>(double number, QuantityLimits limits, out T? value)
        where T : struct, IQuantity<T>
    {
        value = limits.Allow(number) ? T.FromCanonical(number) : null;
        return value is not null ? null : OutOf(limits, Invariant($"{number}"));
    }

    private static string? Quantity<T>(string text, QuantityLimits limits, out T? value)
        where T : struct, IQuantity<T>
    {
        value = null;
        if (!UnitTable.TryParse(text, out Entered<T> entered, out string problem))
        {
            return $"{limits.Name} {problem}";
        }

        if (!limits.Allow(entered.Value.Canonical))
        {
            return OutOf(limits, text);
        }

        value = entered.Value;
        return null;
    }

    private static string OutOf(QuantityLimits limits, string value) =>
        $"{limits.Name} {value}: must be a number from {limits.Format(limits.Low)} to {limits.Format(limits.High)}";

    /// <summary>A number with a point or a comma before its decimals.</summary>
    private static bool TryNumber(string text, out double number) => double.TryParse(
        text.Trim().Replace(',', '.').Replace('\u2212', '-'), NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out number);
}
