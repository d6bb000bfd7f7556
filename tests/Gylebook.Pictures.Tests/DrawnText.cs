using System.Globalization;
using System.Xml.Linq;

namespace Gylebook.Pictures.Tests;

/// <summary>A line of words in a drawing, and the box it takes up: estimated here on its own, not by the code that drew it.</summary>
/// <param name="Text">As drawn.</param>
/// <param name="Size">Of its letters.</param>
/// <param name="Left">Left edge.</param>
/// <param name="Right">Right edge.</param>
/// <param name="Baseline">What it stands on.</param>
internal sealed record DrawnText(string Text, double Size, double Left, double Right, double Baseline)
{
    // Advance widths of DejaVu Sans, the widest sans-serif that common systems fall back on, from the font file's own
    // table: characters 32 to 126, in 1/2048 of the size. Others are taken for its widest letters.
    private static readonly int[] Advances =
    [
        651, 821, 942, 1716, 1303, 1946, 1597, 563, 799, 799, 1024, 1716, 651, 739, 651, 690,
        1303, 1303, 1303, 1303, 1303, 1303, 1303, 1303, 1303, 1303, 690, 690, 1716, 1716, 1716, 1087,
        2048, 1401, 1405, 1430, 1577, 1294, 1178, 1587, 1540, 604, 604, 1343, 1141, 1767, 1532, 1612,
        1235, 1612, 1423, 1300, 1251, 1499, 1401, 2025, 1403, 1251, 1403, 799, 690, 799, 1716, 1024,
        1024, 1255, 1300, 1126, 1300, 1260, 721, 1300, 1298, 569, 569, 1186, 569, 1995, 1298, 1253,
        1300, 1300, 842, 1067, 803, 1298, 1212, 1675, 1212, 1212, 1075, 1303, 690, 1303, 1716,
    ];

    private const double Ascent = 0.76;
    private const double Descent = 0.22;

    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    public static IReadOnlyList<DrawnText> In(string svg) => [.. XDocument.Parse(svg).Descendants(Svg + "text").Select(Of)];

    public bool Meets(DrawnText other) =>
        Left < other.Right && other.Left < Right
        && Baseline - (Ascent * Size) < other.Baseline + (Descent * other.Size)
        && other.Baseline - (Ascent * other.Size) < Baseline + (Descent * Size);

    private static DrawnText Of(XElement element)
    {
        double Number(string name) => double.Parse(element.Attribute(name)!.Value, CultureInfo.InvariantCulture);
        string text = string.Concat(element.Nodes().OfType<XText>().Select(t => t.Value));
        double width = text.Sum(AdvanceOf) * Number("font-size") / 2048;
        double x = Number("x");
        return element.Attribute("text-anchor")?.Value == "end"
            ? new(text, Number("font-size"), x - width, x, Number("y"))
            : new(text, Number("font-size"), x, x + width, Number("y"));
    }

    private static int AdvanceOf(char letter) => letter switch
    {
        >= ' ' and <= '~' => Advances[letter - ' '],
        '\u00A0' or '·' => 651,
        '°' => 1024,
        'é' or 'ü' => 1298,
        '×' or '−' => 1716,
        _ => 2048,
    };
}
