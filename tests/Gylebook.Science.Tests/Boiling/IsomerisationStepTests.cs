using CsCheck;
using Gylebook.Science.Boiling;

namespace Gylebook.Science.Tests.Boiling;

public class IsomerisationStepTests
{
    // Another solver (fourth-order Runge-Kutta, worked out beforehand) with Malowicki and Shellhammer's rates and the cooling law
    // T = 53.70·e^(−0.0136 t) + 319.55 K. Printed to four decimals; our slices add at most 0.00002
    // (against slices fifty times thinner).
    private const double Rounding = 0.00005 + 0.00002;

    private static double Alone(double minutes) => WortCooling.AloneCelsius(53.70 + 319.55 - 273.15, 0.0136, minutes);

    [Fact]
    public void An_hour_of_boil_and_twenty_minutes_of_cooling()
    {
        IsomerisationStep boil = IsomerisationStep.At(60, 100);
        Assert.Equal(0.4726, boil.AlphaLeft, tolerance: Rounding);
        Assert.Equal(0.4759, boil.IsoFromAlpha, tolerance: Rounding);
        IsomerisationStep all = boil.Then(IsomerisationStep.Along(20, Alone));
        Assert.Equal(0.4075, all.AlphaLeft, tolerance: Rounding);
        Assert.Equal(0.5235, all.IsoFromAlpha, tolerance: Rounding);
    }

    [Fact]
    public void At_knock_out_and_twenty_minutes_of_cooling() =>
        Assert.Equal(0.1354, IsomerisationStep.Along(20, Alone).IsoFromAlpha, tolerance: Rounding);

    [Fact]
    public void A_quarter_of_an_hour_then_cooling_alone_then_a_chiller()
    {
        double warm = Alone(20);
        IsomerisationStep all = IsomerisationStep.At(15, 100)
            .Then(IsomerisationStep.Along(20, Alone))
            .Then(IsomerisationStep.Along(20, t => WortCooling.TowardsCelsius(warm, 15, 0.15, t)));
        Assert.Equal(0.2765, all.IsoFromAlpha, tolerance: Rounding);
    }

    [Fact]
    public void One_step_after_another_is_the_whole_at_once() =>
        Gen.Select(Gen.Double[0, 90], Gen.Double[0, 90], Gen.Double[60, 110]).Sample((first, second, celsius) =>
        {
            IsomerisationStep parted = IsomerisationStep.At(first, celsius).Then(IsomerisationStep.At(second, celsius));
            IsomerisationStep whole = IsomerisationStep.At(first + second, celsius);
            Assert.Equal(whole.AlphaLeft, parted.AlphaLeft, tolerance: 1e-12);
            Assert.Equal(whole.IsoFromAlpha, parted.IsoFromAlpha, tolerance: 1e-12);
            Assert.Equal(whole.IsoLeft, parted.IsoLeft, tolerance: 1e-12);
        });

    [Fact]
    public void Nothing_is_made_from_nothing_and_no_more_than_there_was() =>
        Gen.Select(Gen.Double[0, 400], Gen.Double[0, 130]).Sample((minutes, celsius) =>
        {
            IsomerisationStep step = IsomerisationStep.At(minutes, celsius);
            Assert.InRange(step.IsoFromAlpha, 0, 1 - step.AlphaLeft + 1e-12);
            Assert.InRange(step.IsoLeft, 0, 1);
        });

    [Fact]
    public void What_has_no_meaning_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => IsomerisationStep.At(-5, 100));
        Assert.Throws<ArgumentOutOfRangeException>(() => IsomerisationStep.Along(501, _ => 90));
        Assert.Throws<ArgumentOutOfRangeException>(() => IsomerisationStep.Along(double.NaN, _ => 90));
    }
}
