using Gylebook.Engine.State;
using Gylebook.Recipes;

namespace Gylebook.Forecast;

/// <summary>A hazard, or a limit of a model, shown where it matters.</summary>
/// <param name="Code">Stable name: <c>boilover.hops</c>.</param>
/// <param name="Severity">How much it weighs.</param>
/// <param name="Place">Where in the brew it belongs.</param>
/// <param name="Message">What to look out for, and what to do.</param>
/// <param name="Source">Who says so, or <c>common practice, no source</c>.</param>
public sealed record Caution(string Code, Severity Severity, Place Place, string Message, string Source)
{
    /// <summary>The place in words: <c>boil 60 min</c>.</summary>
    public string Where => Names.Said(Place);
}
