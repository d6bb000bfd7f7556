using CsCheck;
using Gylebook.Science.Fermenting;
using Gylebook.Science.Liquids;
using Gylebook.Tests.Shared;

namespace Gylebook.Science.Tests.Fermenting;

public class BallingTests
{
    private const string PairsFile = "data/fermenting/gravity-pairs.csv";

    public static IEnumerable<object[]> Factors => RepositoryFile.Numbers(
        "data/fermenting/balling-factors.csv", "original", "a_table", "a", "a_textbook", "b", "q");

    public static IEnumerable<object[]> FactorC => RepositoryFile.Numbers(
        "data/fermenting/balling-factor-c.csv", "original", "c_table");

    public static IEnumerable<object[]> Brews => RepositoryFile.Numbers(
        "data/fermenting/cutaia-2009-means.csv", "original", "alcohol", "apparent", "a_textbook", "a_balling_q");

    public static IEnumerable<object[]> Pairs => RepositoryFile.Numbers(
        PairsFile, "original_plato", "apparent_plato", "real", "alcohol");

    public static IEnumerable<object[]> Shares => RepositoryFile.Numbers(PairsFile, "original_plato", "real", "rdf", "rdf_mass");

    // balling-factor-a: the table's own scatter against the closed form is 0.00011 over its 31 rows, of which these are
    // nine; plus half a unit of its last digit. The evaluated columns: half a unit of their last digit.
    [Theory, MemberData(nameof(Factors))]
    public void Factors_a_b_and_q_meet_the_table(double original, double table, double a, double textbook, double b, double q)
    {
        Near.Equal(table, Balling.AlcoholPerApparentDrop(original), 0.00011);
        Near.Equal(a, Balling.AlcoholPerApparentDrop(original), 0.00005);
        Near.Equal(b, Balling.AlcoholPerRealDrop(original), 0.00005);
        Near.Equal(q, Balling.ApparentOverRealDrop(original), 0.0005);
        Near.Equal(textbook, 0.8192 * Balling.AlcoholPerRealDrop(original), 0.00005);
    }

    // balling-bierprobe, Table B, three decimals printed: within one unit of the last digit (the row of 11 °P is 0.0009
    // off), for the book reached them through tables of its own, rounded on the way.
    [Theory, MemberData(nameof(FactorC))]
    public void Factor_c_meets_the_book(double original, double table) =>
        Near.Equal(table, Balling.AlcoholPerGap(original), 0.001);

    // balling-bierprobe, worked example: RE 5.550, AE 4.250, q 1.231 give OE 11.177, b 0.5134 and A 2.888. The book takes
    // b from its table, whose scatter against the closed form is 0.00011 in a, so 0.00011·q in b; and it cuts off rather
    // than rounds (5.627·0.5134 = 2.8889): 0.001 in OE and in A.
    [Fact]
    public void The_books_worked_example_is_met()
    {
        double original = ((5.550 * 1.231) - 4.250) / 0.231;
        Near.Equal(11.177, original, 0.001);
        Near.Equal(1.231, Balling.ApparentOverRealDrop(original), 0.0005);
        Near.Equal(0.5134, Balling.AlcoholPerRealDrop(original), 0.00011 * 1.231);
        Near.Equal(2.888, Balling.AlcoholOf(11.177, 5.550), (0.00011 * 1.231 * 5.627) + 0.001);
        Near.Equal(1.300, 5.550 - Balling.ApparentExtractOf(11.177, 5.550), 0.003);
    }

    // Worked example of a published article: OE 12.2, AE 3.8 give RE 5.3, A 3.6 and density 1.013 by the textbook.
    [Fact]
    public void An_articles_worked_example_is_met()
    {
        double real = Balling.TextbookRealExtractOf(12.2, 3.8);
        Near.Equal(5.3, real, 0.05);
        Near.Equal(5.319, real, 0.0005);
        Near.Equal(3.554, Balling.AlcoholOf(12.2, real), 0.0005);
        Near.Equal(3.6, Balling.AlcoholOf(12.2, real), 0.05);
        Near.Equal(1.013, SucroseSolution.KilogramsPerLitreAt20C(3.8), 0.0005);
    }

