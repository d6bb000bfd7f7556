using Gylebook.Science.Data;
using Gylebook.Science.Numerics;
using Gylebook.Science.Quantities;

namespace Gylebook.Science.Mashing;

/// <summary>How far any yeast could ferment an all-malt wort, by the temperature it was mashed at.</summary>
/// <remarks>
/// <para>Symbols: apparent limit of attenuation (%) against the temperature of the rest (°C), straight lines between
/// 62 °C 85, 65 °C 82, 70 °C 70, 75 °C 50, 80 °C 30.</para>
/// <para>Source: <c>data/mashing/limit-of-attenuation.csv</c>: one study for 65 to 80 °C; 62 °C from memory.</para>
/// <para>Valid for: 65 to 80 °C, one rest of an hour, modern lager malt, 3 L/kg.</para>
/// <para>Accuracy: one study, no spread given; kinetic models are good to about ±10 %.</para>
/// <para>Notes: below 62 °C it stays at 85; above 80 °C the last line goes on down to 0. Both are flagged by
/// <see cref="IsWithinPublishedRange"/>.</para>
/// </remarks>
public static class AttenuationLimit
{
    private static readonly double[] Celsius = CsvTable.Published("limit-of-attenuation.csv").Numbers("celsius");
    private static readonly double[] Percent = CsvTable.Published("limit-of-attenuation.csv").Numbers("apparentPercent");

    /// <summary>Apparent limit of attenuation, %.</summary>
    public static double ApparentPercentAt(double celsius)
    {
        Argument.MustBeWithin(celsius, -20, 200);
        return celsius <= Celsius[0] ? Percent[0] : Math.Max(0, LinearInterpolation.At(celsius, Celsius, Percent));
    }

    /// <summary>Apparent limit of attenuation.</summary>
    public static Fraction At(Temperature rest) => Fraction.FromPercent(ApparentPercentAt(rest.Celsius));

    /// <summary>Whether the study reaches this temperature.</summary>
    public static bool IsWithinPublishedRange(double celsius) => celsius is >= 65 and <= 80;
}
