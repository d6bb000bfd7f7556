using Gylebook.Engine.Readouts;
using Gylebook.Forecast.Foods;
using Gylebook.Recipes.Foods;
using Gylebook.Science.Foods.Labels;
using Gylebook.Science.Quantities;
using static Gylebook.Forecast.Tests.Foods.SampleFoods;

namespace Gylebook.Forecast.Tests.Foods;

public class FoodTrialTests(ITestOutputHelper output)
{
    private static readonly string[] Places =
        ["mash", "copper-up", "boil 10 min", "knock-out", "stand 10 min", "pitch", "ferment day 3", "rack", "package"];

    public static TheoryData<string> AllPlaces => [.. Places];

    // Raspberries are 85.75 % water (USDA SR26 NDB 09302): by hand 2 kg into 20 L at 1.050 is 21.8 L of 47.5 points.
    [Fact]
    public void Raspberries_lower_the_gravity_they_go_into()
    {
        FoodEffect effect = Effect("raspberries-raw", 2, "ferment day 3", 20);
        output.WriteLine($"{effect.GravityPoints} {effect.SludgeLitres} {effect.WaterLitres}");
        // The hand sum counts only the sugars; acids, pectin and minerals besides, up to 1.2 points, are in the engine.
        Assert.InRange(effect.GravityPoints!.Likely, -2.6, -1.2);
        Assert.Equal(2 * 0.8575 / 0.998234, effect.WaterLitres!.Likely, 1e-9);
        Assert.Null(effect.ColourSrm);
        // NDB 09302: 151 mg/100 g, 3 020 mg in 2 kg, in the beer of 20 L and the fruit's own 1.7 L of water.
        Assert.InRange(effect.PotassiumMgPerL!.Likely, 3020 / 22.5, 3020 / 21.0);
        // CIQUAL 1.9, Belitz 2.1 g/100 g.
        Assert.Equal(2 * 20.0 / 20, effect.AcidsGramsPerLitre!.Likely, 0.01);
    }

    [Theory]
    [InlineData("mash", 0.85)]
    [InlineData("boil 10 min", 1)]
    [InlineData("ferment day 3", 1)]
    public void Lactose_raises_original_and_final_gravity_alike(string at, double runsOff)
    {
        FoodEffect effect = Effect("lactose-monohydrate", 0.454, at, 20);
        output.WriteLine($"{effect.GravityPoints} {effect.FinalGravityPoints} {effect.AlcoholByVolume}");
        // 389 × 0.95 × 0.454 / 20 is 8.4 points by hand in a final 20 L; here 0.28 L come on top, which thins 50 points by 0.7. From a mash the grain
        // keeps a part, at 0.55 L/kg a tenth or a little more.
        Assert.InRange(effect.GravityPoints!.Likely, 7.0 * runsOff, 8.4);
        // In beer the same lactose meets less liquid mass a litre, and less extract to thin: points differ by less than one.
        Assert.InRange(effect.FinalGravityPoints!.Likely - effect.GravityPoints.Likely, -0.1, 1.0);
        Assert.Equal(0, effect.FermentableShare!.Likely, 1e-9);
        Assert.Equal(0, effect.Co2VolumesIfPackaged!.Likely, 1e-9);
        Assert.True(effect.AlcoholByVolume!.Likely <= 0);
    }

    // USDA SR26 NDB 09298: sucrose 0.45, glucose 27.75, fructose 29.68 of 59.19 g sugars in 100 g; kg CO2 per kg: 0.5143 and 0.4886 by molar
    // mass; one volume is 1.9635 g/L. The rest, 1.31 g, goes to the same kinds.
    [Fact]
    public void Raisins_in_the_package_make_the_gas_of_their_sugars()
    {
        Band gas = Effect("raisins-seedless", 0.1, "package", 20).Co2VolumesIfPackaged!;
        output.WriteLine($"{gas}");
        double named = ((0.45 * 0.5143) + ((27.75 + 29.68) * 0.4886)) / 20 / 1.9635;
        double all = named + (1.31 * 0.5143 / 20 / 1.9635);
        // 0.1 kg of raisins make 20 L into 20.1 L.
        Assert.InRange(gas.Likely, named / 1.005, all);
        // The printed 0.75 takes all 59 g as if they were half sucrose, half hexose: within 0.02 of the stoichiometry of its kinds.
        Assert.Equal(0.75, gas.Likely, 0.025);
    }

    // By molar masses: sucrose of kg 1 in 20 L. Extract 385 points L/kg (Plato table).
    [Fact]
    public void White_sugar_ferments_whole()
    {
        FoodEffect sugar = Effect("white-sugar", 1, "boil 10 min", 20);
        output.WriteLine($"{sugar.GravityPoints} {sugar.FermentableShare}");
        Assert.InRange(sugar.FermentableShare!.Likely, 0.99, 1);
    }

