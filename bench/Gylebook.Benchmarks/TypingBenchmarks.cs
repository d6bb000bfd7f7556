using BenchmarkDotNet.Attributes;
using Gylebook.Forecast.Report;
using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Larders;

namespace Gylebook.Benchmarks;

/// <summary>A key typed into an amount: from the draft with that text in its field to the forecast's report.</summary>
/// <remarks>Target: a recipe of 200 lines below 100 ms. See <c>docs/benchmarks.md</c>.</remarks>
[MemoryDiagnoser]
public class TypingBenchmarks
{
    private RecipeDraft _draft = null!;
    private Kit _kit = null!;
    private bool _isMore;

    /// <summary>Lines of the recipe.</summary>
    [Params(20, 200)]
    public int Lines { get; set; }

    /// <summary>Opens the recipe, and sees that it can be brewed.</summary>
    [GlobalSetup]
    public void Prepare()
    {
        _draft = RecipeDraft.Of(TwentyIngredients.InParts(Lines / 20));
        _kit = KitFile.Read(TwentyIngredients.Kit).Value!;
        if (Key().Stages.Count == 0)
        {
            throw new InvalidOperationException(string.Join('\n', Key().Findings.Select(finding => finding.Message)));
        }
    }

    /// <summary>The text goes into the draft, the draft is read, the recipe forecast.</summary>
    [Benchmark]
    public BrewForecast Key() => Forecaster.Forecast(Read().Recipe!, _kit, Larder.Empty, "bench");

    /// <summary>The text goes into the draft and the draft is read.</summary>
    [Benchmark]
    public RecipeDraft Read()
    {
        // Each key is another text than the one before it.
        _isMore = !_isMore;
        _draft = _draft.Put("ingredients[12].amount", _isMore ? "151 g" : "150 g")!.After;
        return _draft.Recipe is null ? throw new InvalidOperationException("Cannot be read.") : _draft;
    }

    /// <summary>What a save writes.</summary>
    [Benchmark]
    public string Write() => _draft.Put("name", "Typed")!.After.Text;
}
