namespace Gylebook.Science.Boiling;

/// <summary>Air pressure against height, and the temperature at which water boils there.</summary>
/// <remarks>
/// <para>Symbols: h height above sea level (m); p = 101.325·(1 − 2.25577·10⁻⁵·h)^5.25588 (kPa); t boiling point (°C),
/// log10 p(mmHg) = 8.07131 − 1730.63/(233.426 + t).</para>
/// <para>Source: ISO 2533 standard atmosphere (ICAO); Antoine equation of water, constants as tabulated for
/// 1 to 100 °C.</para>
/// <para>Valid for: up to 11 000 m (the standard's lowest layer); 1 to 100 °C.</para>
/// <para>Accuracy: 0.1 °C against steam tables. Weather moves the pressure by ±3 %, which is ±1 °C.</para>
/// <para>Notes: wort of 12 °P boils about 0.2 °C hotter than water; not counted.</para>
/// </remarks>
public static class BoilingPoint
{
    /// <summary>Kilopascals in one standard atmosphere.</summary>
    public const double KilopascalsPerAtmosphere = 101.325;

    private const double KilopascalsPerMillimetreOfMercury = KilopascalsPerAtmosphere / 760;

    /// <summary>Air pressure at a height, kPa.</summary>
    public static double PressureKilopascals(double altitudeMetres)
    {
        Argument.MustBeWithin(altitudeMetres, -1000, 11000);
        return KilopascalsPerAtmosphere * Math.Pow(1 - (2.25577e-5 * altitudeMetres), 5.25588);
    }

    /// <summary>Temperature at which water boils under that pressure, °C.</summary>
    public static double CelsiusUnder(double kilopascals)
    {
        Argument.MustBePositive(kilopascals);
        return (1730.63 / (8.07131 - Math.Log10(kilopascals / KilopascalsPerMillimetreOfMercury))) - 233.426;
    }

    /// <summary>Temperature at which water boils at that height, °C.</summary>
    public static double CelsiusAt(double altitudeMetres) => CelsiusUnder(PressureKilopascals(altitudeMetres));

    /// <summary>Pressure of water vapour over water, kPa.</summary>
    public static double VapourKilopascals(double celsius)
    {
        Argument.MustBeWithin(celsius, -20, 200);
        return KilopascalsPerMillimetreOfMercury * Math.Pow(10, 8.07131 - (1730.63 / (233.426 + celsius)));
    }
}
