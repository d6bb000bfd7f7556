using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Forecast.Planning;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes;
using Gylebook.Recipes.Kits;

namespace Gylebook.Forecast.Solving;

/// <summary>One figure of a recipe, by a whole lay-out and run at the medians with the liquor planned anew: what every solver of amounts tries.</summary>
internal readonly record struct MedianRun(Kit Kit, Larder Larder, BitternessModel Model)
{
    /// <summary>The figure of the beer as a whole; null when the recipe cannot be run.</summary>
    public double? ValueOf(Recipe recipe, Readout readout) =>
        Of(recipe)?[readout] is double value && double.IsFinite(value) ? value : null;

    /// <summary>The whole run; null when there is none.</summary>
    public RunOutcome? Of(Recipe recipe) =>
        BrewPlanner.Plan(recipe, Kit, Larder).Plan is { } plan ? RunOutcome.Likely(plan with { Bitterness = Model }) : null;
}
