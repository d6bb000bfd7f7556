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
internal sealed class AcidEnds(BrewPlan brew, RunOutcome run) : IDisposable
{
    /// <summary>One trace and one draw for all these runs, each of which is read before the next is made.</summary>
    private readonly RunTrace _trace = SpareTrace.For(run.Plan);
    private readonly double[] _draw = new double[run.Draw.Length];

    /// <summary>The low end of a pH in the sourest of these brews, and the high end in the mildest.</summary>
    /// <param name="ph">The pH.</param>
    /// <param name="bounds">What else may stand at either end.</param>
    public (double Low, double High) Of(Readout ph, Bounds bounds)
    {
        // Which way a food pulls hangs on whether it is more sour than what it goes into.
        double near = run[ph];
        if (!double.IsFinite(near) || !Moves(ph))
        {
            return Likely(ph, bounds);
        }

        return (At(ph, bounds, near, mild: false).Low, At(ph, bounds, near, mild: true).High);
    }

    /// <inheritdoc/>
    public void Dispose() => SpareTrace.GiveBack(_trace);

    /// <summary>Whether anything went in by then that makes it more sour or more mild.</summary>
    private bool Moves(Readout ph)
    {
        for (int row = 0; row < run.Plan.Additions.Length; row++)
        {
            if (run.Plan.Additions[row].Place.Stage <= ph.Place.Stage
                && (brew.AdditionLines[row].Line is { Kind: IngredientKind.Hop, At.Point: >= AdditionPoint.Pitch } || SourFood(row) is not null))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The bounds with every food at one end of its pH; where a food pulls the way that is asked for, most of its acid counts, otherwise least.</summary>
    private (double Low, double High) At(Readout ph, Bounds bounds, double near, bool mild)
    {
        run.Draw.CopyTo(_draw, 0);
        for (int row = 0; row < run.Plan.Additions.Length; row++)
        {
            if (run.Plan.Additions[row].Place.Stage <= ph.Place.Stage && SourFood(row) is { } food)
            {
                FoodMakeup made = brew.AdditionLines[row].Food!;
                double own = mild ? made.OwnPh!.High : made.OwnPh!.Low;
                bool most = mild ? own > near : own < near;
                food.Put(FoodFigure.OwnPh, own, _draw);
                food.Put(FoodFigure.AcidScale, most ? made.AcidEnds.High : made.AcidEnds.Low, _draw);
            }
        }

        (double low, double high) = StartingParameters.EndsOf(Known.DryHopBase);
        _draw[(int)Known.DryHopBase] = mild ? high : low;
        return Run.Through(run.Plan, _draw, _trace) ? bounds.Over(run.Plan, _draw, _trace, ph) : Likely(ph, bounds);
    }

    private (double Low, double High) Likely(Readout ph, Bounds bounds)
    {
        run.Draw.CopyTo(_draw, 0);
        return bounds.Over(run.Plan, _draw, run.Trace, ph);
    }

    /// <summary>The food of an addition whose acid is known to have a width; null for anything else.</summary>
    private FoodInPlace? SourFood(int row) =>
        brew.AdditionLines[row].Food is { Acids: > 0, OwnPh: not null } ? run.Plan.Makeups[run.Plan.Additions[row].Makeup] as FoodInPlace : null;
}
