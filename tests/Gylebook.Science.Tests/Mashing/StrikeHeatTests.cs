using CsCheck;
using Gylebook.Science.Mashing;

namespace Gylebook.Science.Tests.Mashing;

public class StrikeHeatTests
{
    private static readonly Gen<MashIn> Mashes =
        from grain in Gen.Double[0.5, 50]
        from moisture in Gen.Double[0, 0.12]
        from cold in Gen.Double[-5, 35]
        from thickness in Gen.Double[1.5, 8]
        from vessel in Gen.Double[0, 20]
        from vesselCold in Gen.Double[0, 60]
        from slaking in Gen.Double[0, 0.6]
        select new MashIn
        {
            GrainKilograms = grain,
            GrainMoisture = moisture,
            GrainCelsius = cold,
            LiquorKilograms = grain * thickness,
            VesselKilojoulesPerKelvin = vessel,
            VesselCelsius = vesselCold,
            SlakingKelvins = slaking,
        };

    // The balance worked out by hand with malt of 4 % moisture (formula check), two decimals.
    [Theory]
    [InlineData(5, 15, 20, 66, 0, 72.21)]
    [InlineData(5, 15, 20, 66, 2.0, 73.68)]
    [InlineData(5, 12.5, 20, 67, 0, 74.62)]
    [InlineData(4.5, 18, 18, 65, 0, 69.76)]
    public void Strike_liquor_carries_the_heat_that_grain_and_vessel_take(
        double grain, double liquor, double cold, double rest, double vessel, double strike) =>
        Assert.Equal(strike, StrikeHeat.StrikeCelsius(Malt(grain, liquor, cold) with { VesselKilojoulesPerKelvin = vessel, VesselCelsius = 20 }, rest), tolerance: 0.005);

    // Worked example of the home-brewing literature (from memory): 8 lb at 70 °F, 1 quart a pound, rest at 104 °F, strike
    // printed as 111 °F. It counts malt as 0.2 quart of water a pound: 0.417 of its mass where we have 0.405 at 4 %.
    // Half of the last digit.
    [Fact]
    public void A_printed_example_comes_out()
    {
        var mash = Malt(8 * 0.45359237, 8 * 0.946352946, (70 - 32) / 1.8);
        double fahrenheit = (StrikeHeat.StrikeCelsius(mash, (104 - 32) / 1.8) * 1.8) + 32;
        Assert.Equal(111, fahrenheit, tolerance: 0.5);
    }

    // The same literature's metric rule, 0.41/ratio × (rest − grain) + rest, two decimals; ours has 0.4052 for 0.41.
    [Theory]
    [InlineData(2.5, 20, 67, 74.71)]
    [InlineData(3, 20, 66, 72.29)]
    [InlineData(4, 15, 64, 69.02)]
    public void The_metric_rule_of_thumb_is_within_its_rounded_factor(double ratio, double cold, double rest, double strike) =>
        Assert.Equal(strike, StrikeHeat.StrikeCelsius(Malt(1, ratio, cold), rest), tolerance: 0.005 + (0.005 / ratio * (rest - cold)));

    [Fact]
    public void Slaking_warms_the_mash_by_its_own_kelvins()
    {
        var dry = Malt(5, 15, 20);
        var slaking = dry with { SlakingKelvins = 0.3 };
        Assert.Equal(StrikeHeat.RestCelsius(dry, 72) + 0.3, StrikeHeat.RestCelsius(slaking, 72), tolerance: 1e-12);
        Assert.True(StrikeHeat.StrikeCelsius(slaking, 66) < StrikeHeat.StrikeCelsius(dry, 66));
    }

    [Fact]
    public void Strike_and_rest_are_each_others_way_back() =>
        Gen.Select(Mashes, Gen.Double[40, 78]).Sample((mash, rest) =>
            Assert.Equal(rest, StrikeHeat.RestCelsius(mash, StrikeHeat.StrikeCelsius(mash, rest)), tolerance: 1e-10));

    [Fact]
    public void Strike_water_is_hotter_than_the_rest_it_reaches() =>
        Gen.Select(Mashes, Gen.Double[62, 78]).Sample((mash, rest) =>
            Assert.True(StrikeHeat.StrikeCelsius(mash, rest) > rest - mash.SlakingKelvins));

    [Fact]
    public void More_liquor_needs_less_heat_in_it() =>
        Gen.Select(Mashes, Gen.Double[62, 78], Gen.Double[1.01, 2]).Sample((mash, rest, more) =>
            Assert.True(StrikeHeat.StrikeCelsius(mash with { LiquorKilograms = mash.LiquorKilograms * more }, rest) < StrikeHeat.StrikeCelsius(mash, rest)));

    [Fact]
    public void No_heat_is_made_or_lost() =>
        Gen.Select(Mashes, Gen.Double[60, 90]).Sample((mash, strike) =>
        {
            double rest = StrikeHeat.RestCelsius(mash with { SlakingKelvins = 0 }, strike);
            double given = mash.LiquorKilograms * 4.18 * (strike - rest);
            double grain = mash.GrainKilograms * WortHeat.OfMalt(mash.GrainMoisture) * (rest - mash.GrainCelsius);
            double vessel = mash.VesselKilojoulesPerKelvin * (rest - mash.VesselCelsius);
            Assert.Equal(given, grain + vessel, tolerance: 1e-9 * (1 + Math.Abs(given)));
        });

    [Fact]
    public void What_has_no_meaning_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => StrikeHeat.StrikeCelsius(Malt(5, 0, 20), 66));
        Assert.Throws<ArgumentOutOfRangeException>(() => StrikeHeat.StrikeCelsius(Malt(-5, 15, 20), 66));
        Assert.Throws<ArgumentOutOfRangeException>(() => StrikeHeat.StrikeCelsius(Malt(5, 15, double.NaN), 66));
        Assert.Throws<ArgumentOutOfRangeException>(() => StrikeHeat.StrikeCelsius(Malt(5, 15, 20) with { GrainMoisture = 4 }, 66));
        Assert.Throws<ArgumentOutOfRangeException>(() => StrikeHeat.RestCelsius(Malt(5, 15, 20), double.NaN));
    }

    private static MashIn Malt(double grain, double liquor, double cold) => new()
    {
        GrainKilograms = grain,
        GrainMoisture = 0.04,
        GrainCelsius = cold,
        LiquorKilograms = liquor,
    };
}
