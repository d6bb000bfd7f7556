using BenchmarkDotNet.Attributes;
using Gylebook.Forecast.LayingOut;
using Gylebook.Forecast.Running;
using Gylebook.Recipes;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;

namespace Gylebook.Benchmarks;

/// <summary>The two loops that matter: laying a recipe out at each keystroke, and running it for each draw.</summary>
/// <remarks>Targets for twenty ingredients: lay-out with planning 30 µs; a run 4 µs and 0 bytes. See <c>docs/benchmarks.md</c>.</remarks>
[MemoryDiagnoser]
public class ForecastBenchmarks
{
    private Recipe _recipe = null!;
    private Kit _kit = null!;
    private RunPlan _plan = null!;
    private double[] _figures = null!;

    /// <summary>Reads the files and lays out once.</summary>
    [GlobalSetup]
    public void Prepare()
    {
        Reading<Recipe> recipe = RecipeFile.Read(TwentyIngredients.Recipe);
        Reading<Kit> kit = KitFile.Read(TwentyIngredients.Kit);
        _recipe = recipe.Value ?? throw new InvalidOperationException(string.Join('\n', recipe.Findings.Select(f => f.Message)));
        _kit = kit.Value ?? throw new InvalidOperationException(string.Join('\n', kit.Findings.Select(f => f.Message)));
        LaidOut laidOut = LayOut.Of(_recipe, _kit, _ => null);
        _plan = laidOut.Plan ?? throw new InvalidOperationException(string.Join('\n', laidOut.Findings.Select(f => f.Message)));
        _figures = new double[_plan.PortionCount * Figures.Count];
    }

    /// <summary>Checks, looks up, lays out and plans backwards.</summary>
    [Benchmark]
    public LaidOut LayOutWithPlanning() => LayOut.Of(_recipe, _kit, _ => null);

    /// <summary>One draw.</summary>
    [Benchmark]
    public double RunOnce()
    {
        NoLog log = default;
        Run.Through(_plan, _plan.Medians, _figures, ref log);
        return _figures[0];
    }
}
