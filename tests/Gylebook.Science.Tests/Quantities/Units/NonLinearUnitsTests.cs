using CsCheck;
using Gylebook.Science.Quantities;

namespace Gylebook.Science.Tests.Quantities.Units;

/// <summary>Gravity with extract, and alcohol by mass with alcohol by volume, against printed tables.</summary>
public sealed class NonLinearUnitsTests
{
    // Sucrose in water, g in 100 g, and SG 20/20 in air. ASBC Methods of Analysis, Table 1, the same as
    // the densities of NBS Circular 440, Table 109 (from memory), over that of water, both in air. Five printed decimals of SG are
    // 0.000005, 0.0013 °P; our curve states 0.0042 kg/m³ from 3 °P on, 0.0000042 SG or 0.001 °P.
    [Theory]
    [InlineData(5, 1.01968)]
    [InlineData(8, 1.03180)]
    [InlineData(10, 1.04003)]
    [InlineData(12, 1.04837)]
    [InlineData(15, 1.06111)]
    [InlineData(18, 1.07413)]
    [InlineData(20, 1.08297)]
    [InlineData(25, 1.10564)]
    [InlineData(30, 1.12913)]
    public void Known_extracts_have_their_tabulated_gravity(double plato, double gravity)
    {
        Assert.Equal(plato, Convert($"{gravity:0.00000} SG", "°P"), 0.0013 + 0.001);
        Assert.Equal(gravity, Convert($"{plato} °P", "SG"), 0.000005 + 0.0000042);
    }

    // Water itself, and the extract below zero that alcohol makes.
    [Fact]
    public void Water_is_zero_extract_and_lighter_beer_is_below()
    {
        Assert.Equal(0, Convert("1 SG", "°P"));
        Assert.Equal(1, Convert("0 °P", "SG"));
        Assert.InRange(Convert("0.998 SG", "°P"), -0.53, -0.50);
    }

    // US Pharmacopeia 29, Alcoholometric Table (from NBS Bulletin 9): % by mass and % by volume at 15.56 °C.
    // Printed to 0.01. Per cent by volume at 15.56 °C and at 20 °C differ, because water and ethanol expand
    // differently from their mixture: by at most 0.08 % vol from 1 to 30 % by mass (OIML R 22, both temperatures:
    // 20 °C is the larger, 24.55 for 24.47 at 20 % by mass). So the tolerance is 0.08 + 0.005.
    [Theory]
    [InlineData(1, 1.26)]
    [InlineData(5, 6.24)]
    [InlineData(10, 12.39)]
    [InlineData(20, 24.47)]
    [InlineData(30, 36.18)]
    public void Known_alcohol_by_mass_is_near_the_pharmacopoeia_at_15_56(double byMass, double byVolume) =>
        Assert.Equal(byVolume, Convert($"{byMass} % ABW", "% ABV"), 0.085);

    // A distilling trade journal's worked figure: 95 % vol is 92.41 % by mass, printed to 0.01.
    // Directive 76/766/EEC: pure ethanol 789.24 kg/m³ at 20 °C, so 100 g/100 mL of it is 100 %.
    [Theory]
    [InlineData(95, 92.41)]
    [InlineData(100, 100)]
    [InlineData(0, 0)]
    public void Known_alcohol_by_volume_at_20_has_its_mass(double byVolume, double byMass) =>
        Assert.Equal(byMass, Convert($"{byVolume} % ABV", "% ABW"), 0.005);

    [Fact]
    public void Gravity_comes_back_through_plato() => Gen.Double[0.96, 1.175].Sample(gravity =>
    {
        double plato = Convert(Text(gravity, "SG"), "°P");
        double back = Convert(Text(plato, "°P"), "SG");
        // Newton settles to 1e-12 °P, a step of 1e-14 in gravity.
        return Math.Abs(back - gravity) < 1e-12;
    });

    [Fact]
    public void Alcohol_comes_back_through_mass() => Gen.Double[0, 100].Sample(byVolume =>
        Math.Abs(Convert(Text(Convert(Text(byVolume, "% ABV"), "% ABW"), "% ABW"), "% ABV") - byVolume) < 1e-8);

    [Fact]
    public void More_extract_is_more_gravity_with_no_step_on_the_way() =>
        Gen.Select(Gen.Double[0.1, 29.9], Gen.Double[1e-4, 0.1]).Sample((plato, more) =>
        {
            double rise = Convert(Text(plato + more, "°P"), "SG") - Convert(Text(plato, "°P"), "SG");
            // ASBC Table 1: 0.00390 SG a degree from 0 to 1 °P, 0.00470 from 25 to 30.
            return rise > 0.0037 * more && rise < 0.0050 * more;
        });

    [Fact]
    public void More_alcohol_by_mass_is_more_by_volume() =>
        Gen.Select(Gen.Double[0, 99.8], Gen.Double[0.001, 0.1]).Sample((byMass, more) =>
            Convert(Text(byMass + more, "% ABW"), "% ABV") > Convert(Text(byMass, "% ABW"), "% ABV"));

    private static string Text(double number, string unit) => FormattableString.Invariant($"{number:R} {unit}");

    private static double Convert(string text, string unit)
    {
        Assert.True(UnitConversion.TryConvert(text, unit, out Conversion? conversion, out string problem), problem);
        return conversion!.Number;
    }
}
