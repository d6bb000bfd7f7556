using CsCheck;
using Gylebook.Science.Numerics;

namespace Gylebook.Science.Tests.Numerics;

public class BinomialTests
{
    // Whole fractions by hand.
    [Theory]
    [InlineData(3, 5, 0.5, 16.0 / 32)]
    [InlineData(5, 5, 0.5, 1.0 / 32)]
    [InlineData(2, 4, 1.0 / 3, 33.0 / 81)]
    [InlineData(0, 4, 1.0 / 3, 1)]
    [InlineData(5, 4, 1.0 / 3, 0)]
    public void Known_tails(int count, int tries, double chance, double tail) => Assert.Equal(tail, Binomial.AtLeast(count, tries, chance), 1e-14);

    [Fact]
    public void Balance_at_least_and_fewer_are_all() =>
        Gen.Select(Gen.Int[0, 2000], Gen.Int[-2, 2002], Gen.Double[0, 1]).Sample((tries, count, chance) =>
            Assert.Equal(1, Binomial.AtLeast(count, tries, chance) + Binomial.AtMost(count - 1, tries, chance), 1e-10));

    // Clopper and Pearson in closed form at the ends: 0 of n ends at 1 − side^(1/n).
    [Theory]
    [InlineData(1)]
    [InlineData(10)]
    [InlineData(500)]
    public void Known_limits_of_none_and_all(int tries)
    {
        (double low, double high) = Binomial.Limits(0, tries, 0.9);
        Assert.Equal(0, low);
        Assert.Equal(1 - Math.Pow(0.05, 1.0 / tries), high, 1e-12);
        Assert.Equal((1 - high, 1.0), (Binomial.Limits(tries, tries, 0.9).Low, Binomial.Limits(tries, tries, 0.9).High), Nearly);
    }

    // The median of 5 of 10 is symmetric; the limits by their own definition.
    [Fact]
    public void Roundtrip_limits_leave_their_tails()
    {
        (double low, double high) = Binomial.Limits(5, 10, 0.9);
        Assert.Equal(1, low + high, 1e-12);
        Assert.Equal(0.05, Binomial.AtLeast(5, 10, low), 1e-12);
        Assert.Equal(0.05, Binomial.AtMost(5, 10, high), 1e-12);
    }

    [Fact]
    public void What_has_no_meaning_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Binomial.AtLeast(1, -1, 0.5));
        Assert.Throws<ArgumentOutOfRangeException>(() => Binomial.AtLeast(1, 2, 1.5));
        Assert.Throws<ArgumentOutOfRangeException>(() => Binomial.Limits(3, 2, 0.9));
        Assert.Throws<ArgumentOutOfRangeException>(() => Binomial.Limits(1, 2, 1));
    }

    private static bool Nearly((double, double) one, (double, double) other) =>
        Math.Abs(one.Item1 - other.Item1) < 1e-12 && Math.Abs(one.Item2 - other.Item2) < 1e-12;
}
