using Gylebook.Engine.Drawing;
using Gylebook.Engine.Ensembles;
using Gylebook.Engine.Readouts;
using Gylebook.Forecast.Planning;
using Gylebook.Forecast.Report.Doubt;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Larders;
using Gylebook.Science.Numerics.Distributions;
using Gylebook.Tests.Shared;

namespace Gylebook.Forecast.Tests.Readings;

/// <summary>Nine bands in ten hold the truth, where the truth is a draw of all that is drawn: seeds "gyle 1" to "gyle 400", the first that were tried.</summary>
/// <remarks>
/// A share of 0.9 among n gyles is binomial. Of 400, 340 to 380 leave out an honest number once in 1,400 times; of 100, 80 to 98 once in 890 (both ends
/// together, exact sums). A true 80 % of 400 passes once in 160 times. What <c>bench</c> tells with scores stands in docs/science/uncertainty.md.
/// </remarks>
public sealed class CoverageTests
{
    private const int Before = 400, After = 100, Draw = 1000;

    /// <summary>A gyle's truth is the first of so many draws of its own seed: a single draw would be the median.</summary>
    private const int Many = 401;

    private static readonly BrewPlan Bitter = BrewPlanner.Plan(
        RecipeFile.Read(File.ReadAllText(RepositoryFile.PathOf("samples/recipes/plain-bitter.json"))).Value!, BuiltInKit.LanternShed, Larder.Empty);

    private static readonly Ensemble Forecast = DrawnBrew.Of(
        Bitter, RunOutcome.Likely(Bitter.Plan!), "coverage forecast", Draw,
        [.. ReadTruth.Marks.Off.Parameters, .. ReadTruth.Hydrometer.Off.Parameters], null, [.. ReadTruth.Asked.Union(ReadTruth.Read.Select(reading => reading.Readout))]);

    [Fact]
    public void Before_readings_nine_truths_in_ten_of_every_number_lie_within_its_band()
    {
        int[] held = new int[ReadTruth.Asked.Count];
        for (int gyle = 1; gyle <= Before; gyle++)
        {
            Count(Truth(gyle), Forecast, held);
        }

        Assert.All(held.Zip(ReadTruth.Asked), pair => Assert.True(pair.First is >= 340 and <= 380, $"{pair.Second.Title}: {pair.First} of {Before}"));
    }

    [Fact]
    public void After_readings_they_still_do()
    {
        int[] held = new int[ReadTruth.Asked.Count];
        ReadTruth reader = new(Bitter.Plan!, Forecast);
        for (int gyle = 1; gyle <= After; gyle++)
        {
            Ensemble truth = Truth(gyle);
            Count(truth, reader.After(reader.LetIn(truth, 0, gyle).Taken), held);
        }

        Assert.All(held.Zip(ReadTruth.Asked), pair => Assert.True(pair.First is >= 80 and <= 98, $"{pair.Second.Title}: {pair.First} of {After}"));
    }

    private static void Count(Ensemble truth, Ensemble forecast, int[] held)
    {
        for (int i = 0; i < held.Length; i++)
        {
            Quantiles band = forecast.QuantilesOf(ReadTruth.Asked[i]);
            double value = truth[ReadTruth.Asked[i]][0];
            held[i] += value >= band.Low && value <= band.High ? 1 : 0;
        }
    }

    private static Ensemble Truth(int gyle)
    {
        Draws many = Draws.Of(Forecast.Draws.Parameters, Invariant($"gyle {gyle}"), Many);
        double[] first = [.. many.Parameters.Select(parameter => parameter.Median)];
        many.Put(0, first);
        return Ensemble.Of(Bitter.Plan!, many.One(first), Forecast.Readouts, Forecast.Terms);
    }
}
