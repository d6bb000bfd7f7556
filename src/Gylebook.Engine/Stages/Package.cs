using Gylebook.Engine.Parameters;
using Gylebook.Engine.State;
using Gylebook.Science.Quantities;

namespace Gylebook.Engine.Stages;

/// <summary>What the lay-out knows of one portion's package.</summary>
/// <param name="Priming">White sugar to make the wished carbonation, kg. The planner fills this in.</param>
/// <param name="GasVolumes">Volumes of carbon dioxide to bring the beer to from a cylinder; 0 for none.</param>
public record struct PackageStep(double Priming, double GasVolumes);

/// <summary>Gas is made in the package by what sugar is left, or put in from a cylinder.</summary>
public static class Package
{
    /// <summary>Adds the priming sugar that was solved for.</summary>
    public static void Prime<TLog>(ref Wort beer, int portion, in PackageStep step, ref TLog log)
        where TLog : struct, IRunLog
    {
        if (step.Priming > 0)
        {
            Wort sugar = default;
            sugar[Component.Sucrose] = step.Priming;
            Parting.Enter(ref beer, Stage.Package, portion, sugar, ref log);
        }
    }

    /// <summary>Volumes of gas that the sugar still open to this yeast would make; none where there is no beer.</summary>
    public static double RefermentableVolumes(in Wort beer, in FermentStep yeast, Reactions reactions, Draw draw)
    {
        Wort fermented = beer;
        Refermented(ref fermented, yeast, reactions, draw);
        double litres = fermented.Litres;
        return litres <= 0 ? 0 : (fermented[Component.CarbonDioxide] - beer[Component.CarbonDioxide]) * 1000
            / Carbonation.GramsPerLitreInOneVolume / litres;
    }

    /// <summary>Conditions the beer.</summary>
    public static void Condition<TLog>(
        ref Wort beer, int portion, in PackageStep step, in FermentStep yeast, Reactions reactions,
        Draw draw, ref TLog log)
        where TLog : struct, IRunLog
    {
        Refermented(ref beer, yeast, reactions, draw);
        double wanted = step.GasVolumes * Carbonation.GramsPerLitreInOneVolume / 1000 * beer.Litres;
        double missing = wanted - beer[Component.CarbonDioxide];
        if (missing > 0)
        {
            Wort gas = default;
            gas[Component.CarbonDioxide] = missing;
            Parting.Enter(ref beer, Stage.Condition, portion, gas, ref log);
        }
    }

    private static void Refermented(ref Wort beer, in FermentStep yeast, Reactions reactions, Draw draw)
    {
        foreach (Reaction row in reactions.Conditioning)
        {
            double taken = beer[row.Reactant] * yeast.ShareOf(row.Reactant, draw);
            if (taken != 0)
            {
                row.Run(ref beer, taken);
            }
        }
    }
}
