using CsCheck;
using Gylebook.Science.Water;

namespace Gylebook.Science.Tests.Water;

public class CalciteTests
{
    // USGS PHREEQC, calcite and air (pCO2 10^-3.38) at 25 °C: alkalinity 1.10 mEq/L, pH 8.21. We find 1.086: rounding in print
    // is worth 0.5 %, the rest is its other activity model and pair constants. Ours states 2 %.
    [Fact]
    public void Chalk_stirred_into_distilled_water_stops_at_55_mg()
    {
        CalciteRest rest = CalciteEquilibrium.WithChalk(IonProfile.Distilled);
        Assert.Equal(1.10, rest.AlkalinityMilliequivalents, 1.10 * 0.02);
        Assert.Equal(8.21, rest.Ph, 0.01);
        Assert.Equal(0.055, rest.ChalkGramsPerLitre, 0.055 * 0.02);
    }

    [Fact] // Plummer and Busenberg (1982) at 25 °C: 1.11 and 3.22
    public void Ion_pairs_have_their_printed_constants()
    {
        Assert.Equal(1.11, CalciteEquilibrium.LogBicarbonatePair(298.15), 0.0051);
        Assert.Equal(3.22, CalciteEquilibrium.LogCarbonatePair(298.15), 0.0051);
    }

    [Fact]
    public void Water_at_rest_with_chalk_keeps_its_charges_cancelled() =>
        Gen.Select(Gen.Double[0, 200], Gen.Double[0, 400]).Sample((calcium, bicarbonate) =>
        {
            CalciteRest rest = CalciteEquilibrium.WithChalk(new(calcium: calcium, bicarbonate: bicarbonate));
            double calciumThen = (calcium / Ion.Calcium.MolarMass()) + rest.ChalkMillimoles;
            double others = (bicarbonate / Ion.Bicarbonate.MolarMass()) - (2 * calcium / Ion.Calcium.MolarMass());
            return calciumThen > 0 && Math.Abs(others + (2 * calciumThen) - rest.AlkalinityMilliequivalents) < 1e-9;
        });

    // USGS PHREEQC saturation index at 20 °C. It pairs 5 % of the calcium and 3 % of the carbonate (0.03), its activity model
    // is another (0.02), and it prints two decimals: 0.06.
    [Theory]
    [InlineData(100, 10, 20, 4.9955, 7.5, 40, 30.3, 0.40)]
    [InlineData(30, 0, 20, 1.998, 8.5, 0, 13.1, 0.55)]
    public void Saturation_agrees_with_PHREEQC(
        double calcium, double magnesium, double sodium, double alkalinity, double ph, double sulphate, double chloride, double index)
    {
        IonProfile water = new(calcium, magnesium, sodium, bicarbonate: alkalinity * Ion.Bicarbonate.EquivalentWeight(),
            sulphate: sulphate, chloride: chloride);
        Assert.Equal(index, CalciteEquilibrium.SaturationIndex(water, ph, 20), 0.06);
    }

    [Fact]
    public void Boiling_takes_calcium_and_alkalinity_alike()
    {
        IonProfile hard = new(calcium: 120, magnesium: 10, sodium: 10, bicarbonate: 360, sulphate: 30, chloride: 15);
        IonProfile boiled = Decarbonation.Boiled(hard);
        double calciumLost = hard.Milliequivalents(Ion.Calcium) - boiled.Milliequivalents(Ion.Calcium);
        double alkalinityLost = hard.AlkalinityMilliequivalents - boiled.AlkalinityMilliequivalents;
        Assert.True(calciumLost > 3);
        Assert.Equal(calciumLost, alkalinityLost, 1e-9);
        Assert.Equal(hard.Magnesium, boiled.Magnesium);
    }

    [Fact]
    public void Soft_water_is_not_changed_by_boiling()
    {
        IonProfile soft = new(calcium: 7, magnesium: 2, sodium: 2, bicarbonate: 15, sulphate: 5, chloride: 5);
        Assert.Equal(soft, Decarbonation.Boiled(soft));
    }

    [Fact]
    public void Boiling_never_adds_nor_goes_below_nothing() =>
        Gen.Select(Gen.Double[0, 300], Gen.Double[0, 600]).Sample((calcium, bicarbonate) =>
        {
            IonProfile water = new(calcium: calcium, bicarbonate: bicarbonate);
            IonProfile boiled = Decarbonation.Boiled(water);
            return boiled.Calcium >= 0 && boiled.Calcium <= calcium + 1e-9 && boiled.Bicarbonate <= bicarbonate + 1e-9;
        });

    [Fact]
    public void Calcium_limits_what_boiling_can_do()
    {
        IonProfile soda = new(calcium: 10, sodium: 115, bicarbonate: 335);
        Assert.Equal(0, Decarbonation.ToAlkalinity(soda, 0).Calcium, 1e-9);
        Assert.True(Decarbonation.ToAlkalinity(soda, 0).AlkalinityMilliequivalents > 4.9);
    }
}
