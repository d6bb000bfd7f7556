using Gylebook.Forecast.Running;
using Gylebook.Forecast.State;

namespace Gylebook.Forecast.Stages;

/// <summary>Clear beer is drawn off; sludge, with the beer it holds, stays.</summary>
public static class Rack
{
    /// <summary>Racks a portion.</summary>
    /// <returns>Litres of sludge: solids and the beer they hold.</returns>
    public static double Off<TLog>(ref Wort beer, int portion, ReadOnlySpan<double> draw, ref TLog log)
        where TLog : struct, IRunLog
    {
        double held = Sludge.HeldKilograms(beer, draw) * (1 - draw[(int)Known.CrashGain]);
        double liquid = Lift.ShareOf(held, beer.LiquidMass);
        double litres = (liquid * beer.Litres) + Sludge.SolidLitres(beer, draw);
        Shares settled = Shares.Of(1) with { Liquid = liquid, Fat = 1 - draw[(int)Known.FatDispersed] };
        Parting.Leave(ref beer, Stage.Rack, portion, Loss.Sludge, settled, ref log);

        Shares kept = new() { Liquid = Lift.ShareOf(draw[(int)Known.RackingLeftBehind], beer.Litres) };
        Parting.Leave(ref beer, Stage.Rack, portion, Loss.Racking, kept, ref log);
        return litres;
    }
}
