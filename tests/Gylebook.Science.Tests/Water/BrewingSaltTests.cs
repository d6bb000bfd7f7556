using CsCheck;
using Gylebook.Science.Quantities;
using Gylebook.Science.Water;

namespace Gylebook.Science.Tests.Water;

public class BrewingSaltTests
{
    // Formulas worked out by hand with the same IUPAC masses; half of the last digit printed.
    private const double Printed = 0.0051;

    [Theory]
    [InlineData("gypsum", 172.164, Ion.Calcium, 232.79, Ion.Sulphate, 557.93)]
    [InlineData("gypsum-anhydrous", 136.134, Ion.Calcium, 294.40, Ion.Sulphate, 705.60)]
    [InlineData("calcium-chloride", 147.008, Ion.Calcium, 272.62, Ion.Chloride, 482.29)]
    [InlineData("calcium-chloride-anhydrous", 110.978, Ion.Calcium, 361.13, Ion.Chloride, 638.87)]
    [InlineData("epsom", 246.466, Ion.Magnesium, 98.61, Ion.Sulphate, 389.73)]
    [InlineData("magnesium-chloride", 203.295, Ion.Magnesium, 119.56, Ion.Chloride, 348.75)]
    [InlineData("table-salt", 58.440, Ion.Sodium, 393.39, Ion.Chloride, 606.61)]
    [InlineData("baking-soda", 84.006, Ion.Sodium, 273.67, Ion.Bicarbonate, 726.33)]
    [InlineData("chalk", 100.086, Ion.Calcium, 400.44, Ion.Bicarbonate, 1219.3)]
    [InlineData("potassium-chloride", 74.548, Ion.Potassium, 524.47, Ion.Chloride, 475.53)]
    [InlineData("potassium-bicarbonate", 100.114, Ion.Potassium, 390.54, Ion.Bicarbonate, 609.46)]
    [InlineData("potassium-sulphate", 174.253, Ion.Potassium, 448.75, Ion.Sulphate, 551.25)]
    [InlineData("sodium-carbonate", 105.988, Ion.Sodium, 433.82, Ion.Chloride, 0)]
    [InlineData("lime", 74.092, Ion.Calcium, 540.92, Ion.Chloride, 0)]
    [InlineData("lye", 39.997, Ion.Sodium, 574.79, Ion.Chloride, 0)]
    public void A_gram_in_a_litre_brings_what_the_formula_says(
        string id, double molarMass, Ion cation, double cationYield, Ion anion, double anionYield)
    {
        BrewingSalt salt = BrewingSalts.Find(id);
        Assert.Equal(molarMass, salt.MolarMass, 0.00051);
        Assert.Equal(cationYield, salt.PerGramInALitre[cation], Printed);
        Assert.Equal(anionYield, salt.PerGramInALitre[anion], anionYield > 1000 ? 0.051 : Printed);
    }

    [Theory] // mEq of alkalinity in a gram, three decimals printed
    [InlineData("baking-soda", 11.904)]
    [InlineData("sodium-carbonate", 18.870)]
    [InlineData("chalk", 19.983)]
    [InlineData("lime", 26.993)]
    [InlineData("potassium-bicarbonate", 9.989)]
    [InlineData("lye", 25.002)]
    [InlineData("gypsum", 0)]
    public void Alkalinity_of_a_gram_follows_the_formula(string id, double milliequivalents) =>
        Assert.Equal(milliequivalents, BrewingSalts.Find(id).AlkalinityPerGram, 0.00051);

    [Theory] // product data sheets, 1 g in a US gallon (3.785 L), rounded to 0.1 mg/L by one and to 1 mg/L by another
    [InlineData("gypsum", Ion.Calcium, 61.5, 0.06)]
    [InlineData("gypsum", Ion.Sulphate, 147.4, 0.06)]
    [InlineData("calcium-chloride", Ion.Calcium, 72, 0.5)]
    [InlineData("calcium-chloride", Ion.Chloride, 127, 0.5)]
    public void Data_sheets_print_the_same_yield(string id, Ion ion, double printed, double rounding)
    {
        IonProfile added = BrewingSalts.Find(id).Added(Mass.FromGrams(1), VolumeAt20C.FromLitres(3.785411784));
        Assert.Equal(printed, added[ion], rounding);
    }

    [Fact] // an examination's worked example, whose whole-number masses are good for 0.2 %
    public void Epsom_for_300_mg_of_sulphate_weighs_770_mg()
    {
        double grams = 300 / BrewingSalts.Epsom.PerGramInALitre.Sulphate;
        Assert.Equal(0.7703, grams, 0.7703 * 0.002);
        Assert.Equal(75.9, grams * BrewingSalts.Epsom.PerGramInALitre.Magnesium, 75.9 * 0.002);
    }

    [Fact] // 75.5 % CaCl2 is pure dihydrate: three digits
    public void Calcium_chloride_of_75_5_percent_is_the_dihydrate()
    {
        BrewingSalt bought = BrewingSalts.CalciumChlorideOfAssay(Fraction.FromPercent(75.5));
        Assert.Equal(BrewingSalts.CalciumChloride.PerGramInALitre.Calcium, bought.PerGramInALitre.Calcium, 272.6 * 0.0007);
        Assert.Equal(BrewingSalts.CalciumChloride.PerGramInALitre.Chloride, bought.PerGramInALitre.Chloride, 482.3 * 0.0007);
    }

    [Fact]
    public void Every_salt_is_neutral()
    {
        foreach (BrewingSalt salt in BrewingSalts.All)
        {
            ChargeBalance balance = ChargeBalance.Of(salt.PerGramInALitre);
            Assert.Equal(balance.Cations, balance.Anions, 1e-9);
        }
    }

    [Fact]
    public void A_salt_never_lowers_an_ion() =>
        Gen.Select(Gen.Int[0, BrewingSalts.All.Count - 1], Gen.Double[0, 50], Gen.Double[1, 100])
            .Sample((index, grams, litres) =>
            {
                IonProfile added = BrewingSalts.All[index].Added(Mass.FromGrams(grams), VolumeAt20C.FromLitres(litres));
                Assert.All(Ions.All, ion => Assert.True(added[ion] >= 0));
            });

    [Fact]
    public void Salt_in_no_water_is_refused() => Assert.Throws<ArgumentOutOfRangeException>(
        () => BrewingSalts.Gypsum.Added(Mass.FromGrams(1), VolumeAt20C.FromLitres(0)));

    [Fact]
    public void A_salt_of_unknown_name_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => BrewingSalts.Find("unobtainium"));

    [Fact]
    public void What_burns_carries_a_caution() => Assert.All(
        (BrewingSalt[])[BrewingSalts.Lime, BrewingSalts.Lye], salt => Assert.Contains("goggles", salt.Caution));
}
