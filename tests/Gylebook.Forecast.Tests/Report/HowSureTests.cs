using Gylebook.Engine.Readouts;
using Gylebook.Forecast.Json;
using Gylebook.Forecast.Report;
using Gylebook.Forecast.Report.Doubt;
using Gylebook.Forecast.Tests.Planning;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Larders;
using Gylebook.Tests.Shared;

namespace Gylebook.Forecast.Tests.Report;

/// <summary>What a reader is told of how sure a forecast is.</summary>
public sealed class HowSureTests
{
    private static readonly Recipe Recipe = RecipeFile.Read(File.ReadAllText(RepositoryFile.PathOf("samples/recipes/plain-bitter.json"))).Value!;

    private static readonly BrewForecast Told = Drawn("bands", 2000);

    private static BrewForecast Drawn(string seed, int draws) =>
        Forecaster.Forecast(Recipe, Kits.Sample("lantern-shed"), Larder.Empty, seed, null, ForecastRequest.Usual with { Draws = draws });

    private static Band BandOf(BrewForecast forecast, Readout readout) => forecast.Headline.Single(headline => headline.Name == readout.Id).Band!;

    [Fact]
    public void Headlines_are_bands_about_the_one_likely_run()
    {
        BrewForecast likely = Drawn("bands", 0);
        Assert.Null(likely.HowSure);
        foreach (Headline headline in Told.Headline.Where(headline => headline.Band is not null))
        {
            Assert.Equal(likely.Headline.Single(other => other.Name == headline.Name).Band!.Likely, headline.Band!.Likely);
            Assert.True(headline.Band.Low <= headline.Band.Middle && headline.Band.Middle <= headline.Band.High, headline.Name);
            Assert.Equal(BandKind.Quantiles, headline.Band.Kind);
        }
    }

    // Reference 3: rough sums of the priors at 1.050 and 20 L for a new kit: 3.4 points and 1.3 L, nine tenths within 1.645 times that.
    // A gyle's own scatter comes besides, so up to half as much again is believed.
    [Fact]
    public void Bands_are_as_wide_as_a_hand_sum_of_the_priors()
    {
        Band gravity = BandOf(Told, BeerReadouts.OriginalGravity), litres = BandOf(Told, BeerReadouts.PackagedLitres);
        double points = (gravity.Likely - 1) / 0.050;
        Assert.InRange((gravity.High - gravity.Low) / 2 / points, 0.001645 * 3.4 / 1.5, 0.001645 * 3.4 * 1.5);
        Assert.InRange((litres.High - litres.Low) / 2, 1.645 * 1.3 / 1.5, 1.645 * 1.3 * 1.5);
    }

    [Fact]
    public void The_doubt_is_told_by_cause_in_words_the_largest_first()
    {
        NumberDoubt package = Told.HowSure!.Causes.Single(doubt => doubt.Readout == BeerReadouts.PackagedLitres);
        Assert.Equal("kit.kettle.evaporation", package.Causes[0].Id);
        Assert.StartsWith("half of it is how much boils off in an hour, ", package.Sentence, StringComparison.Ordinal);
        Assert.Equal(package.Causes.OrderByDescending(cause => cause.Share), package.Causes);
        Assert.All(Told.HowSure.Causes, doubt => Assert.InRange(doubt.Causes.Sum(cause => cause.Share), 0.85, 1.1));
        Assert.Contains(Told.HowSure.Causes.Single(doubt => doubt.Readout == BeerReadouts.Bitterness).Causes, cause => cause.Id == "model.bitterness.timeGravity");
    }

    [Fact]
    public void Readings_come_before_what_they_narrow_and_the_best_for_a_minute_first()
    {
        IReadOnlyList<ReadingAdvice> next = Told.HowSure!.MeasureNext;
        Assert.Equal(next.OrderByDescending(advice => advice.WorthPerMinute), next);
        Assert.Contains(next, advice => advice.Reading.Id == "copperUpLitres" && advice.Narrows.Any(narrows => narrows.Readout == BeerReadouts.PackagedLitres));
        Assert.DoesNotContain(next, advice => advice.Reading.Id == "rackedLitres" && advice.Narrows.Any(narrows => narrows.Readout != BeerReadouts.PackagedLitres));
    }

