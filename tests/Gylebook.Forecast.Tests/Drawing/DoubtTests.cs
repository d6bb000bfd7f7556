using Gylebook.Engine.Drawing;
using Gylebook.Engine.Ensembles;
using Gylebook.Engine.Parameters;
using Gylebook.Science.Numerics.Distributions;

namespace Gylebook.Forecast.Tests.Drawing;

/// <summary>Shares of variance and worth of readings, against what the linear case gives exactly.</summary>
public sealed class DoubtTests
{
    private const int Count = 4000;

    private static double[] Sum(Draws draws, params double[] slopes)
    {
        double[] sum = new double[draws.Count];
        for (int place = 0; place < slopes.Length; place++)
        {
            for (int i = 0; i < sum.Length; i++)
            {
                sum[i] += slopes[place] * draws[place][i];
            }
        }

        return sum;
    }

    // Reference: share of a source in a linear number, b²σ²/Var y: 3²·1² to 2²·2² to 1²·3² of 34, an idle one besides.
    [Fact]
    public void A_linear_number_is_shared_out_by_slope_and_spread()
    {
        Parameter[] parameters = [.. new[] { 1.0, 2, 3, 1 }.Select((spread, i) => DrawsTests.Of($"p{i}", 0, Family.Normal, spread))];
        Draws draws = Draws.Of(parameters, "linear", Count);
        Dictionary<string, double> shares = new DoubtSources(draws).SharesOf(Sum(draws, 3, 2, 1, 0)).ToDictionary(share => share.Source.Id, share => share.Part);

        // Columns correlate by chance, sd 1/√4000: a squared correlation r² is off by 2·r·√(1 − r²)·0.0158 at most 0.0158; four of them.
        Assert.Equal(9.0 / 34, shares["p0"], 0.063);
        Assert.Equal(16.0 / 34, shares["p1"], 0.063);
        Assert.Equal(9.0 / 34, shares["p2"], 0.063);
        Assert.DoesNotContain("p3", shares.Keys);
    }

    // Reference: noise floor 3.84/n: 0.10 % at 4000. One idle source in twenty passes it.
    [Fact]
    public void Idle_sources_pass_the_floor_once_in_twenty_times()
    {
        Assert.Equal(0.00096, DoubtSources.Floor(4000), 1e-9);

        // 95 % of chi-squared by any table: 5.991 for two, 18.307 for ten. The cube is known to be a hundredth off at two, and far nearer at ten.
        Assert.Equal(5.991 / 4000, DoubtSources.Floor(4000, 2), 0.01 * 5.991 / 4000);
        Assert.Equal(18.307 / 4000, DoubtSources.Floor(4000, 10), 0.002 * 18.307 / 4000);

        Draws draws = Draws.Of([.. Enumerable.Range(0, 400).Select(i => DrawsTests.Of($"p{i}", 0, Family.Normal, 1))], "idle", 1000);
        int passed = new DoubtSources(draws).SharesOf(Sum(draws, 1)).Count - 1;

        // 20 of 399, sd 4.4; four of them.
        Assert.InRange(passed, 20 - 18, 20 + 18);
    }

    [Fact]
    public void What_hangs_together_has_one_share()
    {
        Parameter[] parameters =
        [
            DrawsTests.Of("a", 0, Family.Normal, 1, tie: "one t"), DrawsTests.Of("b", 5, Family.Normal, 2, tie: "one t"), DrawsTests.Of("c", 0, Family.Normal, 1),
            new("food.f.0", 0.5, new Prior.Label("f", 0.3, 0.7, true), "kg/kg", "test", "entered"), new("food.f.1", 0.5, new Prior.Label("f", 0.2, 0.8, true), "kg/kg", "test", "entered"),
        ];
        Draws draws = Draws.Of(parameters, "together", Count);
        IReadOnlyList<VarianceShare> shares = new DoubtSources(draws).SharesOf(Sum(draws, 1, 1, 3));
        Assert.Equal(["a", "c"], shares.Select(share => share.Source.Id).Order());
        Assert.All(shares, share => Assert.Equal(0.5, share.Part, 0.063));

        // Two parts of one label with one sum are one column: what one gives the other takes.
        Assert.Equal(1, new DoubtSources(draws).SharesOf(draws[4]).Single(share => share.Source.Id == "food.f.0").Part, 1e-9);
    }

    [Fact]
    public void A_figure_that_leans_to_one_side_says_how_far_it_moves_the_mean()
    {
        Draws draws = Draws.Of([DrawsTests.Of("skew", 1, Family.Triangular, 0, 0.9, 2), DrawsTests.Of("even", 0, Family.Normal, 0.1)], "lean", Count);
        IReadOnlyList<VarianceShare> shares = new DoubtSources(draws).SharesOf(Sum(draws, 1, 1));

        // Each half is a triangle falling from the median: its mean lies a third of the way to its end. (1/3 − 0.1/3)/2.
        Assert.Equal(0.15, shares.Single(share => share.Source.Id == "skew").Shift, 0.01);
        Assert.Equal(0, shares.Single(share => share.Source.Id == "even").Shift, 0.01);
    }

    // Reference 4.8: OG sd 3, gravity at copper-up sd 3.2, r 0.95, error 1: ρ² 0.8222, 42 % of the width is left.
    // Reference 4.4: copper-up 28 sd 0.3, evaporation 4 sd 0.4, knock-out read with sd 0.25: sd 0.2531 and 0.2794 are left.
    [Theory]
    [InlineData(3, 3.2, 0.95, 1, 0.8222, 0.42)]
    [InlineData(0.3, 0.5, 0.6, 0.25, 0.288, 0.2531 / 0.3)]
    [InlineData(0.4, 0.5, -0.8, 0.25, 0.512, 0.2794 / 0.4)]
    public void A_reading_is_worth_what_conditioning_gives(double number, double read, double correlation, double error, double explained, double left)
    {
        double width = ReadingWorth.WidthLeft(correlation * number * read, number * number, read * read, error * error);
        Assert.Equal(explained, 1 - (width * width), 0.00005);
        Assert.Equal(left, width, 0.005);
    }

    [Fact]
    public void The_worth_of_a_reading_is_read_off_the_draws()
    {
        Draws draws = Draws.Of([DrawsTests.Of("V", 28, Family.Normal, 0.3), DrawsTests.Of("e", 4, Family.Normal, 0.4)], "boil", Count);
        double[] knockOut = Sum(draws, 1, -1);
        knockOut[7] = double.NaN;

        // Chance correlation of the two: sd 0.0158, which moves what is left by less than 0.01; four of them.
        Assert.Equal(0.2531 / 0.3, ReadingWorth.WidthLeft(draws[0], knockOut, 0.0625), 0.04);
        Assert.Equal(0.2794 / 0.4, ReadingWorth.WidthLeft(draws[1], knockOut, 0.0625), 0.04);
        Assert.Equal(1, ReadingWorth.WidthLeft(draws[0], new double[Count], 0));
    }
}
