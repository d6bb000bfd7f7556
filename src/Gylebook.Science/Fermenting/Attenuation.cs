namespace Gylebook.Science.Fermenting;

/// <summary>How far a wort has fermented, by strength.</summary>
/// <remarks>
/// <para>Apparent = (OE − AE)/OE; real = (OE − RE)/OE.</para>
/// <para>Symbols: OE original, AE apparent, RE real extract, °P; results as ratios, 0.75 being 75 %.</para>
/// <para>Source: definitions of the trade, as in <c>asbc-beer-6</c>.</para>
/// <para>Valid for: any wort with extract in it.</para>
/// <para>Accuracy: exact.</para>
/// <para>Notes: the apparent one may pass 1, for a dry beer is lighter than water. Neither is the share of extract
/// mass fermented: that is <see cref="Balling.ExtractFermented(double, double)"/>.</para>
/// </remarks>
public static class Attenuation
{
    /// <summary>Apparent attenuation from strengths in °P.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There was no extract at first.</exception>
    public static double Apparent(double originalPlato, double apparentPlato) =>
        (Argument.MustBePositive(originalPlato) - apparentPlato) / originalPlato;

    /// <summary>Real attenuation from strengths in °P.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There was no extract at first.</exception>
    public static double Real(double originalPlato, double realPlato) =>
        (Argument.MustBePositive(originalPlato) - realPlato) / originalPlato;
}
