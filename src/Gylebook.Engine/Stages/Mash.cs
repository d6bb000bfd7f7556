using Gylebook.Engine.Makeups;
using Gylebook.Engine.Parameters;
using Gylebook.Engine.State;

namespace Gylebook.Engine.Stages;

/// <summary>What the lay-out knows of a mash.</summary>
/// <param name="Malts">The malts in it.</param>
/// <param name="GristKilograms">Malts and mashed foods as weighed, for the yield.</param>
/// <param name="Rests">Its rests: how much starch they open, and the limit of attenuation.</param>
public sealed record MashStep(MaltMakeup[] Malts, double GristKilograms, RestCourse Rests)
{
    /// <summary>
    /// Grist with less diastatic power than this, in degrees Lintner over as much pale malt as holds its starch, converts only in
    /// proportion. Common practice, no source.
    /// </summary>
    public const double EnoughDiastaticPower = 30;

    /// <summary>
    /// Starch in a kilogram of pale malt of 81.5 % fine grind dry and 3.2 % moisture, as this engine takes it apart: what turns a rule
    /// for pale malt into one for starch.
    /// </summary>
    public const double StarchOfPaleMalt = 0.618;

    /// <summary>Share of the malts' laboratory extract that is made from starch; 0 without malt.</summary>
    public double StarchShareOfExtract(Draw draw)
    {
        double extract = 0, fromStarch = 0;
        foreach (MaltMakeup malt in Malts)
        {
            double its = malt.Kilograms * draw[malt.Extract] * (1 - draw[malt.Moisture]);
            extract += its;
            fromStarch += its * MaltExtracts.StarchShareOf(malt.Family, draw);
        }

        return extract > 0 ? fromStarch / extract : 0;
    }

    /// <summary>1 with enzyme enough for all the starch there is to convert: what else lies in the mash, water above all, counts nothing.</summary>
    /// <param name="draw">The draw.</param>
    /// <param name="starch">Open starch, the malts' and the foods', kg.</param>
    public double EnzymeShare(Draw draw, double starch)
    {
        double power = 0;
        foreach (MaltMakeup malt in Malts)
        {
            power += malt.Kilograms * draw[malt.DiastaticPower];
        }

        double wanted = EnoughDiastaticPower * starch / StarchOfPaleMalt;
        return wanted > power ? power / wanted : 1;
    }

    /// <summary>Starch that the rests open and no enzyme is left for, kg; what a kit's conversion leaves behind is not in it.</summary>
    /// <param name="draw">The draw.</param>
    /// <param name="starch">Starch that can open, the malts' and the foods', kg.</param>
    public double OpenAndLeft(Draw draw, double starch) =>
        starch * Rests.PlannedOpenShare * (1 - (EnzymeShare(draw, starch) * Rests.PlannedAlphaShare));
}

/// <summary>Starch becomes sugar and dextrin, and takes its water from the liquor.</summary>
/// <remarks>
/// The shortfall of conversion is charged to starch alone; everything else dissolves. The kit's conversion is what is reached when
/// neither enzyme nor heat nor time binds. How what is converted divides is
/// <see cref="StarchSplit"/>'s. See <c>docs/science/mashing.md</c>.
/// </remarks>
public static class Mash
{
    /// <summary>Converts the starch that is open.</summary>
    public static void Convert(ref Wort mash, MashStep step, Draw draw, Reactions reactions)
    {
        double starch = step.StarchShareOfExtract(draw);
        double shortfall = starch > 0 ? (1 - draw[Known.Conversion]) / starch : 0;
        double converted = mash[Component.Starch] * Math.Max(0, 1 - shortfall) * step.EnzymeShare(draw, mash[Component.Starch]) * step.Rests.ConvertedShare(draw);
        if (converted <= 0)
        {
            return;
        }

        StarchSplit split = StarchSplit.At(step.Rests.LimitPercent(draw), draw);
        foreach (Reaction row in reactions.Conversion)
        {
            row.Run(ref mash, converted * split.StarchTo(row.Terms[1].Component));
        }
    }
}
