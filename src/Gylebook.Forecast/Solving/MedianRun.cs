using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Forecast.Planning;
using Gylebook.Recipes;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Kits;

namespace Gylebook.Forecast.Solving;

/// <summary>One figure of a recipe, by a whole lay-out and run at the medians with the liquor planned anew: what every solver of amounts tries.</summary>
internal readonly record struct MedianRun(Kit Kit, Func<string, FoodMakeup?> Foods, BitternessModel Model)
{
    /// <summary>The figure of the beer as a whole; null when the recipe cannot be run.</summary>
    public double? ValueOf(Recipe recipe, Readout readout)
    {
        if (BrewPlanner.Plan(recipe, Kit, Foods).Plan is not { } plan)
        {
            return null;
        }

        double value = RunOutcome.Likely(plan with { Bitterness = Model })[readout];
        return double.IsFinite(value) ? value : null;
    }
}
