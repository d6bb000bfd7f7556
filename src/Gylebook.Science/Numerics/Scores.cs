using Gylebook.Science.Numerics.Distributions;

namespace Gylebook.Science.Numerics;

/// <summary>How well a forecast of a number did, once the number is known: less is better, in the number's own unit.</summary>
/// <remarks>
/// <para>Source: continuous ranked probability score and interval score, Gneiting and Raftery, JASA 102:359 (2007); fair form for few draws,
/// Ferro, QJRMS 140:1917 (2014); from memory.</para>
/// </remarks>
public static class Scores
{
    private const double Missed = 2 / (2 * Quantiles.Tail);

    /// <summary>Ranked probability score of a normal forecast: σ [z (2Φ(z) − 1) + 2φ(z) − 1/√π].</summary>
    public static double OfNormal(double mean, double deviation, double truth)
    {
        double z = (truth - mean) / deviation, density = Math.Exp(-z * z / 2) / Math.Sqrt(2 * Math.PI);
        return deviation * ((z * ((2 * StandardNormal.ShareBelow(z)) - 1)) + (2 * density) - (1 / Math.Sqrt(Math.PI)));
    }

    /// <summary>The same of draws: mean distance to the truth, less half of their mean distance from each other.</summary>
    /// <param name="draws">Draws; those that are no number are passed over.</param>
    /// <param name="truth">What it was.</param>
    /// <param name="isFair">Whether a draw is counted as no pair of its own.</param>
    public static double OfDraws(ReadOnlySpan<double> draws, double truth, bool isFair = false)
    {
        double[] sorted = [.. draws.ToArray().Where(double.IsFinite).Order()];
        double off = 0, apart = 0;
        for (int i = 0; i < sorted.Length; i++)
        {
            off += Math.Abs(sorted[i] - truth);

            // In order, each is counted as often as others lie below it, less as often as above: the sum over all pairs.
            apart += sorted[i] * ((2 * i) - sorted.Length + 1);
        }

        double count = sorted.Length;
        return (off / count) - (apart / (count * (isFair ? count - 1 : count)));
    }

    /// <summary>Of a 90 % band: its width, and twenty times what the truth lies outside.</summary>
    public static double OfBand(double low, double high, double truth) =>
        high - low + (Missed * (Math.Max(0, low - truth) + Math.Max(0, truth - high)));
}
