using UnitsNet;
using UnitsNet.Units;

namespace Gylebook.Science.Tests.Quantities.Units;

/// <summary>What an independent unit library makes of our straight-line rows.</summary>
/// <remarks>
/// Four of its own constants (UnitsNet 5.75.1) are rounded or off: the fluid ounces by 1.3e-12, the US beer barrel by
/// 4e-9 (0.1173477658 m³ for 31 × 3.785411784 L), the imperial gallon per hour by 2e-6 (791887.667 for 791889.294 in a
/// m³/s). For these rows we go by the pint, the gallon and the hour, which it has exactly.
/// </remarks>
internal static class UnitsNetTwins
{
    // Kind, symbol → the number in base units, as UnitsNet has it.
    public static readonly Dictionary<(string Kind, string Symbol), Func<double, double>> Rows = new()
    {
        [("a mass", "kg")] = Mass(MassUnit.Kilogram),
        [("a mass", "g")] = Mass(MassUnit.Gram),
        [("a mass", "mg")] = Mass(MassUnit.Milligram),
        [("a mass", "lb")] = Mass(MassUnit.Pound),
        [("a mass", "oz")] = Mass(MassUnit.Ounce),
        [("a mass", "t")] = Mass(MassUnit.Tonne),
        [("a volume", "L")] = Litres(VolumeUnit.Liter),
        [("a volume", "mL")] = Litres(VolumeUnit.Milliliter),
        [("a volume", "hL")] = Litres(VolumeUnit.Hectoliter),
        [("a volume", "m3")] = Litres(VolumeUnit.CubicMeter),
        [("a volume", "US gal")] = Litres(VolumeUnit.UsGallon),
        [("a volume", "US qt")] = Litres(VolumeUnit.UsQuart),
        [("a volume", "US pt")] = Litres(VolumeUnit.UsPint),
        [("a volume", "US fl oz")] = n => Volume.FromUsPints(n / 16).Liters,
        [("a volume", "US bbl")] = n => Volume.FromUsGallons(31 * n).Liters,
        [("a volume", "imp gal")] = Litres(VolumeUnit.ImperialGallon),
        [("a volume", "imp qt")] = Litres(VolumeUnit.ImperialQuart),
        [("a volume", "imp pt")] = Litres(VolumeUnit.ImperialPint),
        [("a volume", "imp fl oz")] = n => Volume.FromImperialPints(n / 20).Liters,
        [("a volume", "imp bbl")] = Litres(VolumeUnit.ImperialBeerBarrel),
        [("a volume per mass", "L/kg")] = n => SpecificVolume.FromCubicMetersPerKilogram(n).CubicMetersPerKilogram,
        [("a volume per mass", "US qt/lb")] = PerPound(VolumeUnit.UsQuart),
        [("a volume per mass", "US gal/lb")] = PerPound(VolumeUnit.UsGallon),
        [("a volume per mass", "imp qt/lb")] = PerPound(VolumeUnit.ImperialQuart),
        [("a volume per mass", "imp gal/lb")] = PerPound(VolumeUnit.ImperialGallon),
        [("a length", "m")] = Metres(LengthUnit.Meter),
        [("a length", "cm")] = Metres(LengthUnit.Centimeter),
        [("a length", "mm")] = Metres(LengthUnit.Millimeter),
        [("a length", "km")] = Metres(LengthUnit.Kilometer),
        [("a length", "ft")] = Metres(LengthUnit.Foot),
        [("a length", "in")] = Metres(LengthUnit.Inch),
        [("a duration", "s")] = Minutes(DurationUnit.Second),
        [("a duration", "min")] = Minutes(DurationUnit.Minute),
        [("a duration", "h")] = Minutes(DurationUnit.Hour),
        [("a duration", "d")] = Minutes(DurationUnit.Day),
        [("a duration", "week")] = Minutes(DurationUnit.Week),
        [("a concentration", "mg/L")] = MilligramsPerLitre(MassConcentrationUnit.MilligramPerLiter),
        [("a concentration", "g/L")] = MilligramsPerLitre(MassConcentrationUnit.GramPerLiter),
        [("a carbonation", "g/L")] = n => MassConcentration.FromGramsPerLiter(n).GramsPerLiter,
        [("a bitterness", "mg/L")] = MilligramsPerLitre(MassConcentrationUnit.MilligramPerLiter),
        [("a share", "%")] = n => Ratio.FromPercent(n).DecimalFractions,
        [("a share", "1")] = n => Ratio.FromDecimalFractions(n).DecimalFractions,
        [("a temperature", "°C")] = n => Temperature.FromDegreesCelsius(n).DegreesCelsius,
        [("a temperature", "K")] = n => Temperature.FromKelvins(n).DegreesCelsius,
        [("a temperature", "°F")] = n => Temperature.FromDegreesFahrenheit(n).DegreesCelsius,
        [("a temperature difference", "K")] = n => TemperatureDelta.FromKelvins(n).Kelvins,
        [("a temperature difference", "°C")] = n => TemperatureDelta.FromDegreesCelsius(n).Kelvins,
        [("a temperature difference", "°F")] = n => TemperatureDelta.FromDegreesFahrenheit(n).Kelvins,
        [("a power", "kW")] = n => (double)Power.FromKilowatts(n).Kilowatts,
        [("a power", "W")] = n => (double)Power.FromWatts(n).Kilowatts,
        [("a power", "BTU/h")] = n => (double)Power.FromBritishThermalUnitsPerHour(n).Kilowatts,
        [("a heat capacity", "kJ/K")] = n => Entropy.FromKilojoulesPerKelvin(n).KilojoulesPerKelvin,
        [("an evaporation rate", "L/h")] = n => VolumeFlow.FromLitersPerHour(n).LitersPerHour,
        [("an evaporation rate", "US gal/h")] = n => VolumeFlow.FromUsGallonsPerHour(n).LitersPerHour,
        [("an evaporation rate", "imp gal/h")] = Litres(VolumeUnit.ImperialGallon),
        [("a gauge pressure", "bar")] = Bar(PressureUnit.Bar),
        [("a gauge pressure", "mbar")] = Bar(PressureUnit.Millibar),
        [("a gauge pressure", "Pa")] = Bar(PressureUnit.Pascal),
        [("a gauge pressure", "kPa")] = Bar(PressureUnit.Kilopascal),
        [("a gauge pressure", "psi")] = Bar(PressureUnit.PoundForcePerSquareInch),
        [("a gauge pressure", "atm")] = Bar(PressureUnit.Atmosphere),
        [("an absolute pressure", "bar")] = Bar(PressureUnit.Bar),
        [("an absolute pressure", "mbar")] = Bar(PressureUnit.Millibar),
        [("an absolute pressure", "Pa")] = Bar(PressureUnit.Pascal),
        [("an absolute pressure", "kPa")] = Bar(PressureUnit.Kilopascal),
        [("an absolute pressure", "psi")] = Bar(PressureUnit.PoundForcePerSquareInch),
        [("an absolute pressure", "atm")] = Bar(PressureUnit.Atmosphere),
    };

    private static Func<double, double> Mass(MassUnit unit) => n => UnitsNet.Mass.From(n, unit).Kilograms;

    private static Func<double, double> Litres(VolumeUnit unit) => n => Volume.From(n, unit).Liters;

    private static Func<double, double> PerPound(VolumeUnit unit) =>
        n => Volume.From(n, unit).Liters / UnitsNet.Mass.FromPounds(1).Kilograms;

    private static Func<double, double> Metres(LengthUnit unit) => n => Length.From(n, unit).Meters;

    private static Func<double, double> Minutes(DurationUnit unit) => n => Duration.From(n, unit).Minutes;

    private static Func<double, double> MilligramsPerLitre(MassConcentrationUnit unit) =>
        n => MassConcentration.From(n, unit).MilligramsPerLiter;

    private static Func<double, double> Bar(PressureUnit unit) => n => Pressure.From(n, unit).Bars;
}
