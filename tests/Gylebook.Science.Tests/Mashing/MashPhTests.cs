using CsCheck;
using Gylebook.Science.Mashing;
using Gylebook.Science.Quantities;
using Gylebook.Science.Water;

namespace Gylebook.Science.Tests.Mashing;

public class MashPhTests
{
    private static readonly Temperature Room = Temperature.FromCelsius(20);
    private static readonly AcidAsSold Lactic = AcidAsSold.Find("lactic-88");

    public static TheoryData<string, MashPhMix, double> Published { get; } = new()
    {
        { "M1", Mix(15, default, 7, Pale(4.5)), 5.750 },
        { "M2", Mix(15, Tap, 7.5, Pale(4.5)), 5.823 },
        { "M3", Mix(15, Tap, 7.5, Pale(4.5)) with { Acids = [new(Lactic, 3.0)] }, 5.642 },
        { "M4", Mix(15, Tap, 7.5, Pale(4.5), Malt("crystal", 0.3, 4.80, 60)), 5.736 },
        { "M5", Mix(15, Water(250, 100, 10), 7.3, Pale(4.5)), 5.914 },
        { "M6", Mix(15, default, 7, Pale(2.5), Wheat(2.5)), 5.918 },
        { "M7", Mix(15, Tap, 7.5, Malt("pale", 4.5, 5.75, 55)), 5.804 },
        { "M8", Mix(15, Tap, 7.5, Malt("pale", 4.5, 5.75, 30)), 5.846 },
        { "M9", Mix(15, default, 7, Malt("heritage pale", 5, 5.60, 21)) with { Acids = [new(Lactic, 1.834)] }, 5.401 },
    };

    private static IonProfile Tap => Water(100, 40, 5);

    [Theory] // worked independently by the same balance, three decimals
    [MemberData(nameof(Published))]
    public void Worked_mashes_have_their_ph(string name, MashPhMix mix, double ph)
    {
        Assert.NotEmpty(name);
        Assert.Equal(ph, MashPh.Predict(mix), 0.00051);
    }

    [Theory] // titrations published 2013 (hobby literature): 5 kg pale at 21 from 5.6, 1 kg from 5.1, wheat malt
    [InlineData(5, 5.6, 21, 0, 5.4, 21)]
    [InlineData(1, 5.1, 21, 0, 5.4, -6.3)]
    [InlineData(1, 6.07, 44.8, 6.0, 5.4, 27.32)]
    [InlineData(1, 6.07, 44.8, 6.0, 6.17, -4.54)]
    public void Malt_takes_the_acid_of_its_titration(
        double kilograms, double distilledPh, double a1, double a2, double ph, double acid)
    {
        MashPhMalt malt = new("malt", Mass.FromKilograms(kilograms), distilledPh, a1, a2);
        Assert.Equal(acid, kilograms * malt.AcidPerKilogram(ph), 0.0051);
    }

    [Theory] // German brewing rule, mL for 100 kg and -0.1 pH in the mash: three acids, one buffer, 61 to 64
    [InlineData("hydrochloric-37", 53)]
    [InlineData("lactic-80", 60)]
    [InlineData("sulphuric-96", 17)]
    public void Three_acids_of_the_German_rule_say_one_buffer(string id, double millilitres)
    {
        double buffer = millilitres * AcidAsSold.Find(id).MilliequivalentsPerUnit(5.4) / 100 / 0.1;
        Assert.InRange(buffer, 60, 65);
    }

    [Theory] // Taylor, in Briggs et al. (2004): calcium, mash pH; the fit is within 0.02
    [InlineData(0, 5.74)]
    [InlineData(100, 5.48)]
    [InlineData(200, 5.39)]
    [InlineData(300, 5.28)]
    public void Calcium_lowers_ph_as_Taylor_measured(double calcium, double ph) =>
        Assert.Equal(ph, 5.74 - MashPhCalcium.TaylorFall(calcium), 0.02);

