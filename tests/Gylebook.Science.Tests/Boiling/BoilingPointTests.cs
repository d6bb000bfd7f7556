using CsCheck;
using Gylebook.Science.Boiling;

namespace Gylebook.Science.Tests.Boiling;

public class BoilingPointTests
{
    // ISO 2533 / ICAO standard atmosphere, three decimals of a kPa. Its own constants are rounded to six figures, and the
    // power multiplies that to 1e-6 × 5: below the last digit.
    [Theory]
    [InlineData(0, 101.325)]
    [InlineData(1000, 89.875)]
    [InlineData(2000, 79.495)]
    [InlineData(3000, 70.109)]
    public void Pressure_falls_as_the_standard_atmosphere_says(double metres, double kilopascals) =>
        Assert.Equal(kilopascals, BoilingPoint.PressureKilopascals(metres), tolerance: 0.0005);

    // The two equations and the kinetics worked out together at round heights (formula check); half of the last digit.
    [Theory]
    [InlineData(0, 101.325, 100.00, 1.000, .4758)]
    [InlineData(300, 97.773, 99.00, .918, .4535)]
    [InlineData(500, 95.461, 98.34, .868, .4384)]
    [InlineData(1000, 89.875, 96.68, .752, .4004)]
    [InlineData(1500, 84.556, 95.02, .651, .3628)]
    [InlineData(2000, 79.495, 93.36, .562, .3264)]
    [InlineData(2500, 74.683, 91.70, .485, .2917)]
    [InlineData(3000, 70.109, 90.03, .418, .2591)]
    public void Higher_up_wort_boils_cooler_and_bitters_slower(double metres, double kilopascals, double celsius, double rate, double share)
    {
        Assert.Equal(kilopascals, BoilingPoint.PressureKilopascals(metres), tolerance: 0.0005);
        double boils = BoilingPoint.CelsiusAt(metres);
        Assert.Equal(celsius, boils, tolerance: 0.005);
        double ratio = IsomerisationKinetics.IsomerisationPerMinute(boils) / IsomerisationKinetics.IsomerisationPerMinute(100);
        Assert.Equal(rate, ratio, tolerance: 0.0005);
        Assert.Equal(share, IsomerisationKinetics.IsoAlphaAcid(60, boils), tolerance: 0.00005);
    }

    // Steam tables: water boils at 89.9 to 90.0 °C under 70.11 kPa; the stated accuracy of the equation is 0.1 °C.
    [Fact]
    public void Steam_tables_agree() => Assert.InRange(BoilingPoint.CelsiusUnder(70.11), 89.9 - 0.1, 90.0 + 0.1);

    [Fact]
    public void Pressure_and_boiling_point_are_each_others_way_back() =>
        Gen.Double[1, 100].Sample(celsius =>
            Assert.Equal(celsius, BoilingPoint.CelsiusUnder(BoilingPoint.VapourKilopascals(celsius)), tolerance: 1e-9));

    [Fact]
    public void Higher_is_always_cooler() =>
        Gen.Select(Gen.Double[-400, 9000], Gen.Double[1, 1000]).Sample((metres, more) =>
            Assert.True(BoilingPoint.CelsiusAt(metres + more) < BoilingPoint.CelsiusAt(metres)));

    [Fact]
    public void What_has_no_meaning_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => BoilingPoint.PressureKilopascals(20000));
        Assert.Throws<ArgumentOutOfRangeException>(() => BoilingPoint.CelsiusUnder(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => BoilingPoint.VapourKilopascals(double.NaN));
    }
}
