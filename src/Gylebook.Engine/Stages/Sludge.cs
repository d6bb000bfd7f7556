using Gylebook.Engine.Parameters;
using Gylebook.Engine.State;

namespace Gylebook.Engine.Stages;

/// <summary>What solids hold once they have settled, and the room they take.</summary>
public static class Sludge
{
    /// <summary>Kilograms of beer that break, hop debris, yeast and food solids hold between them.</summary>
    public static double HeldKilograms(in Wort wort, Draw draw) =>
        (wort[Component.Break] * draw[Known.BreakHold])
        + (wort[Component.HopMatter] * draw[Known.HopHold])
        + (wort[Component.Yeast] * draw[Known.YeastHold])
        + (wort[Component.RawStarch] * draw[Known.RawStarchHold])
        + wort[Component.SettledHold];

    /// <summary>Litres the solids themselves take up.</summary>
    public static double SolidLitres(in Wort wort, Draw draw) =>
        ((wort[Component.Grain] + wort[Component.Starch]) / draw[Known.GrainDensity])
        + ((wort[Component.FoodSolids] + wort[Component.RawStarch]) / draw[Known.FoodDensity])
        + ((wort[Component.SpentHops] + wort[Component.HopMatter]) / draw[Known.HopDensity])
        + (wort[Component.Break] / draw[Known.BreakDensity])
        + (wort[Component.Yeast] / draw[Known.YeastDensity])
        + (wort[Component.Fat] / draw[Known.FatDensity]);
}
