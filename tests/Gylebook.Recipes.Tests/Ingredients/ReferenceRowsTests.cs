using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Mashing;

namespace Gylebook.Recipes.Tests.Ingredients;

public class ReferenceRowsTests
{
    // Midpoints of handbook ranges that the engine's trial run used.
    [Theory]
    [InlineData("pale-ale-malt", MaltFamily.Base, 81.5, 3.2, 6)]
    [InlineData("munich-malt", MaltFamily.Base, 80, 4, 20)]
    [InlineData("wheat-malt", MaltFamily.Base, 84, 5, 4)]
    [InlineData("caramel-malt", MaltFamily.Caramel, 76, 4.5, 120)]
    [InlineData("chocolate-malt", MaltFamily.Roast, 70, 3, 900)]
    [InlineData("roasted-barley", MaltFamily.Roast, 69, 3, 1300)]
    public void Malts_carry_the_midpoints(string id, MaltFamily family, double extract, double moisture, double ebc)
    {
        var malt = Malts.Find(id).Match!;
        Assert.Equal(family, malt.Family);
        Assert.Equal(extract, malt.ExtractFineDry.Percent, 1e-12);
        Assert.Equal(moisture, malt.Moisture.Percent, 1e-12);
        Assert.Equal(ebc, malt.Colour.Ebc);
    }

    [Fact]
    public void Unmalted_grain_is_a_family_of_its_own_and_brings_no_enzyme()
    {
        var unmalted = Malts.All.Where(malt => malt.Id.EndsWith("-flakes", StringComparison.Ordinal) || malt.Id.StartsWith("raw-", StringComparison.Ordinal)).ToList();
        Assert.NotEmpty(unmalted);
        Assert.All(unmalted, malt => Assert.Equal((MaltFamily.Raw, 0.0), (malt.Family, malt.DiastaticPower)));
    }

    // Flaking has opened the starch; raw grain opens where the table of gelatinisation says.
    [Theory]
    [InlineData("wheat flakes", null, null)]
    [InlineData("raw wheat", 52.0, 64.0)]
    [InlineData("raw barley", 60.0, 65.0)]
    [InlineData("raw rye", 55.0, 70.0)]
    [InlineData("pale ale malt", null, null)]
    public void Raw_grain_alone_has_a_temperature_at_which_it_opens(string name, double? low, double? high)
    {
        var span = Malts.Find(name).Match!.OpensAt;
        Assert.Equal((low, high), (span?.Low, span?.High));
    }

    [Fact]
    public void Only_base_malts_bring_enzymes() =>
        Assert.All(Malts.All.Where(malt => malt.Family != MaltFamily.Base), malt => Assert.Equal(0, malt.DiastaticPower));

    [Fact]
    public void Each_sugars_shares_add_up_to_one() => Assert.All(Sugars.All, sugar => Assert.Equal(1,
        sugar.Water + sugar.Sucrose + sugar.Glucose + sugar.Fructose + sugar.Maltose + sugar.Maltotriose + sugar.Dextrin + sugar.Lactose
        + sugar.Protein + sugar.Minerals, 1e-12));

    // Molar masses 180.156 and 198.171, 342.297 and 360.312 g/mol; shares are printed to 0.0001.
    [Fact]
    public void Hydrates_carry_their_water()
    {
        Assert.Equal(180.156 / 198.171, Sugars.Find("dextrose monohydrate").Match!.Glucose, 0.00005);
        Assert.Equal(342.297 / 360.312, Sugars.Find("lactose monohydrate").Match!.Lactose, 0.00005);
    }

    // Balling's alcohol and mass balance of a 12 °P wort at 75 % apparent attenuation: RE = 0.1808 OE + 0.8192 AE,
    // A = (OE - RE)/(2.0665 - 0.010665 OE), 100 g of beer come of 100 + A(0.9565 + 0.11) g of wort. American ale, which takes 0.68 of
    // the maltotriose, must then ferment that share of the solids. Shares are printed to 0.0001, of 0.96 or 0.8.
    [Theory]
    [InlineData("dry malt extract light")]
    [InlineData("liquid malt extract light")]
    public void A_malt_extract_attenuates_by_three_quarters(string name)
    {
        const double original = 12;
        const double apparent = 12 * (1 - 0.75);
        const double real = (0.1808 * original) + (0.8192 * apparent);
        var alcohol = (original - real) / (2.0665 - (0.010665 * original));
        var wort = 100 + (alcohol * (0.9565 + 0.11));
        var fermented = 1 - (real / (wort * original / 100));
        var sugar = Sugars.Find(name).Match!;
        var share = (sugar.Glucose + sugar.Maltose + (YeastStyles.Find("american-ale").Match!.MaltotrioseShare.Ratio * sugar.Maltotriose)) / (1 - sugar.Water);
        Assert.Equal(fermented, share, 0.0003);
    }

    [Fact]
    public void There_are_sixty_hop_cultivars_and_more_all_of_likely_strength()
    {
        Assert.True(HopCultivars.All.Count >= 60);
        // No cultivar grown for brewing is published below 2 or above 23 % alpha acids.
        Assert.All(HopCultivars.All, hop => Assert.InRange(hop.Alpha.Percent, 2, 23));
    }

