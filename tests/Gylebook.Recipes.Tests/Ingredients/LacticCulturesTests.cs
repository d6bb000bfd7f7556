using Gylebook.Recipes.Ingredients;

namespace Gylebook.Recipes.Tests.Ingredients;

public sealed class LacticCulturesTests
{
    [Theory]
    [InlineData("lactobacillus", "lactobacillus", false)]
    [InlineData("Lactic culture", "lactobacillus", false)]
    [InlineData("L. brevis", "lactobacillus-brevis", true)]
    [InlineData("Yogurt", "yoghurt", false)]
    [InlineData("heterofermentative lactobacillus", "heterofermentative-lactobacillus", true)]
    public void A_culture_is_found_by_what_people_call_it(string typed, string id, bool mixed)
    {
        LacticCulture culture = LacticCultures.Find(typed).Match!;
        Assert.Equal((id, mixed), (culture.Id, culture.IsMixed));
    }

    [Fact]
    public void Each_lives_somewhere_a_recipe_may_keep_it() => Assert.All(LacticCultures.All, culture =>
    {
        Assert.True(culture.Low.Celsius < culture.High.Celsius, culture.Id);
        Assert.InRange(culture.Low.Celsius, 10, 55);
        Assert.InRange(culture.High.Celsius, 10, 55);
    });

    [Fact]
    public void An_unknown_one_gets_the_nearest() => Assert.Contains("pediococcus", LacticCultures.Find("pediocoque").Nearest);
}
