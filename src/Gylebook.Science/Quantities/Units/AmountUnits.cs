using static Gylebook.Science.Quantities.UnitScale;

namespace Gylebook.Science.Quantities;

/// <summary>Units of mass, volume, length, time, concentration and share.</summary>
internal static class AmountUnits
{
    internal const double KilogramsInPound = 0.45359237;
    internal const double LitresInUsGallon = 3.785411784;
    internal const double LitresInImperialGallon = 4.54609;
    internal const double MetresInInch = 0.0254;

    internal static QuantityKind Mass { get; } = new("a mass", [Quantities.Mass.Limits],
    [
        new("kg", "SI kilogram", Base, "kilogram", "kilograms", "kilo", "kilos", "kgs"),
        new("g", "1/1000 kg", PerBase(1000), "gram", "grams", "gramme", "grammes"),
        new("mg", "1/1000 g", PerBase(1e6), "milligram", "milligrams"),
        new("lb", "international pound, 0.45359237 kg exactly (1959 agreement)", Times(KilogramsInPound), "lbs", "pound", "pounds"),
        new("oz", "avoirdupois ounce, 1/16 lb", Times(KilogramsInPound / 16), "ounce", "ounces"),
        new("t", "tonne, 1000 kg", Times(1000), "tonne", "tonnes"),
    ]);

    internal static QuantityKind Volume { get; } = new("a volume", [VolumeAt20C.Limits, HotVolume.Limits],
    [
        new("L", "litre, 1/1000 m³ (CGPM 1964)", Base, "l", "litre", "litres", "liter", "liters"),
        new("mL", "1/1000 L", PerBase(1000), "ml", "millilitre", "millilitres", "milliliter", "milliliters"),
        new("hL", "100 L", Times(100), "hl", "hectolitre", "hectolitres", "hectoliter", "hectoliters"),
        new("m3", "cubic metre, 1000 L", Times(1000)),
        new("US gal", "US liquid gallon, 231 cubic inches of 0.0254 m: 3.785411784 L exactly", Times(LitresInUsGallon),
            "gal US", "US gallon", "US gallons"),
        new("US qt", "1/4 US gal", Times(LitresInUsGallon / 4), "qt US", "US quart", "US quarts"),
        new("US pt", "1/8 US gal", Times(LitresInUsGallon / 8), "pt US", "US pint", "US pints"),
        new("US fl oz", "1/128 US gal", Times(LitresInUsGallon / 128), "fl oz US", "US floz", "US fluid ounce", "US fluid ounces"),
        new("US bbl", "US beer barrel, 31 US gal (27 CFR 25.11; paragraph from memory)", Times(31 * LitresInUsGallon), "bbl US", "US barrel", "US barrels"),
        new("imp gal", "imperial gallon, 4.54609 L exactly (UK Units of Measurement Regulations 1995; title from memory)", Times(LitresInImperialGallon),
            "gal imp", "imperial gallon", "imperial gallons", "UK gal", "UK gallon", "UK gallons"),
        new("imp qt", "1/4 imp gal", Times(LitresInImperialGallon / 4), "qt imp", "imperial quart", "imperial quarts", "UK qt"),
        new("imp pt", "1/8 imp gal", Times(LitresInImperialGallon / 8), "pt imp", "imperial pint", "imperial pints", "UK pt", "UK pint", "UK pints"),
        new("imp fl oz", "1/160 imp gal", Times(LitresInImperialGallon / 160),
            "fl oz imp", "imp floz", "imperial fluid ounce", "imperial fluid ounces", "UK fl oz"),
        new("imp bbl", "imperial beer barrel, 36 imp gal", Times(36 * LitresInImperialGallon),
            "bbl imp", "imperial barrel", "imperial barrels", "UK bbl"),
    ])
    {
        Ambiguous =
        [
            new(["gal", "gals", "gallon", "gallons"], ["US gal", "imp gal"]),
            new(["qt", "qts", "quart", "quarts"], ["US qt", "imp qt"]),
            new(["pt", "pts", "pint", "pints"], ["US pt", "imp pt"]),
            new(["fl oz", "floz", "fluid ounce", "fluid ounces"], ["US fl oz", "imp fl oz"]),
            new(["bbl", "bbls", "barrel", "barrels"], ["US bbl", "imp bbl"]),
        ],
    };

    internal static QuantityKind SpecificVolume { get; } = new("a volume per mass", [Quantities.SpecificVolume.Limits],
    [
        new("L/kg", "litre per kilogram", Base, "l/kg", "mL/g", "ml/g"),
        new("US qt/lb", "US quart per pound", Times(LitresInUsGallon / 4 / KilogramsInPound)),
        new("US gal/lb", "US gallon per pound", Times(LitresInUsGallon / KilogramsInPound)),
        new("imp qt/lb", "imperial quart per pound", Times(LitresInImperialGallon / 4 / KilogramsInPound), "UK qt/lb"),
        new("imp gal/lb", "imperial gallon per pound", Times(LitresInImperialGallon / KilogramsInPound), "UK gal/lb"),
    ])
    {
        Ambiguous = [new(["qt/lb"], ["US qt/lb", "imp qt/lb"]), new(["gal/lb"], ["US gal/lb", "imp gal/lb"])],
    };

    internal static QuantityKind Length { get; } = new("a length", [Quantities.Length.Limits],
    [
        new("m", "SI metre", Base, "metre", "metres", "meter", "meters"),
        new("cm", "1/100 m", PerBase(100), "centimetre", "centimetres", "centimeter", "centimeters"),
        new("mm", "1/1000 m", PerBase(1000), "millimetre", "millimetres", "millimeter", "millimeters"),
        new("km", "1000 m", Times(1000), "kilometre", "kilometres", "kilometer", "kilometers"),
        new("ft", "international foot, 12 in", Times(12 * MetresInInch), "foot", "feet"),
        new("in", "international inch, 0.0254 m exactly (1959 agreement)", Times(MetresInInch), "inch", "inches"),
    ]);

    internal static QuantityKind Duration { get; } = new("a duration", [Quantities.Duration.Limits],
    [
        new("min", "60 s", Base, "mins", "minute", "minutes"),
        new("s", "SI second", PerBase(60), "sec", "secs", "second", "seconds"),
        new("h", "60 min", Times(60), "hr", "hrs", "hour", "hours"),
        new("d", "24 h", Times(1440), "day", "days"),
        new("week", "7 d", Times(10080), "weeks", "wk", "wks"),
    ]);

    internal static QuantityKind Concentration { get; } = new("a concentration", [Quantities.Concentration.Limits],
    [
        new("mg/L", "milligram per litre", Base, "mg/l"),
        new("g/L", "gram per litre", Times(1000), "g/l"),
        new("ppm", "taken as 1 mg/L, as water laboratories do: a litre of water is a kilogram to 0.2 %", Times(1)),
    ]);

    internal static QuantityKind Fraction { get; } = new("a share", [Quantities.Fraction.Limits],
    [
        new("%", "1/100", PerBase(100), "percent", "per cent", "pct"),
        new("1", "a bare ratio, 0.25 for a quarter", Base),
    ])
    {
        Bare = new("1", 0, 1),
    };
}
