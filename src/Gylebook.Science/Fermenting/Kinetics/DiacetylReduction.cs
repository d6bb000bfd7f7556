namespace Gylebook.Science.Fermenting.Kinetics;

/// <summary>How long yeast takes to take back half of the diacetyl it made.</summary>
/// <remarks>
/// <para>D′ = −k·X·D once no more is made, k = e^(86.8 − 54.3/(R·T)), so half-life = ln 2/(k·X).</para>
/// <para>Symbols: D vicinal diketones; X yeast (mol/m³); T temperature (K); R = 1.987·10⁻³ kcal/mol/K; k in m³/(mol h).</para>
/// <para>Source: <c>growth-model</c>, the values of 2007.</para>
/// <para>Valid for: lager yeast at 8 to 16 °C (range from memory), still in the beer.</para>
/// <para>Accuracy: not known; the activation energy is steep, 12 to 15 °C cut the time to a third. Taste, or warm a sample, before packaging.</para>
/// </remarks>
public static class DiacetylReduction
{
    /// <summary>Yeast at the end of the papers' fermentations, mol/m³.</summary>
    public const double UsualYeast = 180;

    /// <summary>Half-life, h.</summary>
    /// <param name="celsius">Of the beer.</param>
    /// <param name="yeast">Yeast in the beer, mol/m³; above 0.</param>
    public static double HalfLifeHours(double celsius, double yeast = UsualYeast) =>
        Math.Log(2) / (UptakeConstants.DiacetylUptakeAt(celsius) * Argument.MustBePositive(yeast));

    /// <summary>Hours until a level is down to another.</summary>
    /// <param name="from">Now, mg/L; above 0.</param>
    /// <param name="to">Wanted, mg/L; above 0. Nothing to wait for when it is no lower.</param>
    /// <param name="celsius">Of the beer.</param>
    /// <param name="yeast">Yeast in the beer, mol/m³; above 0.</param>
    public static double Hours(double from, double to, double celsius, double yeast = UsualYeast)
    {
        Argument.MustBePositive(from);
        Argument.MustBePositive(to);
        return Math.Max(0, Math.Log2(from / to)) * HalfLifeHours(celsius, yeast);
    }
}