    [Theory] // the same series as a ratio to the fall at 100 mg/L, 0.26; the fit states 0.02 pH for each of the two
    [InlineData(200, 0.35)]
    [InlineData(300, 0.46)]
    public void Calcium_protons_saturate_as_Taylor_measured(double calcium, double fall)
    {
        double ratio = MashPhCalcium.ProtonsFromCalcium(calcium) / MashPhCalcium.ProtonsFromCalcium(100);
        Assert.InRange(ratio, (fall - 0.02) / (0.26 + 0.02), (fall + 0.02) / (0.26 - 0.02));
    }

    [Fact] // Kolbach (1953)
    public void Calcium_protons_follow_Kolbach_to_100_mg()
    {
        Assert.Equal(1.426, MashPhCalcium.ProtonsFromCalcium(100), 0.00051);
        Assert.Equal(MashPhCalcium.ProtonsFromCalcium(100), MashPhCalcium.ProtonsFromCalcium(100.0000001), 1e-6);
    }

    [Theory] // Briggs et al. (2004): about 0.35 lower at 65 °C, 0.45 at 78 °C; two digits
    [InlineData(65, 0.35)]
    [InlineData(78, 0.45)]
    public void Hot_mash_reads_lower(double celsius, double fall)
    {
        Temperature hot = Temperature.FromCelsius(celsius);
        Assert.Equal(5.6, MashPhTemperature.ToRoom(5.6 - fall, hot), 0.0051);
    }

    [Fact]
    public void More_acid_never_raises_ph() =>
        Gen.Select(Gen.Double[0, 400], Gen.Double[0, 20], Gen.Double[0, 20], Gen.Int[0, AcidAsSold.Shelf.Count - 1])
            .Sample((alkalinity, units, more, acid) =>
            {
                MashPhMix mix = Mix(15, Water(alkalinity, 50, 5), 7.5, Pale(4), Wheat(1));
                double Ph(double dose) => MashPh.Predict(mix with { Acids = [new(AcidAsSold.Shelf[acid], dose)] });
                return Ph(units + more) <= Ph(units) + 1e-9;
            });

    [Fact]
    public void More_calcium_never_raises_ph() =>
        Gen.Select(Gen.Double[0, 400], Gen.Double[0, 100]).Sample((calcium, more) =>
            MashPh.Predict(Mix(15, Water(100, calcium + more, 0), 7.5, Pale(4)))
                <= MashPh.Predict(Mix(15, Water(100, calcium, 0), 7.5, Pale(4))) + 1e-9);

    [Theory]
    [InlineData("baking-soda")]
    [InlineData("lime")]
    [InlineData("potassium-bicarbonate")]
    [InlineData("sodium-carbonate")]
    public void Alkaline_salts_raise_ph(string id)
    {
        MashPhMix mix = Mix(15, Tap, 7.5, Pale(4.5));
        MashPhMix salted = mix with { Liquor = mix.Liquor.With(BrewingSalts.Find(id), Mass.FromGrams(3)) };
        Assert.True(MashPh.Predict(salted) > MashPh.Predict(mix) + 0.01);
    }

    [Theory] // by formula: mmol of carbonate for each mEq of alkalinity
    [InlineData("baking-soda", 1)]
    [InlineData("potassium-bicarbonate", 1)]
    [InlineData("sodium-carbonate", 0.5)]
    [InlineData("chalk", 0.5)]
    [InlineData("lime", 0)]
    [InlineData("lye", 0)]
    public void Salts_bring_carbonate_with_their_alkalinity(string id, double perEquivalent)
    {
        MashPhLiquor salted = MashPhLiquor.Of(VolumeAt20C.FromLitres(10), default, 5).With(BrewingSalts.Find(id), Mass.FromGrams(5));
        double before = MashPhLiquor.Of(VolumeAt20C.FromLitres(10), default, 5).TotalCarbonate;
        Assert.Equal(perEquivalent, (salted.TotalCarbonate - before) / salted.Ions.AlkalinityMilliequivalents, 1e-9);
    }

