using Gylebook.Science.Quantities;

namespace Gylebook.Web.Features.Kits;

/// <summary>Between "± 0.3 L" in a kit file and "0.3 L" in a field.</summary>
internal static class PlusMinus
{
    /// <summary>The text without its sign.</summary>
    public static string? Bare(string? text) => text?.TrimStart('±').Trim();

    /// <summary>The quantity; null when there is none or it does not read.</summary>
    public static Entered<T>? Read<T>(string? text)
        where T : struct, IQuantity<T> => UnitTable.TryParse(Bare(text), out Entered<T> entered, out _) ? entered : null;

    /// <summary>The text for the file, which knows a few units only; any other is converted.</summary>
    public static string? Write<T>(Entered<T>? entered, string convertTo, params string[] known)
        where T : struct, IQuantity<T>
    {
        if (entered is not { } given)
        {
            return null;
        }

        string text = given.Text.Replace(',', '.').Trim();
        bool isKnown = known.Any(unit => text.EndsWith(" " + unit, StringComparison.Ordinal));
        return "± " + (isKnown ? text : UnitTable.Format(given.Value, convertTo));
    }
}