    // Fat 0.55 % and sodium 180 mg/100 g of USDA SR26 NDB 16099: 0.26 g/L and 85 mg/L by hand in 19 L.
    [Fact]
    public void Fat_and_sodium_of_nut_powder_are_what_the_table_and_the_litres_say()
    {
        FoodEffect effect = Effect("peanut-flour-defatted", 0.9, "knock-out", 19);
        Assert.Equal(0.26, effect.FatGramsPerLitre!.Likely, 0.005);
        // Dissolved in the cast with what the powder adds to it: less than 2 % off the plain quotient.
        Assert.InRange(effect.SodiumMgPerL!.Likely, 85.3 * 0.98, 85.3);
        Assert.Equal(FatLight.Green, effect.Fat.Light);
        // A heavier sludge costs beer, which more liquor makes good.
        Assert.True(effect.BeerLostLitres!.Likely > 2);
        Assert.True(effect.ExtraLiquorLitres!.Likely > 1);
        Assert.True(effect.SuspensionPoints!.Likely > effect.GravityPoints!.Likely + 4);
    }

    [Theory]
    [MemberData(nameof(AllPlaces))]
    public void Sludge_and_what_is_lost_grow_with_the_dose_at_every_place(string at)
    {
        double[] doses = [0.1, 0.3, 0.9, 2];
        List<FoodEffect> effects = [.. doses.Select(kg => Effect("peanut-flour-defatted", kg, at, 20))];
        for (int i = 1; i < effects.Count; i++)
        {
            Assert.True(effects[i].SludgeLitres!.Likely > effects[i - 1].SludgeLitres!.Likely);
            Assert.True(effects[i].BeerLostLitres!.Likely > effects[i - 1].BeerLostLitres!.Likely);
            Assert.True(effects[i].SodiumMgPerL!.Likely > effects[i - 1].SodiumMgPerL!.Likely);
        }
    }

    [Theory]
    [MemberData(nameof(AllPlaces))]
    public void Every_food_of_the_table_can_be_tried_everywhere(string at) => Assert.All(FoodTable.All, food =>
    {
        FoodEffect effect = Effect(food.Id, 0.2, at, 20);
        Assert.All(Bands(effect), band => Assert.True(band.Low <= band.Likely && band.Likely <= band.High, $"{food.Id} {band}"));
        Assert.Equal(effect.StarchGrams!.Likely, effect.StarchConvertedGrams!.Likely + effect.StarchHazeGrams!.Likely + effect.StarchSettledGrams!.Likely, 1e-6);
    });

    [Theory]
    [MemberData(nameof(AllPlaces))]
    public void A_dose_scales_with_the_litres(string at)
    {
        FoodEffect small = Effect("dates-semi-dry-variety", 0.2, at, 5);
        FoodEffect large = Effect("dates-semi-dry-variety", 2, at, 50);
        Assert.Equal(small.GravityPoints!.Likely, large.GravityPoints!.Likely, 1e-6);
        Assert.Equal(small.SludgeLitres!.Likely * 10, large.SludgeLitres!.Likely, 1e-6);
        Assert.Equal(small.Co2VolumesIfPackaged!.Likely, large.Co2VolumesIfPackaged!.Likely, 1e-9);
    }

    [Fact]
    public void A_label_gives_ends_and_a_wider_label_wider_ones()
    {
        FoodEffect onSmallServing = Effect(PeanutFlourOn(12), 0.9, "knock-out", 19);
        FoodEffect onLargeServing = Effect(PeanutFlourOn(100), 0.9, "knock-out", 19);
        FoodEffect truth = Effect("peanut-flour-defatted", 0.9, "knock-out", 19);
        Assert.Equal(BandKind.Bounds, onSmallServing.GravityPoints!.Kind);
        foreach (FoodEffect read in (FoodEffect[])[onSmallServing, onLargeServing])
        {
            Assert.InRange(truth.FatGramsPerLitre!.Likely, read.FatGramsPerLitre!.Low, read.FatGramsPerLitre.High);
            Assert.InRange(truth.SodiumMgPerL!.Likely, read.SodiumMgPerL!.Low, read.SodiumMgPerL.High);
            Assert.InRange(truth.SludgeLitres!.Likely, read.SludgeLitres!.Low, read.SludgeLitres.High);
            Assert.InRange(truth.Co2VolumesIfPackaged!.Likely, read.Co2VolumesIfPackaged!.Low, read.Co2VolumesIfPackaged.High);
        }

        Assert.True(Width(onSmallServing.Co2VolumesIfPackaged!) > 4 * Width(onLargeServing.Co2VolumesIfPackaged!));
        Assert.True(Width(onSmallServing.FatGramsPerLitre!) > 4 * Width(onLargeServing.FatGramsPerLitre!));
    }

