using BenchmarkDotNet.Attributes;
using Gylebook.Engine.Drawing;
using Gylebook.Engine.Ensembles;
using Gylebook.Engine.Readings;
using Gylebook.Engine.Readouts;
using Gylebook.Forecast.Planning;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Larders;
using Gylebook.Science.Numerics.Distributions;

namespace Gylebook.Benchmarks;

/// <summary>Four thousand draws of twenty ingredients on one core, with their bands.</summary>
[MemoryDiagnoser]
public class EnsembleBenchmarks
{
    private const int Count = 4000;

    private BrewPlan _twenty = null!;
    private Ensemble _thousand = null!;
    private Reading[] _readings = null!;
    private ReadingReach _reach = null!;

    /// <summary>Lays out once.</summary>
    [GlobalSetup]
    public void Prepare()
    {
        _twenty = BrewPlanner.Plan(RecipeFile.Read(TwentyIngredients.Recipe).Value!, KitFile.Read(TwentyIngredients.Kit).Value!, Larder.Empty);
        _thousand = Ensemble.Of(_twenty.Plan!, Draws.Of(_twenty.Plan!.Parameters, "bench", 1000), _twenty.Readouts!.All);
        _readings = [.. new[] { BeerReadouts.CopperUpLitres, BeerReadouts.KnockOutLitres, BeerReadouts.CastGravity }.Select(readout =>
            new Reading(readout.Id, readout, _thousand.QuantilesOf(readout).Middle, Math.Pow(_thousand.QuantilesOf(readout).Width / 10, 2), ReadingInstrument.Exact))];
        _reach = ReadingReach.Of(_twenty.Plan!, _thousand, _readings);
    }

    /// <summary>The yardstick: ten million multiply-adds, each of which waits for the one before.</summary>
    [Benchmark(Baseline = true)]
    public double TenMillionMultiplyAdds() => Yardstick.TenMillionMultiplyAdds();

    /// <summary>The draws alone.</summary>
    [Benchmark]
    public Draws DrawsAlone() => Draws.Of(_twenty.Plan!.Parameters, "bench", Count);

    /// <summary>Draws, runs and bands of the headlines.</summary>
    [Benchmark]
    public Quantiles[] Headlines() => Ensemble.Of(_twenty.Plan!, Draws.Of(_twenty.Plan!.Parameters, "bench", Count), BeerReadouts.Headline).AllQuantiles();

    /// <summary>Draws, runs and bands of all that can be told.</summary>
    [Benchmark]
    public Quantiles[] AllReadouts() => Ensemble.Of(_twenty.Plan!, Draws.Of(_twenty.Plan!.Parameters, "bench", Count), _twenty.Readouts!.All).AllQuantiles();

    /// <summary>What a reading can tell of, found out by trying.</summary>
    [Benchmark]
    public ReadingReach Reach() => ReadingReach.Of(_twenty.Plan!, _thousand, _readings);

    /// <summary>Three readings at once on 1,000 stored draws and all readouts.</summary>
    [Benchmark]
    public Ensemble ReadingsAtOnce() => Assimilation.AtOnce(_thousand, _readings, _reach, "bench");

    /// <summary>The same in four steps, run anew, on two threads.</summary>
    [Benchmark]
    public Ensemble ReadingsRepeated() => Assimilation.Repeated(_twenty.Plan!, _thousand, _readings, _reach, "bench", 2).Ensemble;
}
