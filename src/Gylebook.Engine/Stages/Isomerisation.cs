using Gylebook.Engine.Parameters;
using Gylebook.Engine.State;
using Gylebook.Science.Boiling;

namespace Gylebook.Engine.Stages;

/// <summary>What the lay-out knows of a hop's alpha acid; the default is no hop.</summary>
/// <param name="Grams">As weighed; 0 for what is no hop, or is never hot.</param>
/// <param name="Assay">Where its lot's alpha acids by mass stand, as assayed.</param>
/// <param name="Ageing">How it was kept since; null for fresh.</param>
/// <param name="Reaches">Where the share of them that reaches the boil stands; null for all.</param>
/// <param name="Form">Where the gain of its form over whole hops stands; null for none.</param>
/// <param name="IsBoiled">Whether the table of time and gravity knows it.</param>
public readonly record struct HopDose(double Grams, Slot Assay, HopAge? Ageing, Slot? Reaches, Slot? Form, bool IsBoiled)
{
    /// <summary>Alpha acids by mass on brew day.</summary>
    public double Alpha(Draw draw) => Ageing is { } age ? draw[Assay] * age.ShareLeft(draw) : draw[Assay];
}

/// <summary>How a hop was kept.</summary>
/// <param name="Days">How long.</param>
/// <param name="Celsius">How warm.</param>
/// <param name="Pack">In what.</param>
/// <param name="LostInSixMonths">Where the share it loses in six months at 20 °C in the open stands.</param>
public readonly record struct HopAge(double Days, double Celsius, HopPack Pack, Slot LostInSixMonths)
{
    /// <summary>Share of the alpha acid that is left.</summary>
    public double ShareLeft(Draw draw) => HopAgeing.ShareLeft(Days, Celsius, Pack, draw[LostInSixMonths]);
}

/// <summary>Some minutes of heat.</summary>
/// <param name="Minutes">How long.</param>
/// <param name="Celsius">How warm it was meant to be.</param>
/// <param name="IsStand">Whether a stand, whose temperature is set by hand; a boil is as warm as the air lets it.</param>
public readonly record struct HeatStep(double Minutes, double Celsius, bool IsStand)
{
    private readonly IsomerisationStep _planned = IsomerisationStep.At(Minutes, Celsius);

    /// <summary>What it does to alpha acid, at a draw.</summary>
    public IsomerisationStep At(Draw draw)
    {
        double warmer = IsStand ? draw[Known.StandWarmer] : 0;
        return warmer == 0 ? _planned : IsomerisationStep.At(Minutes, Celsius + warmer);
    }
}

/// <summary>Where the kinetics' own losses stand in the draw.</summary>
/// <param name="Trub">Share of the iso-alpha acid that stays with the trub.</param>
/// <param name="Cellar">Share that yeast, foam and filter take.</param>
public readonly record struct IsoLosses(Slot Trub, Slot Cellar);

/// <summary>Alpha acid goes in, turns into iso-alpha acid while the wort is hot, and some of that is lost on the way.</summary>
/// <remarks>
/// Alpha and iso-alpha acid are two amounts in the liquid. A stretch of heat is three shares, so a run only multiplies. The form's
/// gain is counted as so much more alpha acid. Laws: <see cref="IsomerisationStep"/>, <see cref="AlphaAcidSolubility"/>; losses
/// from <c>data/starting-values.csv</c>.
/// </remarks>
public static class Isomerisation
{
    private const double MilligramsPerGram = 1000;

    /// <summary>A hop's alpha acid goes into solution, as far as there is room for it.</summary>
    /// <returns>Litres it had room in; 0 for what is no hop.</returns>
    public static double Dose(ref Wort wort, in HopDose hop, Draw draw)
    {
        if (hop.Grams <= 0)
        {
            return 0;
        }

        double litres = wort.Litres;
        if (litres <= 0)
        {
            return 0;
        }

        double there = wort[Component.AlphaAcid];
        double dissolved = AlphaAcidSolubility.Dissolved(Math.Max(0, there + Offered(hop, draw)) / litres) * litres;

        // What had dissolved before stays dissolved, even where the two pieces of the rule do not quite meet.
        wort[Component.AlphaAcid] = Math.Max(there, dissolved);
        return litres;
    }

    /// <summary>Milligrams of alpha acid that a hop offers, its form's gain counted in.</summary>
    public static double Offered(in HopDose hop, Draw draw) =>
        MilligramsPerGram * hop.Grams * hop.Alpha(draw) * draw.Or(hop.Reaches, 1) * draw.Or(hop.Form, 1);

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
