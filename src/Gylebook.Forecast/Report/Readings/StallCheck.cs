using Gylebook.Engine.Readings;
using Gylebook.Engine.State;
using Gylebook.Recipes;
using Gylebook.Science.Numerics.Distributions;

namespace Gylebook.Forecast.Report.Readings;

/// <summary>How likely it is that a fermentation stopped early, by the gravity that was read after it.</summary>
/// <remarks>
/// <para>p = p₀L₁/(p₀L₁ + (1 − p₀)L₀), L₀ = φ(z), L₁ = ∫ φ(z − d·A/s) dF(d).</para>
/// <para>Symbols: z how many standard deviations s the reading lies above its forecast; A original gravity less one; d by how much of it the apparent
/// attenuation is lower; F log-normal, 3 to 20 % in nine of ten; p₀ one brew in 25.</para>
/// <para>Source: Bayes' theorem. p₀: two of 44 brews of one series, hobby literature. Depth: judged, no source.</para>
/// <para>Accuracy: the integral by the middles of 200 strata.</para>
/// <para>Notes: draws hold no stalls, so this stands beside them. With a yeast and instruments nobody has checked, a stall of 8 % lies little more than one
/// standard deviation off: docs/science/uncertainty.md says how many are named.</para>
/// </remarks>
public static class StallCheck
{
    /// <summary>Chance of a stall before anything is read.</summary>
    public const double Usual = 0.04;

    /// <summary>It is said from this chance on, more than twice the usual one; our choice.</summary>
    public const double WorthSaying = 0.1;

    /// <summary>The middle depth, and the standard deviation of its logarithm.</summary>
    private const double Depth = 0.08, DepthSpread = 0.577;

    private const int Strata = 200;

    /// <summary>The chance after a reading.</summary>
    /// <param name="gate">The reading held against its forecast.</param>
    /// <param name="originalGravity">Original gravity, SG.</param>
    public static double ChanceOf(GatedReading gate, double originalGravity)
    {
        double without = Density(gate.Off), with = 0;
        for (int i = 0; i < Strata; i++)
        {
            double depth = Depth * Math.Exp(DepthSpread * StandardNormal.Quantile((i + 0.5) / Strata));
            with += Density(gate.Off - (depth * (originalGravity - 1) / gate.Deviation)) / Strata;
        }

        double stalled = Usual * with, sound = (1 - Usual) * without;
        return stalled + sound > 0 ? stalled / (stalled + sound) : gate.Off > 0 ? 1 : 0;
    }

    /// <summary>What is said of a gravity read after fermentation; null when a stall is not likely enough.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="gate">The same held against what was known before any gravity after fermentation.</param>
    /// <param name="originalGravity">Original gravity, SG.</param>
    internal static Finding? Of(MeantReading reading, GatedReading gate, double originalGravity)
    {
        double chance = ChanceOf(gate, originalGravity);
        if (chance < WorthSaying)
        {
            return null;
        }

        string read = reading.Meant.Readout.Told(reading.Meant.Value), forecast = reading.Meant.Readout.Told(gate.Forecast);
        return new(
            "reading.stall", Severity.Warning, reading.Path,
            Invariant($"{read}; {forecast} was forecast: the fermentation may have stopped early, {100 * chance:0} in a hundred (of all brews {100 * Usual:0} do). Do not package it yet: what is left may ferment in the bottle and burst it. Warm it and rouse the yeast, and read it again after two or three days"),
            read, forecast);
    }

    /// <summary>Whether a reading can tell of one.</summary>
    internal static bool IsAfterFermentation(MeantReading reading) => reading.Taken.Gravity is not null && reading.Meant.Readout.Place.Stage >= Stage.Ferment;

    private static double Density(double z) => Math.Exp(-z * z / 2);
}
