using Gylebook.Engine.Drawing;
using Gylebook.Engine.Readings;

namespace Gylebook.Forecast.Tests.Readings;

/// <summary>
/// The smoother against what can be reckoned by hand. Tolerances are four times the scatter over seeds of 4,000 draws: of a mean 0.0094, of a
/// variance 0.0046 after the last of four steps. After one step of gain K a variance scatters by 2K(1 − K)·√(C·αR/n), which is 0.0102 for the
/// widest step here (K 0.3, αR 2.333).
/// </summary>
public sealed class SmootherTests
{
    private const double MeanClose = 4 * 0.0094, StepClose = 4 * 0.0102, VarianceClose = 4 * 0.0046;
    private const int Count = 4000;

    private static readonly Strata Even = new(Count);

    [Fact]
    public void One_number_read_once_and_again()
    {
        double[] x = Normal("x");
        Read(x, x, 1, "first");
        AssertClose(0.8, 0.2, x);
        Read(x, x, 0.6, "second");
        AssertClose(0.711111, 0.111111, x);
    }

    [Fact]
    public void A_sum_that_was_read_ties_its_parts_together()
    {
        double[] one = Normal("one"), other = Normal("other");
        Read([one, other], () => Sum(one, other), 1, "sum", [1]);
        AssertClose(0.444444, 0.555556, one);
        AssertClose(0.444444, 0.555556, other);
        Assert.Equal(-0.444444, Together(one, other), StepClose);
        Assert.Equal(-0.8, Together(one, other) / Math.Sqrt(Together(one, one) * Together(other, other)), StepClose / 0.555556);

        Read([one, other], () => one, 0.8, "one alone", [1]);
        AssertClose(0.689655, 0.172414, one);
        AssertClose(0.248276, 0.310345, other);
        Assert.Equal(-0.137931, Together(one, other), StepClose);
    }

    /// <summary>Emerick and Reynolds (2013): exact after all steps for a straight line, whatever the steps, as long as Σ 1/α = 1.</summary>
    [Theory]
    [InlineData(new double[] { 4, 4, 4, 4 }, new[] { 0.5, 0.666667, 0.75, 0.8 })]
    [InlineData(new[] { 9.333, 7, 4, 2 }, new[] { 0.3, 0.5, 0.666667, 0.8 })]
    public void Repeated_steps_go_by_the_table(double[] alphas, double[] means)
    {
        double[] x = Normal("table");
        for (int step = 0; step < alphas.Length; step++)
        {
            Read([x], () => x, 1, Invariant($"step {step}"), [alphas[step]]);
            AssertClose(means[step], 1 - means[step], x, step == alphas.Length - 1 ? VarianceClose : StepClose);
        }
    }

    [Fact]
    public void Repeated_steps_of_a_sum_go_by_the_table()
    {
        double[] one = Normal("one"), other = Normal("other"), means = [0.333333, 0.4, 0.428571, 0.444444];
        for (int step = 0; step < 4; step++)
        {
            Read([one, other], () => Sum(one, other), 1, Invariant($"step {step}"), [Assimilation.FourSteps[step]]);
            AssertClose(means[step], 1 - means[step], one);
            Assert.Equal(-means[step], Together(one, other), StepClose);
        }
    }

    /// <summary>What comes out when Σ 1/α is not 1: the whole reading taken four times, and sixteen times.</summary>
    [Theory]
    [InlineData(1.0, 0.941176, 0.058824)]
    [InlineData(0.25, 0.984615, 0.015385)]
    public void Steps_that_count_a_reading_more_than_once_end_too_narrow(double alpha, double mean, double variance)
    {
        double[] x = Normal("mistake");
        Read([x], () => x, 1, "step", [alpha, alpha, alpha, alpha]);
        AssertClose(mean, variance, x, VarianceClose);
        Assert.True(Together(x, x) < 0.2 - VarianceClose);
        Assert.Equal(1, Assimilation.FourSteps.Sum(each => 1 / each));
    }

    /// <summary>e^(x/2) read as 2, sd 0.2. By quadrature 1.2993, sd 0.2100; by the method itself, 200,000 draws, what stands below.</summary>
    [Theory]
    [InlineData(1, 1.2145, 0.4562)]
    [InlineData(2, 1.2747, 0.2962)]
    [InlineData(4, 1.2956, 0.2509)]
    [InlineData(8, 1.3037, 0.2351)]
    public void A_bent_number_ends_a_little_wide_and_in_the_right_place(int steps, double mean, double deviation)
    {
        const int Many = 40_000;
        Strata strata = new(Many);
        double[] x = Assimilation.Scattered(0, 1, "bent", "x", strata);
        for (int step = 0; step < steps; step++)
        {
            double[] shown = [.. x.Select(value => Math.Exp(value / 2))];
            new SmootherStep([shown], [Assimilation.Scattered(2, steps * 0.04, "bent", Invariant($"step {step}"), strata)], [steps * 0.04]).Move(x);
        }

        // The scatter of a mean over seeds is its deviation over the root of n, of a deviation that over √2, and several times more where the
        // tail bends it: ten of the former.
        double close = 10 * deviation / Math.Sqrt(Many);
        Assert.Equal(mean, x.Average(), close);
        Assert.Equal(deviation, Math.Sqrt(Together(x, x)), close);
    }

