using CsCheck;
using Gylebook.Science.Numerics.Distributions;

namespace Gylebook.Science.Tests.Numerics;

public sealed class DistributionTests
{
    private const double Inf = double.PositiveInfinity;

    // Percentage points of the normal distribution, NIST/SEMATECH e-Handbook table 1.3.6.7.1 and any printed table; half a last digit.
    [Theory]
    [InlineData(0.75, 0.67449)]
    [InlineData(0.90, 1.28155)]
    [InlineData(0.95, 1.64485)]
    [InlineData(0.975, 1.95996)]
    [InlineData(0.99, 2.32635)]
    [InlineData(0.995, 2.57583)]
    [InlineData(0.999, 3.09023)]
    [InlineData(0.9999, 3.71902)]
    public void Normal_quantiles_are_those_of_the_printed_table(double share, double z)
    {
        Assert.Equal(z, StandardNormal.Quantile(share), 0.000006);
        Assert.Equal(-z, StandardNormal.Quantile(1 - share), 0.000006);
    }

    // The check rows printed with AS 241, Applied Statistics 37:477: 16 figures.
    [Theory]
    [InlineData(0.25, -0.6744897501960817)]
    [InlineData(0.001, -3.090232306167814)]
    [InlineData(1e-20, -9.262340089798408)]
    public void Quantile_gives_the_rows_printed_with_its_algorithm(double share, double z) =>
        Assert.Equal(z, StandardNormal.Quantile(share), 1e-13);

    // Printed tables of the normal integral, four figures.
    [Theory]
    [InlineData(0, 0.5)]
    [InlineData(1, 0.8413)]
    [InlineData(1.96, 0.9750)]
    [InlineData(2.58, 0.9951)]
    [InlineData(-1.28, 0.1003)]
    public void Shares_below_are_those_of_the_printed_table(double z, double share) =>
        Assert.Equal(share, StandardNormal.ShareBelow(z), 0.000051);

    [Fact]
    public void Share_and_quantile_lead_back_to_each_other() => Gen.Double[1e-12, 1 - 1e-12].Sample(share =>
        Math.Abs(StandardNormal.ShareBelow(StandardNormal.Quantile(share)) - share) < 1e-13);

    // 90 % factor e^(1.645 σ) for a coefficient of variation of 10, 20, 40 %: σ 0.100, 0.198, 0.385.
    [Theory]
    [InlineData(0.100, 1.179)]
    [InlineData(0.198, 1.385)]
    [InlineData(0.385, 1.884)]
    public void A_log_normal_is_as_far_in_ratio_on_both_sides(double sigma, double factor)
    {
        Distribution figure = new(Family.LogNormal, 4, sigma, 0, Inf);
        Assert.Equal(factor, figure.Quantile(0.95) / 4, 0.0006);
        Assert.Equal(factor, 4 / figure.Quantile(0.05), 0.0006);
    }

    // Between 0.6 and 1, median 0.95, σ 0.83: 5 % 0.8565, 95 % 0.9859, worked out by hand from z = ln((x − a)/(b − x)).
    [Fact]
    public void A_share_stays_between_its_bounds()
    {
        Distribution conversion = new(Family.LogitNormal, 0.95, 0.83, 0.6, 1);
        Assert.Equal(0.8565, conversion.Quantile(0.05), 0.00005);
        Assert.Equal(0.9859, conversion.Quantile(0.95), 0.00005);
    }

    // Symmetric triangle from 0 to 2: F(x) = x²/2 below 1, so that 12.5 % lie below 0.5. Uniform and log-uniform likewise by definition.
    [Fact]
    public void Guesses_between_two_ends_follow_their_definition()
    {
        Assert.Equal(0.5, new Distribution(Family.Triangular, 1, 0, 0, 2).Quantile(0.125), 1e-15);
        Assert.Equal(1.5, new Distribution(Family.Triangular, 1, 0, 0, 2).Quantile(0.875), 1e-15);
        Assert.Equal(9, new Distribution(Family.Uniform, 6, 0, 2, 10).Quantile(0.875), 1e-14);
        Assert.Equal(0.1, new Distribution(Family.LogUniform, 1, 0, 0.01, 100).Quantile(0.25), 1e-15);
    }

