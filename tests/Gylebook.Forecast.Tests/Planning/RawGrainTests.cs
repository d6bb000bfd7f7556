using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Forecast.Ingredients;
using Gylebook.Forecast.Report;
using Gylebook.Forecast.Tests.Report;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Tests.Shared;

namespace Gylebook.Forecast.Tests.Planning;

/// <summary>Unmalted grain: heat opens it, malt converts it, and it brings no sugar of its own worth the name.</summary>
public sealed class RawGrainTests
{
    private static Recipe Mashed(double celsius, params IngredientLine[] grist) => Bitters.With() with
    {
        Mash = new MashPlan(MashMethod.Bag, [Typed.Rest(celsius, 60)], SpargePlan.None),
        Ingredients = [.. grist, Typed.Yeast("English ale")],
    };

    private static Recipe With(string grain, double celsius = 66) => Mashed(celsius, Typed.Malt("pilsner malt", 3), Typed.Malt(grain, 1.5));

    private static Recipe WithFood(string food, double celsius = 66) => Mashed(
        celsius, Typed.Malt("pilsner malt", 3), Typed.Line(IngredientKind.Food, food, 1.5, AdditionPoint.Mash));

    private static double PointsOf(BrewForecast told) => 1000 * (told.Number("originalGravity") - 1);

    private static Caution? Said(Recipe recipe, string code) => recipe.Forecast().Cautions.SingleOrDefault(c => c.Code == code);

    // USDA SR26: wheat flour, whole grain, NDB 20080, 0.41 g of sugars in 61 g of carbohydrate less fibre; the engine gave it malt's 12 %.
    [Theory]
    [InlineData("raw wheat")]
    [InlineData("wheat flakes")]
    [InlineData("maize flakes")]
    public void Unmalted_grain_brings_next_to_no_sugar_ready_made(string grain)
    {
        PlannedLine line = Assert.Single(With(grain).PlanOn(Kits.Lossless).Lines, l => l.Name == grain);
        Assert.InRange(line.Makeup[Component.Sucrose] / line.Kilograms, 0.001, 0.03);
        Assert.InRange(line.Makeup[Component.Starch] / line.Kilograms, 0.55, 0.8);
    }

    [Fact]
    public void Raw_grain_above_its_span_opens_as_flakes_do() => Near.Equal(
        PointsOf(With("wheat flakes").Forecast()) - PointsOf(With("raw wheat").Forecast()),
        PointsOf(With("wheat flakes").Forecast()) * (1 - (((3 * 0.81 * 0.955) + (1.5 * 0.78 * 0.88)) / ((3 * 0.81 * 0.955) + (1.5 * 0.79 * 0.905)))), 0.35);

    [Fact]
    public void Below_its_span_raw_grain_converts_nothing_and_the_brewer_is_told_to_cook_it()
    {
        BrewForecast cold = With("raw barley", 58).Forecast();
        Assert.Equal(Severity.Warning, Assert.Single(cold.Cautions, c => c.Code == "starch.cookFirst").Severity);
        Assert.True(PointsOf(cold) < PointsOf(With("barley flakes", 58).Forecast()) - 5);
        Assert.Null(Said(With("raw barley"), "starch.cookFirst"));
        Assert.Null(Said(With("barley flakes", 58), "starch.cookFirst"));
    }

    [Fact]
    public void Inside_its_span_the_headline_is_bounds_from_none_open_to_all()
    {
        BrewForecast rye = With("raw rye", 66).Forecast();
        Band gravity = rye.Headline.Single(h => h.Name == "originalGravity").Band!;
        Assert.Equal(BandKind.Bounds, gravity.Kind);
        Assert.True(gravity.Low < gravity.Likely && gravity.Likely < gravity.High);
        Near.Equal(PointsOf(With("raw rye", 70.5).Forecast()), 1000 * (gravity.High - 1), 0.3);
        Assert.Equal(Severity.Note, Assert.Single(rye.Cautions, c => c.Code == "starch.cookFirst").Severity);
    }

    [Theory]
    [InlineData("rice, raw, milled", true)]
    [InlineData("maize, dry", true)]
    [InlineData("lentil dal", true)]
    [InlineData("wheat, whole", false)]
    [InlineData("rolled oats, dry", false)]
    [InlineData("rice, white, cooked", false)]
    [InlineData("raspberries", false)]
    [InlineData("hazelnuts", false)]
    public void Food_whose_starch_a_mash_does_not_open_is_to_be_cooked_first(string food, bool isTold)
    {
        Caution? told = Said(WithFood(food), "starch.cookFirst");
        Assert.Equal(isTold, told is not null);
        if (isTold)
        {
            Assert.Contains("kg of it are counted as raw", told!.Message, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Starch_that_opens_and_meets_no_enzyme_stays_and_is_told()
    {
        Recipe oats = Mashed(66, Typed.Malt("oat flakes", 3));
        Caution told = Said(oats, "starch.openLeft")!;
        Assert.Equal(Severity.Warning, told.Severity);
        Assert.Contains("kg of starch opens in this mash and finds too little enzyme", told.Message, StringComparison.Ordinal);
        Assert.Null(Said(With("oat flakes"), "starch.openLeft"));
    }

    // Stewed malts have no starch: nothing of theirs is left unconverted, however cold the mash or weak the enzyme.
    [Theory]
    [InlineData("caramel malt", 35)]
    [InlineData("caramel malt", 85)]
    [InlineData("chocolate malt", 66)]
    [InlineData("dextrin malt", 40)]
    public void Malt_without_starch_is_never_told_that_its_starch_does_not_convert(string malt, double celsius)
    {
        BrewForecast told = Mashed(celsius, Typed.Malt(malt, 2)).Forecast();
        Assert.DoesNotContain(told.Findings, f => f.Code == "mash.enzyme");
        Assert.DoesNotContain(told.Cautions, c => c.Code is "mash.conversion" or "mash.shortRest" || c.Code.StartsWith("starch", StringComparison.Ordinal));
        Assert.Equal(BandKind.Point, told.Headline.Single(h => h.Name == "originalGravity").Band!.Kind);
    }
}