    [Fact]
    public void Sodium_that_no_line_prints_is_unknown_and_printed_none_is_nought()
    {
        Assert.Null(Effect(PeanutFlourOn(100, printedSodium: null), 0.9, "knock-out", 19).SodiumMgPerL);
        Assert.Equal(0, Effect(PeanutFlourOn(100, printedSodium: 0), 0.9, "knock-out", 19).SodiumMgPerL!.Likely, 1e-9);
    }

    /// <summary>
    /// 2 kg of sweet potato with 337 mg/100 g of potassium (composition tables, from memory) are 6.74 g: 337 mg/L if all of it comes into
    /// 20 L. Kept in the liquid it is in the package at what the litres there make of it: what the food itself adds to them is the rest.
    /// </summary>
    [Fact]
    public void Known_potassium_of_sweet_potato_in_twenty_litres()
    {
        FoodSheet sheet = new()
        {
            Id = "sweet-potato", Name = "sweet potato", Family = "vegetable",
            Composition = new FoodComposition { Water = 77.3, Protein = 1.6, Fat = 0.1, Ash = 1, Carbohydrate = 20.1, Fibre = 3, Sugars = 4.2, PotassiumMilligrams = 337, Source = "composition tables, from memory" },
        };
        FoodEffect effect = Effect(FoodMakeups.From(sheet), 2, "knock-out", 20);
        Assert.InRange(effect.PotassiumMgPerL!.Likely, 337 * 0.90, 337);
        FoodSheet silent = sheet with { Composition = sheet.Composition with { PotassiumMilligrams = null } };
        Assert.Null(Effect(FoodMakeups.From(silent), 2, "knock-out", 20).PotassiumMgPerL);
    }

    /// <summary>
    /// 50 mg printed on 12 g are 45 to 55 (21 CFR 101.9, from memory), 375 to 458 mg/100 g: 0.9 kg into 19 L bring 178 to 217 mg/L, less what
    /// 0.9 kg, at most 0.9 L, add to the litres.
    /// </summary>
    [Fact]
    public void Printed_potassium_reaches_the_beer_with_both_ends_and_printed_none_is_nought_to_94_milligrams()
    {
        Band told = Effect(PeanutFlourOn(12, printedPotassium: 0.05), 0.9, "knock-out", 19).PotassiumMgPerL!;
        const double PerMilligram = 0.9 / 19 / 0.012;
        const double Thinner = 19 / 19.9;
        Assert.InRange(told.Low, 45 * PerMilligram * Thinner, 45 * PerMilligram);
        Assert.InRange(told.Likely, 50 * PerMilligram * Thinner, 50 * PerMilligram);
        Assert.InRange(told.High, 55 * PerMilligram * Thinner, 55 * PerMilligram);
        Band none = Effect(PeanutFlourOn(12, printedPotassium: 0), 0.9, "knock-out", 19).PotassiumMgPerL!;
        Assert.Equal((0, 0), (none.Low, none.Likely));
        Assert.InRange(none.High, 94 * PerMilligram * Thinner, 94 * PerMilligram);
        Assert.Null(Effect(PeanutFlourOn(12), 0.9, "knock-out", 19).PotassiumMgPerL);
    }

    [Fact]
    public void Nothing_to_put_it_into_or_nothing_to_put_in_is_the_callers_fault()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Effect("honey", 1, "mash", 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Effect("honey", 0, "mash", 20));
    }

    private static double Width(Band band) => band.High - band.Low;

    /// <summary>Defatted peanut flour, USDA SR26 NDB 16099, as the rules of 21 CFR 101.9 print it on a serving.</summary>
    private static MadeUpFood PeanutFlourOn(double grams, double? printedSodium = 0.180, double? printedPotassium = null)
    {
        PrintedMass Of(double per100, double step) =>
            PrintedMass.Of(new(Mass.FromGrams(Math.Floor((per100 * grams / 100 / step) + 0.5) * step), "as printed"));
        return FoodMakeups.From(new FoodSheet
        {
            Id = "flour",
            Name = "flour",
            Family = "nut-flour-defatted",
            Label = new LabelPanel
            {
                Style = PanelStyle.Us,
                Serving = new(Mass.FromGrams(grams), "serving"),
                Fat = Of(0.55, 0.5),
                Sodium = printedSodium is double sodium ? Of(sodium, 0.005) : null,
                Potassium = printedPotassium is double onServing ? PrintedMass.Of(new(Mass.FromGrams(onServing), "as printed")) : null,
                Carbohydrate = Of(34.7, 1),
                Fibre = Of(15.8, 1),
                Sugars = Of(8.22, 1),
                Protein = Of(52.2, 1),
            },
        });
    }

    private static IEnumerable<Band> Bands(FoodEffect effect) => typeof(FoodEffect).GetProperties()
        .Where(property => property.PropertyType == typeof(Band)).Select(property => (Band?)property.GetValue(effect)).OfType<Band>();
}