    [Fact] // a mEq of hydroxide takes a whole mEq of acid, one of bicarbonate only as much as turns to CO2. Lime's calcium gives back more than that: not lime here
    public void Lye_raises_a_mash_more_than_as_much_alkalinity_from_baking_soda()
    {
        MashPhMix mix = Mix(15, Tap, 7.5, Pale(4.5));
        double Ph(BrewingSalt salt) => MashPh.Predict(mix with
        {
            Liquor = mix.Liquor.With(salt, Mass.FromGrams(30 / salt.AlkalinityPerGram)),
        });
        Assert.True(Ph(BrewingSalts.Lye) > Ph(BrewingSalts.BakingSoda) + 0.01);
    }

    [Theory]
    [InlineData("gypsum")]
    [InlineData("calcium-chloride")]
    [InlineData("epsom")]
    public void Hardening_salts_lower_ph(string id)
    {
        MashPhMix mix = Mix(15, Tap, 7.5, Pale(4.5));
        MashPhMix salted = mix with { Liquor = mix.Liquor.With(BrewingSalts.Find(id), Mass.FromGrams(5)) };
        Assert.True(MashPh.Predict(salted) < MashPh.Predict(mix) - 0.005);
    }

    [Fact]
    public void Acid_to_a_ph_brings_the_mash_there() =>
        Gen.Select(Gen.Double[5.0, 5.7], Gen.Double[50, 300], Gen.Int[0, AcidAsSold.Shelf.Count - 1])
            .Sample((target, alkalinity, at) =>
            {
                MashPhMix mix = Mix(15, Water(alkalinity, 40, 5), 7.5, Pale(4.5));
                double units = MashPh.UnitsToReach(mix, target, AcidAsSold.Shelf[at]);
                return Math.Abs(MashPh.Predict(mix with { Acids = [new(AcidAsSold.Shelf[at], units)] }) - target) < 1e-9;
            });

    [Fact]
    public void The_band_holds_the_ends_of_the_literature()
    {
        MashPhMix mix = Mix(15, Tap, 7.5, Pale(4.5));
        MashPhBand band = MashPhBand.Of(mix);
        double softest = MashPh.Predict(Mix(15, Tap, 7.5, Malt("pale", 4.5, 5.75, 21)));
        double stiffest = MashPh.Predict(Mix(15, Tap, 7.5, Malt("pale", 4.5, 5.75, 64)));
        Assert.Equal(softest, band.High, 1e-9);
        Assert.Equal(stiffest, band.Low, 1e-9);
        Assert.Equal(5.823, band.Likely, 0.00051);
    }

    [Fact]
    public void Low_likely_and_high_keep_their_order() =>
        Gen.Select(Gen.Double[0, 400], Gen.Double[10, 120], Gen.Double[0, 10]).Sample((alkalinity, buffer, acid) =>
        {
            MashPhMix mix = Mix(15, Water(alkalinity, 50, 5), 7.5, Malt("pale", 4, 5.75, buffer)) with { Acids = [new(Lactic, acid)] };
            MashPhBand band = MashPhBand.Of(mix);
            return band.Low <= band.Likely && band.Likely <= band.High;
        });

    [Fact]
    public void A_reading_pins_the_mash_it_was_taken_from_and_narrows_the_next_step() =>
        Gen.Select(Gen.Double[5.3, 5.6], Gen.Double[20, 70]).Sample((read, celsius) =>
        {
            MashPhMix mix = Mix(15, Tap, 7.5, Pale(4.5), Wheat(0.5));
            Temperature sample = Temperature.FromCelsius(celsius);
            double room = MashPhTemperature.ToRoom(read, sample);
            MashPhReading reading = MashPhReading.Of(mix, read, sample);
            MashPhBand pinned = MashPhBand.Of(mix, reading);
            Assert.Equal(room, pinned.Likely, 1e-7);
            Assert.Equal(0, pinned.High - pinned.Low, 1e-7);

            MashPhMix soured = mix with { Acids = [new(Lactic, 1)] };
            MashPhBand after = MashPhBand.Of(soured, reading);
            Assert.True(after.High < room);
            Assert.True(after.High - after.Low > 1e-3);
        });

