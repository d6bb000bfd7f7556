using Gylebook.Science.Numerics;
using Gylebook.Science.Numerics.Distributions;

namespace Gylebook.Science.Senses;

/// <summary>How often people answer right when two beers differ by so many standard deviations of what they sense.</summary>
/// <remarks>
/// <para>Triangle p = 2∫₀^∞ [Φ(−x√3 + d√(2/3)) + Φ(−x√3 − d√(2/3))]·φ(x) dx; duo-trio p = 1 − Φ(d/√2) − Φ(d/√6) + 2Φ(d/√2)·Φ(d/√6); paired p = Φ(d/√2);
/// three alternatives p = ∫ φ(x − d)·Φ(x)² dx.</para>
/// <para>Symbols: d the difference, d′; Φ, φ the standard normal distribution and its density.</para>
/// <para>Source: <c>bi-ennis-1999</c>; the background of <c>christensen-2020</c> was read.</para>
/// <para>Valid for: senses whose noise is normal and the same for both beers. d of about 1 is just felt by half of those asked which is stronger.</para>
/// <para>Accuracy: 1e-8, by the rule of parabolas.</para>
/// <para>Notes: the same difference is found far more often when people know what to look for: at d = 1 a paired comparison needs 26 tasters where a triangle needs
/// 215.</para>
/// </remarks>
public static class Thurstone
{
    /// <summary>The largest difference that is looked for: everybody answers right.</summary>
    public const double Largest = 20;

    private const double Reach = 9;
    private const int Pieces = 900;

    /// <summary>Chance of a right answer.</summary>
    /// <param name="test">How it is asked.</param>
    /// <param name="difference">d′, from 0 to <see cref="Largest"/>.</param>
    public static double Right(TasteTest test, double difference)
    {
        double d = Argument.MustBeWithin(difference, 0, Largest);
        double two = StandardNormal.ShareBelow(d / Math.Sqrt(2)), six = StandardNormal.ShareBelow(d / Math.Sqrt(6));
        return test switch
        {
            TasteTest.Triangle => Integral(0, Reach, x => 2 * Density(x) * OddOne(x * Math.Sqrt(3), d * Math.Sqrt(2.0 / 3))),
            TasteTest.DuoTrio => 1 - two - six + (2 * two * six),
            TasteTest.Paired or TasteTest.PairedEitherWay => two,
            TasteTest.ThreeAlternatives => Integral(d - Reach, d + Reach, x => Density(x - d) * StandardNormal.ShareBelow(x) * StandardNormal.ShareBelow(x)),
            _ => throw new ArgumentOutOfRangeException(nameof(test), test, "test must be one of the named tests."),
        };
    }

    /// <summary>The difference at which people answer right that often; 0 where guessing is no worse, <see cref="Largest"/> where nobody errs.</summary>
    /// <param name="test">How it is asked.</param>
    /// <param name="right">Share of right answers, 0 to 1.</param>
    public static double Difference(TasteTest test, double right)
    {
        Argument.MustBeWithin(right, 0, 1);
        return right <= TasteTests.Chance(test) ? 0
            : right >= Right(test, Largest) ? Largest
            : new Bracket(0, Largest).Halved(difference => right - Right(test, difference), close: 1e-10).Middle;
    }

    private static double OddOne(double x, double d) => StandardNormal.ShareBelow(d - x) + StandardNormal.ShareBelow(-x - d);

    private static double Density(double x) => Math.Exp(-x * x / 2) / Math.Sqrt(2 * Math.PI);

    private static double Integral(double from, double to, Func<double, double> curve)
    {
        double step = (to - from) / Pieces, sum = curve(from) + curve(to);
        for (int i = 1; i < Pieces; i++)
        {
            sum += (i % 2 == 0 ? 2 : 4) * curve(from + (i * step));
        }

        return sum * step / 3;
    }
}
