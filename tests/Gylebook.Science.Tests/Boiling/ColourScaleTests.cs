using Gylebook.Science.Boiling;
using Gylebook.Science.Quantities;

namespace Gylebook.Science.Tests.Boiling;

/// <summary>EBC, SRM and Lovibond, for malt and for beer.</summary>
public class ColourScaleTests
{
    // ASBC Beer-10 and EBC 9.6: SRM = 12.7·A, EBC = 25·A; two decimals.
    [Theory]
    [InlineData(2, 3.94)]
    [InlineData(10, 19.69)]
    [InlineData(20, 39.37)]
    [InlineData(40, 78.74)]
    public void A_beer_in_both_scales(double srm, double ebc) =>
        Assert.Equal(ebc, BeerColour.FromSrm(srm).Ebc, tolerance: 0.005);

    // Printed by an instrument maker: light weakened a hundredfold is absorbance 2, SRM 25.4.
    [Fact]
    public void A_hundredfold_weaker_light() => Assert.Equal(25.4, WortColour.SrmOfAbsorbance(Math.Log10(100)), tolerance: 0.05);

    // EBC = 2.65·°L − 1.2 (common practice, no source), one decimal.
    [Theory]
    [InlineData(2, 4.1)]
    [InlineData(10, 25.3)]
    [InlineData(60, 157.8)]
    public void A_malt_in_both_scales(double lovibond, double ebc) =>
        Assert.Equal(ebc, MaltColour.FromLovibond(lovibond).Ebc, tolerance: 0.05);

    // A second rule for malt, SRM of the laboratory wort = 1.3546·°L − 0.76 (from memory), was found on its own; with 25/12.7 the
    // two part by 0.7 EBC at most to 60 °L, less than certificates differ from one laboratory to the next.
    [Theory]
    [InlineData(2)]
    [InlineData(10)]
    [InlineData(40)]
    [InlineData(60)]
    public void Two_rules_for_malt_agree(double lovibond)
    {
        double second = BeerColour.FromSrm((1.3546 * lovibond) - 0.76).Ebc;
        Assert.InRange(MaltColour.FromLovibond(lovibond).Ebc - second, -0.75, 0.75);
    }
}
