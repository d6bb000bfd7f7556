using Gylebook.Engine.State;
using Gylebook.Forecast.Report;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Quantities;

namespace Gylebook.Forecast.Tests.Report;

/// <summary>Where a recipe leaves the range that a model was published for, the forecast says so; within it, it does not.</summary>
public sealed class PublishedRangeTests
{
    private static readonly IngredientLine Bittering = Bitters.Hop(25, AdditionPoint.Boil, 60);

    [Fact]
    public void A_plain_bitter_leaves_no_table()
    {
        IReadOnlyList<Caution> told = Bitters.With(Bittering, Liquid(100)).Forecast().Cautions;
        Assert.DoesNotContain(told, c => c.Code is "starter.range" or "bitterness.range" or "gravity.range");
    }

    // Tinseth's table: to 120 min.
    [Fact]
    public void Hops_that_boil_longer_than_the_table() =>
        Tells(Bitters.With(Bitters.Hop(25, AdditionPoint.Boil, 150)) with { Boil = new BoilPlan(Typed.Minutes(150)) }, "bitterness.range", "120 min");

    // NBS Circular C440 as fitted: to 30 °P.
    [Fact]
    public void A_wort_stronger_than_the_table() =>
        Tells(Bitters.With(Bittering, Typed.Line(IngredientKind.Sugar, "sucrose", 7, AdditionPoint.Boil, 10)), "gravity.range", "30 °P");

    // The still table ends at 200 million cells per mL: a starter that lacks next to nothing is smaller than any in it.
    [Fact]
    public void A_starter_thicker_than_the_table()
    {
        double needed = Bitters.With(Bittering, Liquid(100)).Forecast().Pitch!.CellsNeededBillions;
        Tells(Bitters.With(Bittering, Liquid(0.97 * needed)), "starter.range", "200 million");
    }

    [Theory]
    [InlineData(120, false)]
    [InlineData(500, true)]
    public void More_alpha_acid_than_was_ever_measured(double grams, bool beyond)
    {
        ForecastRequest byKinetics = new() { Bitterness = BitternessModel.Isomerisation };
        Caution told = Assert.Single(
            Bitters.With(Bitters.Hop(grams, AdditionPoint.Boil, 60)).Forecast(byKinetics).Cautions, c => c.Code == "bitterness.solubility");
        Assert.Equal(beyond, told.Message.Contains("Nobody has measured so much", StringComparison.Ordinal));
    }

    private static void Tells(Recipe recipe, string code, string words) =>
        Assert.Contains(words, Assert.Single(recipe.Forecast().Cautions, c => c.Code == code).Message);

    private static IngredientLine Liquid(double billions) => Typed.Yeast("American ale") with
    {
        Form = IngredientForm.Liquid,
        Cells = new CellCount(billions, $"{billions} billion"),
        Age = new(Duration.FromDays(0), "0 d"),
    };
}
