using CsCheck;
using Gylebook.Science.Fermenting;
using Gylebook.Tests.Shared;

namespace Gylebook.Science.Tests.Fermenting;

public class BeerEnergyTests
{
    private static readonly double[][] PairRows = [.. RepositoryFile.Numbers(
        "data/fermenting/gravity-pairs.csv", "original", "final", "real", "alcohol")
        .Select(row => row.Cast<double>().ToArray())];

    public static IEnumerable<object[]> Beers => RepositoryFile.Numbers(
        "data/fermenting/energy.csv",
        "original", "final", "kcal", "kcal_355", "label_kcal", "label_kj", "carbohydrate", "carbohydrate_355");

    // asbc-beer-33 and eu-1169-2011 evaluated from the pairs' real extract and alcohol, which have three decimals: 0.0055
    // kcal and a twentieth of that in carbohydrate.
    [Theory, MemberData(nameof(Beers))]
    public void Energy_of_six_beers_is_met(
        double original, double final, double kcal, double kcal355, double labelKcal, double labelKj,
        double carbohydrate, double carbohydrate355)
    {
        double[] pair = PairRows.Single(row => row[0] == original && row[1] == final);
        (double real, double alcohol) = (pair[2], pair[3]);
        double found = BeerEnergy.KilocaloriesPer100Millilitres(alcohol, real, final);
        Near.Equal(kcal, found, 0.005 + 0.0055);
        Near.Equal(kcal355, 3.55 * found, 0.05 + (3.55 * 0.0055));
        double sugar = BeerEnergy.CarbohydrateGramsPer100Millilitres(real, final);
        Near.Equal(carbohydrate, sugar, 0.005 + 0.001);
        Near.Equal(carbohydrate355, 3.55 * sugar, 0.05 + 0.002);

        double ethanol = BeerEnergy.AlcoholGramsPer100Millilitres(alcohol, final);
        Near.Equal(labelKcal, BeerEnergy.LabelKilocalories(ethanol, sugar), 0.05 + 0.0055);
        Near.Equal(labelKj, BeerEnergy.LabelKilojoules(ethanol, sugar), 0.5 + 0.03);
    }

    // usda-14003, regular beer, per 100 g: alcohol 3.87 by difference, protein 0.46, carbohydrate 3.55, ash 0.16, energy
    // 43 kcal; 12.64 g carbohydrate in a can of 356 g. Printed without decimals: half a unit.
    [Fact]
    public void An_official_food_table_agrees()
    {
        Near.Equal(3.87, 100 - 91.96 - 0.46 - 0.16 - 3.55, 0.005);
        double found = BeerEnergy.KilocaloriesPer100Grams(3.87, 0.46 + 3.55 + 0.16, 0.16);
        Near.Equal(43, found, 0.5);
        Near.Equal(42.7, found, 0.05);
        Near.Equal(153, 3.56 * found, 3.56 * 0.5);

        // The table's kilojoules come from factors of its own, 6.93, 3.87 and 4.12, which give 43.2 kcal.
        Near.Equal(181, 4.184 * found, 0.5 + (4.184 * (43.2 - 42.7)));
    }

    // Worked example of a published article: OE 12.2, AE 3.8, 230 kcal (963 kJ) in half a litre, by the density 1.0131
    // where the method as printed has gravity. Half a unit.
    [Fact]
    public void An_articles_half_litre_is_met()
    {
        double real = Balling.TextbookRealExtractOf(12.2, 3.8);
        double alcohol = Balling.AlcoholOf(12.2, real);
        Near.Equal(230, 5 * BeerEnergy.KilocaloriesPer100Millilitres(alcohol, real, 1.0131), 0.5);
        Near.Equal(963, 5 * BeerEnergy.KilojoulesPer100Millilitres(alcohol, real, 1.0131), 0.5 * 4.184);
    }

    // eu-1169-2011, Annex XIV, by hand: 100 mL at 12 % vol hold 12·0.789 g of ethanol: 66 kcal, 275 kJ; 3 g/L of sugar are
    // 1 kcal and 5 kJ.
    [Fact]
    public void The_labels_factors_are_the_laws()
    {
        Near.Equal(66, BeerEnergy.LabelKilocalories(12 * 0.789, 0), 0.5);
        Near.Equal(275, BeerEnergy.LabelKilojoules(12 * 0.789, 0), 0.5);
        Near.Equal(1, BeerEnergy.LabelKilocalories(0, 0.3), 0.5);
        Near.Equal(5, BeerEnergy.LabelKilojoules(0, 0.3), 0.5);
    }

    /// <summary>A beer of sugar alone can end with less extract than the usual ash and protein: it holds no carbohydrate, and not less than none.</summary>
    [Theory]
    [InlineData(0.1)]
    [InlineData(0.03)]
    [InlineData(0)]
    [InlineData(-0.2)]
    public void Limits_less_extract_than_ash_is_no_carbohydrate(double real)
    {
        Assert.Equal(0, BeerEnergy.CarbohydrateGramsPer100Millilitres(real, 0.99));
        Near.Equal(6.9 * 5, BeerEnergy.KilocaloriesPer100Grams(5, real), 1e-12);
    }

    [Fact]
    public void Water_feeds_nobody()
    {
        Assert.Equal(0, BeerEnergy.KilocaloriesPer100Millilitres(0, 0, 1, 0));
        Assert.Equal(0, BeerEnergy.LabelKilojoules(0, 0));
    }

    [Fact]
    public void More_of_either_is_more_energy() =>
        Gen.Select(Gen.Double[0, 10], Gen.Double[0.2, 12], Gen.Double[0.99, 1.04]).Sample((alcohol, real, gravity) =>
            BeerEnergy.KilocaloriesPer100Millilitres(alcohol + 0.1, real, gravity)
                > BeerEnergy.KilocaloriesPer100Millilitres(alcohol, real, gravity)
            && BeerEnergy.KilocaloriesPer100Millilitres(alcohol, real + 0.1, gravity)
                > BeerEnergy.KilocaloriesPer100Millilitres(alcohol, real, gravity));
}
