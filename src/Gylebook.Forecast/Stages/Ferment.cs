using Gylebook.Forecast.Running;
using Gylebook.Forecast.State;
using Gylebook.Science.Quantities;

namespace Gylebook.Forecast.Stages;

/// <summary>What the lay-out knows of one portion's yeast.</summary>
/// <param name="Maltose">Place of the share of maltose it takes in the draw; -1 when there is no yeast at all.</param>
/// <param name="Maltotriose">Place of the share of maltotriose.</param>
/// <param name="Dextrin">Place of the share of dextrin.</param>
/// <param name="ResidualGas">Place of the volumes of carbon dioxide that stay in solution.</param>
public readonly record struct FermentStep(int Maltose, int Maltotriose, int Dextrin, int ResidualGas)
{
    /// <summary>Whether anything ferments at all.</summary>
    public bool HasYeast => Maltose >= 0;

    /// <summary>Share of a sugar that this yeast takes.</summary>
    public double ShareOf(Component sugar, ReadOnlySpan<double> draw) => !HasYeast ? 0 : sugar switch
    {
        Component.Maltose => draw[Maltose],
        Component.Maltotriose => draw[Maltotriose],
        Component.Dextrin => draw[Dextrin],
        _ => 1,
    };
}

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
    public static void Out(ref Wort wort, in FermentStep yeast, Reactions reactions, ReadOnlySpan<double> draw)
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
