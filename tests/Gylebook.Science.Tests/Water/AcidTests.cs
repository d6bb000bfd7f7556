using CsCheck;
using Gylebook.Science.Quantities;
using Gylebook.Science.Water;

namespace Gylebook.Science.Tests.Water;

public class AcidTests
{
    [Theory] // worked by hand from handbook constants, four decimals
    [InlineData("lactic", 5.4, 0.9720)]
    [InlineData("lactic", 4.3, 0.7336)]
    [InlineData("phosphoric", 5.4, 1.0151)]
    [InlineData("phosphoric", 6.0, 1.0595)]
    [InlineData("citric", 5.4, 1.9015)]
    [InlineData("acetic", 5.4, 0.8150)]
    [InlineData("malic", 5.4, 1.6554)]
    [InlineData("tartaric", 5.4, 1.9193)]
    public void Protons_given_up_follow_the_constants(string id, double ph, double protons)
    {
        Acid acid = Acids.All.Single(each => each.Id == id);
        Assert.Equal(protons, acid.ProtonsGivenUp(ph), 0.000051);
    }

    [Theory] // mEq in a mL (solids: a gram), three decimals (sulphuric 96 %: two)
    [InlineData("lactic-88", 11.782, 8.644, 11.267, 11.452, 11.571, 11.697)]
    [InlineData("lactic-80", 10.542, 7.734, 10.081, 10.246, 10.354, 10.466)]
    [InlineData("phosphoric-10", 1.075, 1.069, 1.084, 1.091, 1.101, 1.139)]
    [InlineData("phosphoric-75", 12.039, 11.970, 12.148, 12.221, 12.331, 12.755)]
    [InlineData("phosphoric-85", 14.616, 14.532, 14.748, 14.837, 14.970, 15.485)]
    [InlineData("hydrochloric-10", 2.873, 2.873, 2.873, 2.873, 2.873, 2.873)]
    [InlineData("hydrochloric-37", 12.016, 12.016, 12.016, 12.016, 12.016, 12.016)]
    [InlineData("sulphuric-10", 1.087, 2.169, 2.173, 2.174, 2.174, 2.174)]
    [InlineData("sulphuric-96", 17.972, 35.86, 35.93, 35.94, 35.94, 35.94)]
    [InlineData("citric", double.NaN, 6.250, 9.295, 9.897, 10.466, 11.637)]
    [InlineData("citric-monohydrate", double.NaN, 5.714, 8.498, 9.049, 9.569, 10.639)]
    public void A_millilitre_gives_what_its_label_holds(
        string id, double molar, double at43, double at52, double at54, double at56, double at60)
    {
        AcidAsSold acid = AcidAsSold.Find(id);
        double rounding = id == "sulphuric-96" ? 0.0051 : 0.00051;
        if (!double.IsNaN(molar))
        {
            Assert.Equal(molar, acid.MillimolesPerUnit, 0.00051);
        }

        (double Ph, double Strength)[] row = [(4.3, at43), (5.2, at52), (5.4, at54), (5.6, at56), (6.0, at60)];
        Assert.All(row, each => Assert.Equal(each.Strength, acid.MilliequivalentsPerUnit(each.Ph), rounding));
    }

    [Theory] // laboratory tables of concentrated acids
    [InlineData("phosphoric-85", 14.6, 14.63)]
    [InlineData("hydrochloric-37", 12.0, 12.2)]
    [InlineData("sulphuric-96", 17.8, 18.0)]
    public void Concentrates_hold_what_laboratory_tables_print(string id, double least, double most) =>
        Assert.InRange(AcidAsSold.Find(id).MillimolesPerUnit, least, most);

    [Theory] // German trade table, 80 % lactic for each hL: 3.3 / 16.7 / 33.5 mL for 1 / 5 / 10 dH; it rounds, good for 3 %
    [InlineData(1, 3.3)]
    [InlineData(5, 16.7)]
    [InlineData(10, 33.5)]
    public void Lactic_acid_for_a_hectolitre_agrees_with_the_German_table(double degrees, double millilitres)
    {
        double milliequivalents = 100 * degrees * HardnessUnits.GermanDegree;
        // The table counts lactic acid as wholly dissociated.
        Assert.Equal(millilitres, milliequivalents / AcidAsSold.Find("lactic-80").MillimolesPerUnit, millilitres * 0.03);
    }

    [Fact] // 10 % w/v is 1.020 mol/L, w/w 1.075
    public void Ten_percent_by_volume_is_weaker_than_by_mass()
    {
        AcidAsSold byVolume = AcidAsSold.ByVolume("phosphoric", Acids.Phosphoric, 10);
        Assert.Equal(1.020, byVolume.MillimolesPerUnit, 0.00051);
        Assert.True(byVolume.MillimolesPerUnit < AcidAsSold.Find("phosphoric-10").MillimolesPerUnit);
    }

    [Fact]
    public void Higher_ph_never_takes_protons_back() =>
        Gen.Select(Gen.Int[0, Acids.All.Count - 1], Gen.Double[0, 13], Gen.Double[0, 1])
            .Sample((index, ph, rise) =>
                Acids.All[index].ProtonsGivenUp(ph + rise) >= Acids.All[index].ProtonsGivenUp(ph) - 1e-12);

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(-1)]
    [InlineData(15)]
    public void A_ph_that_cannot_be_is_refused(double ph) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Acids.Lactic.ProtonsGivenUp(ph));

    [Fact]
    public void A_density_that_cannot_be_is_refused() => Assert.Throws<ArgumentOutOfRangeException>(
        () => AcidAsSold.ByMass("x", Acids.Lactic, Fraction.FromPercent(80), 1187));

    [Fact]
    public void Every_acid_says_what_can_hurt() => Assert.All(Acids.All, acid => Assert.NotEmpty(acid.Caution));
}
