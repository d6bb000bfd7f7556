using Gylebook.Engine.Parameters;
using Gylebook.Engine.State;
using Gylebook.Science.Liquids;

namespace Gylebook.Engine.Stages;

/// <summary>Liquid with what has not settled yet stirred in, as a sample drawn too soon has it.</summary>
public static class Suspension
{
    /// <summary>Litres of liquid and solids together, at 20 °C.</summary>
    /// <param name="wort">All that lies there.</param>
    /// <param name="clear">Litres of the clear liquid in it.</param>
    /// <param name="draw">The draw.</param>
    public static double Litres(in Wort wort, double clear, Draw draw) => clear + Sludge.SolidLitres(wort, draw);

    /// <summary>Specific gravity in air of the whole: the inverse of what litres are read with; 1 for nothing.</summary>
    /// <param name="wort">All that lies there.</param>
    /// <param name="clear">Litres of the clear liquid in it.</param>
    /// <param name="draw">The draw.</param>
    public static double Gravity(in Wort wort, double clear, Draw draw)
    {
        double litres = Litres(wort, clear, draw);
        if (litres <= 0)
        {
            return 1;
        }

        double kilogramsPerLitre = (wort.Mass - wort[Component.CarbonDioxide]) / litres;
        double air = SucroseSolution.AirKilogramsPerCubicMetre / 1000;
        return (kilogramsPerLitre - air) / (Wort.WaterKilogramsPerLitre - air);
    }
}
