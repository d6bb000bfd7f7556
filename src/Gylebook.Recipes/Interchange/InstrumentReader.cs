using System.Globalization;
using Gylebook.Recipes.Interchange.Json;
using Gylebook.Recipes.Kits;

namespace Gylebook.Recipes.Interchange;

/// <summary>The keys that say how far instruments may be off: "± 0.3 L".</summary>
internal static class InstrumentReader
{
    internal static Instruments Read(ObjectReader at) => new(
        Text(at, "hydrometer", ""),
        Text(at, "volume", "L", "mL"),
        Text(at, "thermometer", "°C", "K", "°F"),
        Text(at, "scale", "g", "mg", "kg", "oz"));

    private static string? Text(ObjectReader at, string key, params string[] units)
    {
        const int Longest = 40;
        if (at.Take(key) is not { } cursor || cursor.Text(Longest) is not { } text)
        {
            return null;
        }

        if (!units.Any(unit => IsPlusOrMinus(text, unit)))
        {
            var form = $"± and a number{(units[0].Length == 0 ? "" : $" with {string.Join(", ", units)}")}";
            at.Findings.Error("instrument.wrong", cursor.Path, $"{FindingList.Shorten(text)}; must be {form}", text, form);
        }

        return text;
    }

    private static bool IsPlusOrMinus(string text, string unit) =>
        text.StartsWith('±') && text.EndsWith(unit, StringComparison.Ordinal)
        && double.TryParse(
            text.AsSpan(1, text.Length - 1 - unit.Length).Trim(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out _);
}
