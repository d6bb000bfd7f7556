using CsCheck;
using Gylebook.Science.Boiling;

namespace Gylebook.Science.Tests.Boiling;

public class HopsInTheKettleTests
{
    // The fitted rule at the printed rates, one decimal (formula check).
    [Theory]
    [InlineData(240, 240.0)]
    [InlineData(300, 278.5)]
    [InlineData(400, 330.1)]
    [InlineData(600, 398.7)]
    [InlineData(1000, 460.2)]
    public void A_great_deal_of_alpha_acid_does_not_all_dissolve(double added, double dissolved) =>
        Assert.Equal(dissolved, AlphaAcidSolubility.Dissolved(added), tolerance: 0.05);

    [Fact]
    public void The_two_pieces_meet_at_240() =>
        Assert.Equal(AlphaAcidSolubility.Dissolved(240), AlphaAcidSolubility.Dissolved(240.000001), tolerance: 0.25);

    [Fact]
    public void More_hops_never_dissolve_less() =>
        Gen.Select(Gen.Double[0, 1000], Gen.Double[0.5, 100]).Sample((added, more) =>
            Assert.True(AlphaAcidSolubility.Dissolved(added + more) >= AlphaAcidSolubility.Dissolved(added) - 0.21));

    // 20 L in a kettle 36 cm wide, open: b = 0.02027; lid that leaves 20 cm: 0.01365 (formula check). Rates to five decimals,
    // temperatures to two; the rounded rate moves them by 0.03 °C at most.
    [Theory]
    [InlineData(36, .02027)]
    [InlineData(20, .01365)]
    public void An_opening_sets_the_rate(double openingCentimetres, double perMinute) =>
        Assert.Equal(perMinute, WortCooling.AlonePerMinute(Disc(36), Disc(openingCentimetres), 20), tolerance: 0.000005);

    [Theory]
    [InlineData(36, 0, 100.10)]
    [InlineData(36, 5, 94.93)]
    [InlineData(36, 10, 90.25)]
    [InlineData(36, 20, 82.20)]
    [InlineData(36, 30, 75.64)]
    [InlineData(36, 60, 62.32)]
    [InlineData(20, 5, 96.56)]
    [InlineData(20, 10, 93.25)]
    [InlineData(20, 20, 87.27)]
    [InlineData(20, 30, 82.06)]
    [InlineData(20, 60, 70.07)]
    public void Wort_left_alone_cools_like_this(double openingCentimetres, double minutes, double celsius)
    {
        double rate = WortCooling.AlonePerMinute(Disc(36), Disc(openingCentimetres), 20);
        Assert.Equal(celsius, WortCooling.AloneCelsius(100.10, rate, minutes), tolerance: 0.005);
    }

    // The pieces of the older colour law: one decimal, as other programs print them.
    [Theory]
    [InlineData(1, 1)]
    [InlineData(5, 5)]
    [InlineData(20, 12.4)]
    [InlineData(30, 14.4)]
    [InlineData(50, 19.7)]
    [InlineData(80, 28.7)]
    [InlineData(100, 34.7)]
    public void Straight_lines_give_the_older_colour(double mcu, double srm) =>
        Assert.Equal(srm, StraightLineColour.SrmOfMaltColourUnits(mcu), tolerance: 0.05);

    [Theory]
    [InlineData(10.5)]
    [InlineData(37)]
    public void The_lines_meet(double bend) => Assert.Equal(
        StraightLineColour.SrmOfMaltColourUnits(bend), StraightLineColour.SrmOfMaltColourUnits(Math.BitIncrement(bend)), tolerance: 1e-9);

    // Morey built the power law as a smoothing of the lines, R² = 0.97; within his range the two stay within 30 % from 5 MCU up.
    [Fact]
    public void The_power_law_smooths_the_lines() => Gen.Double[5, 130].Sample(mcu =>
        Assert.InRange(WortColour.SrmOfMaltColourUnits(mcu) / StraightLineColour.SrmOfMaltColourUnits(mcu), 0.7, 1.3));

    [Fact]
    public void What_has_no_meaning_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => AlphaAcidSolubility.Dissolved(-1));
        Assert.Throws<ArgumentOutOfRangeException>(() => StraightLineColour.SrmOfMaltColourUnits(double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => WortCooling.AlonePerMinute(1000, 1000, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => WortCooling.AloneCelsius(100, -1, 5));
    }

    private static double Disc(double diameter) => Math.PI * diameter * diameter / 4;
}
