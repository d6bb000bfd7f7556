using CsCheck;
using Gylebook.Science.Liquids;
using Gylebook.Tests.Shared;

namespace Gylebook.Science.Tests.Liquids;

public class EthanolWaterTests
{
    // 60 °F, the temperature of the American tables.
    private const double SixtyFahrenheit = 140.0 / 9;

    public static IEnumerable<object[]> ByMass => RepositoryFile.Numbers(
        "data/liquids/ethanol-by-mass-20c.csv", "percent_by_mass", "density", "gravity_vacuum", "percent_by_volume");

    public static IEnumerable<object[]> ByVolume => RepositoryFile.Numbers(
        "data/liquids/ethanol-by-volume-20c.csv", "percent_by_volume", "percent_by_mass", "density", "grams_per_100_ml");

    public static IEnumerable<object[]> Pharmacopeia => RepositoryFile.Numbers(
        "data/liquids/ethanol-usp29.csv", "percent_by_mass", "percent_by_volume", "gravity");

    // oiml-r22 evaluated; half a unit of the last digit given.
    [Theory, MemberData(nameof(ByMass))]
    public void Rows_by_mass_are_met(double byMass, double density, double gravityInVacuum, double byVolume)
    {
        Near.Equal(density, 1000 * EthanolWater.KilogramsPerLitreAt20C(byMass), 0.0005);
        Near.Equal(density, 1000 * EthanolWater.KilogramsPerLitreAt(byMass, 20), 0.0005);
        Near.Equal(gravityInVacuum, EthanolWater.KilogramsPerLitreAt20C(byMass) / 0.99820123, 0.000005);
        Near.Equal(byVolume, EthanolWater.PercentByVolumeOf(byMass), 0.0005);
    }

    // oiml-r22 evaluated; half a unit of the last digit given.
    [Theory, MemberData(nameof(ByVolume))]
    public void Rows_by_volume_are_met(double byVolume, double byMass, double density, double grams)
    {
        Near.Equal(byMass, EthanolWater.PercentByMassOf(byVolume), 0.00005);
        double found = EthanolWater.KilogramsPerLitreAt20C(EthanolWater.PercentByMassOf(byVolume));
        Near.Equal(density, 1000 * found, 0.0005);
        Near.Equal(grams, found * EthanolWater.PercentByMassOf(byVolume), 0.0005);
    }

    // usp29-alcoholometric, from NBS Bulletin 9: independent. Half a unit of the last digit printed.
    [Theory, MemberData(nameof(Pharmacopeia))]
    public void The_pharmacopeia_agrees(double byMass, double byVolume, double gravity)
    {
        Near.Equal(byVolume, ByVolumeAtSixty(byMass), 0.005);
        Near.Equal(gravity, InAirAtSixty(byMass), 0.00005);
    }

    // usp29-alcoholometric, % by volume to % by mass at 15.56 °C, two decimals printed.
    [Theory]
    [InlineData(1, 0.80)]
    [InlineData(5, 4.00)]
    [InlineData(10, 8.05)]
    [InlineData(20, 16.27)]
    [InlineData(30, 24.67)]
    public void The_pharmacopeia_agrees_the_other_way(double byVolume, double byMass)
    {
        // The printed mass stands for half a unit of its last digit on both sides; the volume must lie between.
        // One row (1 %: 0.795) is printed on the very edge of rounding, hence the last digit of the density.
        Assert.InRange(byVolume, ByVolumeAtSixty(byMass - 0.00505), ByVolumeAtSixty(byMass + 0.00505));
    }

    // Worked example of a published implementation of oiml-r22: 73 % by mass at 15.5 °C is 864.24863 kg/m³.
    [Fact]
    public void A_published_example_off_20_degrees_is_met()
    {
        Near.Equal(864.24863, 1000 * EthanolWater.KilogramsPerLitreAt(73, 15.5), 0.000005);
        Near.Equal(901.42, 1000 * EthanolWater.KilogramsPerLitreAt(57.0998, 15.5), 0.0005);
    }

    // ict-ethanol, a handbook's table, from memory: g/mL over water at 4 °C. Its ethanol is 0.10 kg/m³ heavier than
    // oiml-r22's, its unit 0.03 kg/m³ lighter than ours. Here so that the terms far from 20 °C are held by something.
    [Theory]
    [InlineData(5, 10, 0.99098)]
    [InlineData(5, 30, 0.98670)]
    [InlineData(5, 40, 0.98311)]
    [InlineData(10, 10, 0.98393)]
    [InlineData(10, 30, 0.97875)]
    [InlineData(10, 40, 0.97475)]
    [InlineData(100, 10, 0.79784)]
    [InlineData(100, 30, 0.78075)]
    [InlineData(100, 40, 0.77203)]
    public void A_handbook_agrees_in_the_cold_and_in_the_warm(double byMass, double celsius, double expected) =>
        Near.Equal(expected, EthanolWater.KilogramsPerLitreAt(byMass, celsius), 0.00013);

