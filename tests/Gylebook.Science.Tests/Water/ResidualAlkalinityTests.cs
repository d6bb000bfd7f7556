using CsCheck;
using Gylebook.Science.Water;

namespace Gylebook.Science.Tests.Water;

public class ResidualAlkalinityTests
{
    private const double Chalk = HardnessUnits.MilligramsCalciumCarbonate;

    [Theory] // Kolbach (1953), alkalinity as CaCO3, worked by hand: mg/L as CaCO3, mEq/L, dH
    [InlineData(250, 100, 10, 172.77, 3.452, 9.68)]
    [InlineData(100, 50, 5, 61.38, 1.227, 3.44)]
    [InlineData(12.3, 7, 2, 6.13, 0.122, 0.34)]
    [InlineData(164.032, 270, 60, -63.91, -1.277, -3.58)] // Burton, HCO3 200
    public void Residual_alkalinity_follows_Kolbach(
        double asChalk, double calcium, double magnesium, double residual, double milliequivalents, double german)
    {
        IonProfile water = new(calcium, magnesium, bicarbonate: asChalk * Chalk * Ion.Bicarbonate.EquivalentWeight());
        double ra = ResidualAlkalinity.Of(water);
        Assert.Equal(residual, ra / Chalk, 0.0051);
        Assert.Equal(milliequivalents, ra, 0.00051);
        Assert.Equal(german, ra / HardnessUnits.GermanDegree, 0.0051);
    }

    [Fact] // a published worked example, Hong Kong: 23.07 mg/L as CaCO3
    public void Hong_Kong_agrees_with_print() =>
        Assert.Equal(23.07, ResidualAlkalinity.FromMilliequivalents(27 * Chalk, 13 * Chalk, 1.5 * Chalk) / Chalk, 0.0051);

    [Fact] // a published worked example, Berlin: hardness 10.02 and 1.25 dH take away 3.04
    public void Berlin_agrees_with_print() =>
        Assert.Equal(-3.04, ResidualAlkalinity.FromMilliequivalents(0, 10.02, 1.25), 0.0051);

    [Fact] // Kolbach (1953): 0.3 pH for 10 dH
    public void Ten_degrees_raise_kettle_wort_by_three_tenths() =>
        Assert.Equal(0.0841, ResidualAlkalinity.KettleWortPhPerMilliequivalent, 0.000051);

    [Fact]
    public void Calcium_never_raises_it() =>
        Gen.Select(Gen.Double[0, 300], Gen.Double[0, 300], Gen.Double[0, 100]).Sample((bicarbonate, calcium, more) =>
            ResidualAlkalinity.Of(new(calcium: calcium + more, bicarbonate: bicarbonate))
                <= ResidualAlkalinity.Of(new(calcium: calcium, bicarbonate: bicarbonate)));
}
