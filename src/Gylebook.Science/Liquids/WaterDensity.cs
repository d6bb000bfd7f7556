namespace Gylebook.Science.Liquids;

/// <summary>How heavy a litre of water is, from ice to steam.</summary>
/// <remarks>
/// <para>ρ(t) = (a₀ + a₁t + a₂t² + a₃t³ + a₄t⁴ + a₅t⁵) / (1 + b·t)</para>
/// <para>Symbols: ρ density in a vacuum, kg/m³; t temperature on ITS-90, °C.</para>
/// <para>Source: <c>bettin-spieweck-1990</c>, the equation of <c>kell-1975</c> recast to ITS-90, as printed in
/// <c>ip-standard-methods-1998</c>, Appendix G.</para>
/// <para>Valid for: air-free water at 101.325 kPa, 0 to 100 °C.</para>
/// <para>Accuracy: 0.006 kg/m³ as quoted there. It lies 0.0035 kg/m³ under the metrologists' formula at 20 °C.</para>
/// <para>Notes: one formula from the mash liquor to the boil; nothing is checked.</para>
/// </remarks>
public static class WaterDensity
{
    /// <summary>This formula at 20 °C, in kg/L, for loops that need no other temperature.</summary>
    public const double KilogramsPerLitreAt20C = 0.9982031227373546;

    /// <summary>Density in kg/L at a temperature in °C.</summary>
    public static double KilogramsPerLitreAt(double celsius)
    {
        double t = celsius;
        double numerator = 999.83952
            + (t * (16.952577 + (t * (-7.9905127e-3 + (t * (-46.241757e-6 + (t * (105.84601e-9 - (t * 281.03006e-12)))))))));
        return numerator / (1000 * (1 + (16.887236e-3 * t)));
    }
}