    // Distilling-trade article: 95 % by volume weighs 0.8114 kg/L and is 92.41 % by mass.
    [Fact]
    public void A_distillers_figure_is_met()
    {
        Near.Equal(92.41, EthanolWater.PercentByMassOf(95), 0.005);
        Near.Equal(0.8114, EthanolWater.KilogramsPerLitreAt20C(EthanolWater.PercentByMassOf(95)), 0.00005);
    }

    // oiml-r22 prints 789.24 for pure ethanol and 998.20 for water; 0.79066 and 0.79041 are their ratios.
    [Fact]
    public void The_ends_are_water_and_ethanol()
    {
        Assert.Equal(1.0, EthanolWater.GravityAt20C(0));
        Assert.Equal(0.0, EthanolWater.PercentByVolumeOf(0));
        Assert.Equal(0.0, EthanolWater.PercentByMassOf(0));
        Near.Equal(789.24, 1000 * EthanolWater.KilogramsPerLitreAt20C(100), 0.005);
        Near.Equal(0.79066, EthanolWater.KilogramsPerLitreAt20C(100) / EthanolWater.KilogramsPerLitreAt20C(0), 0.000005);
        Near.Equal(0.79041, EthanolWater.GravityAt20C(100), 0.000005);

        // 789.239 is the sum of twelve coefficients, printed to 0.0005: 6.4e-5 of a hundred.
        Near.Equal(100, EthanolWater.PercentByVolumeOf(100), 6.4e-5);
        Near.Equal(100, EthanolWater.PercentByMassOf(100), 2 * 6.4e-5);
    }

    // Ratio of ethanol to water at 60 °F: 0.7938 (793.03 kg/m³).
    [Fact]
    public void Ethanol_at_60_fahrenheit_is_the_older_figure()
    {
        double ethanol = EthanolWater.KilogramsPerLitreAt(100, SixtyFahrenheit);
        Near.Equal(793.03, 1000 * ethanol, 0.005);
        Near.Equal(0.7938, ethanol / EthanolWater.KilogramsPerLitreAt(0, SixtyFahrenheit), 0.00005);
    }

    // Water of this formula against our water formula: 0.006 kg/m³ quoted for that one.
    [Fact]
    public void Without_alcohol_it_is_water_at_any_temperature() =>
        Gen.Double[0, 40].Sample(t =>
            Math.Abs(EthanolWater.KilogramsPerLitreAt(0, t) - WaterDensity.KilogramsPerLitreAt(t)) < 0.000006);

    [Fact]
    public void The_short_form_is_the_long_one_at_20_degrees() =>
        Gen.Double[0, 100].Sample(p =>
            Math.Abs(EthanolWater.KilogramsPerLitreAt(p, 20) - EthanolWater.KilogramsPerLitreAt20C(p)) < 1e-15
            && Math.Abs(((1000 * EthanolWater.KilogramsPerLitreAt20C(p)) - 1.2) / 997.00123
                - EthanolWater.GravityAt20C(p)) < 1e-12);

    [Fact]
    public void More_alcohol_is_lighter() =>
        Gen.Double[0, 99.9].Sample(p => EthanolWater.GravityAt20C(p + 0.1) < EthanolWater.GravityAt20C(p));

    [Fact]
    public void Mass_to_volume_and_back_changes_nothing() =>
        Gen.Double[0, 100].Sample(p =>
            Math.Abs(EthanolWater.PercentByMassOf(EthanolWater.PercentByVolumeOf(p)) - p) < 1e-10);

    internal static double ByVolumeAtSixty(double byMass) => byMass
        * EthanolWater.KilogramsPerLitreAt(byMass, SixtyFahrenheit)
        / EthanolWater.KilogramsPerLitreAt(100, SixtyFahrenheit);

    private static double InAirAtSixty(double byMass) =>
        (EthanolWater.KilogramsPerLitreAt(byMass, SixtyFahrenheit) - 0.0012)
        / (EthanolWater.KilogramsPerLitreAt(0, SixtyFahrenheit) - 0.0012);

    /// <summary>Limits: pure spirit is pure by either count, and comes back so.</summary>
    [Fact]
    public void Pure_ethanol_is_all_of_it_by_mass_and_by_volume()
    {
        Assert.Equal(100, EthanolWater.PercentByVolumeOf(100), 1e-9);
        Assert.Equal(100, EthanolWater.PercentByMassOf(100), 1e-9);
    }
}
