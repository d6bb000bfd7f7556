using Gylebook.Science.Fermenting.Kinetics;
using Gylebook.Tests.Shared;

namespace Gylebook.Science.Tests.Fermenting.Kinetics;

public class DiacetylReductionTests
{
    // Computed elsewhere from the constants of 2007 with 180 mol/m³ of yeast, one decimal.
    [Theory]
    [InlineData(10.5, 53.7)]
    [InlineData(12, 32.3)]
    [InlineData(15, 11.9)]
    public void Known_half_lives(double celsius, double hours) => Near.Equal(hours, DiacetylReduction.HalfLifeHours(celsius), 0.05);

    [Fact]
    public void Limits_halving_twice_takes_two_half_lives_and_what_is_low_takes_none()
    {
        Assert.Equal(2 * DiacetylReduction.HalfLifeHours(12), DiacetylReduction.Hours(0.4, 0.1, 12), 1e-9);
        Assert.Equal(0, DiacetylReduction.Hours(0.05, 0.1, 12));
        Assert.Equal(DiacetylReduction.HalfLifeHours(12) * 2, DiacetylReduction.HalfLifeHours(12, DiacetylReduction.UsualYeast / 2), 1e-9);
    }

    [Fact]
    public void What_has_no_meaning_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => DiacetylReduction.HalfLifeHours(12, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => DiacetylReduction.Hours(0, 0.1, 12));
    }
}
