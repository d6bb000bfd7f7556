using Gylebook.Engine.Makeups;
using Gylebook.Engine.Parameters;
using Gylebook.Engine.Readouts;
using Gylebook.Forecast.Ingredients;
using Gylebook.Forecast.Planning;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;

namespace Gylebook.Forecast.Report.Acidity;

/// <summary>The brew with its foods as sour, and as mild, as tables let them be, and with the least and the most that dry hops raise pH by.</summary>
/// <param name="Sourest">Where a pH is lowest.</param>
/// <param name="Mildest">Where it is highest.</param>
internal sealed record AcidEnds(RunOutcome Sourest, RunOutcome Mildest)
{
    /// <summary>The ends for one pH: which way a food pulls hangs on whether it is more sour than that.</summary>
    public static AcidEnds Of(BrewPlan brew, RunOutcome run, Readout ph)
    {
        double near = run[ph];
        double[] sour = [.. run.Draw], mild = [.. run.Draw];
        bool moves = false;
        for (int row = 0; row < run.Plan.Additions.Length && double.IsFinite(near); row++)
        {
            PlannedLine line = brew.AdditionLines[row];
            moves |= line.Line is { Kind: IngredientKind.Hop, At.Point: >= AdditionPoint.Pitch };
            if (run.Plan.Makeups[run.Plan.Additions[row].Makeup] is FoodInPlace food && line.Food is { Acids: > 0, OwnPh: { } own } made)
            {
                moves = true;
                Put(food, own.Low, own.Low < near, made, sour);
                Put(food, own.High, own.High > near, made, mild);
            }
        }

        (sour[(int)Known.DryHopBase], mild[(int)Known.DryHopBase]) = StartingParameters.EndsOf(Known.DryHopBase);
        return moves ? new(With(run, sour), With(run, mild)) : new(run, run);
    }

    /// <summary>Where a food pulls the way that is asked for, most of its acid counts, otherwise least.</summary>
    private static void Put(FoodInPlace food, double ph, bool most, FoodMakeup made, double[] draw)
    {
        food.Put(FoodFigure.OwnPh, ph, draw);
        food.Put(FoodFigure.AcidScale, most ? made.AcidEnds.High : made.AcidEnds.Low, draw);
    }

    /// <summary>The brew at another draw; as it was where that cannot be run.</summary>
    private static RunOutcome With(RunOutcome run, double[] draw) =>
        RunOutcome.At(run.Plan, draw) is { Trace.IsWhole: true } moved ? moved : run;
}
