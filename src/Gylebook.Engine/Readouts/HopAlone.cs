using Gylebook.Engine.Running;
using Gylebook.Engine.Stages;
using Gylebook.Engine.State;
using Gylebook.Science.Boiling;

namespace Gylebook.Engine.Readouts;

/// <summary>One hop followed through a run as if it were the only one: the rates are of first order, so a pass over the heat is enough.</summary>
public static class HopAlone
{
    /// <summary>Milligrams of iso-alpha acid that a hop would have made by the time the kettle is cast; what is lost later every hop loses alike.</summary>
    /// <param name="run">The run.</param>
    /// <param name="addition">The hop's row among the additions.</param>
    public static double IsoAlphaAcid(in RunView run, int addition)
    {
        ref double known = ref run.Trace.IsoAlone[addition];
        return double.IsNaN(known) ? known = Follow(run, addition) : known;
    }

    private static double Follow(in RunView run, int addition)
    {
        HopDose hop = run.Plan.Additions[addition].Hop;
        if (hop.Grams <= 0)
        {
            return 0;
        }

        Wort alone = default;
        foreach (ref readonly Step step in run.Plan.Steps.AsSpan())
        {
            switch (step.Move)
            {
                case Move.AddIngredient when step.Row == addition: alone[Component.AlphaAcid] = Dissolved(run, hop, addition); break;
                case Move.DropGrain: alone[Component.AlphaAcid] *= RunsOff(run); break;
                case Move.BoilOff: Isomerisation.Heat(ref alone, run.Plan.Boils[step.Row].At(run.Draw)); break;
                case Move.Steep when step.Stage == Stage.Chill: Isomerisation.Heat(ref alone, run.Plan.Cooling); break;
                case Move.Steep: Isomerisation.Heat(ref alone, run.Plan.Stands[step.Row].At(run.Draw)); break;
                case Move.CastOver: return alone[Component.IsoAlphaAcid];
                default: break;
            }
        }

        return 0;
    }

    private static double Dissolved(in RunView run, in HopDose hop, int addition)
    {
        double litres = run.Trace.LitresWhenAdded(addition);
        return litres > 0 ? AlphaAcidSolubility.Dissolved(Math.Max(0, Isomerisation.Offered(hop, run.Draw)) / litres) * litres : 0;
    }

    /// <summary>Share of what is dissolved in the mash that comes into the kettle.</summary>
    private static double RunsOff(in RunView run)
    {
        double mashed = run.Wort(Stage.Mash)[Component.AlphaAcid];
        double ranOff = run.Wort(run.Trace.Has(Stage.Rinse) ? Stage.Rinse : Stage.Lift)[Component.AlphaAcid];
        return mashed > 0 ? (ranOff - run.Trace.Lost(Loss.TunDeadSpace)[Component.AlphaAcid]) / mashed : 1;
    }
}
