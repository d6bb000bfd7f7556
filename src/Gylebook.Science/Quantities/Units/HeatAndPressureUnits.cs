using static Gylebook.Science.Quantities.UnitScale;

namespace Gylebook.Science.Quantities;

/// <summary>Units of temperature, heat, evaporation and pressure.</summary>
internal static class HeatAndPressureUnits
{
    // BTU of the International Steam Table: 1055.05585262 J exactly; from memory, confirmed by the library in the tests.
    private const double KilojoulesInBtu = 1.05505585262;

    // Pound-force over square inch, in bar: 0.45359237 kg × 9.80665 m/s² (CGPM 1901) ÷ (0.0254 m)² ÷ 1e5.
    private const double BarInPsi =
        AmountUnits.KilogramsInPound * 9.80665 / (AmountUnits.MetresInInch * AmountUnits.MetresInInch) / 1e5;

    internal static QuantityKind Temperature { get; } = new("a temperature", [Quantities.Temperature.Limits],
    [
        new("°C", "degree Celsius, kelvin less 273.15", Base, "C", "degC", "Celsius"),
        new("K", "SI kelvin", new LinearScale(1) { Zero = 273.15 }, "kelvin"),
        new("°F", "degree Fahrenheit, 1.8 × °C + 32", new LinearScale(1.8) { Divides = true, Zero = 32 }, "F", "degF", "Fahrenheit"),
    ]);

    internal static QuantityKind TemperatureDifference { get; } =
        new("a temperature difference", [Quantities.TemperatureDifference.Limits],
        [
            new("K", "SI kelvin", Base, "kelvin", "kelvins"),
            new("°C", "a step on the Celsius scale, 1 K", Times(1), "C", "degC"),
            new("°F", "a step on the Fahrenheit scale, 1/1.8 K", PerBase(1.8), "F", "degF"),
        ]);

    internal static QuantityKind Power { get; } = new("a power", [Quantities.Power.Limits],
    [
        new("kW", "1000 W", Base, "kilowatt", "kilowatts"),
        new("W", "SI watt", PerBase(1000), "watt", "watts"),
        new("BTU/h", "International Steam Table BTU per hour, 1055.05585262 J in 3600 s", Times(KilojoulesInBtu / 3600), "BTU/hr", "BTUH"),
    ]);

    internal static QuantityKind HeatCapacity { get; } = new("a heat capacity", [Quantities.HeatCapacity.Limits],
    [
        new("kJ/K", "kilojoule per kelvin", Base, "kJ/°C"),
    ]);

    internal static QuantityKind Evaporation { get; } = new("an evaporation rate", [Quantities.Evaporation.Limits],
    [
        new("L/h", "litre per hour", Base, "l/h", "L/hr", "l/hr"),
        new("US gal/h", "US gallon per hour", Times(AmountUnits.LitresInUsGallon), "US gal/hr"),
        new("imp gal/h", "imperial gallon per hour", Times(AmountUnits.LitresInImperialGallon), "imp gal/hr", "UK gal/h"),
    ])
    {
        Ambiguous = [new(["gal/h", "gal/hr", "gph"], ["US gal/h", "imp gal/h"])],
    };

    internal static QuantityKind GaugePressure { get; } = new("a gauge pressure", [Quantities.GaugePressure.Limits],
    [
        new("bar", "100 kPa", Base, "barg", "bar(g)"),
        new("mbar", "1/1000 bar", PerBase(1000), "hPa"),
        new("Pa", "SI pascal", PerBase(1e5), "pascal"),
        new("kPa", "1000 Pa", PerBase(100)),
        new("psi", "pound-force per square inch, 6894.757 Pa", Times(BarInPsi), "psig"),
        new("atm", "standard atmosphere, 1.01325 bar exactly (CGPM 1954)", Times(1.01325)),
    ]);

    internal static QuantityKind AbsolutePressure { get; } = new("an absolute pressure", [Quantities.AbsolutePressure.Limits],
    [
        new("bar", "100 kPa", Base, "bara", "bar(a)"),
        new("mbar", "1/1000 bar", PerBase(1000), "hPa"),
        new("Pa", "SI pascal", PerBase(1e5), "pascal"),
        new("kPa", "1000 Pa", PerBase(100)),
        new("psi", "pound-force per square inch, 6894.757 Pa", Times(BarInPsi), "psia"),
        new("atm", "standard atmosphere, 1.01325 bar exactly (CGPM 1954)", Times(1.01325)),
    ]);
}
