using Gylebook.Engine.Drawing;
using Gylebook.Engine.Parameters;
using Gylebook.Science.Numerics.Distributions;

namespace Gylebook.Forecast.Tests.Drawing;

/// <summary>Draws made by hand: what is put stays put, and what hangs together with it gives way.</summary>
public sealed class SupposingTests
{
    private const int Count = 1000;

    private static readonly Parameter[] Parameters =
    [
        DrawsTests.Of("alone", 10, Family.Normal, 2),
        DrawsTests.Of("first", 0, Family.Normal, 1, tie: "one t"), DrawsTests.Of("second", 50, Family.Normal, 3, tie: "one t"),
        DrawsTests.Of("s0", 0.7, Family.Point, 0, tie: "sum s"), DrawsTests.Of("s1", 0.2, Family.LogNormal, 0.1, tie: "sum s"), DrawsTests.Of("s2", 0.1, Family.LogNormal, 0.5, tie: "sum s"),
        DrawsTests.Of("r0", 0.87, Family.Point, 0, tie: "rest r"), DrawsTests.Of("r1", 0.05, Family.LogNormal, 0.3, tie: "rest r"), DrawsTests.Of("r2", 0.08, Family.Normal, 0.01, tie: "rest r"),
        Part("food.f.0", 0.5, 0.35, 0.6), Part("food.f.1", 0.3, 0.2, 0.42), Part("food.f.2", 0.2, 0.12, 0.25),
    ];

    private static readonly Draws Drawn = Draws.Of(Parameters, "supposing", Count);

    private static readonly Supposing Hand = new(Drawn);

    private static Parameter Part(string id, double median, double low, double high) => new(id, median, new Prior.Label("f", low, high, true), "kg/kg", "test", "entered");

    [Fact]
    public void Nothing_put_is_every_median_to_the_last_bit()
    {
        double[] medians = [.. Parameters.Select(parameter => parameter.Median)];
        Assert.Equal(medians, Hand.Draw(new Dictionary<int, double>()));
        Assert.Equal(medians, Hand.Draw(new Dictionary<int, double> { [0] = 0, [4] = 0 }));
    }

    // Reference: nine tenths of a normal distribution lie within 1.645 standard deviations; the middles of 1000 strata tell an end to a stratum.
    [Fact]
    public void The_ends_are_the_five_and_the_ninety_five_per_cent()
    {
        (double low, double high) = Hand.EndsOf(0);
        Assert.Equal(10 - (1.645 * 2), low, 0.02);
        Assert.Equal(10 + (1.645 * 2), high, 0.02);
        Assert.Equal((low, 10, high), (Hand.At(0, -1), Hand.At(0, 0), Hand.At(0, 1)));
        Assert.Equal((low + 10) / 2, Hand.At(0, -0.5), 1e-12);
    }

    [Fact]
    public void A_figure_alone_moves_alone()
    {
        double[] draw = Hand.Draw(new Dictionary<int, double> { [0] = 1 });
        Assert.Equal(Hand.At(0, 1), draw[0]);
        Assert.Equal(Parameters.Skip(1).Select(parameter => parameter.Median), draw.Skip(1));
    }

    // Both are normal: 1.645 standard deviations of each, whichever of them is taken hold of.
    [Fact]
    public void What_takes_one_draw_goes_the_same_way()
    {
        double[] draw = Hand.Draw(new Dictionary<int, double> { [1] = 1 });
        Assert.Equal(1.645 * 1, draw[1], 0.01);
        Assert.Equal(50 + (1.645 * 3), draw[2], 0.03);
        Assert.Equal(draw, Hand.Draw(new Dictionary<int, double> { [2] = 1 }));
    }

    [Theory]
    [InlineData(4, 3, 5)]
    [InlineData(5, 3, 5)]
    [InlineData(7, 6, 8)]
    [InlineData(9, 9, 11)]
    [InlineData(11, 9, 11)]
    public void A_whole_stays_whole_and_what_was_put_stays_put(int place, int first, int last)
    {
        foreach (double way in new[] { -1, -0.3, 0.6, 1 })
        {
            double[] draw = Hand.Draw(new Dictionary<int, double> { [place] = way });
            Assert.Equal(Hand.At(place, way), draw[place]);
            Assert.Equal(1, draw[first..(last + 1)].Sum(), 1e-12);
            for (int part = 9; part <= 11; part++)
            {
                Prior.Label label = (Prior.Label)Parameters[part].Prior;
                Assert.InRange(draw[part], label.Low - 1e-12, label.High + 1e-12);
            }
        }
    }

    [Theory]
    [InlineData(1.01)]
    [InlineData(-1.01)]
    [InlineData(double.NaN)]
    public void A_way_beyond_the_ends_is_refused(double way) =>
        Assert.Contains("-1 to 1", Assert.Throws<ArgumentOutOfRangeException>(() => Hand.At(0, way)).Message, StringComparison.Ordinal);
}
