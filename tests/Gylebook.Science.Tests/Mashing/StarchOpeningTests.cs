using CsCheck;
using Gylebook.Science.Mashing;

namespace Gylebook.Science.Tests.Mashing;

/// <summary>How fast barley malt's starch opens: Brandam et al. 2003, from memory.</summary>
public sealed class StarchOpeningTests
{
    // The step of the published constants at 60 °C, worked out beforehand: 0.00143 per second below, 0.00324 above. R is 8.314 here and was
    // rounded alike or not, and so was the kelvin: with an exponent of 80, four parts in ten thousand of it are 3 % of the rate.
    [Theory]
    [InlineData(59.999999, 0.00143)]
    [InlineData(60, 0.00324)]
    public void Known_the_step_at_sixty(double celsius, double perSecond) =>
        Assert.Equal(perSecond, StarchOpening.PerMinute(celsius) / 60, tolerance: 0.03 * perSecond);

    [Fact]
    public void Monotone_hotter_is_faster() => Gen.Select(Gen.Double[20, 95], Gen.Double[0.01, 5]).Sample((celsius, more) =>
        Assert.True(StarchOpening.PerMinute(celsius + more) > StarchOpening.PerMinute(celsius)));

    [Fact]
    public void Limits_half_an_hour_at_62_opens_all_and_an_hour_at_40_hardly_any()
    {
        Assert.True(1 - Math.Exp(-30 * StarchOpening.PerMinute(62)) > 0.999);
        Assert.True(1 - Math.Exp(-60 * StarchOpening.PerMinute(40)) < 0.05);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(300)]
    public void What_has_no_meaning_is_refused(double celsius) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => StarchOpening.PerMinute(celsius));
}
