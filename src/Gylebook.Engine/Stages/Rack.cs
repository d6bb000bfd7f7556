using Gylebook.Engine.Parameters;
using Gylebook.Engine.State;

namespace Gylebook.Engine.Stages;

/// <summary>Clear beer is drawn off; sludge, with the beer it holds, stays.</summary>
public static class Rack
{
    /// <summary>Racks a portion.</summary>
    public static void Off<TLog>(ref Wort beer, int portion, Draw draw, ref TLog log)
        where TLog : struct, IRunLog
    {
        Shares settled = Shares.Of(1) with { Liquid = HeldShare(beer, draw), Fat = 1 - draw[Known.FatDispersed] };
        Parting.Leave(ref beer, Stage.Rack, portion, Loss.Sludge, settled, ref log);

        Shares kept = new() { Liquid = Lift.ShareOf(draw[Known.RackingLeftBehind], beer.Litres) };
        Parting.Leave(ref beer, Stage.Rack, portion, Loss.Racking, kept, ref log);
    }

    /// <summary>Litres of sludge that a beer would leave: solids and the beer they hold.</summary>
    /// <param name="beer">The beer.</param>
    /// <param name="litres">Its clear litres at 20 °C.</param>
    /// <param name="draw">The draw.</param>
    public static double SludgeLitres(in Wort beer, double litres, Draw draw) => (HeldShare(beer, draw) * litres) + Sludge.SolidLitres(beer, draw);

    private static double HeldShare(in Wort beer, Draw draw) =>
        Lift.ShareOf(Sludge.HeldKilograms(beer, draw) * (1 - draw[Known.CrashGain]), beer.LiquidMass);
}
