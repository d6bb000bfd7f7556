using System.Diagnostics;
using Gylebook.Engine.Drawing;
using Gylebook.Engine.Ensembles;
using Gylebook.Engine.Readouts;
using Gylebook.Forecast.Planning;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Larders;
using Gylebook.Science.Numerics.Distributions;

namespace Gylebook.Benchmarks;

/// <summary>The brew of <c>bench/octave/one_malt.m</c> by the engine: all of its figures that are drawn, one thread, the same seven headlines, to be told as a ratio.</summary>
internal static class OneMalt
{
    private const int Draw = 4000, Times = 50;

    private static readonly Readout[] Asked =
    [
        BeerReadouts.CopperUpLitres, BeerReadouts.KnockOutLitres, BeerReadouts.OriginalGravity, BeerReadouts.FinalGravity,
        BeerReadouts.AlcoholByVolume, BeerReadouts.ApparentAttenuation, BeerReadouts.PackagedLitres,
    ];

    /// <summary>Prints the brew at its medians, and the best and the median of fifty times.</summary>
    /// <param name="folder">Where <c>one-malt.json</c> and its kit lie.</param>
    public static void Print(string folder)
    {
        BrewPlan planned = BrewPlanner.Plan(
            RecipeFile.Read(File.ReadAllText(Path.Combine(folder, "one-malt.json"))).Value!, KitFile.Read(File.ReadAllText(Path.Combine(folder, "one-malt-kit.json"))).Value!, Larder.Empty);
        RunOutcome likely = RunOutcome.Likely(planned.Plan!);
        Console.WriteLine(string.Join(", ", Asked.Select(readout => $"{readout.Title} {readout.Told(likely[readout])}")));
        double[] times = [.. Enumerable.Range(0, Times).Select(_ => Once(planned))];
        Array.Sort(times);
        Console.WriteLine(Invariant($"{Draw} draws of {Draws.Of(planned.Plan!.Parameters, "bench", 2).Moving.Length} figures with bands of {Asked.Length} headlines: best {times[0]:0.00} ms, median {times[Times / 2]:0.00} ms"));
    }

    private static double Once(BrewPlan planned)
    {
        long from = Stopwatch.GetTimestamp();
        Quantiles[] bands = Ensemble.Of(planned.Plan!, Draws.Of(planned.Plan!.Parameters, "bench", Draw), Asked).AllQuantiles();
        return bands.Length > 0 ? Stopwatch.GetElapsedTime(from).TotalMilliseconds : 0;
    }
}
