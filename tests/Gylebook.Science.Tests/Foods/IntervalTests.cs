using CsCheck;
using Gylebook.Science.Foods;

namespace Gylebook.Science.Tests.Foods;

public class IntervalTests
{
    private static readonly Gen<Interval> Some = Gen.Select(Gen.Double[0, 100], Gen.Double[0, 100], Gen.Bool, Gen.Bool)
        .Select((a, b, c, d) => new Interval(Math.Min(a, b), Math.Max(a, b), c, d));

    [Fact]
    public void An_open_end_is_not_inside()
    {
        Interval half = Interval.HalfOpen(1.5, 2.5);
        Assert.True(half.Contains(1.5));
        Assert.False(half.Contains(2.5));
        Assert.True(half.Contains(2.4999999));
        Assert.Equal("[1.5, 2.5)", half.ToString());
    }

    [Fact]
    public void Default_is_exactly_zero()
    {
        Assert.True(default(Interval).Contains(0));
        Assert.False(default(Interval).Contains(double.Epsilon));
        Assert.False(default(Interval).IsEmpty);
    }

    [Theory]
    [InlineData(2, 1, false, false, true)]
    [InlineData(1, 1, false, false, false)]
    [InlineData(1, 1, false, true, true)]
    [InlineData(1, 1, true, false, true)]
    public void Crossed_ends_or_an_open_point_are_empty(double low, double high, bool lowOpen, bool highOpen, bool empty) =>
        Assert.Equal(empty, new Interval(low, high, lowOpen, highOpen).IsEmpty);

    [Fact]
    public void Touching_half_open_intervals_share_nothing()
    {
        Assert.True(Interval.HalfOpen(0, 1).Intersect(Interval.HalfOpen(1, 2)).IsEmpty);
        Assert.False(new Interval(0, 1).Intersect(Interval.HalfOpen(1, 2)).IsEmpty);
    }

    [Fact]
    public void Sums_keep_an_open_end_open()
    {
        Interval sum = Interval.HalfOpen(0.5, 1.5) + new Interval(1, 2);
        Assert.Equal(Interval.HalfOpen(1.5, 3.5), sum);
        Assert.Equal(new Interval(-1.5, 0.5, false, true), Interval.HalfOpen(0.5, 1.5) - new Interval(1, 2));
        Assert.Equal(new Interval(-1.5, 0.5, true, false), new Interval(0.5, 1.5) - Interval.HalfOpen(1, 2));
        Assert.Equal(new Interval(-1.5, 0.5, false, true), new Interval(0.5, 1.5) - new Interval(1, 2, true));
    }

    [Fact]
    public void Not_a_number_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new Interval(double.NaN, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Interval(0, double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => default(Interval).Scale(-1));
        Assert.Throws<ArgumentOutOfRangeException>(() => default(Interval).DivideBy(0));
        Assert.Throws<InvalidOperationException>(() => new Interval(1, 0).Clip(1));
    }

    [Fact]
    public void Rounding_goes_outwards_and_only_when_needed()
    {
        // 1/3 rounds down in binary and 2/3 down too: the upper end must be the next double above.
        Interval thirds = new Interval(1, 2).DivideBy(3);
        Assert.True(thirds.Low * 3 <= 1);
        Assert.Equal(Math.BitIncrement(2.0 / 3), thirds.High);
        Assert.Equal(new Interval(0.25, 0.5), new Interval(1, 2).DivideBy(4));
        Assert.Equal(new Interval(0.5, 1.5), new Interval(0, 1) + Interval.Exactly(0.5));
    }

    [Fact]
    public void Decimal_arithmetic_never_escapes_the_interval() =>
        // 28 digits of decimal are an independent opinion on the exact result.
        Gen.Select(Gen.Double[0.001, 100], Gen.Double[0.001, 100]).Sample((a, b) =>
        {
            decimal exactA = new(Math.Round(a, 3));
            decimal exactB = new(Math.Round(b, 3));
            Interval sum = Interval.Exactly((double)exactA) + Interval.Exactly((double)exactB);
            Interval quotient = Interval.Exactly((double)exactA).DivideBy((double)exactB);
            // The operands themselves are rounded by half a unit in the last place each: 4 units of slack.
            double slack = 4 * Math.BitIncrement(1.0) - 4;
            return sum.Low <= (double)(exactA + exactB) * (1 + slack)
                && sum.High >= (double)(exactA + exactB) * (1 - slack)
                && quotient.Low <= (double)(exactA / exactB) * (1 + slack)
                && quotient.High >= (double)(exactA / exactB) * (1 - slack)
                && sum.Width <= 4 * slack * sum.High && quotient.Width <= 4 * slack * quotient.High;
        });

    [Fact]
    public void An_intersection_lies_in_both() =>
        Gen.Select(Some, Some).Sample((a, b) =>
        {
            Interval both = a.Intersect(b);
            return both.IsEmpty || (a.Contains(both) && b.Contains(both));
        });

    [Fact]
    public void A_sum_holds_the_sum_of_any_two_members() =>
        Gen.Select(Some, Some, Gen.Double[0, 1], Gen.Double[0, 1]).Sample((a, b, s, t) =>
        {
            double inA = a.Low + (s * (a.High - a.Low));
            double inB = b.Low + (t * (b.High - b.Low));
            return !a.Contains(inA) || !b.Contains(inB)
                || ((a + b).Low <= inA + inB && inA + inB <= (a + b).High
                    && (a - b).Low <= inA - inB && inA - inB <= (a - b).High);
        });
}
