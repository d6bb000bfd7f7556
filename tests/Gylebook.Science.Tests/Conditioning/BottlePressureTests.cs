using CsCheck;
using Gylebook.Science.Conditioning;

namespace Gylebook.Science.Tests.Conditioning;

public class BottlePressureTests
{
    // Weiss 1974 × 0.9359, water vapour, no headspace, by another program (formula check); bar, two decimals.
    [Theory]
    [InlineData(2.0, 0.46, 1.50, 2.29, 3.16)]
    [InlineData(2.5, 0.82, 2.12, 3.11, 4.19)]
    [InlineData(3.0, 1.19, 2.74, 3.92, 5.22)]
    [InlineData(3.5, 1.55, 3.36, 4.74, 6.24)]
    [InlineData(4.0, 1.92, 3.99, 5.55, 7.27)]
    [InlineData(5.0, 2.65, 5.23, 7.18, 9.32)]
    public void A_warm_bottle_is_under_pressure(double volumes, double at4, double at20, double at30, double at40)
    {
        Assert.Equal(at4, BottlePressure.GaugeBar(volumes, 4), tolerance: 0.005);
        Assert.Equal(at20, BottlePressure.GaugeBar(volumes, 20), tolerance: 0.005);
        Assert.Equal(at30, BottlePressure.GaugeBar(volumes, 30), tolerance: 0.005);
        Assert.Equal(at40, BottlePressure.GaugeBar(volumes, 40), tolerance: 0.005);
    }

    // The same with 4 % of headspace; two decimals.
    [Theory]
    [InlineData(2.5, 20, 1.98)]
    [InlineData(4.0, 30, 5.20)]
    public void Headspace_relieves_it_a_little(double volumes, double celsius, double bar) =>
        Assert.Equal(bar, BottlePressure.GaugeBar(volumes, celsius, 0.04), tolerance: 0.005);

    // It is fitted to the same chart as the keg's equation: 0.057 and 0.052 volumes at worst, and 0.011 bar
    // of water vapour at 8 °C besides.
    [Fact]
    public void Keg_and_bottle_agree_where_the_chart_reaches() =>
        Gen.Select(Gen.Double[1.5, 4], Gen.Double[0, 7.7]).Sample((volumes, celsius) =>
        {
            double bottle = BottlePressure.GaugeBar(volumes, celsius);
            double keg = KegPressure.GaugeBar(volumes, celsius, 1.01325);
            Assert.Equal(keg, bottle, tolerance: ((0.057 + 0.052) / KegPressure.VolumesPerBar(celsius)) + 0.011);
        });

    [Fact]
    public void Warmer_and_livelier_bottles_are_under_more_pressure() =>
        Gen.Select(Gen.Double[0.5, 5], Gen.Double[0, 39], Gen.Double[0.01, 1], Gen.Double[0, 0.2]).Sample((volumes, celsius, more, headspace) =>
        {
            double here = BottlePressure.GaugeBar(volumes, celsius, headspace);
            Assert.True(BottlePressure.GaugeBar(volumes, celsius + more, headspace) > here);
            Assert.True(BottlePressure.GaugeBar(volumes + more, celsius, headspace) > here);
            Assert.True(BottlePressure.GaugeBar(volumes, celsius, headspace + more) < here);
        });

    [Fact]
    public void What_has_no_meaning_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => BottlePressure.GaugeBar(-1, 20));
        Assert.Throws<ArgumentOutOfRangeException>(() => BottlePressure.GaugeBar(2.5, double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => BottlePressure.GaugeBar(2.5, 20, -0.1));
    }
}
