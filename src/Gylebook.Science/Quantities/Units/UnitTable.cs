using System.Globalization;

namespace Gylebook.Science.Quantities;

/// <summary>Every unit a person may type or read, and the way between text and quantity.</summary>
/// <remarks>
/// <para>The same in every country: a point or a comma before the decimals, no grouping of thousands. A single comma
/// before exactly three digits ("1,068 kg") is refused where a thousand-and-some would be possible too, and read as a
/// decimal comma where it would not ("1,068" as a gravity).</para>
/// <para>A number without a unit is read only where it can mean one thing: a share from 0 to 1, a gravity from 0.9
/// to 1.2.</para>
/// </remarks>
public static class UnitTable
{
    /// <summary>Significant digits for a person to read.</summary>
    public const int UsualDigits = 6;

    /// <summary>All kinds, those a bare word most likely means first.</summary>
    public static IReadOnlyList<QuantityKind> Kinds { get; } =
    [
        AmountUnits.Mass, AmountUnits.Volume, HeatAndPressureUnits.Temperature, HeatAndPressureUnits.TemperatureDifference,
        AmountUnits.Duration, HeatAndPressureUnits.GaugePressure, HeatAndPressureUnits.AbsolutePressure,
        BeerUnits.Gravity, BeerUnits.RealExtract, BeerUnits.BeerColour, BeerUnits.MaltColour, BeerUnits.Alcohol,
        BeerUnits.Carbonation, BeerUnits.Hardness, AmountUnits.Concentration, BeerUnits.Bitterness, AmountUnits.Fraction,
        HeatAndPressureUnits.Power, HeatAndPressureUnits.Evaporation, HeatAndPressureUnits.HeatCapacity,
        AmountUnits.SpecificVolume, AmountUnits.Length,
    ];

    /// <summary>The kind a quantity belongs to.</summary>
    public static QuantityKind KindOf<T>()
        where T : struct, IQuantity<T> => Of<T>.Kind;

    /// <summary>The units a quantity can be written in, the most usual first.</summary>
    public static IReadOnlyList<Unit> UnitsOf<T>()
        where T : struct, IQuantity<T> => Of<T>.Kind.Units;

    /// <summary>The values a quantity can have, in words: "0 kg to 1000000 kg", "0 % to 100 %".</summary>
    public static string RangeOf<T>()
        where T : struct, IQuantity<T> => Of<T>.Kind.RangeOf(T.Limits);

    /// <summary>Whether a text ends with a unit of that quantity, whatever its number: "-2 L" is meant as a volume.</summary>
    public static bool LooksLike<T>(string text)
        where T : struct, IQuantity<T> =>
        NumberWithUnit.TryCut(text, out NumberWithUnit parts, out _)
        && (Of<T>.Kind.Find(parts.UnitText) ?? (object?)Of<T>.Kind.FindAmbiguous(parts.UnitText)) is not null;

    /// <summary>Reads what somebody typed.</summary>
    /// <param name="text">The text: "4.2 kg", "1.068", "66 °C".</param>
    /// <param name="entered">The quantity, and the text as it was typed.</param>
    /// <param name="problem">What is wrong, in plain words with the text and the limit; empty when nothing.</param>
    public static bool TryParse<T>(string? text, out Entered<T> entered, out string problem)
        where T : struct, IQuantity<T>
    {
        entered = default;
        QuantityKind kind = Of<T>.Kind;
        if (!UnitReading.TryRead(text, kind, out UnitReading reading, out problem)
            || !TryOwn<T>(reading.Number, reading, out double own, out problem))
        {
            return false;
        }

        if (reading.CommaMightGroup && TryOwn<T>(reading.Number * 1000, reading, out double grouped, out _)
            && T.Limits.Allow(grouped))
        {
            problem = $"{reading.Text}: the comma could be a decimal comma or group thousands; write "
                + $"{Digits(reading.Number, 15)} or {Digits(reading.Number * 1000, 15)}.";
            return false;
        }

        if (!T.Limits.Allow(own))
        {
            problem = $"{reading.Text}: {kind.Noun} is from {kind.RangeOf(T.Limits)}.";
            return false;
        }

        entered = new Entered<T>(T.FromCanonical(own), text!);
        return true;
    }

    /// <summary>The quantity's number in a unit; false when the conversion does not hold that far.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The quantity has no such unit.</exception>
    public static bool TryIn<T>(T value, string unit, out double number)
        where T : struct, IQuantity<T>
    {
        Unit target = Of<T>.Kind.Find(unit) ?? throw new ArgumentOutOfRangeException(
            nameof(unit), unit, $"{Of<T>.Kind.Noun} is written with {Of<T>.Kind.UnitList}.");
        number = value.Canonical;
        return target == Of<T>.Own
            || (Of<T>.Own.Scale.TryToBase(value.Canonical, out double inBase) && target.Scale.TryFromBase(inBase, out number));
    }

    /// <summary>The quantity in a unit, the same in every country: "1.068 SG".</summary>
    /// <remarks>Where the conversion does not hold, in the quantity's own unit instead.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The quantity has no such unit.</exception>
    public static string Format<T>(T value, string unit, int significantDigits = UsualDigits)
        where T : struct, IQuantity<T>
    {
        Unit written = TryIn(value, unit, out double number) ? Of<T>.Kind.Find(unit)! : Of<T>.Own;
        return WithSymbol(written == Of<T>.Own ? value.Canonical : number, written, significantDigits);
    }

    /// <summary>A number with so many significant digits, no zeros at its end, no exponent: "1.05051".</summary>
    public static string Digits(double number, int significantDigits = UsualDigits)
    {
        string rounded = number.ToString(Invariant($"E{significantDigits - 1}"), CultureInfo.InvariantCulture);
        double value = double.Parse(rounded, CultureInfo.InvariantCulture) + 0.0;
        return value.ToString("0.##############################", CultureInfo.InvariantCulture);
    }

    internal static string WithSymbol(double number, Unit unit, int significantDigits) =>
        unit.Symbol switch
        {
            "1" => Digits(number, significantDigits),
            _ => $"{Digits(number, significantDigits)} {unit.Symbol}",
        };

    private static bool TryOwn<T>(double number, UnitReading reading, out double own, out string problem)
        where T : struct, IQuantity<T>
    {
        own = number;
        problem = "";
        if (reading.Unit == Of<T>.Own)
        {
            return true;
        }

        if (reading.Unit.Scale.TryToBase(number, out double inBase) && Of<T>.Own.Scale.TryFromBase(inBase, out own))
        {
            return true;
        }

        problem = UnitReading.OutsideCurve(reading.Text, reading.Unit, Of<T>.Own);
        return false;
    }

    /// <summary>What is looked up once for each quantity.</summary>
    private static class Of<T>
        where T : struct, IQuantity<T>
    {
        public static readonly QuantityKind Kind =
            Kinds.Single(kind => kind.Quantities.Any(limits => limits.Name == T.Limits.Name));

        public static readonly Unit Own = Kind.WithSymbol(T.Limits.Unit);
    }
}
