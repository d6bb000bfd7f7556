namespace Gylebook.Web.Features.Kits;

/// <summary>Between "± 0.3 L" in a kit file and "0.3 L" in a field.</summary>
internal static class PlusMinus
{
    /// <summary>The text without its sign.</summary>
    public static string Bare(string text) => text.TrimStart('±').Trim();

    /// <summary>The text for the file; a bare number gets the unit that is usual there.</summary>
    public static string Whole(string typed, string unit)
    {
        string number = Bare(typed.Trim()).Replace(',', '.');
        bool isBare = number.All(c => char.IsAsciiDigit(c) || c is '.');
        return number.Length == 0 ? "" : $"± {number}{(isBare && unit.Length > 0 ? $" {unit}" : "")}";
    }
}
