namespace Gylebook.Science.Conditioning;

/// <summary>How much air is left in a vessel that is filled with carbon dioxide and vented, over and over.</summary>
/// <remarks>
/// <para>xₙ = x₀·(p_air/(p_air + p))ⁿ, pressures absolute. Oxygen of a headspace: 1.330 mg in a mL of it, at 20 °C and 1 atm.</para>
/// <para>Symbols: x share of oxygen in the gas; n cycles; p gauge pressure they are filled to.</para>
/// <para>Source: Boyle's law and full mixing; five published rows of cycles at 30 psi agree (home-draught literature, 2015).</para>
/// <para>Valid for: gas without oxygen of its own. Beverage gas may hold up to 30 ppm (from memory): counting below ten is theory.</para>
/// <para>Accuracy: full mixing is the brewer's wish; poor mixing leaves more or less.</para>
/// </remarks>
public static class Purging
{
    /// <summary>Share of oxygen in air.</summary>
    public const double OxygenInAir = 0.2095;

    private const double MilligramsPerMillilitre = 1.330;

    /// <summary>Share of oxygen left after some cycles.</summary>
    /// <param name="cycles">Filled and vented so often, from 0 up.</param>
    /// <param name="gaugeBar">Filled to, bar; from 0 up.</param>
    /// <param name="airBar">Air pressure of the place, bar; above 0.</param>
    public static double OxygenLeft(int cycles, double gaugeBar, double airBar)
    {
        Argument.MustNotBeNegative(cycles);
        return OxygenInAir * Math.Pow(Ratio(gaugeBar, airBar), cycles);
    }

    /// <summary>Cycles until a share of oxygen is left, not rounded.</summary>
    /// <param name="from">Share before, above 0.</param>
    /// <param name="to">Share wanted, above 0.</param>
    /// <param name="gaugeBar">Filled to, bar; above 0.</param>
    /// <param name="airBar">Air pressure of the place, bar; above 0.</param>
    public static double Cycles(double from, double to, double gaugeBar, double airBar)
    {
        Argument.MustBePositive(gaugeBar);
        return Math.Max(0, Math.Log(Argument.MustBePositive(to) / Argument.MustBePositive(from)) / Math.Log(Ratio(gaugeBar, airBar)));
    }

    /// <summary>Oxygen that a headspace can give to the beer below it, µg a litre.</summary>
    /// <param name="headspaceMillilitres">Headspace, mL.</param>
    /// <param name="oxygenShare">Oxygen in it, as a share.</param>
    /// <param name="beerLitres">Beer, L; above 0.</param>
    public static double MicrogramsPerLitre(double headspaceMillilitres, double oxygenShare, double beerLitres)
    {
        Argument.MustNotBeNegative(headspaceMillilitres);
        Argument.MustBeWithin(oxygenShare, 0, 1);
        return headspaceMillilitres * oxygenShare * MilligramsPerMillilitre * 1000 / Argument.MustBePositive(beerLitres);
    }

    /// <summary>Oxygen in all of a package: what is dissolved, and what the headspace can give, µg a litre of beer.</summary>
    /// <param name="dissolved">Dissolved in the beer as it is filled, µg/L; from 0 up.</param>
    /// <param name="headspaceMillilitres">Headspace, mL.</param>
    /// <param name="oxygenShare">Oxygen in it, as a share.</param>
    /// <param name="beerLitres">Beer, L; above 0.</param>
    public static double TotalMicrogramsPerLitre(double dissolved, double headspaceMillilitres, double oxygenShare, double beerLitres) =>
        Argument.MustNotBeNegative(dissolved) + MicrogramsPerLitre(headspaceMillilitres, oxygenShare, beerLitres);

    private static double Ratio(double gaugeBar, double airBar) => Argument.MustBePositive(airBar) / (airBar + Argument.MustNotBeNegative(gaugeBar));
}
