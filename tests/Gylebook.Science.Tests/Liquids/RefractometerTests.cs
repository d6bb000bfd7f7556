using CsCheck;
using Gylebook.Science.Liquids;
using Gylebook.Tests.Shared;

namespace Gylebook.Science.Tests.Liquids;

public class RefractometerTests
{
    public static IEnumerable<object[]> Indices => RepositoryFile.Numbers(
        "data/liquids/refractive-index-sucrose.csv", "refractive_index", "percent_by_mass");

    public static IEnumerable<object[]> Beers => RepositoryFile.Numbers(
        "data/liquids/refractometer-after-fermentation.csv",
        "initial", "final", "linear2011", "cubic2011", "linear2017", "quadratic2017");

    // oiv-as2-02, Table II. The fit is stated to read 0.02 low; the index's fifth decimal is worth 0.003 either way.
    [Theory, MemberData(nameof(Indices))]
    public void Sucrose_by_refractive_index_meets_the_table(double index, double percent)
    {
        Near.Equal(percent - 0.02, Refractometer.BrixAt(index), 0.01);
    }

    // icumsa-refractive-index evaluated, three decimals.
    [Theory]
    [InlineData(1.33299, -0.013)]
    [InlineData(1.34782, 9.979)]
    [InlineData(1.35568, 14.982)]
    [InlineData(1.36384, 19.980)]
    [InlineData(1.37233, 24.983)]
    [InlineData(1.38115, 29.981)]
    public void The_fit_gives_its_own_values(double index, double brix) =>
        Near.Equal(brix, Refractometer.BrixAt(index), 0.0005);

    // 20 °Bx over 1.04 is 19.23 °P, gravity 1.0795 by the ASBC cubic.
    [Fact]
    public void The_wort_correction_factor_divides()
    {
        Near.Equal(19.23, Refractometer.PlatoOfWort(20), 0.005);
        Near.Equal(1.0795, SucroseSolution.GravityAt(Refractometer.PlatoOfWort(20)), 0.00007);
        Assert.Equal(20, Refractometer.PlatoOfWort(20, 1));
    }

    // Published forms evaluated; half a unit of the fourth decimal.
    [Theory, MemberData(nameof(Beers))]
    public void Each_form_gives_its_own_values(
        double initial, double final, double linear2011, double cubic2011, double linear2017, double quadratic2017)
    {
        Near.Equal(linear2011, RefractometerAfterFermentation.GravityByLinear2011(initial, final), 0.00005);
        Near.Equal(cubic2011, RefractometerAfterFermentation.GravityByCubic2011(initial, final), 0.00005);
        Near.Equal(linear2017, RefractometerAfterFermentation.GravityByLinear2017(initial, final), 0.00005);
        Near.Equal(quadratic2017, RefractometerAfterFermentation.GravityByQuadratic2017(initial, final), 0.00005);
    }

    // One measured beer, hobby literature: 15.2 and 7.3 °Bx raw, hydrometer 1.0085, factor 1.04.
    [Fact]
    public void The_2017_forms_meet_a_measured_beer_within_the_stated_doubt()
    {
        double initial = Refractometer.PlatoOfWort(15.2);
        double final = Refractometer.PlatoOfWort(7.3);
        double doubt = RefractometerAfterFermentation.GravityUncertainty;
        Near.Equal(1.0085, RefractometerAfterFermentation.GravityByLinear2017(initial, final), doubt);
        Near.Equal(1.0085, RefractometerAfterFermentation.GravityByQuadratic2017(initial, final), doubt);

        // The other two miss it by more than their doubt; the page says so.
        Near.Equal(1.0085 + 0.0035, RefractometerAfterFermentation.GravityByLinear2011(initial, final), 0.00005);
        Near.Equal(1.0085 + 0.0038, RefractometerAfterFermentation.GravityByCubic2011(initial, final), 0.00005);
    }

    // Unfermented wort: the 2017 forms read it to within their doubt, the 2011 forms do not and are flagged.
    [Fact]
    public void Unfermented_wort_is_flagged_for_the_2011_forms()
    {
        Near.Equal(1.0484, RefractometerAfterFermentation.GravityByLinear2017(12, 12), 0.003);
        Near.Equal(1.0484, RefractometerAfterFermentation.GravityByQuadratic2017(12, 12), 0.003);
        double found = RefractometerAfterFermentation.GravityByLinear2011(12, 12);
        Assert.True(Math.Abs(found - 1.0484) > 0.01);
        Assert.True(RefractometerAfterFermentation.DoubtsAbout2011Forms(12, found).HasFlag(RefractometerDoubt.StillFermenting));
        double cubic = RefractometerAfterFermentation.GravityByCubic2011(12, 12);
        Assert.True(RefractometerAfterFermentation.DoubtsAbout2011Forms(12, cubic).HasFlag(RefractometerDoubt.StillFermenting));
    }

    [Theory]
    [InlineData(12, 1.0105, RefractometerDoubt.None)]
    [InlineData(8, 1.0075, RefractometerDoubt.OriginalOutsideFit)]
    [InlineData(26, 1.0200, RefractometerDoubt.OriginalOutsideFit)]
    [InlineData(12, 1.0060, RefractometerDoubt.FinalOutsideFit)]
    [InlineData(12, 1.0150, RefractometerDoubt.AttenuationOutsideFit)]
    [InlineData(12, 1.0300, RefractometerDoubt.FinalOutsideFit | RefractometerDoubt.AttenuationOutsideFit | RefractometerDoubt.StillFermenting)]
    public void Doubts_name_the_edge_that_was_passed(double initial, double gravity, RefractometerDoubt expected) =>
        Assert.Equal(expected, RefractometerAfterFermentation.DoubtsAbout2011Forms(initial, gravity));

    [Fact]
    public void Every_form_reads_water_as_one_and_rises_with_the_second_reading()
    {
        Assert.Equal(1, RefractometerAfterFermentation.GravityByLinear2011(0, 0));
        Assert.Equal(1, RefractometerAfterFermentation.GravityByCubic2011(0, 0));
        Assert.Equal(1, RefractometerAfterFermentation.GravityByLinear2017(0, 0));
        Assert.Equal(1, RefractometerAfterFermentation.GravityByQuadratic2017(0, 0));
        Gen.Select(Gen.Double[8, 25], Gen.Double[3, 12]).Sample((i, f) =>
            RefractometerAfterFermentation.GravityByLinear2017(i, f + 0.1)
                > RefractometerAfterFermentation.GravityByLinear2017(i, f)
            && RefractometerAfterFermentation.GravityByQuadratic2017(i, f + 0.1)
                > RefractometerAfterFermentation.GravityByQuadratic2017(i, f)
            && RefractometerAfterFermentation.GravityByCubic2011(i, f + 0.1)
                > RefractometerAfterFermentation.GravityByCubic2011(i, f));
    }

    [Fact]
    public void More_bending_is_more_sugar() =>
        Gen.Double[1.333, 1.40].Sample(n => Refractometer.BrixAt(n + 1e-4) > Refractometer.BrixAt(n));
}
