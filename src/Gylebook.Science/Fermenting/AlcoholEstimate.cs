using Gylebook.Science.Liquids;

namespace Gylebook.Science.Fermenting;

/// <summary>Alcohol from two gravities: what a brewer with a hydrometer can know.</summary>
/// <remarks>
/// <para>OG, FG → OE, AE by the sucrose table; RE = OE − (OE − AE)/q; A = b·(OE − RE); ABV = A·FG/0.79066.</para>
/// <para>Symbols: OG, FG gravity before and after, 20/20 °C; OE, AE, RE extract, °P; A alcohol by mass and ABV by
/// volume, per cent; 0.79066 gravity 20/20 °C of ethanol.</para>
/// <para>Source: <c>balling-bierprobe</c>, <c>nbs-c440</c>, <c>oiml-r22</c>. Quick rule: common practice, no source.</para>
/// <para>Valid for: malt beers, nothing added after the first reading.</para>
/// <para>Accuracy: ales measured in 1911 and 1912 (<c>tolman-riley-1917</c>): bias +0.07, rms 0.13 % vol for the chain;
/// +0.01 and 0.12 for the quick rule over nine ales.</para>
/// <para>Notes: a widespread rule with 76.08 in it is not offered: the figure looks like 76.80 with its digits
/// turned, and either way it is 0.34 % vol high at 1.080 and 1.2 high at 1.120, for it takes °P as 250 (SG − 1).
/// 0.794 in such rules is ethanol at 15.6 °C. The forecast reads alcohol off its own balance, never off this.</para>
/// </remarks>
public static class AlcoholEstimate
{
    /// <summary>Gravity 20/20 °C of pure ethanol.</summary>
    public const double EthanolGravity = 0.79066;

    /// <summary>Factor of the quick rule. Common practice, no source.</summary>
    public const double QuickRuleFactor = 131.25;

    /// <summary>Alcohol by volume of a beer of that alcohol by mass and that gravity.</summary>
    public static double PercentByVolumeOf(double percentByMass, double gravity) =>
        percentByMass * gravity / EthanolGravity;

    /// <summary>Alcohol by mass of a beer of that alcohol by volume and that gravity.</summary>
    public static double PercentByMassOf(double percentByVolume, double gravity) =>
        percentByVolume * EthanolGravity / gravity;

    /// <summary>Alcohol by volume, from original and apparent extract in °P and the beer's gravity.</summary>
    public static double PercentByVolumeOfExtracts(double originalPlato, double apparentPlato, double finalGravity) =>
        PercentByVolumeOf(
            Balling.AlcoholOf(originalPlato, Balling.RealExtractOf(originalPlato, apparentPlato)), finalGravity);

    /// <summary>Alcohol by volume from gravity before and after.</summary>
    public static double PercentByVolume(double originalGravity, double finalGravity) =>
        PercentByVolumeOfExtracts(
            SucroseSolution.PlatoAt(originalGravity), SucroseSolution.PlatoAt(finalGravity), finalGravity);

    /// <summary>The quick rule, 131.25 (OG − FG). Common practice, no source; for the head, not for the label.</summary>
    public static double QuickRulePercentByVolume(double originalGravity, double finalGravity) =>
        QuickRuleFactor * (originalGravity - finalGravity);
}
