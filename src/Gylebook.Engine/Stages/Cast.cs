using Gylebook.Engine.Parameters;
using Gylebook.Engine.State;

namespace Gylebook.Engine.Stages;

/// <summary>From the kettle to the fermenter: hops, dead volume and whatever settled there stay behind.</summary>
public static class Cast
{
    /// <summary>Leaves behind what the kettle keeps, and starts the unfermented twin.</summary>
    public static void Over<TLog>(ref Portion portion, int index, Draw draw, ref TLog log)
        where TLog : struct, IRunLog
    {
        ref Wort wort = ref portion.Wort;
        LeaveHops(ref wort, index, draw, ref log);
        LeaveSolids(ref wort, index, draw, ref log);
        Shares dead = new() { Liquid = Lift.ShareOf(draw[Known.KettleLeftBehind], wort.Litres) };
        if (dead.Liquid > 0)
        {
            Parting.Leave(ref wort, Stage.Cast, index, Loss.Kettle, dead, ref log);
        }

        portion.Unfermented = wort.Part(Shares.ClearLiquid);
    }

    private static void LeaveHops<TLog>(ref Wort wort, int index, Draw draw, ref TLog log)
        where TLog : struct, IRunLog
    {
        double hops = wort[Component.SpentHops];
        if (hops > 0)
        {
            double litres = hops / draw[Known.HopSolids] * draw[Known.HeldBySpentHops];
            Shares left = new() { SpentHops = 1, Liquid = Lift.ShareOf(litres, wort.Litres) };
            Parting.Leave(ref wort, Stage.Cast, index, Loss.SpentHops, left, ref log);
        }
    }

    private static void LeaveSolids<TLog>(ref Wort wort, int index, Draw draw, ref TLog log)
        where TLog : struct, IRunLog
    {
        double share = draw[Known.KettleSolidsLeft];
        if (share > 0)
        {
            double held = share * Sludge.HeldKilograms(wort, draw);
            Shares left = new() { Fines = share, Food = share, Fat = share, Liquid = Lift.ShareOf(held, wort.LiquidMass) };
            Parting.Leave(ref wort, Stage.Cast, index, Loss.KettleSolids, left, ref log);
        }
    }
}
