using CsCheck;
using Gylebook.Science.Conditioning;

namespace Gylebook.Science.Tests.Conditioning;

public class PackageCarbonationTests
{
    // Stoichiometry with IUPAC masses, four decimals; and grams per litre for one volume of 1.9635 g/L, two decimals.
    [Theory]
    [InlineData(PrimingSugar.Sucrose, .5143, 3.82)]
    [InlineData(PrimingSugar.Maltose, .5143, 3.82)]
    [InlineData(PrimingSugar.Glucose, .4886, 4.02)]
    [InlineData(PrimingSugar.Fructose, .4886, 4.02)]
    [InlineData(PrimingSugar.GlucoseMonohydrate, .4442, 4.42)]
    public void Sugar_gives_its_gas(PrimingSugar sugar, double gramsPerGram, double gramsPerLitreAndVolume)
    {
        Assert.Equal(gramsPerGram, PackageCarbonation.GramsPerGram(sugar), tolerance: 0.00005);
        Assert.Equal(gramsPerLitreAndVolume, PackageCarbonation.PrimingGrams(sugar, 1, 1, 0), tolerance: 0.005);
    }

    // 9 % of the monohydrate is water: two technical articles of the home-brewing literature say so; whole per cent.
    [Fact]
    public void Dextrose_as_sold_is_nine_per_cent_water() =>
        Assert.Equal(0.91, PackageCarbonation.FromGlucoseMonohydrate / PackageCarbonation.FromHexose, tolerance: 0.005);

    // Water of hydrolysis: 1 g of maltose becomes 1/0.950 g of hexose, and maltotriose lacks 0.018 of its mass against
    // maltose (three decimals): gas is in proportion.
    [Fact]
    public void Gas_follows_the_hexose_in_each_sugar()
    {
        Assert.Equal(0.950, PackageCarbonation.GramsPerGram(PrimingSugar.Glucose) / PackageCarbonation.GramsPerGram(PrimingSugar.Maltose), tolerance: 0.0005);
        Assert.Equal(1.018, PackageCarbonation.GramsPerGram(PrimingSugar.Maltotriose) / PackageCarbonation.GramsPerGram(PrimingSugar.Maltose), tolerance: 0.0005);
    }

    // Worked out by hand with the residual gas of the common quadratic in °F (formula check); one decimal.
    [Theory]
    [InlineData(PrimingSugar.Sucrose, 20, 2.4, 20, 117.5)]
    [InlineData(PrimingSugar.GlucoseMonohydrate, 20, 2.4, 20, 136.0)]
    [InlineData(PrimingSugar.Sucrose, 20, 2.2, 12, 82.7)]
    [InlineData(PrimingSugar.Glucose, 23, 2.8, 18, 174.2)]
    [InlineData(PrimingSugar.Sucrose, 10, 3.2, 22, 91.1)]
    public void Priming_comes_out(PrimingSugar sugar, double litres, double volumes, double celsius, double grams)
    {
        double fahrenheit = (celsius * 1.8) + 32;
        double residual = 3.0378 - (0.050062 * fahrenheit) + (0.00026555 * fahrenheit * fahrenheit);
        Assert.Equal(grams, PackageCarbonation.PrimingGrams(sugar, litres, volumes, residual), tolerance: 0.05);
    }

    // Published in the home-brewing literature: 140 g for 23 L from 0.9 to 2.4 volumes, by 4 g/L a volume (6 g/L rounded up
    // from 23 × 6 = 138). One figure of 4: half of it is 12.5 %.
    [Fact]
    public void The_published_rule_of_four_grams_is_met_within_its_rounding() =>
        Assert.Equal(140, PackageCarbonation.PrimingGrams(PrimingSugar.Sucrose, 23, 2.4, 0.9), tolerance: 0.125 * 140);

    // Balling's yields make 0.4872 g per g of sucrose, 5 % less: ours must be the larger, that is the safe one.
    [Fact]
    public void The_gas_is_never_counted_below_ballings()
    {
        Assert.True(PackageCarbonation.FromDisaccharide > 0.4872);
        Assert.Equal(0.05, 1 - (0.4872 / PackageCarbonation.FromDisaccharide), tolerance: 0.005);
    }

    [Fact]
    public void Priming_and_volumes_are_each_others_way_back() =>
        Gen.Select(Gen.Enum<PrimingSugar>(), Gen.Double[1, 100], Gen.Double[0, 5], Gen.Double[0, 2]).Sample((sugar, litres, gain, residual) =>
        {
            double grams = PackageCarbonation.PrimingGrams(sugar, litres, residual + gain, residual);
            Assert.Equal(gain, PackageCarbonation.VolumesFrom(sugar, Math.Max(0, grams), litres), tolerance: 1e-10);
        });

    [Fact]
    public void Beer_that_holds_more_already_asks_for_less_than_nothing() =>
        Assert.True(PackageCarbonation.PrimingGrams(PrimingSugar.Sucrose, 20, 0.8, 0.9) < 0);

    [Fact]
    public void What_has_no_meaning_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => PackageCarbonation.GramsPerGram((PrimingSugar)99));
        Assert.Throws<ArgumentOutOfRangeException>(() => PackageCarbonation.PrimingGrams(PrimingSugar.Sucrose, -1, 2, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => PackageCarbonation.PrimingGrams(PrimingSugar.Sucrose, 20, double.NaN, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => PackageCarbonation.VolumesFrom(PrimingSugar.Sucrose, 5, 0));
    }

    // A food of a third glucose, a third fructose, and a syrup that is all sucrose: stoichiometry by hand, 2·44.0095/180.156 = 0.48857.
    [Fact]
    public void A_food_primes_by_the_sugars_in_it()
    {
        double sugar = PackageCarbonation.PrimingGrams(PrimingSugar.Glucose, 20, 2.4, 0.86);
        double food = PackageCarbonation.FoodGrams([(PrimingSugar.Glucose, 1.0 / 3), (PrimingSugar.Fructose, 1.0 / 3)], 20, 2.4, 0.86);
        Assert.Equal(sugar * 1.5, food, 1e-9);
        Assert.Equal(
            PackageCarbonation.PrimingGrams(PrimingSugar.Sucrose, 20, 2.4, 0.86),
            PackageCarbonation.FoodGrams([(PrimingSugar.Sucrose, 1)], 20, 2.4, 0.86), 1e-9);
        Assert.Throws<ArgumentOutOfRangeException>(() => PackageCarbonation.FoodGrams([], 20, 2.4, 0.86));
        Assert.Throws<ArgumentOutOfRangeException>(() => PackageCarbonation.FoodGrams([(PrimingSugar.Sucrose, 0.8), (PrimingSugar.Glucose, 0.4)], 20, 2.4, 0.86));
    }
}
