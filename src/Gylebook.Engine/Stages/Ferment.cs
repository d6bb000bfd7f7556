using Gylebook.Engine.Parameters;
using Gylebook.Engine.State;
using Gylebook.Science.Quantities;

namespace Gylebook.Engine.Stages;

/// <summary>What the lay-out knows of one portion's yeast.</summary>
/// <param name="Takes">Where the shares stand that it takes; null when there is no yeast at all.</param>
/// <param name="ResidualGas">Where the volumes of carbon dioxide stand that stay in solution.</param>
public readonly record struct FermentStep(YeastShares? Takes, Slot ResidualGas)
{
    /// <summary>Whether anything ferments at all.</summary>
    public bool HasYeast => Takes is not null;

    /// <summary>Share of a sugar that this yeast takes.</summary>
    public double ShareOf(Component sugar, Draw draw) => Takes is not { } its ? 0 : sugar switch
    {
        Component.Maltose => draw[its.Maltose],
        Component.Maltotriose => draw[its.Maltotriose],
        Component.Dextrin => draw[its.Dextrin],
        _ => 1,
    };
}

/// <summary>Where the shares of sugars that a yeast takes stand in the draw; the sugars not named it takes whole.</summary>
/// <param name="Maltose">Of maltose.</param>
/// <param name="Maltotriose">Of maltotriose.</param>
/// <param name="Dextrin">Of dextrin.</param>
public readonly record struct YeastShares(Slot Maltose, Slot Maltotriose, Slot Dextrin);

/// <summary>Balling's fermentation, sugar by sugar.</summary>
/// <remarks>
/// The yeast takes its share of each sugar as it is offered, at pitching and at each addition; what it refuses is set
/// aside once as unused sugar, so that fermenting again changes nothing. A sugar it cannot take at all it does not touch:
/// another yeast still may.
/// </remarks>
public static class Ferment
{
    /// <summary>Less gas than this share of what stays is the rounding of an earlier venting.</summary>
    private const double Rounding = 1e-12;

    /// <summary>Ferments what is there.</summary>
    public static void Out(ref Wort wort, in FermentStep yeast, Reactions reactions, Draw draw)
    {
        foreach (Reaction row in reactions.Fermentation)
        {
            double taken = wort[row.Reactant] * yeast.ShareOf(row.Reactant, draw);
            if (taken != 0)
            {
                row.Run(ref wort, taken);
            }
        }

        // All that is left of a sugar, so that nothing of it remains, not even by rounding.
        foreach (Reaction row in reactions.Refusal)
        {
            double left = wort[row.Reactant];
            if (left != 0 && yeast.ShareOf(row.Reactant, draw) > 0)
            {
                row.Run(ref wort, left);
            }
        }
    }

    /// <summary>Lets the gas go that the liquid cannot hold without pressure.</summary>
    /// <param name="wort">Wort or beer.</param>
    /// <param name="stage">Where.</param>
    /// <param name="portion">Which portion.</param>
    /// <param name="keptVolumes">Volumes of gas that stay in solution.</param>
    /// <param name="log">Who watches.</param>
    public static void Vent<TLog>(ref Wort wort, Stage stage, int portion, double keptVolumes, ref TLog log)
        where TLog : struct, IRunLog
    {
        double holds = keptVolumes * Carbonation.GramsPerLitreInOneVolume / 1000 * wort.Litres;
        double leaves = wort[Component.CarbonDioxide] - holds;
        if (leaves > Rounding * holds)
        {
            Parting.Leave(ref wort, stage, portion, Loss.Gas, Component.CarbonDioxide, leaves, ref log);
        }
    }
}
