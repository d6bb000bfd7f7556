using Gylebook.Engine.Makeups;
using Gylebook.Engine.Parameters;
using Gylebook.Engine.Readouts;
using Gylebook.Engine.Running;
using Gylebook.Forecast.Ingredients;
using Gylebook.Forecast.Planning;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;

namespace Gylebook.Forecast.Report.Acidity;

/// <summary>The brew with its foods as sour, and as mild, as tables let them be, and with the least and the most that dry hops raise pH by.</summary>
/// <param name="brew">The brew.</param>
/// <param name="run">Its likely run.</param>
internal sealed class AcidEnds(BrewPlan brew, RunOutcome run)
{
    /// <summary>One trace for all these runs, each of which is read before the next is made.</summary>
    private RunTrace? _trace;

    /// <summary>The low end of a pH in the sourest of these brews, and the high end in the mildest.</summary>
    /// <param name="ph">The pH.</param>
    /// <param name="bounds">What else may stand at either end.</param>
    public (double Low, double High) Of(Readout ph, Bounds bounds)
    {
        // Which way a food pulls hangs on whether it is more sour than what it goes into.
        double near = run[ph];
        double[] sour = [.. run.Draw], mild = [.. run.Draw];
        bool moves = false;
        for (int row = 0; row < run.Plan.Additions.Length && double.IsFinite(near); row++)
        {
            PlannedLine line = brew.AdditionLines[row];
            if (run.Plan.Additions[row].Place.Stage > ph.Place.Stage)
            {
                continue;
            }

            moves |= line.Line is { Kind: IngredientKind.Hop, At.Point: >= AdditionPoint.Pitch };
            if (run.Plan.Makeups[run.Plan.Additions[row].Makeup] is FoodInPlace food && line.Food is { Acids: > 0, OwnPh: { } own } made)
            {
                moves = true;
                Put(food, own.Low, own.Low < near, made, sour);
                Put(food, own.High, own.High > near, made, mild);
            }
        }

        (sour[(int)Known.DryHopBase], mild[(int)Known.DryHopBase]) = StartingParameters.EndsOf(Known.DryHopBase);
        return moves ? (bounds.Of(At(sour), ph).Low, bounds.Of(At(mild), ph).High) : bounds.Of(run, ph);
    }

    /// <summary>Where a food pulls the way that is asked for, most of its acid counts, otherwise least.</summary>
    private static void Put(FoodInPlace food, double ph, bool most, FoodMakeup made, double[] draw)
    {
        food.Put(FoodFigure.OwnPh, ph, draw);
        food.Put(FoodFigure.AcidScale, most ? made.AcidEnds.High : made.AcidEnds.Low, draw);
    }

    /// <summary>The brew at another draw; as it was where that cannot be run.</summary>
    private RunOutcome At(double[] draw)
    {
        _trace ??= new RunTrace(run.Plan);
        return Run.Through(run.Plan, draw, _trace) ? new RunOutcome(run.Plan, draw, _trace) : run;
    }
}
