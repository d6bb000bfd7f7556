using Gylebook.Science.Quantities;

namespace Gylebook.Science.Liquids;

/// <summary>What a hydrometer would have read at the temperature it is marked for.</summary>
/// <remarks>
/// <para>SG(Tc) = R · ρw(Tc)/ρw(T) / [1 + γ(T − Tc)]</para>
/// <para>Symbols: R reading; T temperature of the sample, Tc the one marked on the instrument, °C; ρw density of
/// water; γ cubic expansion of the glass, 25e-6 per kelvin for soda-lime glass (from memory).</para>
/// <para>Source: Archimedes' principle; <see cref="WaterDensity"/> for ρw. Without the bracket it is the published
/// correction table for a 15 °C instrument at reading 1.000 (hobby literature).</para>
/// <para>Valid for: samples up to 40 °C. Let a hotter one cool, covered: it scalds, and glass may crack.</para>
/// <para>Accuracy: wort swells more than water, so the correction is too small by about a fifth at 10 °P and a third
/// at 20 °P (<c>torun-sucrose</c>, 15 to 20 °C): at most 0.0005 of gravity for each 5 K.</para>
/// <para>Notes: that published table prints the corrections below 15 °C without their minus sign.</para>
/// </remarks>
public static class Hydrometer
{
    /// <summary>Cubic expansion of soda-lime glass, 1/K.</summary>
    public const double GlassExpansionPerKelvin = 25e-6;

    /// <summary>Above this temperature of the sample, °C, the correction is not to be trusted: cool the sample.</summary>
    public const double HottestAdvisedSampleCelsius = 40;

    /// <summary>The reading corrected for water and for glass, temperatures in °C.</summary>
    public static double Corrected(double reading, double sampleCelsius, double markedCelsius) =>
        CorrectedForWaterOnly(reading, sampleCelsius, markedCelsius)
        / (1 + (GlassExpansionPerKelvin * (sampleCelsius - markedCelsius)));

    /// <summary>The reading corrected as if the glass did not swell, temperatures in °C: what older tables print.</summary>
    public static double CorrectedForWaterOnly(double reading, double sampleCelsius, double markedCelsius) =>
        reading * WaterDensity.KilogramsPerLitreAt(markedCelsius) / WaterDensity.KilogramsPerLitreAt(sampleCelsius);

    /// <summary>Whether the sample is cool enough for the correction to be believed.</summary>
    public static bool IsCoolEnough(double sampleCelsius) => sampleCelsius is >= 0 and <= HottestAdvisedSampleCelsius;

    /// <summary>Whether the sample is cool enough for the correction to be believed.</summary>
    public static bool IsCoolEnough(Temperature sample) => IsCoolEnough(sample.Celsius);

    /// <summary>The reading corrected for water and for glass.</summary>
    public static SpecificGravity Corrected(SpecificGravity reading, Temperature sample, Temperature marked) =>
        SpecificGravity.FromRatio(Corrected(reading.Ratio, sample.Celsius, marked.Celsius));

    /// <summary>The reading corrected as if the glass did not swell.</summary>
    public static SpecificGravity CorrectedForWaterOnly(
        SpecificGravity reading, Temperature sample, Temperature marked) =>
        SpecificGravity.FromRatio(CorrectedForWaterOnly(reading.Ratio, sample.Celsius, marked.Celsius));
}
