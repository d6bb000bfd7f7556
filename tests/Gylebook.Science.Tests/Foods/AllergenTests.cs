using Gylebook.Science.Foods.Words;

namespace Gylebook.Science.Tests.Foods;

/// <summary>The table of ingredients against 21 U.S.C. 321(qq), FDA Q&amp;A edition 5 (2025) and Regulation (EU) 1169/2011, Annex II.</summary>
public class AllergenTests
{
    [Theory]
    [InlineData("barley malt", "", "barley (gluten)")]
    [InlineData("graham flour", "Wheat", "wheat (gluten)")]
    [InlineData("rolled oats", "", "oats (gluten)")]
    [InlineData("peanut flour", "Peanuts", "peanuts")]
    [InlineData("hazelnuts, almonds", "Tree nuts (hazelnut, almond)", "nuts (hazelnut, almond)")]
    [InlineData("pine nuts", "Tree nuts (pine nut)", "")]
    [InlineData("coconut, chestnuts", "", "")]
    [InlineData("tahini", "Sesame", "sesame")]
    [InlineData("lactose", "Milk", "milk")]
    [InlineData("whey; egg white", "Milk|Egg", "eggs|milk")]
    [InlineData("isinglass", "Fish (isinglass)", "")]
    [InlineData("salmon", "Fish (salmon)", "fish")]
    [InlineData("lobster", "Crustacean shellfish (lobster)", "crustaceans")]
    [InlineData("soy lecithin", "Soybeans", "soybeans")]
    [InlineData("celery, mustard, lupin, oyster", "", "celery|mustard|lupin|molluscs")]
    [InlineData("wheat glucose syrup", "Wheat", "")]
    [InlineData("barley glucose syrup", "", "")]
    [InlineData("apricots (sulphur dioxide)", "Sulfites", "sulphites")]
    public void Each_list_states_its_own(string text, string us, string eu)
    {
        IReadOnlyList<IngredientHit> hits = IngredientTextTests.Read(text);
        Assert.Equal(us, string.Join('|', Allergens.State(AllergenList.UsNine, hits).Contains));
        Assert.Equal(eu, string.Join('|', Allergens.State(AllergenList.EuFourteen, hits).Contains));
    }

    [Fact]
    public void A_ready_statement_for_a_beer()
    {
        IReadOnlyList<IngredientHit> hits = IngredientTextTests.Read(
            "barley malt, peanut flour, lactose. Made in a facility that also handles hazelnuts and sesame.");
        Assert.Equal(
            "Contains: Milk, Peanuts. May contain: Tree nuts (hazelnut), Sesame. Made with barley (gluten).",
            Allergens.State(AllergenList.UsNine, hits).Text);
        Assert.Equal(
            "Contains: barley (gluten), peanuts, milk. May contain: nuts (hazelnut), sesame.",
            Allergens.State(AllergenList.EuFourteen, hits).Text);
    }

    [Fact]
    public void Nothing_found_is_not_a_promise()
    {
        string text = Allergens.State(AllergenList.UsNine, []).Text;
        Assert.Contains("packets have the last word", text, StringComparison.Ordinal);
        Assert.DoesNotContain("free", text, StringComparison.OrdinalIgnoreCase);
    }

    [Theory]
    // Annex II, point 12: above 10 mg/L; 21 CFR 101.100(a)(4): from 10 ppm
    [InlineData(9.9, false, false)]
    [InlineData(10.0, true, false)]
    [InlineData(10.1, true, true)]
    [InlineData(null, true, true)]
    public void Sulphites_are_stated_by_dose(double? milligramsPerLitre, bool us, bool eu)
    {
        IReadOnlyList<IngredientHit> hits = IngredientTextTests.Read("golden raisins (E220)");
        Assert.Equal(us, Allergens.State(AllergenList.UsNine, hits, milligramsPerLitre).Contains.Contains("Sulfites"));
        Assert.Equal(eu, Allergens.State(AllergenList.EuFourteen, hits, milligramsPerLitre).Contains.Contains("sulphites"));
    }

    [Fact]
    public void The_differences_are_told_with_their_source()
    {
        IReadOnlyList<SourcedSentence> found = AllergenDifferences.For(IngredientTextTests.Read("barley, coconut, isinglass, peanuts"));
        Assert.Equal(3, found.Count);
        Assert.All(found, sentence => Assert.NotEmpty(sentence.Source));
        Assert.Empty(AllergenDifferences.For(IngredientTextTests.Read("peanuts, milk")));
    }

    [Fact]
    public void Barley_beer_is_never_gluten_free_in_the_US()
    {
        Assert.Contains(
            GlutenRules.For(IngredientTextTests.Read("barley malt")),
            rule => rule.Text.Contains("cannot be called gluten-free", StringComparison.Ordinal)
                && rule.Source.Contains("85 FR 49240", StringComparison.Ordinal));
        Assert.DoesNotContain(
            GlutenRules.For(IngredientTextTests.Read("sorghum malt, rice")),
            rule => rule.Text.Contains("cannot be called", StringComparison.Ordinal));
        Assert.False(GlutenRules.HasGlutenGrain(IngredientTextTests.Read("buckwheat, millet")));
    }

    [Fact]
    public void Lecithin_without_its_origin_asks_to_be_checked() => Assert.Contains(
        "check whether it is from soy", Allergens.State(AllergenList.EuFourteen, IngredientTextTests.Read("E322")).Text, StringComparison.Ordinal);
}
