using Gylebook.Forecast.Planning;
using Gylebook.Forecast.Report;
using Gylebook.Forecast.Tests.Solving;
using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Kits;

namespace Gylebook.Forecast.Tests.Report;

public sealed class LinePartsTests
{
    private static IReadOnlyList<LinePart> Of(RecipeDraft draft) =>
        LineParts.Of(BrewPlanner.Plan(draft.Recipe!, BuiltInKit.LanternShed, RecipeSolverTests.Foods));

    private static RecipeDraft Hedgerow => RecipeSolverTests.Draft("hedgerow-brown");

    [Fact]
    public void Shares_of_the_grist_are_of_what_was_weighed()
    {
        IReadOnlyList<LinePart> parts = Of(Hedgerow);
        // 3.6, 0.5, 0.3, 0.1 kg of malt and 0.6 kg of flour: 5.1 kg in all.
        Assert.Equal(new[] { 3.6, 0.5, 0.3, 0.1, 0.6 }.Select(kg => 100 * kg / 5.1), parts.Take(5).Select(p => p.GristPercent!.Value), (a, b) => Math.Abs(a - b) < 1e-9);
        Assert.All(parts.Skip(5), p => Assert.Null(p.GristPercent));
    }

    [Fact]
    public void Bitterness_of_the_lines_adds_up_to_the_beers()
    {
        RecipeDraft draft = Hedgerow.Duplicate(5).After.Put("ingredients[6].at", "boil 15 min")!.After;
        BrewForecast forecast = Forecaster.Forecast(draft.Recipe!, BuiltInKit.LanternShed, RecipeSolverTests.Foods, "test");
        IReadOnlyList<LinePart> parts = Of(draft);
        Assert.True(parts[5].Ibu > parts[6].Ibu && parts[6].Ibu > 0);
        Assert.Equal(forecast.Headline.Single(h => h.Name == "bitterness").Band!.Likely, parts.Sum(p => p.Ibu ?? 0), 9);
    }

    [Fact]
    public void Points_of_the_honey_are_what_the_gravity_loses_without_it_at_the_same_liquor()
    {
        RecipeDraft with = Hedgerow.Put("liquor.strike", "27 L")!.After;
        int honey = with.Lines.Single(l => l.Of == "honey").Number;
        double Gravity(RecipeDraft d) => Forecaster.Forecast(d.Recipe!, BuiltInKit.LanternShed, RecipeSolverTests.Foods, "t")
            .Headline.Single(h => h.Name == "originalGravity").Band!.Likely;
        Assert.Equal(1000 * (Gravity(with) - Gravity(with.Remove(honey).After)), Of(with)[honey].GravityPoints!.Value, 6);
    }

    [Fact]
    public void Sugar_in_the_package_is_told_in_grams_a_litre()
    {
        RecipeDraft draft = Hedgerow;
        LinePart sugar = Of(draft)[^1];
        BrewForecast forecast = Forecaster.Forecast(draft.Recipe!, BuiltInKit.LanternShed, RecipeSolverTests.Foods, "t");
        Assert.Equal(113 / forecast.Headline.Single(h => h.Name == "packagedLitres").Band!.Likely, sugar.GramsPerLitre!.Value, 9);
    }

    [Fact]
    public void A_recipe_that_cannot_be_run_tells_nothing() => Assert.Empty(Of(Hedgerow.Put("package.in", "barrel")!.After));
}
