using Gylebook.Science.Numerics;

namespace Gylebook.Science.Fermenting.Kinetics;

/// <summary>A level that is known beforehand to so much.</summary>
/// <param name="Middle">Where it is likely.</param>
/// <param name="Deviation">Standard deviation; above 0.</param>
public readonly record struct KnownLevel(double Middle, double Deviation);

/// <summary>An S-shaped curve laid through readings.</summary>
/// <remarks>
/// <para>Least squares of (P(t) − read)/deviation, and of both levels against what was known of them. A reading that lies off by z deviations is taken with
/// the weight 5/(4 + z²), Student's t with four degrees of freedom, over and over until the weights stay.</para>
/// <para>Symbols: <see cref="LogisticAttenuation"/>; B and M are sought as logarithms.</para>
/// <para>Source: <c>asbc-yeast-14</c> for the curve; the weights from memory, as <c>docs/science/uncertainty.md</c> has them.</para>
/// <para>Valid for: readings that reach past the steepest fall; before it they do not tell slope from end, and what is known of the end decides.</para>
/// </remarks>
/// <param name="Curve">The curve.</param>
/// <param name="Root">Lower root of the covariance of Pᵢ, Pₑ, ln(−B), ln M.</param>
/// <param name="ReducedSquares">Weighted squares left, over the number of readings: about 1 where the curve suits them.</param>
/// <param name="IsSettled">Whether the search settled.</param>
public sealed record LogisticFit(LogisticAttenuation Curve, double[,] Root, double ReducedSquares, bool IsSettled)
{
    private const double Freedom = 4, Settled = 1e-6;
    private const int MostRounds = 30;

    private static readonly double[] Least = [0.9, 0.9, Math.Log(0.002), Math.Log(1)];
    private static readonly double[] Most = [1.3, 1.3, Math.Log(2), Math.Log(1000)];

    /// <summary>Fits gravities.</summary>
    /// <param name="hours">When they were read, since pitching.</param>
    /// <param name="gravities">What was read, SG.</param>
    /// <param name="deviations">Standard deviation of each, SG; above 0.</param>
    /// <param name="start">What is known of the gravity at pitching, SG.</param>
    /// <param name="end">What is known of the gravity at the end, SG.</param>
    public static LogisticFit Of(
        IReadOnlyList<double> hours, IReadOnlyList<double> gravities, IReadOnlyList<double> deviations, KnownLevel start, KnownLevel end)
    {
        double[] weights = [.. hours.Select(_ => 1.0)];
        double[] figures = [start.Middle, end.Middle, Math.Log(0.08), Math.Log(MiddleGuess(hours, gravities, start, end))];
        LeastSquaresFit fit = null!;
        for (int round = 0; round < MostRounds; round++)
        {
            Misfit misfit = new(hours, gravities, deviations, weights, start, end);
            fit = LeastSquares.Fit(misfit, figures, Least, Most);
            double moved = 0;
            for (int i = 0; i < weights.Length; i++)
            {
                double z = (CurveOf(fit.Figures).At(hours[i]) - gravities[i]) / deviations[i];
                double weight = (Freedom + 1) / (Freedom + (z * z));
                moved = Math.Max(moved, Math.Abs(weight - weights[i]));
                weights[i] = weight;
            }

            figures = fit.Figures;
            if (moved < Settled)
            {
                break;
            }
        }

        return new(CurveOf(fit.Figures), fit.Root, fit.Squares / Math.Max(1, hours.Count), fit.IsSettled);
    }

    /// <summary>The curve that lies so many standard deviations along each way of the covariance.</summary>
    /// <param name="z">Four standard normal numbers.</param>
    public LogisticAttenuation Drawn(ReadOnlySpan<double> z)
    {
        double[] figures = [Curve.Start, Curve.End, Math.Log(-Curve.Slope), Math.Log(Curve.MiddleHours)];
        for (int i = 0; i < figures.Length; i++)
        {
            for (int k = 0; k <= i; k++)
            {
                figures[i] += double.IsFinite(Root[i, k]) ? Root[i, k] * z[k] : 0;
            }

            figures[i] = Math.Clamp(figures[i], Least[i], Most[i]);
        }

        return CurveOf(figures);
    }

    private static LogisticAttenuation CurveOf(ReadOnlySpan<double> figures) =>
        new(figures[0], figures[1], -Math.Exp(figures[2]), Math.Exp(figures[3]));

    /// <summary>The first hour at which half of the fall is behind it; a little after the last reading where none is so low.</summary>
    private static double MiddleGuess(IReadOnlyList<double> hours, IReadOnlyList<double> gravities, KnownLevel start, KnownLevel end)
    {
        double half = (start.Middle + end.Middle) / 2, last = 0;
        for (int i = 0; i < hours.Count; i++)
        {
            last = Math.Max(last, hours[i]);
            if (gravities[i] <= half)
            {
                return Math.Max(6, hours[i]);
            }
        }

        return Math.Max(24, 1.2 * last);
    }

    private readonly struct Misfit(
        IReadOnlyList<double> hours, IReadOnlyList<double> gravities, IReadOnlyList<double> deviations, double[] weights, KnownLevel start, KnownLevel end)
        : IMisfit
    {
        public int Count => hours.Count + 2;

        public void Off(ReadOnlySpan<double> figures, Span<double> off)
        {
            LogisticAttenuation curve = CurveOf(figures);
            for (int i = 0; i < hours.Count; i++)
            {
                off[i] = Math.Sqrt(weights[i]) * (curve.At(hours[i]) - gravities[i]) / deviations[i];
            }

            off[^2] = (curve.Start - start.Middle) / start.Deviation;
            off[^1] = (curve.End - end.Middle) / end.Deviation;
        }
    }
}
