using System.Text;
using Gylebook.Recipes.Interchange.BeerJson;
using Gylebook.Recipes.Interchange.BeerXml;
using Gylebook.Recipes.Interchange.OpenFormats.Arriving;

namespace Gylebook.Recipes.Interchange.Arrivals;

/// <summary>A file that may be of one of the open standards.</summary>
public static class OpenFile
{
    /// <summary>What it becomes here; null when it is of neither standard.</summary>
    /// <param name="bytes">The file.</param>
    /// <param name="wishes">What is known here that the file does not say; null for nothing.</param>
    public static Arrival? Read(ReadOnlyMemory<byte> bytes, ArrivalWishes? wishes = null) =>
        IsBeerJson(bytes.Span) ? BeerJsonFile.Read(bytes, wishes) : BeerXmlFile.Is(bytes.Span) ? BeerXmlFile.Read(bytes, wishes) : null;

    /// <summary>Whether it is of one of the standards, readable or not.</summary>
    public static bool Is(ReadOnlySpan<byte> bytes) => IsBeerJson(bytes) || BeerXmlFile.Is(bytes);

    /// <summary>Whether the first key of the object it is, broken or whole, is that of BeerJSON.</summary>
    private static bool IsBeerJson(ReadOnlySpan<byte> bytes)
    {
        ReadOnlySpan<byte> text = Trimmed(bytes.StartsWith(Encoding.UTF8.Preamble) ? bytes[Encoding.UTF8.Preamble.Length..] : bytes);
        return text.StartsWith("{"u8) && Trimmed(text[1..]).StartsWith("\"beerjson\""u8);
    }

    private static ReadOnlySpan<byte> Trimmed(ReadOnlySpan<byte> text) => text.TrimStart(" \t\r\n"u8);
}
