using CsCheck;
using Gylebook.Science.Boiling;

namespace Gylebook.Science.Tests.Boiling;

public class WortColourTests
{
    // Morey, letter "Beer's Law": the power law worked out at round values (formula check), two decimals.
    [Theory]
    [InlineData(1, 1.49)]
    [InlineData(5, 4.50)]
    [InlineData(10.5, 7.49)]
    [InlineData(20, 11.65)]
    [InlineData(30, 15.38)]
    [InlineData(50, 21.83)]
    [InlineData(80, 30.14)]
    [InlineData(100, 35.13)]
    [InlineData(160, 48.49)]
    public void Colour_follows_the_power_law(double mcu, double srm) =>
        Assert.Equal(srm, WortColour.SrmOfMaltColourUnits(mcu), tolerance: 0.005);

    // Malt colour units of the same worked grist: 4.5 kg of 3 °L and 0.5 kg of 60 °L in 20 L, two decimals.
    [Fact]
    public void A_grist_gives_its_units_and_its_colour()
    {
        double units = WortColour.MaltColourUnits((4.5 * 3) + (0.5 * 60), 20);
        Assert.Equal(18.15, units, tolerance: 0.005);
        Assert.Equal(10.90, WortColour.SrmOfMaltColourUnits(units), tolerance: 0.005);
    }

    // 8.3454 pounds per gallon in a kilogram per litre: NIST SP 811 factors, four decimals.
    [Fact]
    public void The_factor_from_pounds_per_gallon_is_right() =>
        Assert.Equal(8.3454, WortColour.MaltColourUnits(1, 1), tolerance: 0.00005);

    // ASBC Beer-10, as an instrument maker prints it: an intensity ratio of 100:1 is absorbance 2, and 25.4 SRM.
    [Fact]
    public void Absorbance_two_is_25_4()
    {
        Assert.Equal(25.4, WortColour.SrmOfAbsorbance(2), tolerance: 0.05);
        Assert.Equal(2, WortColour.AbsorbanceOfSrm(25.4), tolerance: 0.05 / 12.7);
    }

    [Fact]
    public void Absorbance_goes_there_and_back() =>
        Gen.Double[0, 500].Sample(srm => Assert.Equal(srm, WortColour.SrmOfAbsorbance(WortColour.AbsorbanceOfSrm(srm)), tolerance: 1e-12 * (1 + srm)));

    [Fact]
    public void More_malt_is_darker_but_less_than_in_proportion() =>
        Gen.Select(Gen.Double[0.1, 150], Gen.Double[1.01, 3]).Sample((mcu, factor) =>
        {
            double once = WortColour.SrmOfMaltColourUnits(mcu);
            double more = WortColour.SrmOfMaltColourUnits(mcu * factor);
            Assert.True(more > once);
            Assert.True(more < once * factor);
        });

    [Fact]
    public void No_malt_has_no_colour() => Assert.Equal(0, WortColour.SrmOfMaltColourUnits(0));

    [Theory]
    [InlineData(0, true)]
    [InlineData(49.9, true)]
    [InlineData(50, false)]
    [InlineData(double.NaN, false)]
    public void It_says_where_the_fit_ends(double srm, bool within) =>
        Assert.Equal(within, WortColour.IsWithinPublishedRange(srm));

    [Fact]
    public void What_has_no_meaning_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => WortColour.SrmOfMaltColourUnits(-1));
        Assert.Throws<ArgumentOutOfRangeException>(() => WortColour.MaltColourUnits(1, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => WortColour.AbsorbanceOfSrm(double.NaN));
    }
}