    // cutaia-2009, means of five sets: tolerance 0.12 % by mass as stated for any formula on these means.
    [Theory, MemberData(nameof(Brews))]
    public void Alcohol_of_five_sets_of_brews_is_met(
        double original, double alcohol, double apparent, double textbook, double balling)
    {
        double found = Balling.AlcoholOf(original, Balling.RealExtractOf(original, apparent));
        Near.Equal(alcohol, found, 0.12);
        Near.Equal(balling, found, 0.0005);
        double byTextbook = Balling.AlcoholOf(original, Balling.TextbookRealExtractOf(original, apparent));
        Near.Equal(alcohol, byTextbook, 0.12);
        Near.Equal(textbook, byTextbook, 0.0005);
    }

    // Evaluated pairs: extracts are given to three decimals, which reaches real extract and alcohol with 0.0005 each.
    [Theory, MemberData(nameof(Pairs))]
    public void Pairs_of_gravities_are_met(double original, double apparent, double real, double alcohol)
    {
        Near.Equal(real, Balling.TextbookRealExtractOf(original, apparent), 0.001);
        Near.Equal(alcohol, Balling.AlcoholOf(original, real), 0.001);
        Near.Equal(original, Balling.OriginalExtractOf(real, alcohol), 0.002);
    }

    // asbc-beer-6: two decimals of per cent; three decimals of OE and RE reach them with 0.01.
    [Theory, MemberData(nameof(Shares))]
    public void Share_of_extract_fermented_is_met(double original, double real, double attenuation, double share)
    {
        Near.Equal(attenuation, 100 * Attenuation.Real(original, real), 0.015);
        Near.Equal(share, 100 * Balling.ExtractFermented(Attenuation.Real(original, real), real), 0.015);
    }

    // 0.48391, 0.46286, 0.05323: the reaction over its own sum.
    [Fact]
    public void The_reaction_closes()
    {
        Near.Equal(0.48391, Balling.AlcoholYield, 0.000005);
        Near.Equal(0.46286, Balling.CarbonDioxideYield, 0.000005);
        Near.Equal(0.05323, Balling.YeastYield, 0.000005);
        Near.Equal(1, Balling.AlcoholYield + Balling.CarbonDioxideYield + Balling.YeastYield, 1e-15);
        Near.Equal(Balling.ExtractPerAlcohol, 1 + Balling.CarbonDioxidePerAlcohol + Balling.YeastPerAlcohol, 1e-15);
    }

    // The share of mass from a balance of 100 g of wort, against the closed form.
    [Fact]
    public void Share_fermented_is_that_of_the_mass_balance() =>
        Gen.Select(Gen.Double[2, 30], Gen.Double[0.01, 0.99]).Sample((original, share) =>
        {
            double fermented = original * share;
            double beer = 100 - (fermented * (Balling.CarbonDioxideYield + Balling.YeastYield));
            double real = 100 * (original - fermented) / beer;
            double alcohol = 100 * fermented * Balling.AlcoholYield / beer;
            return Math.Abs(Balling.ExtractFermented(Attenuation.Real(original, real), real) - share) < 1e-12
                && Math.Abs(Balling.AlcoholOf(original, real) - alcohol) < 1e-12
                && Math.Abs(Balling.OriginalExtractOf(real, alcohol) - original) < 1e-11;
        });

    [Fact]
    public void Real_and_apparent_extract_are_a_round_trip() =>
        Gen.Select(Gen.Double[1, 30], Gen.Double[-1, 1]).Sample((original, left) =>
            Math.Abs(Balling.ApparentExtractOf(original, Balling.RealExtractOf(original, original * left))
                - (original * left)) < 1e-12);

    // At 0.7 °P the textbook's 0.8192 is 1/q; at 12 °P it is 0.8117, and gives 0.9 % more alcohol.
    [Fact]
    public void The_textbooks_factor_is_that_of_very_thin_wort()
    {
        Near.Equal(0.8192, 1 / Balling.ApparentOverRealDrop(0.7), 0.00005);
        Near.Equal(0.8117, 1 / Balling.ApparentOverRealDrop(12), 0.00005);
        double more = Balling.AlcoholOf(12, Balling.TextbookRealExtractOf(12, 3))
            / Balling.AlcoholOf(12, Balling.RealExtractOf(12, 3));
        Near.Equal(1.009, more, 0.0005);
    }

    [Fact]
    public void Unfermented_wort_holds_no_alcohol() =>
        Gen.Double[0, 30].Sample(p =>
            Balling.AlcoholOf(p, p) == 0
            && Math.Abs(Balling.RealExtractOf(p, p) - p) < 1e-15
            && Math.Abs(Balling.OriginalExtractOf(p, 0) - p) < 1e-12);
}
