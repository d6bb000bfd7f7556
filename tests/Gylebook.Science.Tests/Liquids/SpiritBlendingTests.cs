using CsCheck;
using Gylebook.Science.Liquids;
using Gylebook.Science.Quantities;
using Gylebook.Tests.Shared;

namespace Gylebook.Science.Tests.Liquids;

public class SpiritBlendingTests
{
    // Worked with oiml-r22, three decimals; and by litres.
    [Theory]
    [InlineData(20, 5, 0.5, 40, 5.853, 20.502, 5.854)]
    [InlineData(20, 5, 0.25, 60, 5.680, 20.248, 5.679)]
    [InlineData(19, 8, 1, 40, 9.600, 20.000, 9.600)]
    public void Spirit_in_beer_by_mass_and_by_litres(
        double beer, double beerPercent, double spirit, double spiritPercent, double exact, double litres, double byLitres)
    {
        (double foundLitres, double found) = SpiritBlending.Mix(beer, beerPercent, spirit, spiritPercent);
        Near.Equal(exact, found, 0.0005);
        Near.Equal(litres, foundLitres, 0.0005);
        double rough = SpiritBlending.PercentByLitres(beer, beerPercent, spirit, spiritPercent);
        Near.Equal(byLitres, rough, 0.0005);
        Near.Equal(found, rough, 0.01);
        Near.Equal(spirit, SpiritBlending.SpiritLitresToReach(beer, beerPercent, spiritPercent, rough), 1e-9);

        BlendedSpirit typed = SpiritBlending.Mix(
            VolumeAt20C.FromLitres(beer), AlcoholByVolume.FromPercent(beerPercent),
            VolumeAt20C.FromLitres(spirit), AlcoholByVolume.FromPercent(spiritPercent));
        Assert.Equal(new BlendedSpirit(VolumeAt20C.FromLitres(foundLitres), AlcoholByVolume.FromPercent(found)), typed);
        VolumeAt20C back = SpiritBlending.SpiritToReach(
            VolumeAt20C.FromLitres(beer), AlcoholByVolume.FromPercent(beerPercent),
            AlcoholByVolume.FromPercent(spiritPercent), AlcoholByVolume.FromPercent(rough));
        Near.Equal(spirit, back.Litres, 1e-9);
    }

    // Worked with oiml-r22, four and three decimals; the litres of water use 0.9982 kg/L.
    [Theory]
    [InlineData(96, 40, 1.4679, 1.4705, 2.400)]
    [InlineData(95, 60, 0.6281, 0.6292, 1.583)]
    [InlineData(60, 40, 0.5130, 0.5139, 1.500)]
    [InlineData(40, 20, 0.9991, 1.0009, 2.000)]
    public void A_litre_of_spirit_is_thinned(double percent, double target, double kilograms, double water, double litres)
    {
        double found = SpiritBlending.WaterKilogramsToReach(1, percent, target);
        Near.Equal(kilograms, found, 0.00005);
        Near.Equal(water, found / 0.99820, 0.00005);
        (double foundLitres, double foundPercent) = SpiritBlending.Mix(1, percent, found / 0.99820123, 0);
        Near.Equal(target, foundPercent, 1e-9);
        Near.Equal(litres, foundLitres, 0.0005);
        Mass typed = SpiritBlending.WaterToReach(
            VolumeAt20C.FromLitres(1), AlcoholByVolume.FromPercent(percent), AlcoholByVolume.FromPercent(target));
        Assert.Equal(found, typed.Kilograms, 12);
    }

    // Worked with oiml-r22: two decimals.
    [Fact]
    public void Equal_litres_of_alcohol_and_water_shrink()
    {
        (double litres, double percent) = SpiritBlending.Mix(50, 100, 50, 0);
        Near.Equal(96.46, litres, 0.005);
        Near.Equal(51.83, percent, 0.005);
    }

    // A distilling-trade article: 50 mL of 95 % with 50 mL of water is 41.43 % by mass, 0.9322 kg/L, 48.94 % by volume;
    // 45.5 L of 95 % with 9.5 L of water is 80 %.
    [Fact]
    public void A_distillers_two_examples_are_met()
    {
        (double millilitres, double percent) = SpiritBlending.Mix(50, 95, 50, 0);
        Near.Equal(48.94, percent, 0.005);
        Near.Equal(41.43, EthanolWater.PercentByMassOf(percent), 0.005);
        Near.Equal(0.9322, EthanolWater.KilogramsPerLitreAt20C(EthanolWater.PercentByMassOf(percent)), 0.00005);
        Near.Equal(97.06, millilitres, 0.005);
        (double litres, double second) = SpiritBlending.Mix(45.5, 95, 9.5, 0);
        Near.Equal(80, second, 0.5);
        Near.Equal(80.04, second, 0.005);
        Near.Equal(54.01, litres, 0.005);
    }

    // us-27cfr30-64: 1000 lb of 200 proof come to 190 proof (95 % at 60 °F) with 82.03 lb of water, and 190 proof is
    // 0.14718 US gallons to the pound in air. The American table holds ethanol 0.10 kg/m³ heavier than oiml-r22 does
    // (789.34 against 789.24, 1.3e-4), which is 0.00002 gal/lb and 0.02 lb of water.
    [Fact]
    public void An_American_regulation_agrees_to_the_difference_of_the_two_ethanols()
    {
        const double byMass = 92.418;
        Near.Equal(95, EthanolWaterTests.ByVolumeAtSixty(byMass), 0.0015);
        Near.Equal(82.03, 1000 * ((100 / byMass) - 1), 0.02);

        double density = 1000 * EthanolWater.KilogramsPerLitreAt(byMass, 140.0 / 9);
        double massOfPound = 0.45359237 * (1 - (1.2 / 8000)) / (1 - (1.2 / density));
        double gallons = massOfPound / density * 1000 / 3.785411784;
        Near.Equal(0.14718, gallons, 0.00002);
        Near.Equal(11921.6, 81000 * gallons, 81000 * 0.00002);
        Near.Equal(0.27964, 1.9 * gallons, 1.9 * 0.00002);
    }

    [Fact]
    public void Alcohol_is_kept() =>
        Gen.Select(Gen.Double[0.1, 10], Gen.Double[0, 99], Gen.Double[0.1, 10], Gen.Double[0, 99]).Sample((v1, a1, v2, a2) =>
        {
            (double litres, double percent) = SpiritBlending.Mix(v1, a1, v2, a2);
            return Math.Abs((litres * percent) - ((v1 * a1) + (v2 * a2))) < 1e-8;
        });

    // A mixture that has shrunk once may swell by a trace when thinned further; pure ethanol in water always shrinks.
    [Fact]
    public void Alcohol_and_water_take_less_room_than_both() =>
        Gen.Select(Gen.Double[0.1, 10], Gen.Double[0.1, 10]).Sample((alcohol, water) =>
            SpiritBlending.Mix(alcohol, 100, water, 0).Litres < alcohol + water);

    [Fact]
    public void Water_cannot_make_a_spirit_stronger() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => SpiritBlending.WaterToReach(
            VolumeAt20C.FromLitres(1), AlcoholByVolume.FromPercent(40), AlcoholByVolume.FromPercent(50)));
}
