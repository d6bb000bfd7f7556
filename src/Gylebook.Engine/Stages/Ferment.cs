using Gylebook.Engine.Parameters;
using Gylebook.Engine.State;
using Gylebook.Science.Quantities;

namespace Gylebook.Engine.Stages;

/// <summary>What the lay-out knows of one portion's yeast.</summary>
/// <param name="Takes">Where the shares stand that it takes; null when there is no yeast at all.</param>
/// <param name="ResidualGas">Where the volumes of carbon dioxide stand that stay in solution.</param>
public readonly record struct FermentStep(YeastShares? Takes, Slot ResidualGas)
{
    /// <summary>Where the alcohol stands at which it stops, % by volume; null for a yeast that is not counted as tiring.</summary>
    public Slot? Tires { get; init; }

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
/// another yeast still may. Where the alcohol reaches what stops it, it has taken so much less of every sugar, all in one
/// proportion: which of them it leaves is not published, and neither gravity nor alcohol hangs on it.
/// </remarks>
public static class Ferment
{
    /// <summary>Less gas than this share of what stays is the rounding of an earlier venting.</summary>
    private const double Rounding = 1e-12;

    /// <summary>No fermented beer is heavier for its litre, which bounds alcohol by volume from alcohol by mass.</summary>
    private const double HeaviestBeer = 1.2;

    /// <summary>Alcohol by volume is all but straight in what is fermented; each turn is a twentieth of the error before or less.</summary>
    private const int Turns = 6;

    /// <summary>Ferments what is there.</summary>
    public static void Out(ref Wort wort, in FermentStep yeast, Reactions reactions, Draw draw)
    {
        Wort offered = wort;
        foreach (Reaction row in reactions.Fermentation)
        {
            double taken = wort[row.Reactant] * yeast.ShareOf(row.Reactant, draw);
            if (taken != 0)
            {
                row.Run(ref wort, taken);
            }
        }

        if (yeast.Tires is { } tires)
        {
            StopAt(draw[tires], offered, ref wort);
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

    /// <summary>Goes back to where the alcohol stops the yeast: between the wort as offered and the beer fermented out, by mass.</summary>
    private static void StopAt(double percent, in Wort offered, ref Wort beer)
    {
        double most = beer[Component.Ethanol] / beer.LiquidMass * HeaviestBeer / Wort.PureEthanolKilogramsPerLitre;
        if (!(100 * most > percent) || !(beer.AlcoholByVolumePercent > percent))
        {
            return;
        }

        Wort all = beer;
        double start = offered.AlcoholByVolumePercent, range = all.AlcoholByVolumePercent - start, share = 0, reached = start;
        for (int turn = 0; turn < Turns && start < percent; turn++)
        {
            share += (percent - reached) / range;
            beer = offered;
            beer.Multiply(1 - share);
            beer.Add(all, share);
            reached = beer.AlcoholByVolumePercent;
        }

        if (share == 0)
        {
            beer = offered;
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
