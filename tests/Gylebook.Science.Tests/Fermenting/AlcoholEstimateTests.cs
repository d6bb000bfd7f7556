using CsCheck;
using Gylebook.Science.Fermenting;
using Gylebook.Science.Liquids;
using Gylebook.Tests.Shared;

namespace Gylebook.Science.Tests.Fermenting;

public class AlcoholEstimateTests
{
    // Those rows take extract from the ASBC cubic; our curve lies up to 0.003 °P from it to 20 °P and 0.017 at 28,
    // half of which becomes alcohol by mass, and 1.3 of that by volume.
    private const double CubicToOurs = 0.003 * 0.5 * 1.3;
    private const double CubicToOursAbove20Plato = 0.017 * 0.6 * 1.3;

    public static IEnumerable<object[]> Pairs => RepositoryFile.Numbers(
        "data/fermenting/gravity-pairs.csv",
        "original", "final", "original_plato", "apparent_plato", "alcohol", "volume", "volume_balling_q", "quick_rule");

    public static IEnumerable<object[]> Attenuated => RepositoryFile.Numbers(
        "data/fermenting/alcohol-at-75-percent.csv",
        "original", "final", "original_plato", "real_textbook", "quick_rule", "balling_q", "textbook");

    public static IEnumerable<object[]> Ales => RepositoryFile.Numbers(
        "data/fermenting/ales-1917.csv", "original", "final", "alcohol", "percent_by_volume", "quick_rule", "balling_q");

    // Evaluated to three decimals from extracts of three decimals: 0.001.
    [Theory, MemberData(nameof(Pairs))]
    public void Pairs_of_gravities_are_met(
        double original, double final, double originalPlato, double apparentPlato,
        double byMass, double textbook, double balling, double quick)
    {
        Near.Equal(textbook, AlcoholEstimate.PercentByVolumeOf(byMass, final), 0.0015);
        Near.Equal(balling, AlcoholEstimate.PercentByVolumeOfExtracts(originalPlato, apparentPlato, final), 0.0015);
        Near.Equal(quick, AlcoholEstimate.QuickRulePercentByVolume(original, final), 0.0005);
        double tolerance = 0.0015 + (originalPlato > 20 ? CubicToOursAbove20Plato : CubicToOurs);
        Near.Equal(balling, AlcoholEstimate.PercentByVolume(original, final), tolerance);
    }

    // Evaluated to two decimals (real extract: three) at 75 % apparent attenuation, final gravity rounded to 0.0001 first
    // and turned into extract by the ASBC cubic again.
    [Theory, MemberData(nameof(Attenuated))]
    public void Three_quarters_attenuated_beers_are_met(
        double original, double final, double originalPlato, double real, double quick, double balling, double textbook)
    {
        double apparent = PlatoPolynomials.AsbcPlatoAt(final);
        Near.Equal(0.75, Attenuation.Apparent(originalPlato, apparent), 0.005);
        Near.Equal(balling, AlcoholEstimate.PercentByVolumeOfExtracts(originalPlato, apparent, final), 0.0055);
        Near.Equal(quick, AlcoholEstimate.QuickRulePercentByVolume(original, final), 0.005);
        double found = Balling.TextbookRealExtractOf(originalPlato, apparent);
        Near.Equal(real, found, 0.001);
        double byMass = Balling.AlcoholOf(originalPlato, found);
        Near.Equal(textbook, AlcoholEstimate.PercentByVolumeOf(byMass, final), 0.0055);
    }

    // tolman-riley-1917, measured. Twice the stated rms of nine ales (0.13 and 0.12 % vol) for a single one; the
    // evaluated columns: half a unit of the second decimal, and the cubic.
    [Theory, MemberData(nameof(Ales))]
    public void Measured_ales_are_met_as_well_as_stated(
        double original, double final, double grams, double measured, double quick, double balling)
    {
        Near.Equal(measured, grams / 0.789239, 0.005);
        double found = AlcoholEstimate.PercentByVolume(original, final);
        Near.Equal(measured, found, 2 * 0.13);
        Near.Equal(balling, found, 0.005 + CubicToOurs);
        Near.Equal(measured, AlcoholEstimate.QuickRulePercentByVolume(original, final), 2 * 0.12);
        Near.Equal(quick, AlcoholEstimate.QuickRulePercentByVolume(original, final), 0.005);
    }

    // tolman-riley-1917: over nine ales the chain has bias +0.07 and rms 0.13 % vol. Five of them stand in our table;
    // a mean of five may lie from that of nine by twice 0.13/√5.
    [Fact]
    public void The_bias_over_measured_ales_is_as_stated()
    {
        double[] off = [.. Ales.Select(row => row.Cast<double>().ToArray())
            .Select(row => AlcoholEstimate.PercentByVolume(row[0], row[1]) - row[3])];
        Assert.Equal(5, off.Length);
        Near.Equal(0.07, off.Average(), 2 * 0.13 / Math.Sqrt(5));
    }

    // Worked examples in hobby literature: 3.79 % by mass at 1.012 is 4.85 % by volume, with 0.791; and 3.554 % at 1.0131
    // is 4.534 with 0.794, which is ethanol at 15.6 °C.
    [Fact]
    public void Worked_examples_of_mass_to_volume_are_met()
    {
        Near.Equal(4.85, AlcoholEstimate.PercentByVolumeOf(3.789, 1.012), 0.005);
        Near.Equal(4.534 * 0.794 / 0.79066, AlcoholEstimate.PercentByVolumeOf(3.554, 1.0131), 0.001);
    }

    // oiml-r22: for alcohol and water alone the two ways of counting must agree; 0.79066 has five digits, and air moves a
    // gravity near 1 by no more than 0.00003.
    [Fact]
    public void Without_extract_it_counts_like_the_alcohol_table() =>
        Gen.Double[0, 15].Sample(byMass =>
        {
            double gravity = EthanolWater.GravityAt20C(byMass);
            double found = AlcoholEstimate.PercentByVolumeOf(byMass, gravity);
            return Math.Abs(found - EthanolWater.PercentByVolumeOf(byMass)) <= 0.00004 * (found + 1);
        });

    [Fact]
    public void Mass_and_volume_are_a_round_trip() =>
        Gen.Select(Gen.Double[0, 20], Gen.Double[0.99, 1.05]).Sample((byMass, gravity) => Math.Abs(
            AlcoholEstimate.PercentByMassOf(AlcoholEstimate.PercentByVolumeOf(byMass, gravity), gravity) - byMass) < 1e-12);

    [Fact]
    public void The_further_it_falls_the_more_alcohol() =>
        Gen.Select(Gen.Double[1.03, 1.12], Gen.Double[0.995, 1.028]).Sample((original, final) =>
            AlcoholEstimate.PercentByVolume(original, final - 0.001) > AlcoholEstimate.PercentByVolume(original, final)
            && AlcoholEstimate.PercentByVolume(original + 0.001, final) > AlcoholEstimate.PercentByVolume(original, final));
}
