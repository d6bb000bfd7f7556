using System.Globalization;
using Gylebook.Engine.Readouts;
using Gylebook.Science.Liquids;
using Gylebook.Science.Quantities;

namespace Gylebook.Pictures;

/// <summary>Writes numbers for one reader: the one place where page, print and command line turn a quantity into text.</summary>
/// <remarks>
/// Digits are those a home brewer can measure, not those a computer can print. Conversion factors come from the unit table.
/// A value that is not a number is written as a dash. The hard space keeps number and unit on one line.
/// </remarks>
/// <param name="units">What the reader wants to see.</param>
public sealed class Shown(ReaderUnits units)
{
    /// <summary>Between a number and its unit.</summary>
    public const string Space = "\u00A0";

    private const string Unknown = "–";

    private static readonly double UsGallonsInLitre = In(VolumeAt20C.FromLitres(1), "US gal");
    private static readonly double ImperialGallonsInLitre = In(VolumeAt20C.FromLitres(1), "imp gal");
    private static readonly double PoundsInKilogram = In(Mass.FromKilograms(1), "lb");
    private static readonly double OuncesInKilogram = In(Mass.FromKilograms(1), "oz");
    private static readonly double EbcInSrm = In(BeerColour.FromSrm(1), "EBC");

    /// <summary>The choice behind it.</summary>
    public ReaderUnits Units => units;

    /// <summary>The volume's unit: <c>L</c>.</summary>
    public string VolumeSymbol => units.Volume switch
    {
        VolumeUnit.UsGallon => "US gal",
        VolumeUnit.ImperialGallon => "imp gal",
        _ => "L",
    };

    /// <summary>A volume at 20 °C: <c>24.5 L</c>; less than a gallon in quarts, less than a quart in fluid ounces.</summary>
    public string Litres(double litres) => WithUnit(Volume(litres, Fitting(litres).InLitre), Fitting(litres).Symbol);

    /// <summary>What a volume costs, of what a litre costs: <c>0.58 EUR/L</c>.</summary>
    public string PerLitre(double perLitre, string currency) => WithUnit(
        Number(perLitre / InLitre, 2),
        $"{currency}/{VolumeSymbol}");

    /// <summary>A volume and how sure we are: <c>24.5 L (24.0 to 25.1)</c>; the ends only where somebody knows them.</summary>
    public string Litres(Band band) => band.Kind == BandKind.Point
        ? Litres(band.Likely)
        : $"{Litres(band.Likely)} ({Ends(band)})";

    /// <summary>The ends of a volume's band, without the unit: <c>24.0 to 25.1</c>.</summary>
    public string Ends(Band band) => $"{Volume(band.Low, Fitting(band.Likely).InLitre)} to {Volume(band.High, Fitting(band.Likely).InLitre)}";

    /// <summary>A mass: <c>3.60 kg</c>, <c>56 g</c>.</summary>
    public string Kilograms(double kilograms) => units.Mass switch
    {
        MassUnit.Pound when Math.Abs(kilograms) * PoundsInKilogram >= 1 => WithUnit(Number(kilograms * PoundsInKilogram, 2), "lb"),
        MassUnit.Pound => WithUnit(Number(kilograms * OuncesInKilogram, 2), "oz"),
        _ when Math.Abs(kilograms) >= 1 => WithUnit(Number(kilograms, 2), "kg"),
        _ when Math.Abs(kilograms) >= 0.01 => WithUnit(Number(kilograms * 1000, 0), "g"),
        _ => WithUnit(Number(kilograms * 1000, 1), "g"),
    };

    /// <summary>A temperature: <c>66 °C</c>, <c>69.9 °C</c>.</summary>
    public string Celsius(double celsius) => units.Temperature == TemperatureUnit.Fahrenheit
        ? WithUnit(Number((celsius * 9 / 5) + 32, 0), "°F")
        : WithUnit(Number(celsius, Math.Abs(celsius - Math.Round(celsius)) < 0.05 ? 0 : 1), "°C");

