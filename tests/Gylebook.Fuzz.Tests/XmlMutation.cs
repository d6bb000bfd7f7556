using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace Gylebook.Fuzz.Tests;

/// <summary>Changes XML as people, programs and disks do: other numbers, lost and doubled tags, bare signs, wrong letters, flipped bytes.</summary>
internal sealed partial class XmlMutation(Random random)
{
    private static readonly string[] Values =
        ["", "1e999", "-1", "0", "1,5", "1053.0", "11.6 Plato", "TRUE", "&", "&amp;amp;", "&nbsp;", "<p>one</p>", "\u0001", "🍺", "Dry Hop", "Aroma", "99999999999", "0.75", "NaN", "<![CDATA[x]]>"];

    private static readonly string[] Heads =
        ["<?xml version=\"1.0\" encoding=\"ISO-8859-1\"?>\n", "<!DOCTYPE RECIPES [ <!ENTITY a \"b\"> ]>\n", "", "<RECIPES/>\n", "<HOPS><HOP><NAME>Saaz</NAME></HOP></HOPS>\n", " \n"];

    /// <summary>A document left alone, or changed in one to four places; some are in other letters or have bytes flipped besides.</summary>
    public byte[] Any(string sample)
    {
        string text = sample;
        for (int changes = random.Next(4) == 0 ? 0 : random.Next(1, 5); changes > 0; changes--)
        {
            text = Changed(text);
        }

        byte[] bytes = (random.Next(10) switch { 0 => Encoding.Latin1, 1 => Encoding.Unicode, _ => Encoding.UTF8 }).GetBytes(text);
        for (int flips = random.Next(12) == 0 ? random.Next(1, 4) : 0; flips > 0; flips--)
        {
            bytes[random.Next(bytes.Length)] ^= (byte)(1 << random.Next(8));
        }

        return bytes;
    }

    private string Changed(string text)
    {
        MatchCollection leaves = Leaf().Matches(text);
        if (leaves.Count == 0)
        {
            return text;
        }

        Match leaf = leaves[random.Next(leaves.Count)];
        return random.Next(14) switch
        {
            0 => text.Remove(leaf.Index, leaf.Length),
            1 => text.Insert(leaf.Index, leaf.Value),
            2 => Heads[random.Next(Heads.Length)] + Header().Replace(text, ""),
            3 => text[..random.Next(text.Length)],
            4 => text.Replace(leaf.Groups["tag"].Value, leaf.Groups["tag"].Value.ToLowerInvariant(), StringComparison.Ordinal),
            5 => Header().Replace(text, "") + text,
            6 or 7 or 8 => With(text, leaf, Values[random.Next(Values.Length)]),
            9 => With(text, leaf, leaves[random.Next(leaves.Count)].Groups["value"].Value),
            _ => With(text, leaf, Scaled(leaf.Groups["value"].Value)),
        };
    }

    private static string With(string text, Match leaf, string value)
    {
        Group said = leaf.Groups["value"];
        return string.Concat(text.AsSpan(0, said.Index), value, text.AsSpan(said.Index + said.Length));
    }

    private string Scaled(string value) => double.TryParse(value, CultureInfo.InvariantCulture, out double number)
        ? (number * Math.Pow(10, random.Next(8) == 0 ? random.Next(-12, 13) : (random.NextDouble() * 2) - 1) * (random.Next(16) == 0 ? -1 : 1)).ToString("R", CultureInfo.InvariantCulture)
        : value + value;

    [GeneratedRegex("<(?<tag>[A-Z_]+)>(?<value>[^<]*)</[A-Z_]+>")]
    private static partial Regex Leaf();

    [GeneratedRegex(@"<\?xml[^>]*\?>\s*")]
    private static partial Regex Header();
}
