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

    // Wort that runs off evenly is the mean over all times of leaving; against 4000 of them, whose midpoint rule is off by less than 1e-7.
    // Within a slice of h minutes the rate is held: what that misses is at most k1' h²/12. k1' = k1 · 11858/T² · dT/dt
    // = 0.0125 · 0.085 · 0.73 = 0.00078 per minute squared at the start, and less later.
    [Theory]
    [InlineData(5, 0)]
    [InlineData(20, 0)]
    [InlineData(60, 0)]
    [InlineData(20, 0.0136)]
    [InlineData(60, 0.0136)]
    public void Wort_that_runs_off_is_the_mean_of_all_that_left_early_and_late(double minutes, double perMinute)
    {
        const int Many = 4000;
        double Celsius(double t) => WortCooling.AloneCelsius(100, perMinute, t);
        (double alpha, double made, double iso) = (0, 0, 0);
        IsomerisationStep before = IsomerisationStep.None;
        double each = minutes / Many;
        for (int i = 0; i < Many; i++)
        {
            double celsius = Celsius((i + 0.5) * each);
            IsomerisationStep half = before.Then(IsomerisationStep.At(each / 2, celsius));
            (alpha, made, iso) = (alpha + half.AlphaLeft, made + half.IsoFromAlpha, iso + half.IsoLeft);
            before = before.Then(IsomerisationStep.At(each, celsius));
        }

        IsomerisationStep run = IsomerisationStep.RunningOff(minutes, Celsius);
        double slice = Math.Max(0.25, minutes / 60);
        double held = (0.00078 * slice * slice / 12) + 1e-7;
        Assert.Equal(alpha / Many, run.AlphaLeft, tolerance: held);
        Assert.Equal(made / Many, run.IsoFromAlpha, tolerance: held);
        Assert.Equal(iso / Many, run.IsoLeft, tolerance: held);
    }

    [Fact]
    public void Running_off_at_once_changes_nothing_and_slowly_no_more_than_standing_does() =>
        Gen.Select(Gen.Double[0, 400], Gen.Double[60, 100]).Sample((minutes, celsius) =>
        {
            Assert.Equal(IsomerisationStep.None, IsomerisationStep.RunningOff(0, _ => celsius));
            IsomerisationStep run = IsomerisationStep.RunningOff(minutes, _ => celsius);
            IsomerisationStep stood = IsomerisationStep.At(minutes, celsius);
            Assert.InRange(run.AlphaLeft, stood.AlphaLeft - 1e-12, 1 + 1e-12);
            Assert.InRange(run.IsoLeft, stood.IsoLeft - 1e-12, 1 + 1e-12);
            Assert.InRange(run.IsoFromAlpha, -1e-12, 1 - run.AlphaLeft + 1e-12);
        });

    [Fact]
    public void What_has_no_meaning_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => IsomerisationStep.At(-5, 100));
        Assert.Throws<ArgumentOutOfRangeException>(() => IsomerisationStep.Along((7 * 24 * 60) + 1, _ => 90));
        Assert.Throws<ArgumentOutOfRangeException>(() => IsomerisationStep.Along(double.NaN, _ => 90));
    }
}
