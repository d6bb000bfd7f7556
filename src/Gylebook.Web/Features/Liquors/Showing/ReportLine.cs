using System.Globalization;
using Gylebook.Pictures;
using Gylebook.Recipes.Liquors;

namespace Gylebook.Web.Features.Liquors.Showing;

/// <summary>A way laboratories print an amount.</summary>
/// <param name="Words">As the page shows it: <c>mg/L as S</c>.</param>
/// <param name="Key">The key of a report that holds it.</param>
/// <param name="Symbol">The unit in the file; empty for none.</param>
public sealed record PrintedAs(string Words, string Key, string Symbol)
{
    /// <summary>How an acid is measured out: mL, or grams of a powder.</summary>
    public static PrintedAs MeasureOf(string? acid)
    {
        string symbol = (acid is null ? null : ShelfWords.Sold(acid)?.UnitSymbol) ?? "mL";
        return new(symbol, "acid", symbol);
    }
}

/// <summary>A line of a laboratory's report, and the ways it is printed.</summary>
/// <param name="Label">What it is of.</param>
/// <param name="Ways">The usual way first.</param>
public sealed record ReportLine(string Label, params IReadOnlyList<PrintedAs> Ways)
{
    private const string NumberSigns = "0123456789.,";

    /// <summary>Lines that nearly every report has.</summary>
    public static IReadOnlyList<ReportLine> Usual { get; } =
    [
        new("pH", new PrintedAs("", "ph", "")),
        Hardness("Calcium", "calcium", ionFirst: true),
        Hardness("Magnesium", "magnesium", ionFirst: true),
        Hardness("Hardness", "hardness", ionFirst: false),
        Hardness("Alkalinity", "alkalinity", ionFirst: false),
        Ion("Bicarbonate, HCO3", "bicarbonate"),
        new("Sulphate", new PrintedAs("mg/L SO4", "sulphate", "mg/L"), new PrintedAs("mg/L as S", "sulphateSulphur", "mg/L")),
        Ion("Chloride", "chloride"),
        Ion("Sodium", "sodium"),
    ];

    /// <summary>Lines that some have.</summary>
    public static IReadOnlyList<ReportLine> Rare { get; } =
    [
        Ion("Potassium", "potassium"),
        Ion("Carbonate, CO3", "carbonate"),
        new("Nitrate", new PrintedAs("mg/L NO3", "nitrate", "mg/L"), new PrintedAs("mg/L as N", "nitrateNitrogen", "mg/L")),
        new("Conductivity at 25 °C", new PrintedAs("µS/cm", "conductivity", "µS/cm"), new PrintedAs("mS/m", "conductivity", "mS/m")),
    ];

    /// <summary>The way a text of the file was printed in; null when it is none of them.</summary>
    /// <param name="textAt">What the report says at a key; null when it says nothing.</param>
    public PrintedAs? WayOf(Func<string, string?> textAt) => Ways.FirstOrDefault(way => textAt(way.Key) is { } text && IsPrintedSo(text, way))
        ?? Ways.FirstOrDefault(way => textAt(way.Key) is not null);

    /// <summary>The number of a text, where the unit stands beside it; the whole text where it has another unit.</summary>
    public static string NumberOf(string text, PrintedAs way, DecimalSign sign)
    {
        string number = IsPrintedSo(text, way) ? text[..(text.Length - way.Symbol.Length)].TrimEnd() : text;
        return sign == DecimalSign.Comma ? number.Replace('.', ',') : number;
    }

    /// <summary>The text of the file for what was typed: a bare number takes the unit beside it.</summary>
    public static string TextOf(string typed, PrintedAs way)
    {
        string text = typed.Trim();
        bool isBare = text.Length > 0 && text.All(NumberSigns.Contains);
        return !isBare ? text : $"{text.Replace(',', '.')} {way.Symbol}".TrimEnd();
    }

    private static bool IsPrintedSo(string text, PrintedAs way) =>
        text.EndsWith(way.Symbol, StringComparison.OrdinalIgnoreCase)
        && double.TryParse(text[..(text.Length - way.Symbol.Length)].Trim(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out _);

    private static ReportLine Ion(string label, string key) => new(label, new PrintedAs("mg/L", key, "mg/L"));

    private static ReportLine Hardness(string label, string key, bool ionFirst)
    {
        PrintedAs[] asHardness =
        [
            new("mg/L CaCO3", key, "mg/L CaCO3"), new("°dH", key, "dH"), new("°fH", key, "fH"), new("°Clark", key, "Clark"),
            new("gr/US gal", key, "gr/US gal"), new("mmol/L", key, "mmol/L"), new("mEq/L", key, "mEq/L"),
        ];
        return new ReportLine(label, ionFirst ? [new PrintedAs("mg/L", key, "mg/L"), .. asHardness] : asHardness);
    }
}
