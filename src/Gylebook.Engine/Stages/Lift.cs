using Gylebook.Engine.Parameters;
using Gylebook.Engine.State;

namespace Gylebook.Engine.Stages;

/// <summary>Grain and wort part: the bag is lifted, or the tun runs off. The bed is a portion of its own from then on.</summary>
public static class Lift
{
    /// <summary>Moves the grain, and the wort it holds, out of the mash and into the bed.</summary>
    public static void Part(ref Wort mash, ref Wort bed, Draw draw)
    {
        double finesKept = 1 - draw[Known.FinesThroughBag];
        double held = (draw[Known.WortHeld] * mash[Component.Grain]) + (mash[Component.BagHold] * finesKept);
        Wort moved = Parting.Move(ref mash, new Shares
        {
            Liquid = ShareOf(held, mash.LiquidMass),
            Grain = 1,
            Food = finesKept,
            Fat = draw[Known.FatWithGrain],
        });
        bed.Add(moved);
    }

    /// <summary>Wort that lies too low to run off.</summary>
    public static void DeadSpace<TLog>(ref Wort wort, int portion, Draw draw, ref TLog log)
        where TLog : struct, IRunLog
    {
        double litres = draw[Known.TunDeadSpace];
        if (litres > 0)
        {
            Shares left = new() { Liquid = ShareOf(litres, wort.Litres) };
            Parting.Leave(ref wort, Stage.RunOff, portion, Loss.TunDeadSpace, left, ref log);
        }
    }

    /// <summary>A part as a share of the whole: never more than all of it.</summary>
    internal static double ShareOf(double part, double whole) => whole <= part ? 1 : part / whole;
}
