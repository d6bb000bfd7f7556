using CsCheck;
using Gylebook.Science.Fermenting;

namespace Gylebook.Science.Tests.Fermenting;

public class PitchRateTests
{
    // The rule at 20 L (formula check). Extract is printed to 0.01 °P, which is 0.005 × 20 × r cells; and one decimal.
    [Theory]
    [InlineData(9.99, 149.9, 299.8)]
    [InlineData(11.91, 178.7, 357.4)]
    [InlineData(12.39, 185.8, 371.6)]
    [InlineData(14.74, 221.1, 442.2)]
    [InlineData(18.20, 273.0, 545.9)]
    [InlineData(21.57, 323.5, 647.1)]
    public void Cells_follow_the_rule(double plato, double ale, double lager)
    {
        Assert.Equal(ale, PitchRate.BillionCells(PitchRate.Ale, 20, plato), tolerance: 0.05 + (0.005 * 20 * PitchRate.Ale));
        Assert.Equal(lager, PitchRate.BillionCells(PitchRate.Lager, 20, plato), tolerance: 0.05 + (0.005 * 20 * PitchRate.Lager));
    }

    // A sachet of 11.5 g at our default and at the most that was measured; whole billions.
    [Theory]
    [InlineData(115, 10)]
    [InlineData(207, 18)]
    public void A_sachet_holds_so_many(double billions, double billionsPerGram) =>
        Assert.Equal(11.5, PitchRate.DryYeastGrams(billions, billionsPerGram), tolerance: 0.5 / billionsPerGram);

    [Fact]
    public void Cells_are_in_proportion_to_litres_and_extract() =>
        Gen.Select(Gen.Double[0, 2], Gen.Double[0, 100], Gen.Double[0, 30]).Sample((rate, litres, plato) =>
        {
            double cells = PitchRate.BillionCells(rate, litres, plato);
            Assert.Equal(2 * cells, PitchRate.BillionCells(rate, 2 * litres, plato), tolerance: 1e-9 * (1 + cells));
            Assert.Equal(2 * cells, PitchRate.BillionCells(rate, litres, 2 * plato), tolerance: 1e-9 * (1 + cells));
        });

    [Fact]
    public void What_has_no_meaning_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => PitchRate.BillionCells(-1, 20, 12));
        Assert.Throws<ArgumentOutOfRangeException>(() => PitchRate.BillionCells(0.75, double.NaN, 12));
        Assert.Throws<ArgumentOutOfRangeException>(() => PitchRate.DryYeastGrams(100, 0));
    }
}