    [Fact]
    public void Hop_ranges_hold_their_middles_and_what_can_grow()
    {
        Assert.All(HopCultivars.All, hop => Assert.InRange(hop.Alpha.Percent, hop.AlphaRange.Low, hop.AlphaRange.High));
        // No cone holds more than a quarter of its mass in either acid, or more than 5 mL of oil in 100 g.
        Assert.All(HopCultivars.All, hop => Assert.True(hop.BetaRange.Low > 0 && hop.BetaRange.Low < hop.BetaRange.High && hop.BetaRange.High < 15));
        Assert.All(HopCultivars.All, hop => Assert.True(hop.OilRange.Low > 0 && hop.OilRange.Low < hop.OilRange.High && hop.OilRange.High <= 5));
    }

    // BJCP Beer Style Guidelines 2021 as a competition reprints them (read): American Wheat Beer; Brewers Association 2021 as a page
    // reprints it (read): Session IPA.
    [Theory]
    [InlineData("American Wheat Beer", 1.040, 1.055, 1.008, 1.013, 15, 30, 3, 6, 4.0, 5.5)]
    [InlineData("Session IPA", 1.038, 1.052, 1.008, 1.014, 30, 55, 3, 12, 3.7, 5.0)]
    public void Style_numbers_are_the_printed_ones(
        string name, double ogLow, double ogHigh, double fgLow, double fgHigh, double ibuLow, double ibuHigh, double srmLow, double srmHigh, double abvLow, double abvHigh)
    {
        var style = StyleTable.Find(name).Match!;
        Assert.Equal("seen", style.Provenance.Status);
        Assert.Equal(new UsualRange(ogLow, ogHigh), style.OriginalGravity);
        Assert.Equal(new UsualRange(fgLow, fgHigh), style.FinalGravity);
        Assert.Equal(new UsualRange(ibuLow, ibuHigh), style.Bitterness);
        Assert.Equal(new UsualRange(srmLow, srmHigh), style.Colour);
        Assert.Equal(new UsualRange(abvLow, abvHigh), style.Alcohol);
    }

    [Fact]
    public void Every_style_names_its_edition_and_a_year()
    {
        Assert.True(StyleTable.All.Count >= 30);
        Assert.All(StyleTable.All, style => Assert.Matches("20[0-9][0-9]$", style.Edition));
    }

    // The grist they were solved for, 8 % caramel malt, 66.7 °C, 1.052: 67.3 + 14.3 × share of maltotriose, % apparent. A strain type's usual range
    // must hold it.
    [Theory]
    [InlineData("american-ale")]
    [InlineData("english-ale")]
    [InlineData("english-ale-low")]
    [InlineData("scottish-ale")]
    [InlineData("irish-ale")]
    [InlineData("koelsch")]
    [InlineData("altbier")]
    [InlineData("weissbier")]
    [InlineData("witbier")]
    [InlineData("abbey-ale")]
    [InlineData("belgian-strong-ale")]
    [InlineData("kveik")]
    [InlineData("lager")]
    [InlineData("malty-lager")]
    public void A_yeasts_maltotriose_share_lands_in_its_usual_attenuation(string id)
    {
        var yeast = YeastStyles.Find(id).Match!;
        Assert.InRange(67.3 + (14.3 * yeast.MaltotrioseShare.Ratio), yeast.AttenuationLow!.Value.Percent, yeast.AttenuationHigh!.Value.Percent);
    }

    [Fact]
    public void Only_diastatic_yeast_takes_dextrin_and_only_low_alcohol_yeast_leaves_maltose()
    {
        Assert.Equal(["saison", "brettanomyces"], YeastStyles.All.Where(yeast => yeast.DextrinShare.Ratio > 0).Select(yeast => yeast.Id));
        Assert.Equal(["low-alcohol"], YeastStyles.All.Where(yeast => yeast.MaltoseShare.Ratio < 1).Select(yeast => yeast.Id));
        Assert.All(YeastStyles.All, yeast => Assert.True(yeast.Low.Celsius < yeast.High.Celsius));
    }

    [Fact]
    public void Starting_values_lie_in_their_own_range_and_shares_are_ratios()
    {
        Assert.All(StartingValues.All, row => Assert.True(row.Low is null == row.High is null));
        Assert.All(StartingValues.All.Where(row => row.Low is not null), row => Assert.InRange(row.Value, row.Low!.Value, row.High!.Value));
        Assert.All(StartingValues.All.Where(row => row.Unit == "1"), row => Assert.InRange(row.Value, 0, 1));
    }

    [Fact]
    public void Parts_of_a_whole_add_up_to_one()
    {
        Assert.Equal(1, Sum("mash.spectrum.maltose", "mash.spectrum.maltotriose", "mash.spectrum.glucose"), 1e-12);
        Assert.Equal(1, Sum("hops.solids", "hops.water", "hops.soluble"), 1e-12);
    }

    private static double Sum(params string[] ids) => ids.Sum(id => StartingValues.Of(id).Value);
}