    // Cut at one standard deviation below: of the lower half the table leaves 0.3413, so a quarter lies at Φ⁻¹(0.1587 + 0.3413/2 = 0.3293): between the rows 0.44 (0.3300) and 0.45 (0.3264) −0.4418.
    [Fact]
    public void A_bound_cuts_its_own_side_alone()
    {
        Distribution cut = new(Family.Normal, 0, 1, -1, Inf);
        Assert.Equal(-0.4418, cut.Quantile(0.25), 0.0002);
        Assert.Equal(new Distribution(Family.Normal, 0, 1, -Inf, Inf).Quantile(0.9), cut.Quantile(0.9), 1e-14);
    }

    private static readonly Gen<Distribution> Any = Gen.Select(Gen.Enum<Family>(), Gen.Double[0.01, 0.99], Gen.Double[0.01, 2])
        .Select((family, median, spread) => new Distribution(family, median, spread, 0.001, 1));

    [Fact]
    public void Half_of_the_draws_lie_below_the_median_which_is_drawn_to_the_last_bit() =>
        Any.Sample(figure => BitConverter.DoubleToInt64Bits(figure.Quantile(0.5)) == BitConverter.DoubleToInt64Bits(figure.Median));

    [Fact]
    public void A_greater_share_never_gives_less_and_nothing_leaves_the_bounds() =>
        Gen.Select(Any, Gen.Double[1e-9, 1 - 1e-9], Gen.Double[1e-9, 1 - 1e-9]).Sample((figure, one, other) =>
        {
            (double low, double high) = (figure.Quantile(Math.Min(one, other)), figure.Quantile(Math.Max(one, other)));
            return low <= high + 1e-12 && low >= figure.Low && high <= figure.High;
        });

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(double.NaN)]
    public void A_share_that_no_draw_has_is_refused(double share) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new Distribution(Family.Normal, 0, 1, -Inf, Inf).Quantile(share));

    /// <summary>Each family, near its ends and far from them.</summary>
    public static TheoryData<Family, double, double, double?, double?> Widths => new()
    {
        { Family.Normal, 1, 0.2, null, null },
        { Family.Normal, 1, 0.2, 0.9, 1.3 },
        { Family.Normal, 1, 0.01, 0.5, 1.5 },
        { Family.LogNormal, 2, 0.3, 0, null },
        { Family.LogNormal, 2, 0.3, 1.5, 3 },
        { Family.LogNormal, 0, 0.3, 0, 3 },
        { Family.LogitNormal, 0.95, 0.8, 0.6, 1 },
        { Family.Triangular, 0.2, 0, 0.1, 0.4 },
        { Family.Uniform, 0.2, 0, 0.1, 0.4 },
        { Family.LogUniform, 0.2, 0, 0.1, 0.4 },
    };

    [Theory]
    [MemberData(nameof(Widths))]
    public void Many_at_once_are_each_by_itself(Family family, double median, double spread, double? low, double? high)
    {
        Width width = new(family, spread, low, high, WidthEnds.Value);
        Distribution one = width.About(median);
        double[] shares = [.. Enumerable.Range(0, 101).Select(i => (i + 0.5) / 101)], normals = [.. shares.Select(StandardNormal.Quantile)];
        double[] filled = new double[101], scattered = new double[101];
        one.Fill(shares, normals, filled);
        Array.Fill(scattered, median);
        width.Scatter(scattered, shares, normals, [.. Enumerable.Range(0, 101)]);
        for (int i = 0; i < 101; i++)
        {
            Assert.Equal(one.Quantile(shares[i]), filled[i]);
            Assert.Equal(one.Quantile(shares[i]), scattered[i], 1e-12);
        }

        Assert.Equal(median, filled[50]);
    }
}
