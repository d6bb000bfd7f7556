namespace Gylebook.Science.Liquids;

/// <summary>Sugar from the bending of light, in unfermented wort.</summary>
/// <remarks>
/// <para>Bx = 11758.74 n⁵ − 88885.21 n⁴ + 270177.93 n³ − 413145.80 n² + 318417.95 n − 99127.4536, and
/// P = Bx / factor.</para>
/// <para>Symbols: n refractive index at 20 °C and the sodium line; Bx grams of sucrose in 100 g; P extract, °P; factor
/// the wort correction factor, for wort bends light a little more than sucrose of the same gravity.</para>
/// <para>Source: <c>icumsa-refractive-index</c>, a fit read in an encyclopedia. The usual factor 1.04 is
/// <c>common practice, no source</c>; users find 0.99 to 1.04, and lower where simple sugars abound (honey).</para>
/// <para>Valid for: 0 to 30 °Bx at 20 °C, no alcohol.</para>
/// <para>Accuracy: 0.02 °Bx low against <c>oiv-as2-02</c>, Table II, from 10 to 30 °Bx. The factor is the larger doubt:
/// a brewer should find it for the instrument, from pairs of readings.</para>
/// <para>Notes: with alcohol present use <see cref="RefractometerAfterFermentation"/>. Readings in °Bx have no
/// quantity type of their own: in beer they are neither kind of extract.</para>
/// </remarks>
public static class Refractometer
{
    /// <summary>The usual wort correction factor. Common practice, no source.</summary>
    public const double UsualWortCorrectionFactor = 1.04;

    /// <summary>Sucrose in °Bx from the refractive index at 20 °C.</summary>
    public static double BrixAt(double refractiveIndex)
    {
        double n = refractiveIndex;
        return -99127.4536
            + (n * (318417.95 + (n * (-413145.80 + (n * (270177.93 + (n * (-88885.21 + (n * 11758.74)))))))));
    }

    /// <summary>Extract of unfermented wort in °P from a reading in °Bx.</summary>
    public static double PlatoOfWort(double brixReading, double wortCorrectionFactor = UsualWortCorrectionFactor) =>
        brixReading / wortCorrectionFactor;
}
