using System.Globalization;

namespace Gylebook.Recipes.Liquors;

/// <summary>Reads a number in front of a unit that has no quantity of its own.</summary>
internal static class NumberBefore
{
    /// <summary>The number, not below zero; null when the text is not one with that unit.</summary>
    public static double? Unit(string text, string unit)
    {
        ReadOnlySpan<char> trimmed = text.AsSpan().Trim();
        return trimmed.EndsWith(unit, StringComparison.OrdinalIgnoreCase)
            && double.TryParse(trimmed[..^unit.Length].Trim(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double number)
            ? number
            : null;
    }
}
