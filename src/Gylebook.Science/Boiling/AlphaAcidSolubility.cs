namespace Gylebook.Science.Boiling;

/// <summary>How much alpha acid goes into solution when a great deal is added.</summary>
/// <remarks>
/// <para>Symbols: c alpha acid added, mg per litre of wort; dissolved = c up to 240 mg/L, above it
/// 490·(1 − e^(−0.0028·c)).</para>
/// <para>Source: a fit to measured brews of high hopping rate, hobby literature.</para>
/// <para>Valid for: boiling wort, to about 1000 mg/L.</para>
/// <para>Accuracy: about 20 %; one experimenter. A buffer of pH 5.2 dissolved about 90 mg/L (Malowicki and Shellhammer
/// 2005), far less than wort seems to.</para>
/// <para>Notes: the two pieces meet at 240 mg/L within 0.2. What has not dissolved is taken not to come later.</para>
/// </remarks>
public static class AlphaAcidSolubility
{
    /// <summary>All of it dissolves up to here, mg/L.</summary>
    public const double AllDissolvesUpTo = 240;

    /// <summary>Dissolved, mg/L, of so much added.</summary>
    public static double Dissolved(double addedMilligramsPerLitre)
    {
        Argument.MustNotBeNegative(addedMilligramsPerLitre);
        return addedMilligramsPerLitre <= AllDissolvesUpTo
            ? addedMilligramsPerLitre
            : 490 * (1 - Math.Exp(-0.0028 * addedMilligramsPerLitre));
    }

    /// <summary>Whether the fit reaches this far.</summary>
    public static bool IsWithinPublishedRange(double addedMilligramsPerLitre) => addedMilligramsPerLitre is >= 0 and <= 1000;
}
