namespace Gylebook.Science.Boiling;

/// <summary>How fast hot wort cools, left alone or with cold water going round.</summary>
/// <remarks>
/// <para>Symbols: t minutes; alone T = 319.55 + (T0 − 319.55)·e^(−b·t) (K), b = 0.0002925·A/V + 0.00538 per minute with
/// A = √(surface·opening) in cm² and V litres; with a chiller T = Tc + (T0 − Tc)·e^(−k·t), Newton's law.</para>
/// <para>Source: a fit to measured kettles, hobby literature (left alone); Newton's law of cooling (chiller).</para>
/// <para>Valid for: kettles of about 20 L, from the boil down to 60 °C. Below that the fit ends too high, at 46 °C.</para>
/// <para>Accuracy: none stated; one experimenter. A chiller's k is one's own to measure.</para>
/// <para>Notes: the printed start, 53.70 + 319.55 K, is 100.1 °C. A cooler start follows the same curve later on.</para>
/// </remarks>
public static class WortCooling
{
    /// <summary>Where the fit for wort left alone ends, °C.</summary>
    public const double AloneEndsAtCelsius = 319.55 - 273.15;

    /// <summary>Rate of cooling left alone, per minute.</summary>
    /// <param name="surfaceSquareCentimetres">Surface of the wort, cm².</param>
    /// <param name="openingSquareCentimetres">Opening to the air, cm².</param>
    /// <param name="litres">Wort, L.</param>
    public static double AlonePerMinute(double surfaceSquareCentimetres, double openingSquareCentimetres, double litres)
    {
        Argument.MustNotBeNegative(surfaceSquareCentimetres);
        Argument.MustNotBeNegative(openingSquareCentimetres);
        Argument.MustBePositive(litres);
        return (0.0002925 * Math.Sqrt(surfaceSquareCentimetres * openingSquareCentimetres) / litres) + 0.00538;
    }

    /// <summary>Temperature left alone, °C.</summary>
    public static double AloneCelsius(double startCelsius, double perMinute, double minutes) =>
        TowardsCelsius(startCelsius, AloneEndsAtCelsius, perMinute, minutes);

    /// <summary>Temperature with a coolant, °C.</summary>
    public static double TowardsCelsius(double startCelsius, double coolantCelsius, double perMinute, double minutes)
    {
        Argument.MustBeWithin(startCelsius, -20, 200);
        Argument.MustBeWithin(coolantCelsius, -20, 200);
        Argument.MustNotBeNegative(perMinute);
        Argument.MustNotBeNegative(minutes);
        return coolantCelsius + ((startCelsius - coolantCelsius) * Math.Exp(-perMinute * minutes));
    }
}
