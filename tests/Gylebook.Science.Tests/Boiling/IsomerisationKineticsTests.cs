using CsCheck;
using Gylebook.Science.Boiling;

namespace Gylebook.Science.Tests.Boiling;

public class IsomerisationKineticsTests
{
    // Malowicki and Shellhammer 2005: the rate equations worked out at round temperatures (formula check). Each figure
    // to half of its last digit.
    [Theory]
    [InlineData(70, .00078, .000147, 893, 2644, .678, .0621)]
    [InlineData(80, .00207, .000430, 336, 960, .662, .1653)]
    [InlineData(85, .00330, .000718, 210, 591, .654, .2642)]
    [InlineData(90, .00521, .001183, 133.1, 368, .647, .4168)]
    [InlineData(95, .00811, .001924, 85.4, 232.5, .639, .6495)]
    [InlineData(98, .01052, .002559, 65.9, 177.5, .635, .8426)]
    [InlineData(100, .01249, .003087, 55.5, 148.6, .632, 1)]
    [InlineData(110, .02863, .007661, 24.2, 62.9, .618, 2.292)]
    [InlineData(120, .06290, .01815, 11.0, 27.8, .604, 5.036)]
    [InlineData(130, .13291, .04121, 5.2, 12.8, .591, 10.64)]
    public void Rates_follow_the_paper(double celsius, double k1, double k2, double halfLife, double most, double share, double overBoiling)
    {
        Assert.Equal(k1, IsomerisationKinetics.IsomerisationPerMinute(celsius), tolerance: 0.000005);
        Assert.Equal(k2, IsomerisationKinetics.LossPerMinute(celsius), tolerance: celsius >= 120 ? 0.000005 : 0.0000005);
        Assert.Equal(halfLife, IsomerisationKinetics.AlphaAcidHalfLifeMinutes(celsius), tolerance: celsius <= 85 ? 0.5 : 0.05);
        Assert.Equal(most, IsomerisationKinetics.MinutesToMostIsoAlphaAcid(celsius), tolerance: celsius <= 90 ? 0.5 : 0.05);
        double atMost = IsomerisationKinetics.IsoAlphaAcid(IsomerisationKinetics.MinutesToMostIsoAlphaAcid(celsius), celsius);
        Assert.Equal(share, atMost, tolerance: 0.0005);
        double ratio = IsomerisationKinetics.IsomerisationPerMinute(celsius) / IsomerisationKinetics.IsomerisationPerMinute(100);
        Assert.Equal(overBoiling, ratio, tolerance: celsius >= 130 ? 0.005 : celsius >= 110 ? 0.0005 : 0.00005);
    }

    // The integral at a constant temperature, four decimals (formula check).
    [Theory]
    [InlineData(100, 5, .0601)]
    [InlineData(100, 10, .1156)]
    [InlineData(100, 15, .1668)]
    [InlineData(100, 20, .2141)]
    [InlineData(100, 30, .2976)]
    [InlineData(100, 45, .3988)]
    [InlineData(100, 60, .4759)]
    [InlineData(100, 75, .5332)]
    [InlineData(100, 90, .5745)]
    [InlineData(100, 120, .6203)]
    [InlineData(95, 15, .1129)]
    [InlineData(95, 30, .2097)]
    [InlineData(95, 60, .3623)]
    [InlineData(95, 90, .4708)]
    [InlineData(80, 10, .0204)]
    [InlineData(80, 20, .0403)]
    [InlineData(80, 30, .0597)]
    [InlineData(80, 60, .1150)]
    public void Iso_alpha_acid_builds_up(double celsius, double minutes, double share) =>
        Assert.Equal(share, IsomerisationKinetics.IsoAlphaAcid(minutes, celsius), tolerance: 0.00005);

    // The paper's abstract: activation energies of 98.6 and 108.0 kJ/mol, one decimal.
    [Theory]
    [InlineData(true, 98.6)]
    [InlineData(false, 108.0)]
    public void Activation_energies_are_the_printed_ones(bool first, double kilojoulesPerMole)
    {
        Func<double, double> rate = first ? IsomerisationKinetics.IsomerisationPerMinute : IsomerisationKinetics.LossPerMinute;
        double energy = 0.0083144626 * Math.Log(rate(130) / rate(90)) / ((1 / 363.15) - (1 / 403.15));
        Assert.Equal(kilojoulesPerMole, energy, tolerance: 0.05);
    }

    // The paper: losses matter once the boil is longer than two half-lives of the alpha acid.
    [Fact]
    public void Most_of_it_is_there_after_two_to_three_half_lives() =>
        Gen.Double[90, 130].Sample(celsius => Assert.InRange(
            IsomerisationKinetics.MinutesToMostIsoAlphaAcid(celsius) / IsomerisationKinetics.AlphaAcidHalfLifeMinutes(celsius), 2, 3));

    [Fact]
    public void The_closed_form_is_the_solution_of_the_rate_equations() =>
        Gen.Select(Gen.Double[1, 180], Gen.Double[70, 130]).Sample((minutes, celsius) =>
        {
            double k1 = IsomerisationKinetics.IsomerisationPerMinute(celsius);
            double k2 = IsomerisationKinetics.LossPerMinute(celsius);
            const double Step = 1e-3;
            double slope = (IsomerisationKinetics.IsoAlphaAcid(minutes + Step, celsius) - IsomerisationKinetics.IsoAlphaAcid(minutes - Step, celsius)) / (2 * Step);
            double right = (k1 * IsomerisationKinetics.AlphaAcidLeft(minutes, celsius)) - (k2 * IsomerisationKinetics.IsoAlphaAcid(minutes, celsius));
            // The difference quotient is off by step² times the third derivative, at most k³, and by rounding over the step.
            Assert.Equal(right, slope, tolerance: (Step * Step) + (1e-15 / Step));
        });

    [Fact]
    public void Nothing_is_made_out_of_nothing() =>
        Gen.Select(Gen.Double[0, 600], Gen.Double[0, 130]).Sample((minutes, celsius) =>
        {
            double left = IsomerisationKinetics.AlphaAcidLeft(minutes, celsius);
            double made = IsomerisationKinetics.IsoAlphaAcid(minutes, celsius);
            Assert.InRange(left, 0, 1);
            Assert.True(made >= 0);
            Assert.True(left + made <= 1 + 1e-12);
        });

    [Theory]
    [InlineData(90, true)]
    [InlineData(130, true)]
    [InlineData(89.9, false)]
    [InlineData(130.1, false)]
    public void It_says_where_the_measurements_end(double celsius, bool within) =>
        Assert.Equal(within, IsomerisationKinetics.IsWithinPublishedRange(celsius));

    [Theory]
    [InlineData(-1, 100)]
    [InlineData(60, double.NaN)]
    [InlineData(60, -300)]
    public void What_has_no_meaning_is_refused(double minutes, double celsius) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => IsomerisationKinetics.IsoAlphaAcid(minutes, celsius));
}
