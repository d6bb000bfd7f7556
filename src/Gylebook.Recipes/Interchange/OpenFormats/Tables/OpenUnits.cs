using System.Globalization;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Interchange.OpenFormats.Tables;

/// <summary>A unit of theirs.</summary>
/// <param name="Theirs">How they write it.</param>
/// <param name="Ours">The unit of ours that it is counted in.</param>
/// <param name="Times">How many of ours it is; 1 where both are the same.</param>
internal sealed record OpenUnit(string Theirs, string Ours, double Times = 1);

/// <summary>A quantity's number and unit as it was typed, for a format that keeps them apart.</summary>
internal static class OpenUnits
{
    /// <summary>The number in a unit as it was typed, or else converted; and that unit.</summary>
    /// <param name="entered">The quantity.</param>
    /// <param name="units">Theirs, the most usual first.</param>
    /// <param name="isAsTyped">Whether the number is that of the text, to the digit.</param>
    public static (decimal Number, OpenUnit Unit) Split<T>(Entered<T> entered, IReadOnlyList<OpenUnit> units, out bool isAsTyped)
        where T : struct, IQuantity<T>
    {
        isAsTyped = false;
        if (Cut(entered.Text) is { } cut && (cut.Unit.Length == 0 ? UnitTable.KindOf<T>().Bare?.Symbol : UnitTable.KindOf<T>().Find(cut.Unit)?.Symbol) is { } symbol
            && units.FirstOrDefault(unit => unit.Ours == symbol && unit.Times == 1) is { } same)
        {
            isAsTyped = true;
            return (cut.Number, same);
        }

        return (In(entered.Value, units[0].Ours), units[0]);
    }

    /// <summary>The number in a unit of ours, to fifteen digits.</summary>
    public static decimal In<T>(T value, string unit)
        where T : struct, IQuantity<T> =>
        UnitTable.TryIn(value, unit, out double number) ? decimal.Parse(UnitTable.Digits(number, 12), CultureInfo.InvariantCulture) : 0;

    /// <summary>A quantity of so many of a unit of ours, with its text; false, and why, when there is no such quantity.</summary>
    public static bool TryMake<T>(string digits, string unit, out Entered<T> entered, out string problem)
        where T : struct, IQuantity<T> => TryMake($"{digits} {unit}", out entered, out problem);

    /// <summary>A quantity of that text.</summary>
    public static bool TryMake<T>(string text, out Entered<T> entered, out string problem)
        where T : struct, IQuantity<T> => UnitTable.TryParse(text, out entered, out problem);

    /// <summary>A number with all its digits, without an exponent where it can be.</summary>
    public static string Digits(double number) =>
        Math.Abs(number) is >= 1e-12 and < 1e15 && decimal.TryParse(number.ToString("R", CultureInfo.InvariantCulture), NumberStyles.Float, CultureInfo.InvariantCulture, out decimal exact)
            ? exact.ToString("0.############################", CultureInfo.InvariantCulture)
            : number.ToString("R", CultureInfo.InvariantCulture);

    private static (decimal Number, string Unit)? Cut(string text)
    {
        string trimmed = text.Trim();
        int end = 0;
        while (end < trimmed.Length && (char.IsAsciiDigit(trimmed[end]) || trimmed[end] is '.' or ',' or '+' or '-'))
        {
            end++;
        }

        return end > 0 && end < 28 && decimal.TryParse(trimmed[..end].Replace(',', '.'), NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out decimal number)
            ? (number, trimmed[end..].Trim())
            : null;
    }
}
