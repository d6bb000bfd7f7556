using Gylebook.Engine.Readouts;
using Gylebook.Engine.Running;
using Gylebook.Engine.State;
using Gylebook.Forecast.Ingredients;
using Gylebook.Forecast.Planning;
using Gylebook.Recipes.Ingredients;

namespace Gylebook.Forecast.Report.Bitterness;

/// <summary>One hop's bitterness.</summary>
/// <param name="Hop">Name.</param>
/// <param name="At">When it went in.</param>
/// <param name="Model">Which model says so.</param>
/// <param name="Ibu">In the served beer.</param>
public sealed record HopBitterness(string Hop, string At, string Model, double Ibu)
{
    /// <summary>Its place among the recipe's ingredients, from 0.</summary>
    public required int Line { get; init; }

    /// <summary>The model that is not shown.</summary>
    public required string OtherModel { get; init; }

    /// <summary>What it says, in the served beer.</summary>
    public required double OtherIbu { get; init; }

    /// <summary>Alpha acids on brew day, % by mass.</summary>
    public required double AlphaPercent { get; init; }
}

/// <summary>Bitterness by hop, by both models.</summary>
/// <remarks>
/// Kinetics work on one pool of alpha acid. Its rates are of first order, so one hop is followed alone through the heat of the run;
/// where the solubility rule bends the sum, the parts are shrunk alike.
/// </remarks>
internal static class BitternessRows
{
    /// <summary>One row for each hop, dry hops too, in the order in which they went in.</summary>
    public static IReadOnlyList<HopBitterness> Of(BrewPlan brew, RunOutcome run)
    {
        RunPlan plan = run.Plan;
        bool table = plan.Bitterness == BitternessModel.TimeGravity;
        List<HopBitterness> rows = [];
        foreach (int addition in Enumerable.Range(0, plan.Additions.Length).Where(i => brew.AdditionLines[i].Line.Kind == IngredientKind.Hop))
        {
            PlannedLine line = brew.AdditionLines[addition];
            HopReadouts hop = new(addition, plan.Additions[addition].Place);
            rows.Add(new HopBitterness(line.Name, Words.Of(line.Line.At), Words.Of(plan.Bitterness), run[table ? hop.TimeGravity : hop.Isomerisation])
            {
                Line = line.Number,
                OtherModel = Words.Of(table ? BitternessModel.Isomerisation : BitternessModel.TimeGravity),
                OtherIbu = run[table ? hop.Isomerisation : hop.TimeGravity],
                AlphaPercent = 100 * line.Alpha,
            });
        }

        return rows;
    }
}