    // Log-spreads: the kettle 0.30, the table 0.15, a sealed pack 0.08, a cultivar's usual range 0.15. An assay of 0.05 leaves √(1 − 0.15²/0.135·0.9)
    // of the width where only the cultivar is known, 8 % less, and takes 3 % where the pack says: too little to be told.
    [Fact]
    public void An_assay_is_worth_the_while_where_only_the_cultivar_is_known()
    {
        Assert.DoesNotContain(Told.HowSure!.MeasureNext, advice => advice.Reading.Id == "alphaAssay");
        Recipe vague = Recipe with { Ingredients = [.. Recipe.Ingredients.Where(line => line.Kind != IngredientKind.Hop), Typed.Line(IngredientKind.Hop, "Fuggle", 0.06, AdditionPoint.Boil, 60)] };
        BrewForecast told = Forecaster.Forecast(vague, Kits.Sample("lantern-shed"), Larder.Empty, "vague", null, ForecastRequest.Usual with { Draws = 4000 });
        ReadingAdvice assay = told.HowSure!.MeasureNext.Single(advice => advice.Reading.Id == "alphaAssay");
        Assert.Equal("an assay of the fuggle", assay.Words);

        // Correlations by chance, sd 0.0158, about one of 0.4: what is taken is off by 0.4·0.0158/0.9; four of them.
        Assert.Equal(0.08, assay.Narrows.Single(narrows => narrows.Readout == BeerReadouts.Bitterness).Share, 0.028);
    }

    // A median that stands at the end of what is believed: all draws lie on the other side.
    [Fact]
    public void Where_likely_is_not_in_the_middle_the_figure_that_leans_is_named()
    {
        BrewForecast dull = Forecaster.Forecast(
            Recipe, Kits.Sample("lantern-shed").Converting(0.995), Larder.Empty, "leans", null, ForecastRequest.Usual with { Draws = 2000 });
        Assert.All(dull.HowSure!.Causes, doubt =>
        {
            Band band = dull.HowSure.BandOf(doubt.Readout)!;
            bool off = Math.Abs(band.Middle!.Value - band.Likely) > 0.25 * (band.High - band.Low);
            Assert.Equal(off || band.Likely < band.Low || band.Likely > band.High, doubt.Aside is not null);
        });
    }

    [Fact]
    public void Every_model_term_and_every_reading_is_of_something_there_is()
    {
        HashSet<string> parameters = [.. ParameterTests.Samples().SelectMany(sample => ParameterTests.Plan(sample.Data)?.Parameters ?? []).Select(parameter => parameter.Id)];
        HashSet<string> readouts = [.. Told.HowSure!.Ensemble.Readouts.Select(readout => readout.Id)];
        Assert.All(Instruments.Readings, reading => Assert.True(readouts.Any(reading.IsOf) || parameters.Any(reading.IsOf), reading.Id));
        string[] terms = [.. Told.HowSure.Ensemble.Draws.Parameters.Select(parameter => parameter.Id).Where(id => id.StartsWith("model.", StringComparison.Ordinal))];
        Assert.Equal([.. Priors.All.Select(prior => prior.Id).Where(id => id.StartsWith("model.", StringComparison.Ordinal)).Distinct().Order(StringComparer.Ordinal)], terms.Order(StringComparer.Ordinal));
        Assert.All(terms, id => Assert.NotNull(ParameterWords.Of(id)));
    }

    // By Balling at 1.050 and 1.012, a point more at the start is 0.13 % of alcohol more, a point more at the end as much less.
    [Fact]
    public void The_term_of_a_gravity_is_carried_to_the_alcohol()
    {
        HowSure sure = Told.HowSure!;
        double Slope(string parameter)
        {
            int place = sure.Ensemble.Draws.Parameters.ToList().FindIndex(p => p.Id == parameter);
            double[] x = sure.Ensemble.Draws[place].ToArray(), y = sure.Ensemble[BeerReadouts.AlcoholAtRacking].ToArray();
            double mean = y.Average();
            return x.Zip(y).Sum(pair => pair.First * (pair.Second - mean)) / x.Sum(value => value * value);
        }

        // The rest of the doubt about alcohol, sd 0.5 %, hides a slope by 0.5/(sd of the term · √2000); four of them.
        Assert.Equal(130, Slope("model.originalGravity"), 4 * 0.5 / (0.0008 * Math.Sqrt(2000)));
        Assert.Equal(-130, Slope("model.finalGravity"), 4 * 0.5 / (0.001 * Math.Sqrt(2000)));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(200)]
    public void What_is_written_is_of_the_published_form(int draws)
    {
        string json = ForecastJson.Write(Drawn("json", draws));
        Assert.Contains($"\"draws\": {draws},", json, StringComparison.Ordinal);
        Assert.Contains(draws == 0 ? "\"howSure\": null" : "\"kind\": \"quantiles\"", json, StringComparison.Ordinal);
        Assert.Equal(json, ForecastJson.Write(Drawn("json", draws)));
    }
}