    [Fact]
    public void A_correction_after_a_reading_is_surer_than_a_forecast()
    {
        MashPhMix soured = Mix(15, Water(250, 40, 5), 7.5, Pale(4.5)) with { Acids = [new(Lactic, 1)] };
        MashPhMix before = soured with { Acids = [] };
        MashPhReading reading = MashPhReading.Of(before, MashPh.Predict(before), Room);
        MashPhBand blind = MashPhBand.Of(soured), seen = MashPhBand.Of(soured, reading);
        Assert.True(seen.High - seen.Low < blind.High - blind.Low);
        Assert.Equal(blind.Likely, seen.Likely, 1e-7);
        Assert.Empty(reading.Diagnose());
    }

    [Fact]
    public void A_reading_far_from_any_malt_is_told()
    {
        MashPhReading reading = MashPhReading.Of(Mix(15, Tap, 7.5, Pale(4.5)), 5.0, Room);
        Assert.Equal("mashPh.readingFarOff", Assert.Single(reading.Diagnose()).Code);
    }

    [Fact]
    public void A_mash_outside_the_model_is_told()
    {
        MashPhMix usual = Mix(15, Tap, 7.5, Pale(4.5));
        Assert.Empty(MashPhCheck.Diagnose(usual));
        string[] Codes(MashPhMix mix) => [.. MashPhCheck.Diagnose(mix).Select(each => each.Code)];
        Assert.Equal(["mashPh.outsideModel"], Codes(usual with { Acids = [new(Lactic, 40)] }));
        Assert.Equal(["mashPh.calciumBeyondSeries"], Codes(Mix(15, Water(100, 320, 5), 7.5, Pale(4.5))));
        Assert.Equal(["mashPh.chalkWeak"], Codes(usual with
        {
            Liquor = usual.Liquor.With(BrewingSalts.Chalk, Mass.FromGrams(7)),
        }));
    }

    [Fact]
    public void Nonsense_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => MashPh.Predict(Mix(15, Tap, 7.5)));
        Assert.Throws<ArgumentOutOfRangeException>(() => MashPh.Predict(Mix(0, Tap, 7.5, Pale(4))));
        Assert.Throws<ArgumentOutOfRangeException>(() => MashPh.Predict(Mix(15, Tap, 7.5, Malt("pale", 4, 5.75, -40))));
        Assert.Throws<ArgumentOutOfRangeException>(() => MashPh.Predict(Mix(15, Tap, 7.5, Malt("pale", 4, double.NaN, 40))));
        Assert.Throws<ArgumentOutOfRangeException>(() => MashPh.Predict(Mix(15, Tap, 7.5, Pale(4)) with { Acids = [new(Lactic, -1)] }));
        Assert.Throws<ArgumentOutOfRangeException>(() => MashPhReading.Of(Mix(15, Tap, 7.5, Pale(4)), 9.5, Room));
        Assert.Throws<ArgumentOutOfRangeException>(() => MashPhLiquor.Of(VolumeAt20C.FromLitres(15), Tap, double.NaN));
    }

    private static IonProfile Water(double alkalinityAsChalk, double calcium, double magnesium) => new(
        calcium, magnesium,
        bicarbonate: alkalinityAsChalk * HardnessUnits.MilligramsCalciumCarbonate * Ion.Bicarbonate.EquivalentWeight());

    private static MashPhMalt Malt(string name, double kilograms, double ph, double a1, double a2 = 0) =>
        new(name, Mass.FromKilograms(kilograms), ph, a1, a2);

    private static MashPhMalt Pale(double kilograms) => Malt("pale", kilograms, 5.75, 40);

    private static MashPhMalt Wheat(double kilograms) => Malt("wheat", kilograms, 6.07, 44.8, 6.0);

    private static MashPhMix Mix(double litres, IonProfile water, double ph, params MashPhMalt[] malts) =>
        new(MashPhLiquor.Of(VolumeAt20C.FromLitres(litres), water, ph), malts, []);
}
