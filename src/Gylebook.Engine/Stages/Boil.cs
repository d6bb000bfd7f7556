using Gylebook.Engine.Parameters;
using Gylebook.Engine.State;
using Gylebook.Science.Boiling;

namespace Gylebook.Engine.Stages;

/// <summary>How far the boil had come when a hop went in.</summary>
/// <param name="Minutes">Minutes boiled before it.</param>
/// <param name="GravityMinutes">Gravity summed over them.</param>
public readonly record struct BoilMark(double Minutes, double GravityMinutes);

/// <summary>Water leaves as steam; at knock-out break, bitterness and colour are settled.</summary>
public static class Boil
{
    /// <summary>Boils for some minutes.</summary>
    public static void For<TLog>(ref Portion kettle, int portion, double minutes, Draw draw, ref TLog log)
        where TLog : struct, IRunLog
    {
        double before = kettle.Wort.Gravity;
        double steam = draw[Known.Evaporation] * minutes / 60 * Wort.WaterKilogramsPerLitre;
        Parting.Leave(ref kettle.Wort, Stage.Boil, portion, Loss.Steam, Component.Water, steam, ref log);
        kettle.GravityMinutes += minutes * (before + kettle.Wort.Gravity) / 2;
        kettle.BoiledMinutes += minutes;
    }

    /// <summary>Flame off.</summary>
    public static void KnockOut<TLog>(
        ref Portion kettle, Addition[] additions, Reaction coagulation, ReadOnlySpan<BoilMark> marks, Draw draw, ref TLog log)
        where TLog : struct, IRunLog
    {
        if (kettle.BoiledMinutes > 0)
        {
            coagulation.Run(ref kettle.Wort, kettle.Wort[coagulation.Reactant] * draw[Known.BreakShare]);
        }

        for (int i = 0; i < additions.Length; i++)
        {
            if (additions[i].Hop.IsBoiled)
            {
                double milligrams = BitternessOf(additions[i].Hop, kettle, marks[i], draw);
                kettle.Wort[Component.Bitterness] += milligrams;
                log.Bittered(i, milligrams);
            }
        }

        SettleColour(ref kettle.Wort);
    }

    /// <summary>Milligrams by the time-and-gravity table, at the mean gravity of this hop's own minutes.</summary>
    private static double BitternessOf(in HopDose hop, in Portion kettle, in BoilMark mark, Draw draw)
    {
        double minutes = kettle.BoiledMinutes - mark.Minutes;
        if (minutes <= 0)
        {
            return 0;
        }

        double gravity = (kettle.GravityMinutes - mark.GravityMinutes) / minutes;
        double utilisation = TimeAndGravityBitterness.Utilisation(minutes, gravity) * draw[Known.UtilisationFactor];
        return 1000 * hop.Grams * hop.Alpha(draw) * utilisation;
    }

    /// <summary>Malt colour units over the litres at knock-out, turned once into absorbance that adds and dilutes from here on.</summary>
    private static void SettleColour(ref Wort wort)
    {
        double litres = wort.Litres;
        if (wort[Component.MaltColour] > 0 && litres > 0)
        {
            double units = WortColour.MaltColourUnits(wort[Component.MaltColour], litres);
            wort[Component.Colour] += WortColour.AbsorbanceOfSrm(WortColour.SrmOfMaltColourUnits(units)) * litres;
        }

        wort[Component.MaltColour] = 0;
    }
}
