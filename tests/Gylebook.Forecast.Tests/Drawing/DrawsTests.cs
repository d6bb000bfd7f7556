using Gylebook.Engine.Drawing;
using Gylebook.Engine.Parameters;
using Gylebook.Forecast.Tests.Planning;
using Gylebook.Science.Numerics.Distributions;

namespace Gylebook.Forecast.Tests.Drawing;

/// <summary>What may be true of a brew: each column by itself, within its bounds, and in balance with what it hangs together with.</summary>
public sealed class DrawsTests
{
    private const int Count = 4000;

    /// <summary>A parameter of a test.</summary>
    internal static Parameter Of(string id, double median, Family family, double spread, double? low = null, double? high = null, string tie = "lot", Width? within = null) =>
        new(id, median, new Prior.Spread(new Width(family, spread, low, high, WidthEnds.Value), within, Tie.Of(tie)), "1", "test", "judged");

    private static Parameter Normal(string id, double spread = 1) => Of(id, 0, Family.Normal, spread);

    private static double[] ColumnOf(string id, params Parameter[] parameters) =>
        Draws.Of(parameters, "seed", Count)[Array.FindIndex(parameters, parameter => parameter.Id == id)].ToArray();

    [Fact]
    public void A_column_hangs_on_its_seed_and_its_own_id_alone()
    {
        double[] alone = ColumnOf("b", Normal("b"));
        Assert.Equal(alone, ColumnOf("b", Normal("a"), Normal("b"), Normal("c")));
        Assert.Equal(alone, ColumnOf("b", Normal("c"), Normal("b"), Normal("a", 3), new Parameter("still", 1, Prior.Point, "1", "test", "judged")));
        Assert.NotEqual(alone, ColumnOf("c", Normal("c")));
        Assert.NotEqual(alone, Draws.Of([Normal("b")], "another seed", Count)[0].ToArray());
    }

    [Fact]
    public void Each_stratum_is_met_once()
    {
        double[] sorted = [.. ColumnOf("a", Normal("a")).Order()];
        for (int i = 0; i < Count; i++)
        {
            Assert.Equal(StandardNormal.Quantile((i + 0.5) / Count), sorted[i]);
        }
    }

    [Fact]
    public void Two_columns_know_nothing_of_each_other()
    {
        string[] ids = [.. Enumerable.Range(0, 40).Select(i => $"p{i}")];
        Draws draws = Draws.Of([.. ids.Select(id => Normal(id))], "seed", Count);
        List<double> correlations = [];
        for (int one = 0; one < ids.Length; one++)
        {
            for (int other = 0; other < one; other++)
            {
                double sum = 0;
                for (int i = 0; i < Count; i++)
                {
                    sum += draws[one][i] * draws[other][i];
                }

                correlations.Add(sum / Count * Math.Sqrt(Count));
            }
        }

        // 780 of them, each standard normal: all within 4.5, and their squares sum to 780 with sd 39.5.
        Assert.All(correlations, correlation => Assert.InRange(correlation, -4.5, 4.5));
        Assert.InRange(correlations.Sum(correlation => correlation * correlation), 780 - (4 * 39.5), 780 + (4 * 39.5));
    }

    // Reference: order statistics between which a quantile lies with 95 % where draws are independent; strata do better on a sum.
    [Theory]
    [InlineData(4000, 0.05, 173, 228)]
    [InlineData(4000, 0.50, 1938, 2063)]
    [InlineData(4000, 0.95, 3773, 3828)]
    [InlineData(1000, 0.05, 37, 65)]
    [InlineData(1000, 0.50, 469, 532)]
    [InlineData(1000, 0.95, 936, 964)]
    public void A_sum_has_its_quantiles_where_order_statistics_have_them(int count, double share, int low, int high)
    {
        Parameter[] parameters = [.. Enumerable.Range(0, 20).Select(i => Normal($"p{i}", 1 + (0.1 * i)))];
        double truth = StandardNormal.Quantile(share) * Math.Sqrt(Enumerable.Range(0, 20).Sum(i => Math.Pow(1 + (0.1 * i), 2)));
        int held = 0;
        for (int seed = 0; seed < 100; seed++)
        {
            Draws draws = Draws.Of(parameters, $"sum {seed}", count);
            double[] sums = new double[count];
            for (int place = 0; place < parameters.Length; place++)
            {
                for (int i = 0; i < count; i++)
                {
                    sums[i] += draws[place][i];
                }
            }

            Array.Sort(sums);
            held += sums[low - 1] <= truth && truth <= sums[high - 1] ? 1 : 0;
        }

        // Independent draws hold 95 of 100, sd 2.2; these are to hold no fewer than four of them below.
        Assert.InRange(held, 87, 100);
    }

