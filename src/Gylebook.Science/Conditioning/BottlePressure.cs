using Gylebook.Science.Boiling;

namespace Gylebook.Science.Conditioning;

/// <summary>Pressure inside a closed bottle.</summary>
/// <remarks>
/// <para>Symbols: n gas in a litre of beer (mol/L) = V/22.2605; k = 0.9359·K0, K0 of <see cref="CarbonDioxideInWater"/>
/// (mol/L/atm); h headspace as a share of the beer; R = 0.082057 L·atm/mol/K; P = n/(k + h/(R·T)) (atm), to which the
/// pressure of water vapour is added; gauge is that less the air outside.</para>
/// <para>Source: our least squares of "beer holds 0.9359 of what water does" on the same chart as
/// <see cref="KegPressure"/>; Weiss 1974; ideal gas in the headspace.</para>
/// <para>Valid for: 0 to 40 °C.</para>
/// <para>Accuracy: root mean square 0.022 volumes, worst 0.057 on the chart, which ends at 8 °C; beyond that it leans
/// on the course of water.</para>
/// <para>Notes: without headspace it is the careful figure. Ratings of glass are for new bottles: stay at a third of
/// them, keep bottles cool, wear eye protection.</para>
/// </remarks>
public static class BottlePressure
{
    private const double BeerOverWater = 0.9359;
    private const double GasConstant = 0.082057;
    private const double BarPerAtmosphere = 1.01325;

    /// <summary>Pressure above the air outside, bar.</summary>
    /// <param name="volumes">Volumes in the bottle, headspace included, per litre of beer.</param>
    /// <param name="celsius">Temperature of the bottle, °C.</param>
    /// <param name="headspaceShare">Headspace as a share of the beer; 0 is the careful figure.</param>
    /// <param name="airBar">Air pressure outside, bar.</param>
    public static double GaugeBar(
        double volumes, double celsius, double headspaceShare = 0, double airBar = BarPerAtmosphere)
    {
        Argument.MustNotBeNegative(volumes);
        Argument.MustNotBeNegative(headspaceShare);
        Argument.MustNotBeNegative(airBar);
        double moles = volumes / CarbonDioxideInWater.LitresPerMole;
        double held = BeerOverWater * CarbonDioxideInWater.MolesPerLitreAtmosphere(celsius);
        double inHeadspace = headspaceShare / (GasConstant * (celsius + 273.15));
        double gasBar = moles / (held + inHeadspace) * BarPerAtmosphere;
        return gasBar + (BoilingPoint.VapourKilopascals(celsius) / 100) - airBar;
    }
}
