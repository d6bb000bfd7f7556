using System.Diagnostics;
using Gylebook.Engine.Drawing;
using Gylebook.Engine.Ensembles;
using Gylebook.Engine.Readouts;
using Gylebook.Engine.Running;
using Gylebook.Forecast.Planning;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Larders;
using Gylebook.Science.Numerics;
using Gylebook.Science.Numerics.Distributions;

namespace Gylebook.Benchmarks;

/// <summary>How far the 5 and 95 % of the headlines lie from those of very many draws, by three ways of drawing: what decision 0025 rests on.</summary>
internal static class QuantileErrors
{
    private const int Fine = 1 << 16;
    private const int Many = 400_000;
    private const int Seeds = 40;

    private static readonly Readout[] Asked =
        [BeerReadouts.OriginalGravity, BeerReadouts.FinalGravity, BeerReadouts.AlcoholByVolume, BeerReadouts.Bitterness, BeerReadouts.Colour, BeerReadouts.PackagedLitres];

    /// <summary>Prints root mean square errors, as shares of the band's own width, a line a way and a count.</summary>
    public static void Print()
    {
        RunPlan plan = BrewPlanner.Plan(RecipeFile.Read(TwentyIngredients.Recipe).Value!, KitFile.Read(TwentyIngredients.Kit).Value!, Larder.Empty).Plan!;
        Strata fine = new(Fine);
        Quantiles[] truth = Ensemble.Of(plan, Draws.Of(plan.Parameters, "the truth", Many), Asked).AllQuantiles();
        Console.WriteLine(string.Join("  ", Asked.Select(readout => readout.Id)));
        Console.WriteLine("true bands: " + string.Join("  ", truth.Select(band => Invariant($"{band.Low:0.####} to {band.High:0.####}"))));
        foreach (int count in new[] { 1000, 4000 })
        {
            Tell("independent", count, truth, seed => Ensemble.Of(plan, Draws.Of(plan.Parameters, count, fine, Independent(seed)), Asked));
            Tell("strata", count, truth, seed => Ensemble.Of(plan, Draws.Of(plan.Parameters, seed, count), Asked));
            Tell("rotations", count, truth, seed => Ensemble.Of(plan, Draws.Of(plan.Parameters, count, fine, Rotations(seed)), Asked));
        }
    }

    private static void Tell(string way, int count, Quantiles[] truth, Func<string, Ensemble> run)
    {
        double[] low = new double[truth.Length], high = new double[truth.Length];
        Stopwatch watch = Stopwatch.StartNew();
        for (int seed = 0; seed < Seeds; seed++)
        {
            Quantiles[] told = run(Invariant($"seed {seed}")).AllQuantiles();
            for (int i = 0; i < told.Length; i++)
            {
                low[i] += Math.Pow((told[i].Low - truth[i].Low) / truth[i].Width, 2);
                high[i] += Math.Pow((told[i].High - truth[i].High) / truth[i].Width, 2);
            }
        }

        string errors = string.Join("  ", low.Zip(high).Select(sum => Invariant($"{Math.Sqrt(sum.First / Seeds):0.0000} {Math.Sqrt(sum.Second / Seeds):0.0000}")));
        Console.WriteLine(Invariant($"{way,-12} {count}: {errors}; {watch.Elapsed.TotalMilliseconds / Seeds:0} ms"));
    }

    /// <summary>Each draw anywhere, whatever the others.</summary>
    private static StrataOf Independent(string seed) => (what, places) =>
    {
        SeededRandom stream = SeededRandom.Of(seed, what);
        foreach (ref int place in places)
        {
            place = stream.Below(Fine);
        }
    };

    /// <summary>A low-discrepancy sequence that a column's own id can choose: steps of one irrational length from a start, both from its stream.</summary>
    private static StrataOf Rotations(string seed) => (what, places) =>
    {
        SeededRandom stream = SeededRandom.Of(seed, what);
        ulong at = stream.Next(), step = stream.Next();
        foreach (ref int place in places)
        {
            place = (int)((at += step) >> 48);
        }
    };
}
