using System.Globalization;
using System.Text;

namespace Gylebook.Pictures.Drawing;

/// <summary>Writes SVG and HTML: every text escaped, every number the same in all countries, no more digits than a screen shows.</summary>
public sealed class MarkupPen
{
    private readonly StringBuilder _written = new();

    /// <summary>An element without content.</summary>
    public void Element(string name, params (string Name, object Value)[] attributes)
    {
        Start(name, attributes);
        _written.Length--;
        _written.Append("/>\n");
    }

    /// <summary>An element with text, and with more to be read when pointed at.</summary>
    public void Text(string text, string? full, params (string Name, object Value)[] attributes)
    {
        Start("text", attributes);
        if (full is not null)
        {
            _written.Append("<title>").Append(Escaped(full)).Append("</title>");
        }

        _written.Append(Escaped(text)).Append("</text>\n");
    }

    /// <summary>An element that holds nothing but words.</summary>
    public void Words(string name, string words, params (string Name, object Value)[] attributes)
    {
        Start(name, attributes);
        _written.Append(Escaped(words));
        End(name);
    }

    /// <summary>Opens an element.</summary>
    public void Start(string name, params (string Name, object Value)[] attributes)
    {
        _written.Append('<').Append(name);
        foreach ((string attribute, object value) in attributes)
        {
            string text = value is double number ? Number(number) : Convert.ToString(value, CultureInfo.InvariantCulture)!;
            _written.Append(' ').Append(attribute).Append("=\"").Append(Escaped(text)).Append('"');
        }

        _written.Append('>');
    }

    /// <summary>What is markup already: a drawing in a page, a style sheet of ours. Never what somebody typed.</summary>
    public void Raw(string markup) => _written.Append(markup);

    /// <summary>Closes an element.</summary>
    public void End(string name) => _written.Append("</").Append(name).Append(">\n");

    /// <inheritdoc/>
    public override string ToString() => _written.ToString();

    /// <summary>A length in the drawing's own units.</summary>
    public static string Number(double value) => (Math.Round(value, 2) + 0.0).ToString("0.##", CultureInfo.InvariantCulture);

    /// <summary>Text that is safe in XML; characters that XML has no way to write become question marks.</summary>
    private static string Escaped(string text)
    {
        StringBuilder safe = new(text.Length);
        foreach (Rune rune in text.EnumerateRunes())
        {
            _ = rune.Value switch
            {
                '&' => safe.Append("&amp;"),
                '<' => safe.Append("&lt;"),
                '>' => safe.Append("&gt;"),
                '"' => safe.Append("&quot;"),
                '\'' => safe.Append("&#39;"),
                '\n' or '\t' => safe.Append((char)rune.Value),
                < 0x20 or 0xFFFE or 0xFFFF => safe.Append('?'),
                _ => safe.Append(rune.ToString()),
            };
        }

        return safe.ToString();
    }
}
