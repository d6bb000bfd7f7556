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
    /// <summary>Share of a sugar that this yeast takes.</summary>
    public double ShareOf(Component sugar, ReadOnlySpan<double> draw) => Maltose < 0 ? 0 : sugar switch
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
/// aside once as unused sugar, so that fermenting again changes nothing.
/// </remarks>
public static class Ferment
{
    /// <summary>Ferments what is there.</summary>
    public static void Out(ref Wort wort, in FermentStep yeast, Reactions reactions, ReadOnlySpan<double> draw)
    {
        for (int i = 0; i < reactions.Fermentation.Length; i++)
        {
            Component sugar = reactions.Fermentation[i].Reactant;
            double offered = wort[sugar];
            double share = yeast.ShareOf(sugar, draw);
            if (offered == 0 || share == 0)
            {
                continue;
            }

            reactions.Fermentation[i].Run(ref wort, share * offered);
            if (share < 1)
            {
                reactions.Refusal[i].Run(ref wort, (1 - share) * offered);
            }
        }
    }

    /// <summary>Lets the gas go that the beer cannot hold without pressure.</summary>
    public static void Vent<TLog>(ref Wort wort, int portion, in FermentStep yeast, ReadOnlySpan<double> draw, ref TLog log)
        where TLog : struct, IRunLog
    {
        double holds = draw[yeast.ResidualGas] * Carbonation.GramsPerLitreInOneVolume / 1000 * wort.Litres;
        double leaves = wort[Component.CarbonDioxide] - holds;
        if (leaves > 0)
        {
            Parting.Leave(ref wort, Stage.Ferment, portion, Loss.Gas, Component.CarbonDioxide, leaves, ref log);
        }
    }
}
