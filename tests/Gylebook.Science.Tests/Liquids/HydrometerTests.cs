using CsCheck;
using Gylebook.Science.Liquids;
using Gylebook.Science.Quantities;
using Gylebook.Tests.Shared;

namespace Gylebook.Science.Tests.Liquids;

public class HydrometerTests
{
    public static IEnumerable<object[]> FifteenDegrees => RepositoryFile.Numbers(
        "data/liquids/hydrometer-15c.csv", "celsius", "printed", "correction", "water_only", "with_glass");

    public static IEnumerable<object[]> Expansion => RepositoryFile.Numbers(
        "data/liquids/sucrose-density-15c.csv", "plato", "density_15c", "density_20c", "needed");

    // Both forms evaluated at a 20 °C instrument; half a unit of the fourth decimal.
    [Theory]
    [InlineData(5, 1.0485, 1.0482)]
    [InlineData(10, 1.0487, 1.0484)]
    [InlineData(15, 1.0492, 1.0491)]
    [InlineData(25, 1.0511, 1.0512)]
    [InlineData(30, 1.0524, 1.0527)]
    [InlineData(35, 1.0540, 1.0544)]
    [InlineData(40, 1.0558, 1.0563)]
    [InlineData(50, 1.0600, 1.0608)]
    [InlineData(60, 1.0650, 1.0660)]
    public void A_reading_of_1_050_is_corrected(double celsius, double withGlass, double waterOnly)
    {
        var reading = SpecificGravity.FromRatio(1.050);
        var sample = Temperature.FromCelsius(celsius);
        var marked = Temperature.FromCelsius(20);
        Near.Equal(withGlass, Hydrometer.Corrected(1.050, celsius, 20), 0.00005);
        Near.Equal(withGlass, Hydrometer.Corrected(reading, sample, marked).Ratio, 0.00005);
        Near.Equal(waterOnly, Hydrometer.CorrectedForWaterOnly(1.050, celsius, 20), 0.00005);
        Near.Equal(waterOnly, Hydrometer.CorrectedForWaterOnly(reading, sample, marked).Ratio, 0.00005);
    }

    // As above.
    [Theory]
    [InlineData(15, 1.0092)]
    [InlineData(25, 1.0110)]
    [InlineData(30, 1.0123)]
    [InlineData(40, 1.0156)]
    public void A_reading_of_1_010_is_corrected(double celsius, double expected) =>
        Near.Equal(expected, Hydrometer.Corrected(1.010, celsius, 20), 0.00005);

    // A published table for 15 °C, hobby literature; it is the water-only form to one unit of its last
    // digit, 0.0001, when both are printed; against the unrounded form half a unit more.
    [Theory, MemberData(nameof(FifteenDegrees))]
    public void The_published_table_is_water_at_reading_one(
        double celsius, double printed, double correction, double waterOnly, double withGlass)
    {
        Near.Equal(correction, waterOnly, 0.0001);
        Near.Equal(correction, Hydrometer.CorrectedForWaterOnly(1, celsius, 15) - 1, 0.00015);
        Near.Equal(waterOnly, Hydrometer.CorrectedForWaterOnly(1, celsius, 15) - 1, 0.00005);
        Near.Equal(withGlass, Hydrometer.Corrected(1.040, celsius, 15) - 1.040, 0.00005);
        Near.Equal(Math.Abs(correction), printed, 0);
    }

    // As printed, without the sign, the cold rows would push the reading the wrong way.
    [Fact]
    public void Cold_rows_of_the_published_table_lack_their_minus_sign()
    {
        double[][] cold = [.. FifteenDegrees.Select(row => row.Cast<double>().ToArray()).Where(row => row[0] < 15)];
        Assert.Equal(3, cold.Length);
        Assert.All(cold, row => Assert.True(
            row[1] > 0 && Hydrometer.CorrectedForWaterOnly(1, row[0], 15) < 1));
    }

    // A published polynomial in °F, hobby literature, is the water-only form for a 60 °F instrument. Rows at reading
    // 1.050: the polynomial's correction and both of ours, fourth decimal.
    [Theory]
    [InlineData(77, 0.0020, 0.0021, 0.0018)]
    [InlineData(100, 0.0061, 0.0063, 0.0057)]
    [InlineData(140, 0.0168, 0.0169, 0.0157)]
    public void The_published_polynomial_is_close(double fahrenheit, double polynomial, double waterOnly, double withGlass)
    {
        double celsius = (fahrenheit - 32) / 1.8;
        double marked = 28 / 1.8;
        Near.Equal(polynomial, (1.050 * Water(fahrenheit) / Water(60)) - 1.050, 0.00005);
        Near.Equal(waterOnly, Hydrometer.CorrectedForWaterOnly(1.050, celsius, marked) - 1.050, 0.00005);
        Near.Equal(withGlass, Hydrometer.Corrected(1.050, celsius, marked) - 1.050, 0.00005);
    }

    // torun-sucrose: what a 20 °C instrument at 15 °C would need. Ours assumes that wort swells like water; the stated
    // error of that is 0.0005 for 5 K. The strongest row (30 °P, beyond brewing) is 0.0006 off.
    [Theory, MemberData(nameof(Expansion))]
    public void Wort_swells_more_than_water_by_no_more_than_stated(
        double plato, double density15, double density20, double needed)
    {
        double truth = density20 / 998.234;
        double reading = density15 * (1 - (Hydrometer.GlassExpansionPerKelvin * 5)) / 998.234;
        Near.Equal(needed, truth - reading, 0.00005);
        double found = Hydrometer.Corrected(reading, 15, 20) - reading;
        Near.Equal(truth - reading, found, plato <= 20 ? 0.0005 : 0.0007);
        Assert.True(plato == 0 || found > truth - reading);
    }

    [Fact]
    public void At_the_marked_temperature_the_reading_stands() =>
        Gen.Select(Gen.Double[0.99, 1.12], Gen.Double[5, 40]).Sample((reading, celsius) =>
            Math.Abs(Hydrometer.Corrected(reading, celsius, celsius) - reading) < 1e-15);

    // From 10 °C: nearer to 4 °C water hardly swells and the glass has the upper hand.
    [Fact]
    public void The_warmer_the_sample_the_higher_the_correction() =>
        Gen.Double[10, 79].Sample(t =>
            Hydrometer.Corrected(1.05, t + 1, 20) > Hydrometer.Corrected(1.05, t, 20));

    [Theory]
    [InlineData(-1, false)]
    [InlineData(20, true)]
    [InlineData(40, true)]
    [InlineData(40.1, false)]
    public void It_says_when_to_cool_the_sample(double celsius, bool expected)
    {
        Assert.Equal(expected, Hydrometer.IsCoolEnough(celsius));
        Assert.Equal(expected, Hydrometer.IsCoolEnough(Temperature.FromCelsius(celsius)));
    }

    private static double Water(double f) =>
        1.00130346 - (1.34722124e-4 * f) + (2.04052596e-6 * f * f) - (2.32820948e-9 * f * f * f);
}