    /// <summary>A specific gravity: <c>1.050</c>, or <c>12.4 °P</c>.</summary>
    public string Gravity(double gravity) => units.Gravity == GravityUnit.Plato
        ? WithUnit(Number(SucroseSolution.PlatoAt(gravity), 1), "°P")
        : Number(gravity, 3);

    /// <summary>A beer's colour: <c>17 SRM</c>.</summary>
    public string Srm(double srm) => units.Colour == ColourUnit.Ebc
        ? WithUnit(Number(srm * EbcInSrm, 0), "EBC")
        : WithUnit(Number(srm, srm < 10 ? 1 : 0), "SRM");

    /// <summary>A malt's colour: <c>46 °L</c>, <c>120 EBC</c>.</summary>
    public string Malt(MaltColour colour) => units.Colour == ColourUnit.Ebc
        ? WithUnit(Number(colour.Ebc, 0), "EBC")
        : WithUnit(Number(colour.Lovibond, 0), "°L");

    /// <summary>A share in per cent: <c>5.8 %</c>.</summary>
    public string Percent(double percent) => WithUnit(Number(percent, 1), "%");

    /// <summary>Carbon dioxide: <c>2.3 volumes</c>.</summary>
    public string Volumes(double volumes) => WithUnit(Number(volumes, 1), "volumes");

    /// <summary>A bitterness: <c>28 IBU</c>.</summary>
    public string Ibu(double ibu) => WithUnit(Number(ibu, 0), "IBU");

    /// <summary>A value in a readout's unit, where readers choose among units: gravities, litres, degrees; null in any other.</summary>
    public string? InUnit(string unit, double value) => unit switch
    {
        "SG" => Gravity(value),
        ['L', ..] => Litres(value),
        "°C" => Celsius(value),
        _ => null,
    };

    /// <summary>A bare number with so many decimals and the reader's decimal sign.</summary>
    public string Number(double value, int decimals)
    {
        if (!double.IsFinite(value))
        {
            return Unknown;
        }

        // Minus zero is no number a brewer knows.
        double rounded = Math.Round(value, decimals, MidpointRounding.AwayFromZero) + 0.0;
        string text = rounded.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return units.DecimalSign == DecimalSign.Comma ? text.Replace('.', ',') : text;
    }

    /// <summary>How many of the reader's volume a litre is.</summary>
    private double InLitre => units.Volume switch
    {
        VolumeUnit.UsGallon => UsGallonsInLitre,
        VolumeUnit.ImperialGallon => ImperialGallonsInLitre,
        _ => 1,
    };

    /// <summary>The unit such a volume is told in, and how many of it a litre is. A gallon has 4 quarts, and 128 fluid ounces, or 160 imperial.</summary>
    private (double InLitre, string Symbol) Fitting(double litres) => (units.Volume, Math.Abs(litres) * InLitre) switch
    {
        (VolumeUnit.Litre, _) or (_, 0 or >= 1) or (_, double.NaN) => (InLitre, VolumeSymbol),
        (VolumeUnit.UsGallon, >= 0.25) => (4 * InLitre, "US qt"),
        (VolumeUnit.UsGallon, _) => (128 * InLitre, "US fl oz"),
        (_, >= 0.25) => (4 * InLitre, "imp qt"),
        _ => (160 * InLitre, "imp fl oz"),
    };

    private string Volume(double litres, double inLitre)
    {
        double value = litres * inLitre;
        bool isOunces = inLitre > 4 * InLitre;
        bool small = !isOunces && (Math.Abs(value) < 1 || (InLitre != 1 && Math.Abs(value) < 100));
        return Number(value, small ? 2 : 1);
    }

    private static string WithUnit(string number, string unit) => number == Unknown ? number : number + Space + unit;

    private static double In<T>(T one, string unit)
        where T : struct, IQuantity<T> =>
        UnitTable.TryIn(one, unit, out double number) ? number : throw new InvalidOperationException($"The unit table has no way to {unit}.");
}
