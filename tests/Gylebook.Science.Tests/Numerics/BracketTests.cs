using Gylebook.Science.Numerics;

namespace Gylebook.Science.Tests.Numerics;

public class BracketTests
{
    // Known: cos x = x at 0.739085133215160641..., Abramowitz and Stegun's fixed point of the cosine (from memory);
    // the golden ratio less 1 is the root of 1 - x - x².
    [Fact]
    public void Known_roots_come_to_the_last_digit()
    {
        Assert.Equal(0.73908513321516064, new Bracket(0, 1).Root(x => Math.Cos(x) - x, "fixed point"), 2e-16);
        Assert.Equal((Math.Sqrt(5) - 1) / 2, new Bracket(0, 2).Root(x => 1 - x - (x * x), "ratio"), 2e-16);
    }

    /// <summary>A line, a curve that grows tenfold with each unit, a step that is almost one. Halving takes 53 looks from 0 to 14.</summary>
    [Fact]
    public void Convergence_a_root_takes_few_looks()
    {
        (double Root, Func<double, double> Falling)[] curves =
        [
            (5.4, x => 5.4 - x), (4.2, x => Math.Pow(10, 4.2 - x) - 1), (3, x => Math.Tanh(40 * (3 - x))),
        ];
        Assert.All(curves, curve =>
        {
            int looks = 0;
            double root = new Bracket(0, 14).Root(x => curve.Falling(x) + (0 * looks++), "root");
            Assert.Equal(curve.Root, root, 1e-4);
            Assert.InRange(looks, 1, 40);
        });
    }

    [Theory]
    [InlineData(1, 0.5)]
    [InlineData(10, 1.0 / 1024)]
    [InlineData(40, 1.0 / (1L << 40))]
    public void Convergence_each_halving_is_one_binary_digit(int times, double width)
    {
        int asked = 0;
        Bracket left = new Bracket(0, 1).Halved(x => 0.3 - x + (0 * asked++), times);
        Assert.Equal((times, width), (asked, left.High - left.Low));
        Assert.True(left.Low < 0.3 && left.High >= 0.3);
    }

    [Fact]
    public void Convergence_stops_when_it_is_close_enough_or_no_double_lies_between()
    {
        Bracket close = new Bracket(0, 1).Halved(x => 0.3 - x, close: 0.1);
        Assert.Equal(0.0625, close.High - close.Low);
        Bracket last = new Bracket(0, 14).Halved(x => 5.4 - x);
        Assert.Equal(Math.BitIncrement(last.Low), last.High);
        Assert.Equal(5.4, last.High);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1e-300)]
    [InlineData(-1)]
    [InlineData(14)]
    public void Convergence_settles_where_the_root_is_an_end_or_next_to_nought(double root) =>
        Assert.Equal(root, new Bracket(-1, 14).Root(x => root - x, "root"), 2e-15);

    [Fact]
    public void Limits_the_lower_end_falls_short_and_the_upper_reaches()
    {
        // A step, as a wish that is met from somewhere on: the least that meets it is the upper end.
        Bracket step = new Bracket(0, 8).Halved(x => x >= 3 ? -1 : 1, times: 50);
        Assert.True(step.Low < 3 && step.High >= 3);

        // One sign from end to end: the end that comes nearest is closed in on.
        Assert.Equal(8, new Bracket(0, 8).Halved(_ => 1).High);
        Assert.Equal(0, new Bracket(0, 8).Halved(_ => -1).Low);
    }

    [Theory]
    [InlineData(2, 1)]
    [InlineData(double.NaN, 1)]
    [InlineData(0, double.NaN)]
    [InlineData(double.NegativeInfinity, 1)]
    [InlineData(0, double.PositiveInfinity)]
    public void Invalid_ends_are_refused(double low, double high) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new Bracket(low, high));

    [Theory]
    [InlineData(3)]
    [InlineData(-3)]
    [InlineData(double.NaN)]
    public void Invalid_a_balance_of_one_sign_says_where_and_what_is_left(double sign)
    {
        Bracket within = new(0, 14);
        Assert.False(within.TryRoot(_ => sign, out double root));
        Assert.Equal(double.NaN, root);
        DidNotConvergeException failed = Assert.Throws<DidNotConvergeException>(() => within.Root(_ => sign, "pH of a mash"));
        Assert.Equal((within, sign, sign), (failed.Bracket, failed.Residual.AtLow, failed.Residual.AtHigh));
        Assert.Equal(Invariant($"No pH of a mash from 0 to 14 balances: {sign} is left at the lower end, {sign} at the upper."), failed.Message);
    }
}
