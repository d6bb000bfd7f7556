using CsCheck;
using Gylebook.Science.Conditioning;
using Gylebook.Science.Numerics.Distributions;
using Gylebook.Tests.Shared;

namespace Gylebook.Science.Tests.Conditioning;

public class BurstCarbonationTests
{
    private const double SeaLevel = 1.01325;

    // Computed elsewhere from the keg equation and the law, from 0.86 volumes: C* to three decimals, days to the printed figures.
    [Theory]
    [InlineData(38, 11.25, 2.508, 2.375, 3.8, 6.3, 12.6, 0.05)]
    [InlineData(38, 25, 3.837, 2.5, 1.20, 2.00, 4.00, 0.005)]
    [InlineData(38, 30, 4.320, 2.5, 0.96, 1.61, 3.21, 0.005)]
    [InlineData(38, 40, 5.287, 2.5, 0.69, 1.16, 2.31, 0.005)]
    [InlineData(34, 30, 4.680, 2.5, 0.84, 1.40, 2.80, 0.005)]
    [InlineData(45, 9, 1.998, 1.90, 3.7, 6.1, 12.3, 0.05)]
    [InlineData(68, 30, 2.466, 2.2, 2.7, 4.5, 9.0, 0.05)]
    public void Known_days(double fahrenheit, double psi, double end, double wanted, double fast, double likely, double slow, double half)
    {
        double reached = KegPressure.VolumesAt(psi * KegPressure.BarPerPsi, (fahrenheit - 32) / 1.8, SeaLevel);
        Near.Equal(end, reached, 0.0005);
        Quantiles time = BurstCarbonation.TimeDays(BurstCarbonation.UsualDepthMetres);
        Near.Equal(fast, BurstCarbonation.DaysUntil(0.86, end, wanted, time.Low), half);
        Near.Equal(likely, BurstCarbonation.DaysUntil(0.86, end, wanted, time.Middle), half);
        Near.Equal(slow, BurstCarbonation.DaysUntil(0.86, end, wanted, time.High), half);
    }

    [Fact]
    public void Known_half_a_keg_takes_half_the_time()
    {
        Assert.Equal(2.5, BurstCarbonation.TimeDaysOf(19).Middle, 1e-12);
        Assert.Equal(1.25, BurstCarbonation.TimeDaysOf(9.5).Middle, 1e-12);
    }

    [Fact]
    public void Limits_it_starts_at_the_start_and_ends_at_the_end()
    {
        Assert.Equal(0.86, BurstCarbonation.VolumesAfter(0.86, 4, 0, 2.5), 1e-12);
        Assert.Equal(4, BurstCarbonation.VolumesAfter(0.86, 4, 1000, 2.5), 1e-9);
        Assert.Equal(0, BurstCarbonation.DaysUntil(0.86, 4, 0.86, 2.5));
        Assert.Equal(double.PositiveInfinity, BurstCarbonation.DaysUntil(0.86, 4, 4, 2.5));
        Assert.Equal(double.PositiveInfinity, BurstCarbonation.DaysUntil(0.86, 4, 0.5, 2.5));

        // Beer that holds more than the gas keeps gives some off.
        Assert.InRange(BurstCarbonation.VolumesAfter(3, 2, 1, 2.5), 2, 3);
    }

    [Fact]
    public void Roundtrip_and_monotone() =>
        Gen.Select(Gen.Double[0.3, 1.5], Gen.Double[1.6, 6], Gen.Double[0.01, 20], Gen.Double[0.1, 10]).Sample((start, end, days, time) =>
        {
            double volumes = BurstCarbonation.VolumesAfter(start, end, days, time);
            Assert.True(volumes > start && volumes <= end);
            if (end - volumes > 1e-6)
            {
                Assert.Equal(days, BurstCarbonation.DaysUntil(start, end, volumes, time), 1e-6);
            }
        });

    /// <summary>At rest the band is the three times; shaken it goes up to where the gas would bring it, and no further.</summary>
    [Fact]
    public void Known_a_shaken_keg_is_told_as_a_band()
    {
        Quantiles still = BurstCarbonation.After(0.86, 5.287, 12, 19, false), shaken = BurstCarbonation.After(0.86, 5.287, 12, 19, true);
        Assert.True(still.Low < still.Middle && still.Middle < still.High && still.High < 5.287);
        Assert.Equal(still.Low, shaken.Low);
        Assert.Equal(5.287, shaken.High);
        Quantiles losing = BurstCarbonation.After(3, 2, 12, 19, false);
        Assert.True(losing.Low < losing.Middle && losing.Middle < losing.High);
    }

    [Fact]
    public void What_has_no_meaning_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => BurstCarbonation.TimeDaysOf(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => BurstCarbonation.VolumesAfter(0.8, 4, -1, 2));
        Assert.Throws<ArgumentOutOfRangeException>(() => BurstCarbonation.VolumesAfter(0.8, 4, 1, 0));
    }
}
