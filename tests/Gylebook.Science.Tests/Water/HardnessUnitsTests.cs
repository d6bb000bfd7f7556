using Gylebook.Science.Water;

namespace Gylebook.Science.Tests.Water;

public class HardnessUnitsTests
{
    [Fact] // definitions with IUPAC masses: 17.848 mg/L CaCO3, 0.35665 mEq/L, 7.147 mg/L Ca, 4.334 mg/L Mg
    public void A_German_degree_is_ten_milligrams_of_lime()
    {
        Assert.Equal(0.35665, HardnessUnits.GermanDegree, 0.0000051);
        Assert.Equal(17.848, HardnessUnits.GermanDegree / HardnessUnits.MilligramsCalciumCarbonate, 0.00051);
        Assert.Equal(7.147, HardnessUnits.GermanDegree * Ion.Calcium.EquivalentWeight(), 0.00051);
        Assert.Equal(4.334, HardnessUnits.GermanDegree * Ion.Magnesium.EquivalentWeight(), 0.00051);
    }

    [Fact] // trade tables: 1 fH = 0.2 mEq/L = 0.56029 dH
    public void A_French_degree_is_ten_milligrams_of_chalk()
    {
        Assert.Equal(0.2, HardnessUnits.FrenchDegree, 0.0005);
        Assert.Equal(0.56029, HardnessUnits.FrenchDegree / HardnessUnits.GermanDegree, 0.0000051);
    }

    [Fact] // 17.118 and 14.254 mg/L CaCO3
    public void Grains_go_by_the_gallon()
    {
        Assert.Equal(17.118, HardnessUnits.UsGrain / HardnessUnits.MilligramsCalciumCarbonate, 0.00051);
        Assert.Equal(14.254, HardnessUnits.ClarkDegree / HardnessUnits.MilligramsCalciumCarbonate, 0.00051);
    }

    [Fact] // laboratories' own factors: 2.996 and 4.427
    public void Sulphur_and_nitrogen_become_their_ions()
    {
        Assert.Equal(2.996, HardnessUnits.SulphatePerSulphur, 0.00051);
        Assert.Equal(4.427, HardnessUnits.NitratePerNitrogen, 0.00051);
    }

    [Theory] // mg for a mEq
    [InlineData(Ion.Calcium, 20.039)]
    [InlineData(Ion.Magnesium, 12.1525)]
    [InlineData(Ion.Sodium, 22.990)]
    [InlineData(Ion.Potassium, 39.098)]
    [InlineData(Ion.Bicarbonate, 61.016)]
    [InlineData(Ion.Chloride, 35.45)]
    [InlineData(Ion.Sulphate, 48.028)]
    public void Equivalent_weights_agree_with_print(Ion ion, double weight) =>
        Assert.Equal(weight, ion.EquivalentWeight(), 0.00051);
}
