namespace Gylebook.Science.Conditioning;

/// <summary>Regulator pressure that keeps a beer at its carbonation.</summary>
/// <remarks>
/// <para>Symbols: V volumes, p absolute pressure (psi), T temperature (K); V = k·p,
/// k = e^(−2.360296 + 2727.422·(1/T − 1/277.15)).</para>
/// <para>Source: our least squares on the 292 points of the carbonation chart in BrewingTechniques 2(1), Table I, which
/// is the ASBC chart.</para>
/// <para>Valid for: −1 to 8 °C (30 to 46 °F), the rows of the chart we hold. It is of a mean beer: 4.22 % alcohol by mass,
/// 5.78 % real extract (Speers and MacIntosh 2013).</para>
/// <para>Accuracy: root mean square 0.016 volumes, worst 0.052 on the chart. One lager measured at 6 °C held 5 % less.
/// Strong or sweet beer is 2 to 5 % off.</para>
/// <para>Notes: absolute pressure, so the air pressure of the place goes in. Stay below what the weakest part of keg,
/// lines and regulator is rated for. In warm beer the charts part: see <c>docs/science/carbonation.md</c>; for a warm
/// closed package <see cref="BottlePressure"/> is the better ground.</para>
/// </remarks>
public static class KegPressure
{
    /// <summary>Bar in one pound per square inch.</summary>
    public const double BarPerPsi = 0.0689475729;

    /// <summary>Volumes that one bar of gas, absolute, keeps in the beer.</summary>
    public static double VolumesPerBar(double celsius)
    {
        Argument.MustBeWithin(celsius, -20, 120);
        return Math.Exp(-2.360296 + (2727.422 * ((1 / (celsius + 273.15)) - (1 / 277.15)))) / BarPerPsi;
    }

    /// <summary>Regulator pressure, bar above the air. Below nought where less than an atmosphere is needed.</summary>
    /// <param name="volumes">Volumes wanted.</param>
    /// <param name="celsius">Temperature of the beer, °C.</param>
    /// <param name="airBar">Air pressure of the place, bar.</param>
    public static double GaugeBar(double volumes, double celsius, double airBar)
    {
        Argument.MustNotBeNegative(volumes);
        Argument.MustNotBeNegative(airBar);
        return (volumes / VolumesPerBar(celsius)) - airBar;
    }

    /// <summary>Volumes the beer comes to under that pressure.</summary>
    /// <param name="gaugeBar">Regulator pressure, bar above the air.</param>
    /// <param name="celsius">Temperature of the beer, °C.</param>
    /// <param name="airBar">Air pressure of the place, bar.</param>
    public static double VolumesAt(double gaugeBar, double celsius, double airBar)
    {
        double absoluteBar = gaugeBar + airBar;
        Argument.MustNotBeNegative(absoluteBar, nameof(gaugeBar));
        return absoluteBar * VolumesPerBar(celsius);
    }

    /// <summary>Whether the chart reaches this temperature: 30 to 46 °F.</summary>
    public static bool IsWithinPublishedRange(double celsius) => celsius is >= -10.0 / 9 and <= 70.0 / 9;
}
