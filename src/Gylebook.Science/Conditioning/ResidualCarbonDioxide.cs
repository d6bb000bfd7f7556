using Gylebook.Science.Boiling;
using Gylebook.Science.Data;
using Gylebook.Science.Numerics;

namespace Gylebook.Science.Conditioning;

/// <summary>Carbon dioxide that a beer keeps when it has fermented open to the air.</summary>
/// <remarks>
/// <para>Symbols: volumes, litres of gas at 0 °C and 1 atm in a litre of beer, against the warmest temperature (°C)
/// since the yeast stopped.</para>
/// <para>Source: <c>data/conditioning/residual-carbon-dioxide.csv</c>, a table of the home-brewing literature; beyond
/// its ends its last figure times the course of Weiss 1974 (<see cref="CarbonDioxideInWater"/>).</para>
/// <para>Valid for: 0 to 22 °C, near sea level. At height multiply by the air pressure in atmospheres.</para>
/// <para>Accuracy: the table is the solubility in plain water; a beer holds 7 to 10 % less, that is 0.06 to 0.1
/// volumes.</para>
/// <para>Notes: counting too much means priming with too little: the safe side for bottles. Beer kept under pressure
/// holds more: see <see cref="KegPressure"/>.</para>
/// </remarks>
public static class ResidualCarbonDioxide
{
    private static readonly double[] Celsius = CsvTable.Published("residual-carbon-dioxide.csv").Numbers("celsius");
    private static readonly double[] Volumes = CsvTable.Published("residual-carbon-dioxide.csv").Numbers("volumes");

    /// <summary>Volumes of gas kept.</summary>
    /// <param name="celsius">Warmest temperature since the yeast stopped, °C.</param>
    public static double VolumesAt(double celsius)
    {
        Argument.MustBeWithin(celsius, -20, 120);
        return celsius < Celsius[0] ? Beyond(0, celsius)
            : celsius > Celsius[^1] ? Beyond(Celsius.Length - 1, celsius)
            : LinearInterpolation.At(celsius, Celsius, Volumes);
    }

    /// <summary>Volumes of gas kept under the air of a place: in proportion to its pressure.</summary>
    /// <param name="celsius">Warmest temperature since the yeast stopped, °C.</param>
    /// <param name="airKilopascals">Air pressure there, kPa.</param>
    public static double VolumesAt(double celsius, double airKilopascals)
    {
        Argument.MustNotBeNegative(airKilopascals);
        return VolumesAt(celsius) * airKilopascals / BoilingPoint.KilopascalsPerAtmosphere;
    }

    /// <summary>Whether the table reaches this temperature.</summary>
    public static bool IsWithinPublishedRange(double celsius) => celsius >= Celsius[0] && celsius <= Celsius[^1];

    private static double Beyond(int end, double celsius) =>
        Volumes[end] * CarbonDioxideInWater.MolesPerLitreAtmosphere(celsius)
        / CarbonDioxideInWater.MolesPerLitreAtmosphere(Celsius[end]);
}
