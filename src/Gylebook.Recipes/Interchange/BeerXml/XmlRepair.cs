using System.Text;
using System.Text.RegularExpressions;
using Gylebook.Recipes.Interchange.OpenFormats;

namespace Gylebook.Recipes.Interchange.BeerXml;

/// <summary>Mends what people and programs break in XML: bare ampersands, characters that XML has not, several roots.</summary>
internal static partial class XmlRepair
{
    /// <summary>The one root that is put around several.</summary>
    public const string Root = "GYLEBOOK";

    /// <summary>The text, mended, inside that root.</summary>
    public static string Of(string text, TravelList travels)
    {
        string body = Header().Replace(text, "");
        string without = Without(body);
        if (without.Length < body.Length)
        {
            travels.Repair("", Invariant($"{body.Length - without.Length} characters that XML has not are taken out"));
        }

        int bare = Bare().Count(without);
        if (bare > 0)
        {
            travels.Repair("", Invariant($"{bare} bare \"&\" are read as the sign itself"));
        }

        travels.Repair("", "what was broken in the XML is mended before it is read");
        return $"<{Root}>{Bare().Replace(without, "&amp;")}</{Root}>";
    }

    /// <summary>The text without characters that XML 1.0 has not, written out or by their number.</summary>
    public static string Without(string text) => Numbered().Replace(Characters(text), match => IsCharacter(match) ? match.Value : "");

    /// <summary>The text without characters that XML 1.0 has not.</summary>
    public static string Characters(string text)
    {
        StringBuilder kept = new(text.Length);
        for (int i = 0; i < text.Length; i++)
        {
            if (char.IsHighSurrogate(text[i]) && i + 1 < text.Length && char.IsLowSurrogate(text[i + 1]))
            {
                kept.Append(text, i++, 2);
            }
            else if (text[i] is '\t' or '\n' or '\r' or (>= ' ' and <= '\uD7FF') or (>= '\uE000' and <= '\uFFFD'))
            {
                kept.Append(text[i]);
            }
        }

        return kept.ToString();
    }

    private static bool IsCharacter(Match match)
    {
        bool isHex = match.Groups["hex"].Success;
        bool isRead = int.TryParse(
            isHex ? match.Groups["hex"].Value : match.Groups["number"].Value,
            isHex ? System.Globalization.NumberStyles.AllowHexSpecifier : System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out int code);
        return isRead && code is 9 or 10 or 13 or (>= 0x20 and <= 0xD7FF) or (>= 0xE000 and <= 0xFFFD) or (>= 0x10000 and <= 0x10FFFF);
    }

    [GeneratedRegex(@"<\?xml[^>]{0,200}\?>")]
    private static partial Regex Header();

    [GeneratedRegex(@"&(?!(amp|lt|gt|quot|apos|#[0-9]{1,7}|#x[0-9a-fA-F]{1,6});)")]
    private static partial Regex Bare();

    [GeneratedRegex(@"&#(x(?<hex>[0-9a-fA-F]{1,6})|(?<number>[0-9]{1,7}));")]
    private static partial Regex Numbered();
}
