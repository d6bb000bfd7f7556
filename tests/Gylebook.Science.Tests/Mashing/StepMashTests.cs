using CsCheck;
using Gylebook.Science.Mashing;

namespace Gylebook.Science.Tests.Mashing;

/// <summary>From one rest to the next: by hot water, and by a boiled part of the mash.</summary>
public class StepMashTests
{
    // Heat balance by hand: 5 kg of malt of 4 % and 12.5 kg of liquor, water at 98 °C (formula check); three decimals.
    [Fact]
    public void Hot_water_lifts_a_mash_from_rest_to_rest()
    {
        double first = Infusion.WaterKilograms(Infusion.MashKilojoulesPerKelvin(5, 0.04, 12.5), 50, 65, 98);
        Assert.Equal(6.603, first, tolerance: 0.0005);
        double second = Infusion.WaterKilograms(Infusion.MashKilojoulesPerKelvin(5, 0.04, 12.5 + first), 65, 72, 98);
        Assert.Equal(5.688, second, tolerance: 0.0005);
    }

    // Worked example of the home-brewing literature (from memory): 8 lb and 8 quarts at 104 °F, water of 210 °F: 4.9 quarts
    // to 140 °F, 5.0 more to 158 °F. Its malt is 0.417 of water, ours 0.405: 0.012 × 8 lb is 0.05 quart of 9.7, 0.5 %.
    [Fact]
    public void A_printed_example_comes_out()
    {
        const double Pound = 0.45359237;
        const double Quart = 0.946352946;
        double first = Infusion.WaterKilograms(Infusion.MashKilojoulesPerKelvin(8 * Pound, 0.04, 8 * Quart), Celsius(104), Celsius(140), Celsius(210));
        Assert.Equal(4.9, first / Quart, tolerance: 0.05 + (0.005 * 4.9));
        double second = Infusion.WaterKilograms(Infusion.MashKilojoulesPerKelvin(8 * Pound, 0.04, (8 * Quart) + first), Celsius(140), Celsius(158), Celsius(210));
        Assert.Equal(5.0, second / Quart, tolerance: 0.05 + (0.005 * 5.0));
    }

    [Fact]
    public void Infusion_and_rest_are_each_others_way_back() =>
        Gen.Select(Gen.Double[5, 300], Gen.Double[35, 60], Gen.Double[0.1, 20], Gen.Double[85, 100]).Sample((heat, from, rise, water) =>
        {
            double kilograms = Infusion.WaterKilograms(heat, from, from + rise, water);
            Assert.Equal(from + rise, Infusion.RestCelsius(heat, from, kilograms, water), tolerance: 1e-10);
        });

    // Heat balance by hand: 17.5 kg of mash, boiled part back at 98 °C (formula check); three decimals.
    [Theory]
    [InlineData(50, 65, 5.469)]
    [InlineData(65, 76, 5.833)]
    public void A_boiled_part_lifts_the_rest(double from, double to, double kilograms) =>
        Assert.Equal(kilograms, Decoction.Kilograms(17.5, from, to, 98), tolerance: 0.0005);

    // One third of a mash at 50 °C, boiled at 100: two thirds stay, so it is 66.7 °C. One decimal.
    [Fact]
    public void A_third_boiled_lifts_50_to_66_7() =>
        Assert.Equal(66.7, Decoction.RestCelsius(1 / 3.0, 50, 100), tolerance: 0.05);

    [Fact]
    public void Decoction_and_rest_are_each_others_way_back() =>
        Gen.Select(Gen.Double[35, 70], Gen.Double[0, 1], Gen.Double[90, 101]).Sample((from, share, boiled) =>
            Assert.Equal(share, Decoction.Share(from, Decoction.RestCelsius(share, from, boiled), boiled), tolerance: 1e-10));

    [Fact]
    public void What_has_no_meaning_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Infusion.WaterKilograms(60, 50, 65, 65));
        Assert.Throws<ArgumentOutOfRangeException>(() => Infusion.WaterKilograms(60, 65, 50, 98));
        Assert.Throws<ArgumentOutOfRangeException>(() => Infusion.WaterKilograms(60, 50, double.NaN, 98));
        Assert.Throws<ArgumentOutOfRangeException>(() => Decoction.Share(50, 99, 98));
        Assert.Throws<ArgumentOutOfRangeException>(() => Decoction.Share(50, 50, 50));
        Assert.Throws<ArgumentOutOfRangeException>(() => Decoction.RestCelsius(1.1, 50, 100));
    }

    private static double Celsius(double fahrenheit) => (fahrenheit - 32) / 1.8;
}
