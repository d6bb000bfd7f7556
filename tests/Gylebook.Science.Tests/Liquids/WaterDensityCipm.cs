namespace Gylebook.Science.Liquids;

/// <summary>The density of water that metrology agrees on today; kept beside <see cref="WaterDensity"/> to compare.</summary>
/// <remarks>
/// <para>ρ(t) = a₅·[1 − (t + a₁)²(t + a₂) / (a₃(t + a₄))]</para>
/// <para>Symbols: ρ density in a vacuum, kg/m³; t temperature on ITS-90, °C.</para>
/// <para>Source: <c>tanaka-2001</c>, Metrologia 38, 301–309, the formula recommended by the CIPM. The constants are
/// from memory and agree with a measured value at 16 °C to 0.001 kg/m³.</para>
/// <para>Valid for: air-free standard ocean water at 101.325 kPa, 0 to 40 °C.</para>
/// <para>Accuracy: about 0.001 kg/m³.</para>
/// <para>Notes: it ends at 40 °C, so the kettle cannot use it.</para>
/// </remarks>
public static class WaterDensityCipm
{
    /// <summary>Density in kg/L at a temperature in °C.</summary>
    public static double KilogramsPerLitreAt(double celsius)
    {
        double t = celsius;
        double fromDensest = t - 3.983035;
        return 0.999974950 * (1 - (fromDensest * fromDensest * (t + 301.797) / (522528.9 * (t + 69.34881))));
    }
}
