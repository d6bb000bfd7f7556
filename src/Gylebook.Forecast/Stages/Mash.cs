using Gylebook.Forecast.Running;
using Gylebook.Forecast.State;
using Gylebook.Science.Fermenting;

namespace Gylebook.Forecast.Stages;

/// <summary>What the lay-out knows of a mash.</summary>
/// <param name="StarchShareOfExtract">Share of the grist's laboratory extract that is made from starch; 0 without malt.</param>
/// <param name="EnzymeShare">1 with enzyme enough for all the starch.</param>
/// <param name="GristKilograms">Malts and mashed foods as weighed, for the yield.</param>
public readonly record struct MashStep(double StarchShareOfExtract, double EnzymeShare, double GristKilograms);

/// <summary>Starch becomes sugar and dextrin, and takes its water from the liquor.</summary>
/// <remarks>
/// The shortfall of conversion is charged to starch alone; everything else dissolves. The split into sugars is such that a
/// pale malt's wort, all of it offered to a yeast that takes every fermentable sugar, attenuates to the limit for the mash
/// temperature: the limit is of the wort, so the sugar a malt brings of its own is allowed for.
/// See <c>docs/science/mashing.md</c>.
/// </remarks>
public static class Mash
{
    /// <summary>Gravity at which the limit of attenuation is turned into a share of mass, °P.</summary>
    private const double ReferencePlato = 12;

    /// <summary>Converts the starch that is open.</summary>
    public static void Convert(ref Wort mash, in MashStep step, ReadOnlySpan<double> draw, Reactions reactions)
    {
        double shortfall = step.StarchShareOfExtract > 0 ? (1 - draw[(int)Known.Conversion]) / step.StarchShareOfExtract : 0;
        double converted = mash[Component.Starch] * Math.Max(0, 1 - shortfall) * step.EnzymeShare;
        if (converted <= 0)
        {
            return;
        }

        StarchSplit split = StarchSplit.At(draw);
        foreach (Reaction row in reactions.Conversion)
        {
            row.Run(ref mash, converted * split.StarchTo(row.Terms[1].Component));
        }
    }

    /// <summary>Share of a pale malt's extract, by mass, that may ferment at that apparent limit of attenuation.</summary>
    public static double FermentableShareOf(double apparentLimitPercent)
    {
        double realAttenuation = apparentLimitPercent / 100 / Balling.ApparentOverRealDrop(ReferencePlato);
        return Balling.ExtractFermented(realAttenuation, ReferencePlato * (1 - realAttenuation));
    }
}
