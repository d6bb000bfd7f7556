using CsCheck;
using Gylebook.Science.Foods.Doses;

namespace Gylebook.Science.Tests.Foods;

public class BenchTrialTests
{
    // Dilution by hand: 150 µL in 100 mL is 1.5 mL/L; 10 µL in 100 mL is 0.1 mL/L.
    [Theory]
    [InlineData(150, 20, 30)]
    [InlineData(10, 20, 2)]
    [InlineData(0, 20, 0)]
    public void A_dosed_glass_scales_to_the_batch(double microlitres, double litres, double millilitres) =>
        Assert.Equal(millilitres, BenchTrial.BatchMillilitres(microlitres, litres), 1e-12);

    [Fact]
    public void There_and_back_is_the_same() => Gen.Select(Gen.Double[0, 5000], Gen.Double[1, 2000]).Sample((dose, litres) =>
    {
        Assert.Equal(dose, BenchTrial.GlassMicrolitres(BenchTrial.BatchMillilitres(dose, litres), litres), 1e-9);
        Assert.Equal(dose, BenchTrial.GlassMilligrams(BenchTrial.BatchGrams(dose, litres), litres), 1e-9);
    });

    [Fact]
    public void A_ladder_doubles() => Assert.Equal([50, 100, 200, 400], BenchTrial.Ladder(50, 4));

    [Fact]
    public void A_ladder_around_a_dose_has_it_third() => Assert.Equal([37.5, 75, 150, 300], BenchTrial.LadderAround(150));

    // By hand: 0.030 L of 40 % into 20 L of 6 %: 0.03 × 34 / 20.03 = 0.0509.
    [Fact]
    public void Spirit_adds_its_alcohol() => Assert.Equal(0.0509, BenchTrial.AlcoholAdded(0.030, 40, 20, 6), 0.00005);

    [Fact]
    public void Impossible_doses_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => BenchTrial.GlassMicrolitres(1, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => BenchTrial.BatchGrams(-1, 20));
        Assert.Throws<ArgumentOutOfRangeException>(() => BenchTrial.Ladder(0, 4));
        Assert.Throws<ArgumentOutOfRangeException>(() => BenchTrial.AlcoholAdded(1, 101, 20, 5));
    }

    [Theory]
    [InlineData(1, DoseVerdict.Below)]
    [InlineData(4, DoseVerdict.Usual)]
    [InlineData(20, DoseVerdict.Usual)]
    [InlineData(20.1, DoseVerdict.Above)]
    public void A_dose_is_judged_against_the_usual_range(double gramsPerLitre, DoseVerdict verdict) =>
        Assert.Equal(verdict, new DoseGuide(gramsPerLitre, 4, 8, 20).Verdict);

    [Fact]
    public void Without_a_range_nothing_is_said() => Assert.Equal(DoseVerdict.Unknown, new DoseGuide(5, null, null, null).Verdict);
}
