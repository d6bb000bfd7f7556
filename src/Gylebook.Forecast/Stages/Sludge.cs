using Gylebook.Forecast.Running;
using Gylebook.Forecast.State;

namespace Gylebook.Forecast.Stages;

/// <summary>What solids hold once they have settled, and the room they take.</summary>
public static class Sludge
{
    /// <summary>Kilograms of beer that break, hop debris, yeast and food solids hold between them.</summary>
    public static double HeldKilograms(in Wort wort, ReadOnlySpan<double> draw) =>
        (wort[Component.Break] * draw[(int)Known.BreakHold])
        + (wort[Component.HopMatter] * draw[(int)Known.HopHold])
        + (wort[Component.Yeast] * draw[(int)Known.YeastHold])
        + (wort[Component.RawStarch] * draw[(int)Known.RawStarchHold])
        + wort[Component.SettledHold];

    /// <summary>Litres the solids themselves take up.</summary>
    public static double SolidLitres(in Wort wort, ReadOnlySpan<double> draw) =>
        ((wort[Component.Grain] + wort[Component.Starch]) / draw[(int)Known.GrainDensity])
        + ((wort[Component.FoodSolids] + wort[Component.RawStarch]) / draw[(int)Known.FoodDensity])
        + ((wort[Component.SpentHops] + wort[Component.HopMatter]) / draw[(int)Known.HopDensity])
        + (wort[Component.Break] / draw[(int)Known.BreakDensity])
        + (wort[Component.Yeast] / draw[(int)Known.YeastDensity])
        + (wort[Component.Fat] / draw[(int)Known.FatDensity]);
}
