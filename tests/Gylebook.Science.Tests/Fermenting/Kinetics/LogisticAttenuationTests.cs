using CsCheck;
using Gylebook.Science.Fermenting.Kinetics;
using Gylebook.Tests.Shared;

namespace Gylebook.Science.Tests.Fermenting.Kinetics;

public class LogisticAttenuationTests
{
    // By hand from the equation (formula check), four decimals; the fastest fall and the hour of 95 % likewise.
    [Theory]
    [InlineData(12, 2.5, -0.10, 36, 0, 11.7473)]
    [InlineData(12, 2.5, -0.10, 36, 12, 11.2099)]
    [InlineData(12, 2.5, -0.10, 36, 24, 9.8010)]
    [InlineData(12, 2.5, -0.10, 36, 36, 7.2500)]
    [InlineData(12, 2.5, -0.10, 36, 48, 4.6990)]
    [InlineData(12, 2.5, -0.10, 36, 72, 2.7527)]
    [InlineData(12, 2.5, -0.10, 36, 96, 2.5235)]
    [InlineData(14.8, 3.4, -0.062, 52, 0, 14.3637)]
    [InlineData(14.8, 3.4, -0.062, 52, 12, 13.9191)]
    [InlineData(14.8, 3.4, -0.062, 52, 24, 13.0920)]
    [InlineData(14.8, 3.4, -0.062, 52, 36, 11.7161)]
    [InlineData(14.8, 3.4, -0.062, 52, 48, 9.8032)]
    [InlineData(14.8, 3.4, -0.062, 52, 72, 5.9586)]
    [InlineData(14.8, 3.4, -0.062, 52, 96, 4.0993)]
    [InlineData(11, 2.2, -0.045, 70, 0, 10.6384)]
    [InlineData(11, 2.2, -0.045, 70, 72, 6.4021)]
    [InlineData(11, 2.2, -0.045, 70, 168, 2.3057)]
    public void Known_values(double start, double end, double slope, double middle, double hours, double plato) =>
        Near.Equal(plato, new LogisticAttenuation(start, end, slope, middle).At(hours), 0.00005);

    [Theory]
    [InlineData(12, 2.5, -0.10, 36, 0.2375, 65.44)]
    [InlineData(14.8, 3.4, -0.062, 52, 0.1767, 99.49)]
    public void Known_the_fastest_fall_and_the_hour_of_95_percent(double start, double end, double slope, double middle, double fall, double hours)
    {
        LogisticAttenuation curve = new(start, end, slope, middle);
        Near.Equal(fall, curve.FastestFall, 0.00005);
        Near.Equal(-fall, curve.ChangeAt(middle), 0.00005);
        Near.Equal(hours, curve.HoursUntil(0.95), 0.005);
    }

    [Fact]
    public void Roundtrip_and_slope() =>
        Gen.Select(Gen.Double[8, 20], Gen.Double[1, 5], Gen.Double[0.02, 0.3], Gen.Double[10, 90], Gen.Double[0.02, 0.98]).Sample((start, end, slope, middle, share) =>
        {
            LogisticAttenuation curve = new(start, end, -slope, middle);
            double hours = curve.HoursUntil(share);
            Assert.Equal(start - (share * (start - end)), curve.At(hours), 1e-9);
            Assert.Equal(hours, curve.HoursAt(curve.At(hours)), 1e-6);
            Assert.Equal((curve.At(hours + 1e-3) - curve.At(hours - 1e-3)) / 2e-3, curve.ChangeAt(hours), 1e-6);
        });

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(double.NaN)]
    public void What_has_no_meaning_is_refused(double share) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new LogisticAttenuation(12, 2, -0.1, 36).HoursUntil(share));
}
