using System.Globalization;

namespace Gylebook.Web.Features.Foods.Trials;

/// <summary>Doses to pour side by side, each twice the one before.</summary>
internal static class TrialLadder
{
    /// <summary>The glass without.</summary>
    public const string None = "0 g/L";

    private const string First = "1 g/L";

    /// <summary>The dose of the glass behind one, in its unit; a usual first one where that has none, or none that can be read.</summary>
    /// <param name="dose">As typed; null for no glass.</param>
    public static string After(string? dose)
    {
        string text = dose?.Trim() ?? "", number = new([.. text.TakeWhile(letter => char.IsAsciiDigit(letter) || letter == '.')]);
        return double.TryParse(number, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double before) && before > 0
            ? Invariant($"{2 * before:0.######}{text[number.Length..]}")
            : First;
    }
}
