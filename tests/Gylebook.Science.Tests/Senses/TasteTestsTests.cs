using CsCheck;
using Gylebook.Science.Numerics.Distributions;
using Gylebook.Science.Senses;
using Gylebook.Tests.Shared;

namespace Gylebook.Science.Tests.Senses;

public class TasteTestsTests
{
    public static IEnumerable<object[]> Table => RepositoryFile.Numbers(
        "data/senses/critical-counts.csv",
        "tasters", "triangle_20", "triangle_10", "triangle_5", "triangle_1", "triangle_0_1",
        "one_sided_10", "one_sided_5", "one_sided_1", "two_sided_5", "two_sided_1");

    // FAO V7180E appendix A for the triangle from 10 % on; the rest are binomials computed elsewhere. Whole counts: no tolerance.
    [Theory]
    [MemberData(nameof(Table))]
    public void Known_counts(
        double tasters, double triangle20, double triangle10, double triangle5, double triangle1, double triangle01,
        double one10, double one5, double one1, double two5, double two1)
    {
        int n = (int)tasters;
        Assert.Equal(
            [triangle20, triangle10, triangle5, triangle1, triangle01],
            [Critical(TasteTest.Triangle, n, 0.2), Critical(TasteTest.Triangle, n, 0.1), Critical(TasteTest.Triangle, n, 0.05), Critical(TasteTest.Triangle, n, 0.01), Critical(TasteTest.Triangle, n, 0.001)]);
        foreach (TasteTest test in new[] { TasteTest.DuoTrio, TasteTest.Paired })
        {
            Assert.Equal([one10, one5, one1], [Critical(test, n, 0.1), Critical(test, n, 0.05), Critical(test, n, 0.01)]);
        }

        Assert.Equal([two5, two1], [Critical(TasteTest.PairedEitherWay, n, 0.05), Critical(TasteTest.PairedEitherWay, n, 0.01)]);
    }

    // Computed elsewhere: power of a triangle at 5 % by d′, two decimals, some printed with one figure more than needed.
    [Theory]
    [InlineData(12, 1, 0.07)]
    [InlineData(12, 1.5, 0.21)]
    [InlineData(12, 2, 0.45)]
    [InlineData(12, 3, 0.90)]
    [InlineData(24, 1, 0.15)]
    [InlineData(24, 1.5, 0.44)]
    [InlineData(24, 2, 0.80)]
    [InlineData(24, 3, 1.00)]
    [InlineData(36, 1, 0.20)]
    [InlineData(36, 1.5, 0.60)]
    [InlineData(36, 2, 0.93)]
    public void Known_power_of_a_triangle(int tasters, double difference, double power) =>
        Near.Equal(power, TasteTests.Power(TasteTest.Triangle, tasters, 0.05, Thurstone.Right(TasteTest.Triangle, difference)), 0.005);

    // Computed elsewhere: tasters for a power of 80 % at 5 %, four panels in a row.
    [Theory]
    [InlineData(1, 215, 241, 26)]
    [InlineData(1.5, 57, 65, 13)]
    [InlineData(2, 23, 28, 8)]
    [InlineData(2.5, 15, 16, 8)]
    [InlineData(3, 9, 11, 5)]
    public void Known_tasters_for_a_power_of_80_percent(double difference, int triangle, int duoTrio, int paired)
    {
        int? For(TasteTest test) => TasteTests.TastersFor(test, 0.8, 0.05, Thurstone.Right(test, difference));
        Assert.Equal([triangle, duoTrio, paired], [For(TasteTest.Triangle), For(TasteTest.DuoTrio), For(TasteTest.Paired)]);
    }

    /// <summary>By hand: all four of four in a triangle by chance are 1/81; one side of a pair 1/16, both 1/8.</summary>
    [Fact]
    public void Known_small_panels_by_hand()
    {
        Assert.Equal(1.0 / 81, TasteTests.ByChance(TasteTest.Triangle, 4, 4), 1e-15);
        Assert.Equal(1.0 / 16, TasteTests.ByChance(TasteTest.DuoTrio, 4, 4), 1e-15);
        Assert.Equal(1.0 / 8, TasteTests.ByChance(TasteTest.PairedEitherWay, 0, 4), 1e-15);
        Assert.Equal(1, TasteTests.ByChance(TasteTest.PairedEitherWay, 2, 4));

        // Nobody wrong of five: low limit of the answers 0.05^(1/5) = 0.5493, and (0.5493 − 1/3)/(2/3) = 0.3239 tell.
        Quantiles tell = TasteTests.WhoTell(TasteTest.Triangle, 5, 5);
        Near.Equal(0.3239, tell.Low, 0.00005);
        Assert.Equal((1.0, 1.0), (tell.Middle, tell.High));
    }

    // Alike up to x: P(X ≤ x | p₁) by hand. Triangle, 6 tasters, half tell: p₁ = 2/3, P(0) = 1/729, P(≤ 1) = 13/729 = 0.0178, P(≤ 2) = 73/729 = 0.1001.
    [Theory]
    [InlineData(0.001, null)]
    [InlineData(0.01, 0)]
    [InlineData(0.05, 1)]
    [InlineData(0.10, 1)]
    [InlineData(0.11, 2)]
    public void Known_counts_that_show_beers_alike(double missed, int? count) =>
        Assert.Equal(count, TasteTests.AlikeUpTo(TasteTest.Triangle, 6, missed, 0.5));

    [Fact]
    public void Limits_nobody_tells_by_chance()
    {
        Assert.Equal(new Quantiles(0, 0, 0), TasteTests.WhoTell(TasteTest.Triangle, 0, 100) with { High = 0 });
        Assert.Equal(0.05, TasteTests.Power(TasteTest.Triangle, 1000, 0.05, 1.0 / 3), 0.01);
        Assert.Equal(0, TasteTests.Power(TasteTest.Triangle, 2, 0.05, 1));
        Assert.Null(TasteTests.TastersFor(TasteTest.Triangle, 0.8, 0.05, 1.0 / 3));
    }

    [Fact]
    public void Range_what_has_no_meaning_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => TasteTests.CriticalCount(TasteTest.Triangle, 0, 0.05));
        Assert.Throws<ArgumentOutOfRangeException>(() => TasteTests.CriticalCount(TasteTest.Triangle, 10, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => TasteTests.ByChance(TasteTest.Triangle, 11, 10));
        Assert.Throws<ArgumentOutOfRangeException>(() => TasteTests.WhoTell(TasteTest.Triangle, 5, 10, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => TasteTests.Chance((TasteTest)9));
        Assert.Throws<ArgumentOutOfRangeException>(() => TasteTests.Power(TasteTest.Triangle, 10, 0.05, double.NaN));
    }

    [Fact]
    public void Monotone_a_critical_count_is_the_least() =>
        Gen.Select(Gen.Int[1, 300], Gen.Double[0.001, 0.3], Gen.Enum<TasteTest>()).Sample((tasters, risk, test) =>
        {
            if (TasteTests.CriticalCount(test, tasters, risk) is { } count)
            {
                Assert.True(TasteTests.ByChance(test, count, tasters) <= risk);
                Assert.True(count == 0 || TasteTests.ByChance(test, count - 1, tasters) > risk);
            }
            else
            {
                Assert.True(TasteTests.ByChance(test, tasters, tasters) > risk);
            }
        });

    private static double Critical(TasteTest test, int tasters, double risk) => TasteTests.CriticalCount(test, tasters, risk) ?? double.NaN;
}
