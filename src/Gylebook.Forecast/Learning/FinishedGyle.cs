using Gylebook.Recipes;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes.Readings;

namespace Gylebook.Forecast.Learning;

/// <summary>A gyle that is brewed, with what was read of it.</summary>
/// <param name="Recipe">What was brewed.</param>
/// <param name="Readings">What was read; their name is the gyle's.</param>
/// <param name="Larder">The brewer's own sheets; asked before the tables.</param>
public sealed record FinishedGyle(Recipe Recipe, BrewReadings Readings, Larder Larder)
{
    /// <summary>What the gyle is called.</summary>
    public string Name => Readings.Name;
}
