using Gylebook.Recipes.Forms;
using BenchmarkDotNet.Attributes;
using Gylebook.Engine.Parameters;
using Gylebook.Engine.Readouts;
using Gylebook.Engine.Running;
using Gylebook.Forecast.Planning;
using Gylebook.Forecast.Report;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;

namespace Gylebook.Benchmarks;

/// <summary>The loops that matter: laying a recipe out at each keystroke, running it for each draw, reading what it leaves.</summary>
/// <remarks>
/// Targets for twenty ingredients: see <c>docs/benchmarks.md</c>. A plain loop of dependent multiply-adds is timed in the same
/// process, so that machines can be compared by ratios.
/// </remarks>
[MemoryDiagnoser]
public class ForecastBenchmarks
{
    private Recipe _recipe = null!;
    private Kit _kit = null!;
    private RunPlan _plan = null!;
    private RunTrace _trace = null!;
    private double[] _moved = null!;
    private ReadoutTable _readouts = null!;
    private double[] _told = null!;

    /// <summary>Reads the files and lays out once.</summary>
    [GlobalSetup]
    public void Prepare()
    {
        Reading<Recipe> recipe = RecipeFile.Read(TwentyIngredients.Recipe);
        Reading<Kit> kit = KitFile.Read(TwentyIngredients.Kit);
        _recipe = recipe.Value ?? throw new InvalidOperationException(string.Join('\n', recipe.Findings.Select(f => f.Message)));
        _kit = kit.Value ?? throw new InvalidOperationException(string.Join('\n', kit.Findings.Select(f => f.Message)));
        BrewPlan planned = BrewPlanner.Plan(_recipe, _kit, Larder.Empty);
        _plan = planned.Plan ?? throw new InvalidOperationException(string.Join('\n', planned.Findings.Select(f => f.Message)));
        _trace = new RunTrace(_plan);
        _readouts = planned.Readouts!;
        _told = new double[_readouts.All.Count];
        _moved = [.. _plan.Medians.Select(median => 0.99 * median)];
        _moved[(int)Known.MashWarmer] = 0.5;
        _moved[(int)Known.StandWarmer] = 0.5;
    }

    /// <summary>The yardstick: ten million multiply-adds, each of which waits for the one before.</summary>
    [Benchmark(Baseline = true)]
    public double TenMillionMultiplyAdds() => Yardstick.TenMillionMultiplyAdds();

    /// <summary>Checks, looks up, lays out and plans backwards.</summary>
    [Benchmark]
    public BrewPlan LayOutWithPlanning() => BrewPlanner.Plan(_recipe, _kit, Larder.Empty);

    /// <summary>One run at the medians.</summary>
    [Benchmark]
    public bool RunAtTheMedians() => Run.Through(_plan, _plan.Medians, _trace);

    /// <summary>One run with every parameter moved and all makeups drawn.</summary>
    [Benchmark]
    public bool RunWithAllMoved() => Run.Through(_plan, _moved, _trace);

    /// <summary>The same, and the headline read.</summary>
    [Benchmark]
    public double RunAndHeadline()
    {
        Run.Through(_plan, _moved, _trace);
        double sum = 0;
        foreach (Readout readout in BeerReadouts.Headline)
        {
            sum += readout.Of(new RunView(_plan, _moved, _trace));
        }

        return sum;
    }

    /// <summary>The same, and all that can be told read into a buffer.</summary>
    [Benchmark]
    public void RunAndAllReadouts()
    {
        Run.Through(_plan, _moved, _trace);
        _readouts.Read(new RunView(_plan, _moved, _trace), _told);
    }

    /// <summary>A key on the recipe page: lay-out, run and report.</summary>
    [Benchmark]
    public BrewForecast Key() => Forecaster.Forecast(_recipe, _kit, Larder.Empty, "bench");
}
