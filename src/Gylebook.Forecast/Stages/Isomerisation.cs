using Gylebook.Forecast.State;
using Gylebook.Science.Boiling;

namespace Gylebook.Forecast.Stages;

/// <summary>What the lay-out knows of a hop's alpha acid; the default is no hop.</summary>
/// <param name="Grams">As weighed; 0 for what is no hop, or is never hot.</param>
/// <param name="Alpha">Place of its alpha acids in the draw.</param>
/// <param name="Reaches">Place of the share of them that reaches the boil; -1 for all.</param>
/// <param name="Form">Place of the gain of its form over whole hops; -1 for none.</param>
public readonly record struct HopDose(double Grams, int Alpha, int Reaches, int Form);

/// <summary>Where the kinetics' own losses stand in the draw.</summary>
/// <param name="Trub">Share of the iso-alpha acid that stays with the trub.</param>
/// <param name="Cellar">Share that yeast, foam and filter take.</param>
public readonly record struct IsoLosses(int Trub, int Cellar);

/// <summary>Alpha acid goes in, turns into iso-alpha acid while the wort is hot, and some of that is lost on the way.</summary>
/// <remarks>
/// Alpha and iso-alpha acid are two amounts in the liquid. Each stretch of heat was reckoned beforehand into three shares, so
/// a run only multiplies. The form's gain is counted as so much more alpha acid. Laws: <see cref="IsomerisationStep"/>,
/// <see cref="AlphaAcidSolubility"/>; losses from <c>data/starting-values.csv</c>.
/// </remarks>
public static class Isomerisation
{
    private const double MilligramsPerGram = 1000;

    /// <summary>A hop's alpha acid goes into solution, as far as there is room for it.</summary>
    public static void Dose(ref Wort wort, in HopDose hop, ReadOnlySpan<double> draw)
    {
        if (hop.Grams <= 0)
        {
            return;
        }

        double litres = wort.Litres;
        if (litres <= 0)
        {
            return;
        }

        double reaches = hop.Reaches < 0 ? 1 : draw[hop.Reaches];
        double form = hop.Form < 0 ? 1 : draw[hop.Form];
        double offered = MilligramsPerGram * hop.Grams * draw[hop.Alpha] * reaches * form;
        double there = wort[Component.AlphaAcid];
        double dissolved = AlphaAcidSolubility.Dissolved(Math.Max(0, there + offered) / litres) * litres;

        // What had dissolved before stays dissolved, even where the two pieces of the rule do not quite meet.
        wort[Component.AlphaAcid] = Math.Max(there, dissolved);
    }

    /// <summary>Some minutes of heat.</summary>
    public static void Heat(ref Wort wort, in IsomerisationStep step)
    {
        double alpha = wort[Component.AlphaAcid];
        wort[Component.IsoAlphaAcid] = (alpha * step.IsoFromAlpha) + (wort[Component.IsoAlphaAcid] * step.IsoLeft);
        wort[Component.AlphaAcid] = alpha * step.AlphaLeft;
    }

    /// <summary>A share of it is lost to what settles or foams out.</summary>
    /// <param name="wort">Wort or beer.</param>
    /// <param name="keeps">Share of the iso-alpha acid that stays.</param>
    public static void Keep(ref Wort wort, double keeps) => wort[Component.IsoAlphaAcid] *= keeps;
}
