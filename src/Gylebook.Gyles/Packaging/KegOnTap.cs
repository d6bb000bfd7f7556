using Gylebook.Science.Conditioning;
using Gylebook.Science.Numerics.Distributions;

namespace Gylebook.Gyles.Packaging;

/// <summary>A keg from the cylinder to the tap: what the regulator reads, a burst for those in haste, air driven out before, tube behind.</summary>
/// <remarks>
/// <para>Source: <see cref="KegPressure"/> (published chart), <see cref="BurstCarbonation"/> (bounded model), <see cref="Purging"/>, <see cref="BeerLine"/>. The
/// burst's pressure, 2 bar, is common practice, no source.</para>
/// </remarks>
/// <param name="Celsius">How cold it is kept, °C.</param>
/// <param name="GaugeBar">What the regulator reads to keep it, bar above the air.</param>
/// <param name="PurgeCycles">Fillings with gas and lettings out that leave less than 100 ppm of oxygen in an empty keg, at <paramref name="PurgeBar"/>.</param>
/// <param name="PurgeBar">Pressure of each, bar above the air.</param>
/// <param name="LineMetres">Vinyl tube of 3/16 inch that takes the pressure away at a trade's pour, without lift; above 0.</param>
public sealed record KegOnTap(double Celsius, double GaugeBar, int PurgeCycles, double PurgeBar, double LineMetres)
{
    private const double UsualBurst = 2, LeastOxygen = 1e-4;

    /// <summary>Pressure of a burst, bar above the air; null where the weakest part allows none that would hasten anything.</summary>
    public double? BurstBar { get; init; }

    /// <summary>Hours of that burst until the beer has its gas: the soonest of nineteen kegs in twenty, the likely, the latest.</summary>
    public Quantiles? BurstHours { get; init; }

    /// <summary>When to stop and taste: the soonest keg would be six tenths there.</summary>
    public double? TasteAfterHours => BurstHours is { } hours ? BurstCarbonation.TasteAfter * hours.Low : null;

    /// <summary>The service of a keg.</summary>
    /// <param name="asked">What is packaged.</param>
    /// <param name="litres">Beer in one keg, L.</param>
    /// <param name="residual">Gas in it, volumes.</param>
    /// <param name="weakest">Rating of its weakest part, bar; null where nobody says.</param>
    public static KegOnTap Of(PackageQuestion asked, double litres, double residual, double? weakest)
    {
        ArgumentNullException.ThrowIfNull(asked);
        double gauge = Math.Max(0, KegPressure.GaugeBar(asked.Volumes, asked.KegCelsius, asked.AirBar)), burst = asked.BurstBar ?? Math.Min(UsualBurst, weakest ?? UsualBurst);
        double end = KegPressure.VolumesAt(burst, asked.KegCelsius, asked.AirBar);
        Quantiles days = BurstCarbonation.TimeDaysOf(litres);
        KegOnTap keg = new(asked.KegCelsius, gauge, (int)Math.Ceiling(Purging.Cycles(Purging.OxygenInAir, LeastOxygen, burst, asked.AirBar)), burst, BeerLine.Metres(gauge, 0, 0, BeerLine.Tubes[0].BarPerMetre));
        return burst <= gauge || end <= asked.Volumes || asked.Volumes <= residual ? keg
            : keg with { BurstBar = burst, BurstHours = new(Hours(days.Low), Hours(days.Middle), Hours(days.High)) };

        double Hours(double timeDays) => 24 * BurstCarbonation.DaysUntil(residual, end, asked.Volumes, timeDays);
    }
}
