using Gylebook.Science.Mashing;
using Gylebook.Science.Quantities;
using Gylebook.Science.Water;

namespace Gylebook.Science.Tests.Mashing;

public sealed class WortAcidTests
{
    /// <summary>German rule for wort (trade literature), mL for 100 kg of malt and 0.1 pH, printed to a whole mL: all lie in 31 to 36 within their rounding. The sulphuric acid in print is of 98 %, 2 % stronger than ours.</summary>
    [Theory]
    [InlineData("hydrochloric-37", 27)]
    [InlineData("lactic-80", 30)]
    [InlineData("sulphuric-96", 9)]
    public void Known_rules_lie_within_the_ends(string id, double millilitres)
    {
        const double HalfAMillilitre = 0.5;
        double each = AcidAsSold.Find(id).MilliequivalentsPerUnit(5.4) / 100 / 0.1;
        Assert.InRange(millilitres * each, WortAcid.SmallestBuffer - (HalfAMillilitre * each), WortAcid.LargestBuffer + (HalfAMillilitre * each));
    }

    /// <summary>Sour wort of 55 g/L lactic acid, 6 L for 1000 kg and 0.1 pH (maltster's data sheet): 36 in print.</summary>
    [Fact]
    public void Known_sour_wort_is_the_high_end() =>
        Assert.Equal(WortAcid.LargestBuffer, 6 * 55 / 90.078 * Acids.Lactic.ProtonsGivenUp(5.4) / 1000 / 0.1 * 1000, 0.5);

    [Fact]
    public void Acid_there_and_the_pH_it_makes_are_each_others_inverse()
    {
        Mass malt = Mass.FromKilograms(4.2);
        double acid = WortAcid.Milliequivalents(malt, 5.5, 5.2);
        Assert.Equal(33 * 4.2 * 0.3, acid, 1e-9);
        Assert.Equal(5.2, WortAcid.PhWith(malt, 5.5, acid), 1e-12);
        Assert.Equal(0, WortAcid.Milliequivalents(malt, 5.1, 5.2));
    }

    [Theory]
    [InlineData(1, 5.2, 33)]
    [InlineData(5.5, 11, 33)]
    [InlineData(5.5, 5.2, 0)]
    [InlineData(double.NaN, 5.2, 33)]
    public void Invalid_is_refused(double from, double to, double buffer) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => WortAcid.Milliequivalents(Mass.FromKilograms(1), from, to, buffer));
}
