namespace Gylebook.Science.Boiling;

/// <summary>Bitterness in finished beer from boil time and wort gravity, the model of 1997.</summary>
/// <remarks>
/// <para>Symbols: U utilisation (1), the share of the alpha acid that is in the beer as bitterness; t minutes in the
/// boil; G specific gravity of the wort, averaged over those minutes. U = 1.65·0.000125^(G−1) · (1−e^(−0.04 t))/4.15;
/// IBU = U·1000·g·α/L.</para>
/// <para>Source: Tinseth 1997, "Glenn's Hop Utilization Numbers".</para>
/// <para>Valid for: 0 to 120 min, gravity 1.030 to 1.130, the span of the table.</para>
/// <para>Accuracy: none stated. The author says to fit the 4.15 to one's own kettle. A tracked brewery found 29 % of
/// the alpha acid of an hour's addition in the beer (Justus 2018), the model gives 23 % at 1.050.</para>
/// <para>Notes: it counts losses to trub, yeast and foam already, so nothing may be taken off again.</para>
/// </remarks>
public static class TimeAndGravityBitterness
{
    /// <summary>Milligrams in a gram: grams of alpha acid × utilisation × this ÷ litres of beer is IBU.</summary>
    public const double MilligramsPerGram = 1000;

    /// <summary>The share of the alpha acid that ends in the beer.</summary>
    /// <param name="minutes">Time in the boil, min.</param>
    /// <param name="gravity">Specific gravity of the wort, averaged over that time.</param>
    public static double Utilisation(double minutes, double gravity)
    {
        Argument.MustNotBeNegative(minutes);
        Argument.MustBeWithin(gravity, 0.5, 2);
        double bigness = 1.65 * Math.Pow(0.000125, gravity - 1);
        double boilTime = (1 - Math.Exp(-0.04 * minutes)) / 4.15;
        return bigness * boilTime;
    }

    /// <summary>Whether the published table reaches this far.</summary>
    public static bool IsWithinPublishedRange(double minutes, double gravity) =>
        minutes is >= 0 and <= 120 && gravity is >= 1.030 and <= 1.130;

    /// <summary>Bitterness, mg/L of beer, from the mass balance of the alpha acid.</summary>
    /// <param name="utilisation">Share of the alpha acid that ends in the beer, from 0 to 1.</param>
    /// <param name="hopGrams">Hops, g.</param>
    /// <param name="alphaFraction">Alpha acid in the hops, 0.10 for 10 %.</param>
    /// <param name="beerLitres">Beer, L.</param>
    public static double Ibu(double utilisation, double hopGrams, double alphaFraction, double beerLitres)
    {
        Argument.MustNotBeNegative(utilisation);
        Argument.MustNotBeNegative(hopGrams);
        Argument.MustBeWithin(alphaFraction, 0, 1);
        Argument.MustBePositive(beerLitres);
        return utilisation * hopGrams * alphaFraction * MilligramsPerGram / beerLitres;
    }
}