    /// <summary>28 ± 0.3 L before the boil, 4 ± 0.4 L an hour gone, 23.4 read at knock-out with 0.25; then 28.2 read before as well.</summary>
    [Theory]
    [InlineData(false, 27.8272, 0.2531, 4.3072, 0.2794, 0.6515)]
    [InlineData(true, 28.0159, 0.1779, 4.4429, 0.2476, 0.5166)]
    public void A_boil_by_hand(bool bothRead, double litres, double litresDeviation, double gone, double goneDeviation, double correlation)
    {
        double[] before = [.. Normal("litres").Select(z => 28 + (0.3 * z))], off = [.. Normal("gone").Select(z => 4 + (0.4 * z))];
        if (bothRead)
        {
            new SmootherStep([before], [Assimilation.Scattered(28.2, 0.0625, "boil", "copper-up", Even)], [0.0625]).Move(before);
        }

        double[] shown = [.. before.Zip(off, (all, away) => all - away)];
        GatedReading gate = GatedReading.Of(23.4, 0.0625, shown);
        Assert.True(bothRead || Math.Abs(gate.Deviation - 0.5590) < 4 * 0.5590 / Math.Sqrt(2 * Count), Invariant($"{gate.Deviation}"));
        Assert.True(bothRead || Math.Abs(gate.Off + 1.0733) < 4 / Math.Sqrt(Count), Invariant($"{gate.Off}"));
        SmootherStep step = new([shown], [Assimilation.Scattered(23.4, 0.0625, "boil", "knock-out", Even)], [0.0625]);
        step.Move(before);
        step.Move(off);
        double close = MeanClose * 0.4, spread = VarianceClose * 0.4;
        Assert.Equal(litres, before.Average(), close);
        Assert.Equal(gone, off.Average(), close);
        Assert.Equal(litresDeviation, Math.Sqrt(Together(before, before)), spread);
        Assert.Equal(goneDeviation, Math.Sqrt(Together(off, off)), spread);
        Assert.Equal(correlation, Together(before, off) / Math.Sqrt(Together(before, before) * Together(off, off)), 4 * (1 - (correlation * correlation)) / Math.Sqrt(Count));
    }

    [Fact]
    public void What_does_not_hang_together_does_not_move_and_a_draw_without_a_number_stays()
    {
        double[] x = Normal("x"), idle = Normal("idle"), shown = [.. x];
        shown[7] = double.NaN;
        double[] asItWas = [.. idle], same = [.. x];
        SmootherStep step = new([shown], [Assimilation.Scattered(1, 0.25, "idle", "reading", Even)], [0.25]);
        Assert.False(step.Move(idle));
        Assert.False(step.Move(x, [false]));
        Assert.Equal(asItWas, idle);
        Assert.True(step.Move(x, [true]));
        Assert.Equal(same[7], x[7]);
        Assert.NotEqual(same[8], x[8]);
    }

    private static double[] Normal(string what) => Assimilation.Scattered(0, 1, "smoother", what, Even);

    private static double[] Sum(double[] one, double[] other) => [.. one.Zip(other, (a, b) => a + b)];

    private static void Read(double[] column, double[] shown, double read, string what) => Read([column], () => shown, read, what, [1]);

    private static void Read(double[][] columns, Func<double[]> shown, double read, string what, double[] alphas)
    {
        for (int i = 0; i < alphas.Length; i++)
        {
            double variance = 0.25 * alphas[i];
            SmootherStep step = new([[.. shown()]], [Assimilation.Scattered(read, variance, "smoother", Invariant($"{what} {i}"), Even)], [variance]);
            Assert.All(columns, column => step.Move(column));
        }
    }

    private static void AssertClose(double mean, double variance, double[] column, double close = StepClose)
    {
        Assert.Equal(mean, column.Average(), MeanClose);
        Assert.Equal(variance, Together(column, column), close);
    }

    private static double Together(double[] one, double[] other)
    {
        double first = one.Average(), second = other.Average();
        return one.Zip(other, (a, b) => (a - first) * (b - second)).Sum() / (one.Length - 1);
    }
}
