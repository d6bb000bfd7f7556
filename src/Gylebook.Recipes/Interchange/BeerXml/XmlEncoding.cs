using System.Text;
using System.Text.RegularExpressions;
using System.Text.Unicode;
using Gylebook.Recipes.Interchange.OpenFormats;

namespace Gylebook.Recipes.Interchange.BeerXml;

/// <summary>The letters of an XML file, whatever its header says of them.</summary>
internal static partial class XmlEncoding
{
    private const int LongestHeader = 200;

    /// <summary>The text: by its byte order mark, by what it declares where that can be, as UTF-8, or as Windows-1252.</summary>
    public static string Text(ReadOnlySpan<byte> bytes, TravelList travels)
    {
        foreach (Encoding marked in new[] { Encoding.UTF8, Encoding.Unicode, Encoding.BigEndianUnicode })
        {
            if (bytes.StartsWith(marked.Preamble))
            {
                return marked.GetString(bytes[marked.Preamble.Length..]);
            }
        }

        if (bytes is [(byte)'<', 0, ..])
        {
            return Encoding.Unicode.GetString(bytes);
        }

        string declared = Declared().Match(Encoding.Latin1.GetString(bytes[..Math.Min(bytes.Length, LongestHeader)])) is { Success: true } match ? match.Groups["name"].Value : "UTF-8";
        bool isUtf8 = Utf8.IsValid(bytes);
        if (isUtf8)
        {
            if (!declared.Equals("UTF-8", StringComparison.OrdinalIgnoreCase) && bytes.ContainsAnyExceptInRange((byte)0, (byte)127))
            {
                travels.Repair("", $"the header says {declared}, and the letters are UTF-8; read as UTF-8");
            }

            return Encoding.UTF8.GetString(bytes);
        }

        if (!declared.Equals("ISO-8859-1", StringComparison.OrdinalIgnoreCase) && !declared.Equals("windows-1252", StringComparison.OrdinalIgnoreCase))
        {
            travels.Repair("", $"the header says {FindingList.Shorten(declared)}, and the letters are not; read as Windows-1252");
        }

        // Windows-1252 has letters where ISO-8859-1 has control characters that no text means.
        return CodePagesEncodingProvider.Instance.GetEncoding(1252)!.GetString(bytes);
    }

    [GeneratedRegex("""<\?xml[^>]*encoding\s*=\s*["'](?<name>[A-Za-z0-9._-]{1,40})["']""")]
    private static partial Regex Declared();
}
