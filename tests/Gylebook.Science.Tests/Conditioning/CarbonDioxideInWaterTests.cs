using CsCheck;
using Gylebook.Science.Conditioning;

namespace Gylebook.Science.Tests.Conditioning;

public class CarbonDioxideInWaterTests
{
    // Weiss 1974 at round temperatures (formula check): five, three and three decimals.
    [Theory]
    [InlineData(0, .07758, 3.370, 1.727)]
    [InlineData(1.04, .07447, 3.234, 1.658)]
    [InlineData(4, .06650, 2.888, 1.480)]
    [InlineData(5, .06408, 2.783, 1.426)]
    [InlineData(10, .05366, 2.331, 1.195)]
    [InlineData(15, .04553, 1.977, 1.013)]
    [InlineData(20, .03910, 1.698, .870)]
    [InlineData(25, .03397, 1.475, .756)]
    [InlineData(30, .02983, 1.296, .664)]
    [InlineData(40, .02370, 1.030, .528)]
    public void The_equation_gives_its_figures(double celsius, double moles, double gramsPerLitreBar, double volumes)
    {
        double k = CarbonDioxideInWater.MolesPerLitreAtmosphere(celsius);
        Assert.Equal(moles, k, tolerance: 0.000005);
        Assert.Equal(gramsPerLitreBar, k * CarbonDioxideInWater.GramsPerMole / 1.01325, tolerance: 0.0005);
        Assert.Equal(volumes, CarbonDioxideInWater.VolumesUnderOneAtmosphere(celsius), tolerance: 0.0005);
    }

    // Murray and Riley 1971, measured (IUPAC-NIST solubility data). Within the 1 % by which the two series differ in the
    // literature.
    [Theory]
    [InlineData(1.04, 1.6471)]
    [InlineData(5, 1.4199)]
    [InlineData(10, 1.1926)]
    [InlineData(15, 1.0100)]
    [InlineData(20, .8652)]
    [InlineData(25, .7519)]
    public void Measured_water_agrees(double celsius, double volumes) =>
        Assert.Equal(1, CarbonDioxideInWater.VolumesUnderOneAtmosphere(celsius) / volumes, tolerance: 0.01);

    [Fact]
    public void Warm_water_holds_less() =>
        Gen.Select(Gen.Double[-1, 39], Gen.Double[0.01, 1]).Sample((celsius, more) =>
            Assert.True(CarbonDioxideInWater.MolesPerLitreAtmosphere(celsius + more) < CarbonDioxideInWater.MolesPerLitreAtmosphere(celsius)));

    [Fact]
    public void What_has_no_meaning_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => CarbonDioxideInWater.MolesPerLitreAtmosphere(double.NaN));
}
