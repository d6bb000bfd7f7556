using CsCheck;
using Gylebook.Science.Numerics.Distributions;

namespace Gylebook.Science.Tests.Numerics;

public sealed class QuantilesTests
{
    // The definition, by sorting.
    private static double BySorting(IEnumerable<double> numbers, double share)
    {
        double[] sorted = [.. numbers.Where(double.IsFinite).Order()];
        double place = Math.Clamp((share * sorted.Length) - 0.5, 0, sorted.Length - 1);
        int whole = (int)place;
        return whole == place ? sorted[whole] : sorted[whole] + ((place - whole) * (sorted[whole + 1] - sorted[whole]));
    }

    [Fact]
    public void They_are_what_sorting_gives_with_ties_and_without() => Gen.Select(Gen.Double[-5, 5].Array[1, 300], Gen.Bool)
        .Sample(
            (numbers, tied) =>
            {
                double[] told = [.. numbers.Select(number => tied ? Math.Round(number) : number)];
                Quantiles found = Quantiles.Of([.. told]);
                Assert.Equal(new(BySorting(told, 0.05), BySorting(told, 0.5), BySorting(told, 0.95)), found);
            },
            iter: 3000,
            seed: "0N0XIzNsQ0O2");

    [Fact]
    public void Middles_of_strata_give_the_points_of_their_own_distribution()
    {
        double[] normal = [.. Enumerable.Range(0, 1000).Select(i => StandardNormal.Quantile((i + 0.5) / 1000))];
        Quantiles found = Quantiles.Of(normal);

        // A straight line between two strata a thousandth apart: a curve of z'' = z/φ² over eight is off by 2e-5.
        Assert.Equal(-1.644854, found.Low, 3e-5);
        Assert.Equal(0, found.Middle, 1e-12);
        Assert.Equal(1.644854, found.High, 3e-5);
    }

    [Fact]
    public void What_is_not_there_does_not_count()
    {
        Assert.Equal(Quantiles.Of([1, 2, 3]), Quantiles.Of([double.NaN, 3, double.PositiveInfinity, 1, 2]));
        Assert.True(double.IsNaN(Quantiles.Of([double.NaN]).Middle));
        Assert.True(double.IsNaN(Quantiles.Of([]).Low));
    }
}
