using Gylebook.Engine.Readouts;
using Gylebook.Forecast.LayingOut;
using Gylebook.Science.Boiling;
using Gylebook.Science.Conditioning;

namespace Gylebook.Forecast.Telling;

/// <summary>What the regulator of a keg reads, under the air of the kit's height, to keep the beer's carbonation.</summary>
/// <param name="Celsius">Temperature of the beer it is for.</param>
/// <param name="GaugeBar">Bar above the air there.</param>
public sealed record KegGauge(double Celsius, double GaugeBar)
{
    /// <summary>A cold keg, where the recipe ends warmer than the chart. Common practice, no source.</summary>
    private const double ColdCelsius = 4;

    /// <summary>For the last temperature of the recipe where the chart has it, else for a cold keg; null unless gas comes from a cylinder.</summary>
    internal static KegGauge? Of(LaidOut laidOut, RunOutcome figures)
    {
        if (!LayOut.IsGassed(laidOut.Recipe, laidOut.Kit))
        {
            return null;
        }

        double last = laidOut.Recipe.Ferment.Count > 0 ? laidOut.Recipe.Ferment[^1].Temperature.Value.Celsius : ColdCelsius;
        double celsius = KegPressure.IsWithinPublishedRange(last) ? last : ColdCelsius;
        double air = BoilingPoint.PressureKilopascals(laidOut.Kit.MetresAboveSea) / 100;
        return new KegGauge(celsius, KegPressure.GaugeBar(figures[BeerReadouts.CarbonationVolumes], celsius, air));
    }
}