    [Fact]
    public void The_gyle_is_drawn_about_what_was_drawn_of_the_kit()
    {
        Width within = new(Family.Normal, 0.3, null, null, WidthEnds.Value);
        double[] kit = ColumnOf("kit", Of("kit", 4, Family.Normal, 0.6));
        double[] gyle = ColumnOf("kit", Of("kit", 4, Family.Normal, 0.6, within: within));
        double[] off = [.. gyle.Zip(kit).Select(pair => pair.First - pair.Second)];

        // Reference 4.7: between 0.6 and within 0.3 are 0.671 together. Strata carry the variances; what the two share by chance is 2·0.6·0.3/√4000.
        Assert.Equal(0.3, Sd(off), 0.001);
        Assert.Equal(0.671 * 0.671, Math.Pow(Sd(gyle), 2), 4 * 0.36 / Math.Sqrt(Count));
    }

    [Fact]
    public void Figures_with_one_draw_move_together_each_on_its_own_scale()
    {
        Parameter[] both = [Of("mash", 0, Family.Normal, 1, tie: "one thermometer"), Of("stand", 5, Family.Normal, 2, tie: "one thermometer")];
        Draws draws = Draws.Of(both, "seed", Count);
        for (int i = 0; i < Count; i++)
        {
            Assert.Equal(5 + (2 * draws[0][i]), draws[1][i], 1e-12);
        }
    }

    [Theory]
    [MemberData(nameof(ParameterTests.Samples), MemberType = typeof(ParameterTests))]
    public void Every_draw_of_every_sample_keeps_its_ends_and_its_balance(string sample)
    {
        if (ParameterTests.Plan(sample) is not { } plan)
        {
            return;
        }

        Draws draws = Draws.Of(plan.Parameters, "samples", 1000);
        foreach (int place in draws.Moving)
        {
            Parameter parameter = plan.Parameters[place];
            (double low, double high) = parameter.Prior switch
            {
                Prior.Label label => (label.Low, label.High),
                Prior.Spread { Tie.Kind: TieKind.None, Within: null } spread => (spread.Between.About(parameter.Median).Low, spread.Between.About(parameter.Median).High),
                Prior.Spread { Between.Family: Family.LogNormal } => (0, double.PositiveInfinity),
                _ => (double.NegativeInfinity, double.PositiveInfinity),
            };
            Assert.All(draws[place].ToArray(), value => Assert.True(value >= low && value <= high && double.IsFinite(value), $"{parameter.Id}: {value} is not from {low} to {high}"));
        }

        AssertSum(draws, id => id.StartsWith("mash.spectrum.", StringComparison.Ordinal));
        AssertSum(draws, id => id is "hops.water" or "hops.soluble" or "hops.solids");
        foreach (IGrouping<string, Parameter> food in plan.Parameters.Where(p => p.Prior is Prior.Label { IsPart: true }).GroupBy(p => p.Id.Split('.')[1]))
        {
            AssertSum(draws, id => food.Any(part => part.Id == id));
        }
    }

    [Fact]
    public void A_label_fills_its_ends_and_its_middle_stays()
    {
        Prior[] priors = [new Prior.Label("f", 0.1, 0.3, true), new Prior.Label("f", 0.5, 0.7, true), new Prior.Label("f", 0.1, 0.35, true)];
        double[] medians = [0.2, 0.6, 0.2];
        Draws draws = Draws.Of([.. priors.Select((prior, i) => new Parameter($"food.f.{i}", medians[i], prior, "kg/kg", "test", "entered"))], "seed", Count);
        for (int place = 0; place < 3; place++)
        {
            Prior.Label label = (Prior.Label)priors[place];
            double[] column = draws[place].ToArray();
            Assert.InRange(column.Min(), label.Low, label.Low + (0.1 * (label.High - label.Low)));
            Assert.InRange(column.Max(), label.High - (0.1 * (label.High - label.Low)), label.High);

            // What is taken from one is given to others, so the middle may lean where ends do: by less than a tenth of the way.
            Assert.Equal(medians[place], Quantiles.Of(column).Middle, 0.1 * (label.High - label.Low));
        }
    }

    private static void AssertSum(Draws draws, Func<string, bool> isPart)
    {
        int[] parts = [.. Enumerable.Range(0, draws.Parameters.Count).Where(place => isPart(draws.Parameters[place].Id))];
        double whole = parts.Sum(place => draws.Parameters[place].Median);
        for (int i = 0; i < draws.Count; i++)
        {
            double sum = 0;
            foreach (int place in parts)
            {
                sum += draws[place].Length > 0 ? draws[place][i] : draws.Parameters[place].Median;
            }

            Assert.Equal(whole, sum, 1e-12);
        }
    }

    private static double Sd(double[] values) => Math.Sqrt(values.Sum(value => Math.Pow(value - values.Average(), 2)) / values.Length);
}
