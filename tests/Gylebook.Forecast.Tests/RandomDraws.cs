using CsCheck;
using Gylebook.Engine.Parameters;
using Gylebook.Engine.Running;

namespace Gylebook.Forecast.Tests;

/// <summary>Draws of a plan's parameters for tests: each within 20 % of its median, and within what can be.</summary>
internal static class RandomDraws
{
    /// <summary>Parameters that are shares of a whole, and so end at 1. The others in kg/kg are amounts held.</summary>
    private static readonly HashSet<string> Shares =
    [
        "kit.conversion", "kit.rinsingShare", "mash.rinse.pour", "mash.rinse.dunk", "mash.rinse.batch", "mash.rinse.continuous",
        "kit.kettle.solidsLeft", "mash.finesThroughBag", "mash.fatWithGrain", "break.share", "sludge.crashGain",
        "ferment.fatStays", "hops.solids",
    ];

    /// <summary>A draw with every parameter multiplied by 0.8 to 1.2.</summary>
    public static double[] Around(RunPlan plan, PCG stream) =>
        [.. plan.Parameters.Select(p => Within(p, p.Median * Gen.Double[0.8, 1.2].Draw(stream)))];

    private static double Within(Parameter parameter, double value) => parameter.Id switch
    {
        var id when Shares.Contains(id) || id.StartsWith("yeast.", StringComparison.Ordinal) => Math.Min(1, value),
        var id when id.EndsWith(".extract", StringComparison.Ordinal) => Math.Min(0.93, value),
        "mash.warmer" or "stand.warmer" => value,
        var id when id.StartsWith("malt.own", StringComparison.Ordinal) => Math.Min(1, value),
        var id when id.StartsWith("food.", StringComparison.Ordinal) && !id.EndsWith("Hold", StringComparison.Ordinal) => parameter.Median,
        "mash.limitOfAttenuation" => Math.Min(95, value),
        _ => value,
    };
}
