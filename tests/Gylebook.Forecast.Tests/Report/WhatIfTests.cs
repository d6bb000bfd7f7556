using Gylebook.Engine.Readouts;
using Gylebook.Forecast.Planning;
using Gylebook.Forecast.Report;
using Gylebook.Forecast.Report.Doubt;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Larders;
using Gylebook.Tests.Shared;

namespace Gylebook.Forecast.Tests.Report;

/// <summary>What a brew comes to when one of its figures is not as likely, weighed and measured out as it is.</summary>
public sealed class WhatIfTests
{
    private static readonly BrewPlan Brew = Forecaster.Plan(
        RecipeFile.Read(File.ReadAllText(RepositoryFile.PathOf("samples/recipes/plain-bitter.json"))).Value!, Kits.Sample("lantern-shed"), Larder.Empty, null).Brew;

    private static readonly BrewForecast Likely = Forecaster.Forecast(Brew, "what if", null, ForecastRequest.Usual with { Draws = 1000 });

    private static int PlaceOf(string id) => Likely.HowSure!.Ensemble.Draws.PlaceOf(id)!.Value;

    private static BrewForecast With(string id, double way) => Forecaster.Suppose(Brew, Likely, new Dictionary<int, double> { [PlaceOf(id)] = way });

    private static double Of(BrewForecast forecast, Readout readout) => forecast.Headline.Single(headline => headline.Name == readout.Id).Band!.Likely;

    [Fact]
    public void Everything_as_likely_is_the_likely_run_to_the_last_bit()
    {
        BrewForecast same = Forecaster.Suppose(Brew, Likely, new Dictionary<int, double>());
        Assert.Equal(Likely.Headline.Select(headline => headline.Band?.Likely), same.Headline.Select(headline => headline.Band?.Likely));
        Assert.Equal(Likely.Stages.Select(stage => (stage.LitresAt20C, stage.Gravity)), same.Stages.Select(stage => (stage.LitresAt20C, stage.Gravity)));
    }

    [Fact]
    public void Less_converted_is_a_thinner_wort_and_a_weaker_beer()
    {
        BrewForecast less = With("kit.conversion", -1), more = With("kit.conversion", 1);
        Assert.True(Of(less, BeerReadouts.OriginalGravity) < Of(Likely, BeerReadouts.OriginalGravity) && Of(Likely, BeerReadouts.OriginalGravity) < Of(more, BeerReadouts.OriginalGravity));
        Assert.True(Of(less, BeerReadouts.AlcoholByVolume) < Of(Likely, BeerReadouts.AlcoholByVolume) && Of(Likely, BeerReadouts.AlcoholByVolume) < Of(more, BeerReadouts.AlcoholByVolume));
    }

    // What boils off is water: there is less beer of it, and the extract that is left in it is the more.
    [Fact]
    public void More_boiled_off_is_less_beer_and_a_thicker_wort()
    {
        BrewForecast more = With("kit.kettle.evaporation", 1);
        Assert.True(Of(more, BeerReadouts.PackagedLitres) < Of(Likely, BeerReadouts.PackagedLitres));
        Assert.True(Of(more, BeerReadouts.OriginalGravity) > Of(Likely, BeerReadouts.OriginalGravity));
    }

    // The factor multiplies the published utilisation, and the bitterness with it: docs/science/bitterness.md.
    [Fact]
    public void Bitterness_goes_with_the_utilisation()
    {
        BrewForecast more = With("bitterness.utilisation", 1);
        double factor = Likely.HowSure!.FigureAt(Likely.HowSure.Movable.Single(figure => figure.Parameter.Id == "bitterness.utilisation"), 1);
        Assert.Equal(factor, Of(more, BeerReadouts.Bitterness) / Of(Likely, BeerReadouts.Bitterness), 1e-9);
        Assert.Equal(Of(Likely, BeerReadouts.OriginalGravity), Of(more, BeerReadouts.OriginalGravity), 1e-12);
    }

    [Fact]
    public void Five_figures_that_move_the_run_are_offered_the_heaviest_first()
    {
        IReadOnlyList<MovableFigure> offered = Likely.HowSure!.Movable;
        Assert.Equal(MovableFigure.Most, offered.Count);
        Assert.Equal(MovableFigure.Most, offered.Select(figure => figure.Parameter.Id).Distinct().Count());
        Assert.All(offered, figure => Assert.True(figure.Low <= figure.Parameter.Median && figure.Parameter.Median <= figure.High && figure.Low < figure.High, figure.Parameter.Id));
        Assert.DoesNotContain(offered, figure => figure.Parameter.Id.StartsWith("model.", StringComparison.Ordinal));

        // Each of them leads the doubt of a number told beside it.
        Assert.All(offered, figure => Assert.Contains(Likely.HowSure.Causes, doubt => doubt.Causes.Any(cause => cause.Lead == figure.Place)));
    }

    [Fact]
    public void Without_draws_nothing_can_be_supposed() =>
        Assert.Throws<ArgumentException>(() => Forecaster.Suppose(Brew, Likely with { HowSure = null }, new Dictionary<int, double>()));
}
