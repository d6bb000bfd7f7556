using Gylebook.Forecast.Report;
using Gylebook.Forecast.Tests.Report;
using Gylebook.Recipes.Ingredients;

namespace Gylebook.Forecast.Tests.Foods;

/// <summary>Fruit, herbs, teas, woods and bread that brewers of odd beers reach for: found by name, brewed, and told about.</summary>
public sealed class ProduceTests
{
    private static BrewForecast With(string food, double kilograms = 0.05, AdditionPoint at = AdditionPoint.Ferment) =>
        Bitters.With(Typed.Line(IngredientKind.Food, food, kilograms, at, 3)).Forecast();

    [Theory]
    [InlineData("spruce", "plant.conifer")]
    [InlineData("juniper", "plant.conifer")]
    [InlineData("rhubarb", "plant.rhubarb")]
    [InlineData("oak chips", "plant.wood")]
    [InlineData("elderflower", "plant.elder")]
    [InlineData("elderberry", "plant.elder")]
    [InlineData("basil", "plant.gathered")]
    [InlineData("hibiscus", "plant.gathered")]
    [InlineData("grapefruit", "grapefruit.medicine")]
    [InlineData("black tea", "caffeine.unknown")]
    [InlineData("plum", "pits.cyanide")]
    [InlineData("apple", "ph.foodsCounted")]
    [InlineData("lemon juice", "ph.foodsCounted")]
    [InlineData("hibiscus", "ph.foodAcids")]
    public void What_can_hurt_is_said_where_it_goes_in(string food, string code) => Assert.Contains(With(food).Cautions, c => c.Code == code);

    [Theory]
    [InlineData("pear")]
    [InlineData("mint")]
    [InlineData("carrot")]
    public void What_cannot_is_not(string food) =>
        Assert.DoesNotContain(With(food).Cautions, c => c.Code is "plant.conifer" or "plant.rhubarb" or "plant.wood" or "plant.elder" or "pits.cyanide");

    [Theory]
    [InlineData("bread", "wheat")]
    [InlineData("celery", "celery")]
    [InlineData("yoghurt", "milk")]
    public void Their_allergens_are_told(string food, string allergen) =>
        Assert.Contains(allergen, string.Join(' ', With(food).Allergens), StringComparison.OrdinalIgnoreCase);

    // 0.2 kg of lemon juice into 20 L: 3.99 from 4.30 by the sum; tables agree on 4.8 to 6.7 g of citric acid in 100 g.
    [Fact]
    public void Lemon_juice_sours_a_beer_by_its_acid_alone()
    {
        double plain = Bitters.With().Forecast().Number("beerPh"), sour = With("lemon juice", 0.2).Number("beerPh");
        Assert.InRange(sour - plain, -0.4, -0.25);
    }
}
