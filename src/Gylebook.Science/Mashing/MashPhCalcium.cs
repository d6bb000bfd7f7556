using Gylebook.Science.Water;

namespace Gylebook.Science.Mashing;

/// <summary>Protons that calcium and magnesium set free from malt phosphate in the mash.</summary>
/// <remarks>
/// <para>Symbols: Ca, mg/L; protons, mEq/L. Up to 100 mg/L Ca/3.5 (mEq with mEq); above, in proportion to
/// ln(1 + Ca/55), joined there. Magnesium Mg/7 throughout.</para>
/// <para>Source: Kolbach (1953) Monatsschrift für Brauerei 6, 49; Taylor's series, in Briggs, Boulton, Brookes and Stevens (2004)
/// Brewing: Science and Practice, ch. 4: calcium 0, 100, 200, 300 mg/L, mash pH 5.74, 5.48, 5.39, 5.28.</para>
/// <para>Valid for: to 300 mg/L calcium.</para>
/// <para>Accuracy: the logarithm fits Taylor's four points within 0.02 pH; what it is in protons leans on Kolbach.</para>
/// <para>Notes: Kolbach's line goes on straight, and would have 300 mg/L set free three times as much as 100; Taylor
/// measured 1.8 times. The magnesium factor has no second measurement.</para>
/// </remarks>
public static class MashPhCalcium
{
    private const double KolbachUpTo = 100;
    private const double HalfScale = 55;

    /// <summary>Fall of mash pH in Taylor's series for calcium in mg/L: a fit, for comparison only.</summary>
    public static double TaylorFall(double calcium) => 0.241 * Math.Log(1 + (calcium / HalfScale));

    /// <summary>Protons from calcium (mg/L), mEq/L.</summary>
    public static double ProtonsFromCalcium(double calcium)
    {
        double straight = Math.Min(calcium, KolbachUpTo) / Ion.Calcium.EquivalentWeight() / ResidualAlkalinity.CalciumPerProton;
        return calcium <= KolbachUpTo
            ? straight
            : straight * Math.Log(1 + (calcium / HalfScale)) / Math.Log(1 + (KolbachUpTo / HalfScale));
    }

    /// <summary>Protons from magnesium (mg/L), mEq/L.</summary>
    public static double ProtonsFromMagnesium(double magnesium) =>
        magnesium / Ion.Magnesium.EquivalentWeight() / ResidualAlkalinity.MagnesiumPerProton;
}
