using CsCheck;
using Gylebook.Science.Conditioning;

namespace Gylebook.Science.Tests.Conditioning;

public class ResidualCarbonDioxideTests
{
    // Table of the home-brewing literature, in °C; read, not fitted: exact.
    [Theory]
    [InlineData(0, 1.7)]
    [InlineData(2, 1.6)]
    [InlineData(4, 1.5)]
    [InlineData(6, 1.4)]
    [InlineData(8, 1.3)]
    [InlineData(10, 1.2)]
    [InlineData(12, 1.12)]
    [InlineData(14, 1.05)]
    [InlineData(16, .99)]
    [InlineData(18, .93)]
    [InlineData(20, .88)]
    [InlineData(22, .83)]
    public void The_table_is_met(double celsius, double volumes) =>
        Assert.Equal(volumes, ResidualCarbonDioxide.VolumesAt(celsius), tolerance: 1e-12);

    // The same literature's table in °F, by another hand. Both are printed to 0.05 or 0.01 and read between lines: half of
    // the coarser step, and 0.01 more for the straight line across 2 °C.
    [Theory]
    [InlineData(32, 1.7)]
    [InlineData(40, 1.45)]
    [InlineData(50, 1.2)]
    [InlineData(60, 1.0)]
    [InlineData(65, .92)]
    [InlineData(70, .85)]
    [InlineData(75, .78)]
    public void The_table_in_fahrenheit_agrees(double fahrenheit, double volumes) =>
        Assert.Equal(volumes, ResidualCarbonDioxide.VolumesAt((fahrenheit - 32) / 1.8), tolerance: 0.035);

    // The table is the solubility in water (Weiss 1974): it is printed to 0.1 below 10 °C: half of that,
    // and 0.01 for the straight line across 2 °C.
    [Fact]
    public void It_is_what_water_holds_under_one_atmosphere() =>
        Gen.Double[0, 22].Sample(celsius => Assert.Equal(
            CarbonDioxideInWater.VolumesUnderOneAtmosphere(celsius), ResidualCarbonDioxide.VolumesAt(celsius), tolerance: 0.06));

    [Fact]
    public void Warm_beer_keeps_less_within_the_table_and_beyond() =>
        Gen.Select(Gen.Double[-2, 40], Gen.Double[0.01, 2]).Sample((celsius, more) =>
            Assert.True(ResidualCarbonDioxide.VolumesAt(celsius + more) < ResidualCarbonDioxide.VolumesAt(celsius)));

    [Theory]
    [InlineData(0)]
    [InlineData(22)]
    public void It_goes_on_without_a_jump_where_the_table_ends(double celsius) =>
        Assert.Equal(ResidualCarbonDioxide.VolumesAt(celsius - 1e-9), ResidualCarbonDioxide.VolumesAt(celsius + 1e-9), tolerance: 1e-8);

    [Theory]
    [InlineData(0, true)]
    [InlineData(22, true)]
    [InlineData(-0.1, false)]
    [InlineData(22.1, false)]
    public void It_says_where_the_table_ends(double celsius, bool within) =>
        Assert.Equal(within, ResidualCarbonDioxide.IsWithinPublishedRange(celsius));

    // In proportion to the air: 84.556 kPa at 1500 m (ISO 2533) over 101.325.
    [Fact]
    public void Thinner_air_keeps_less_in_proportion()
    {
        Assert.Equal(0.88 * 84.556 / 101.325, ResidualCarbonDioxide.VolumesAt(20, 84.556), tolerance: 1e-12);
        Assert.Equal(ResidualCarbonDioxide.VolumesAt(20), ResidualCarbonDioxide.VolumesAt(20, 101.325), tolerance: 1e-12);
        Assert.Throws<ArgumentOutOfRangeException>(() => ResidualCarbonDioxide.VolumesAt(20, -1));
    }

    [Fact]
    public void What_has_no_meaning_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ResidualCarbonDioxide.VolumesAt(double.NaN));
}
