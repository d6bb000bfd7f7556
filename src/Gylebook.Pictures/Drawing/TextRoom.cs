using System.Text;

namespace Gylebook.Pictures.Drawing;

/// <summary>How much room a text takes, estimated: no font is at hand where pictures are drawn.</summary>
/// <remarks>Widths are those of a wide common sans-serif rounded up, so that a real page needs less, hardly ever more.</remarks>
internal static class TextRoom
{
    private const string Ellipsis = "…";

    /// <summary>Estimated width at a size.</summary>
    public static double WidthOf(string text, double size) => size * text.EnumerateRunes().Sum(Ems);

    /// <summary>The text, or as much of its beginning as fits, with an ellipsis.</summary>
    public static string Elided(string text, double size, double room)
    {
        if (WidthOf(text, size) <= room)
        {
            return text;
        }

        StringBuilder kept = new();
        double left = room - WidthOf(Ellipsis, size);
        foreach (Rune rune in text.EnumerateRunes())
        {
            left -= size * Ems(rune);
            if (left < 0)
            {
                break;
            }

            kept.Append(rune.ToString());
        }

        return kept.ToString().TrimEnd(' ', ',', ';') + Ellipsis;
    }

    private static double Ems(Rune rune) => rune.Value switch
    {
        ' ' or 0xA0 or '.' or ',' or ':' or ';' or '\'' or '|' or '!' or 'i' or 'l' or 'j' => 0.34,
        'f' or 't' or 'r' or '(' or ')' or '-' or 'I' or '/' => 0.43,
        'm' or 'w' or 'M' or 'W' or '%' or '@' or 0x2026 => 1.0,
        '+' or '−' or '×' or '=' or '<' or '>' or '~' or '#' or '&' => 0.86,
        >= 'A' and <= 'Z' => 0.8,
        >= 0x300 and <= 0x36F => 0,
        >= 0x1100 => 1.05,
        _ => 0.64,
    };
}
