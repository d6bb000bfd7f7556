using Gylebook.Pictures;
using Gylebook.Science.Quantities;

namespace Gylebook.Web.Reading;

/// <summary>Between what stands in a field and what stands in a document.</summary>
/// <remarks>
/// A document keeps what was typed, to the letter. A reader of other units sees the same quantity converted, and nothing is
/// rewritten until they type. A bare number takes the unit the field had before, or the reader's usual one; a gallon, quart or
/// fluid ounce that does not say whose it is becomes the reader's own, where they measure in such.
/// </remarks>
public static class TypedText
{
    private const string BeforeUnit = "+-\u22120123456789., \t\u00A0";
    private const int ConvertedDigits = 4;

    /// <summary>The quantity as this reader sees it in a field.</summary>
    public static string Show<T>(Entered<T> entered, ReaderUnits units)
        where T : struct, IQuantity<T>
    {
        IReadOnlyList<string> wanted = UnitChoice.Of<T>(units);
        Unit? written = UnitOf<T>(entered.Text) ?? Bare<T>();
        if (wanted.Count == 0 || written is null || wanted.Contains(written.Symbol))
        {
            return entered.Text;
        }

        string symbol = Fitting(entered.Value, wanted);
        string text = UnitTable.Format(entered.Value, symbol, ConvertedDigits);
        return units.DecimalSign == DecimalSign.Comma ? text.Replace('.', ',') : text;
    }

    /// <summary>Reads what this reader typed.</summary>
    /// <param name="typed">What stands in the field.</param>
    /// <param name="before">What stood there before; its unit is taken for a bare number.</param>
    /// <param name="units">What the reader is used to.</param>
    /// <param name="entered">The quantity, with the text to keep: as typed wherever that can be read again by itself.</param>
    /// <param name="problem">What is wrong, in plain words; empty when nothing.</param>
    public static bool TryRead<T>(string typed, string? before, ReaderUnits units, out Entered<T> entered, out string problem)
        where T : struct, IQuantity<T>
    {
        string text = Own<T>(typed.Trim(), units);
        if (TryBare(text, before, units, out entered))
        {
            problem = "";
            return true;
        }

        if (UnitTable.TryParse(text, out entered, out problem))
        {
            return true;
        }

        // "1,068 kg" is refused where it stands alone, but this reader has said what a comma is.
        return units.DecimalSign == DecimalSign.Comma && text.Count(c => c == ',') == 1 && !text.Contains('.', StringComparison.Ordinal)
            && UnitTable.TryParse(text.Replace(',', '.'), out entered, out _)
            && (problem = "").Length == 0;
    }

    /// <summary>The symbol a bare number would get; null when the number needs none, or must have its own.</summary>
    public static string? UsualUnit<T>(string? before, ReaderUnits units)
        where T : struct, IQuantity<T>
    {
        IReadOnlyList<string> wanted = UnitChoice.Of<T>(units);
        if (before is not null && UnitOf<T>(before) is { } written && (wanted.Count == 0 || wanted.Contains(written.Symbol)))
        {
            return written.Symbol;
        }

        return wanted.Count > 0 ? wanted[0] : UnitTable.UnitsOf<T>()[0].Symbol;
    }

    /// <summary>A unit of two peoples as the reader's own: <c>10 gal</c> is <c>10 US gal</c>, in the document too.</summary>
    private static string Own<T>(string text, ReaderUnits units)
        where T : struct, IQuantity<T>
    {
        string people = units.Volume switch { VolumeUnit.UsGallon => "US ", VolumeUnit.ImperialGallon => "imp ", _ => "" };
        string unit = UnitIn(text);
        string? own = people.Length == 0
            ? null
            : UnitTable.KindOf<T>().FindAmbiguous(unit)?.Candidates.FirstOrDefault(symbol => symbol.StartsWith(people, StringComparison.Ordinal));
        return own is null ? text : $"{text[..^unit.Length].TrimEnd()} {own}";
    }

    private static bool TryBare<T>(string text, string? before, ReaderUnits units, out Entered<T> entered)
        where T : struct, IQuantity<T>
    {
        entered = default;
        bool isBare = text.Length > 0 && text.Trim(BeforeUnit.ToCharArray()).Length == 0;
        bool isGravity = Bare<T>() is { Symbol: "SG" };
        if (!isBare || UsualUnit<T>(before, units) is not { } symbol || (isGravity && UnitTable.TryParse<T>(text, out _, out _)))
        {
            return false;
        }

        string unambiguous = units.DecimalSign == DecimalSign.Comma ? text.Replace(',', '.') : text;
        return UnitTable.TryParse($"{text} {symbol}", out entered, out _)
            || UnitTable.TryParse($"{unambiguous} {symbol}", out entered, out _);
    }

    private static Unit? UnitOf<T>(string text)
        where T : struct, IQuantity<T> => UnitTable.KindOf<T>().Find(UnitIn(text));

    private static string UnitIn(string text) => text.TrimStart(BeforeUnit.ToCharArray()).TrimEnd();

    private static Unit? Bare<T>()
        where T : struct, IQuantity<T> =>
        UnitTable.KindOf<T>().Bare is { } bare ? UnitTable.KindOf<T>().Find(bare.Symbol) : null;

    /// <summary>The first unit, or the next smaller of the same people when the number would start with a nought.</summary>
    private static string Fitting<T>(T value, IReadOnlyList<string> wanted)
        where T : struct, IQuantity<T>
    {
        bool isSmall = wanted.Count > 1 && UnitTable.TryIn(value, wanted[0], out double number) && Math.Abs(number) is > 0 and < 1;
        return !isSmall ? wanted[0]
            : wanted[0] is "kg" or "lb" ? wanted[1]
            : wanted[0] is "US gal" or "imp gal" ? wanted.First(unit => unit.EndsWith(" fl oz", StringComparison.Ordinal))
            : wanted[0];
    }
}
