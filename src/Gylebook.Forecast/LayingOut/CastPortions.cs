using Gylebook.Recipes;

namespace Gylebook.Forecast.LayingOut;

/// <summary>A part of the cast that goes its own way to the glass.</summary>
/// <param name="Place">Which portion of the run it is.</param>
/// <param name="Name">What the recipe calls it; null when there is just one.</param>
/// <param name="Share">Its share of the cast, 0 to 1.</param>
internal readonly record struct CastPortion(int Place, string? Name, double Share)
{
    /// <summary>What of a cellar addition goes into it: its share of the cast, or all of it if it is named; null for none.</summary>
    public double? ShareOf(LaidLine line) => line.Line.Portion is null ? Share : line.Line.Portion == Name ? 1 : null;
}

/// <summary>What the cast is shared out into: the recipe's portions, or all of it as one.</summary>
internal sealed class CastPortions(Recipe recipe)
{
    /// <summary>The portions; the first stays where the wort was cast, the others lie behind the bed of grain.</summary>
    public IReadOnlyList<CastPortion> All { get; } = recipe.Portions.Count == 0
        ? [new(StepList.Main, null, 1)]
        : [.. recipe.Portions.Select((p, i) => new CastPortion(i == 0 ? StepList.Main : StepList.Bed + i, p.Name, p.Share.Value.Ratio))];

    /// <summary>Where they are in the run; each ends in a package.</summary>
    public int[] Places => [.. All.Select(p => p.Place)];

    /// <summary>How many portions the run needs for them.</summary>
    public int Room => All.Max(p => p.Place) + 1;
}
