namespace Gylebook.Science.Liquids;

/// <summary>Why a final gravity from a refractometer may be wrong by more than its usual 0.003.</summary>
[Flags]
public enum RefractometerDoubt
{
    /// <summary>Inside the beers the form was fitted to.</summary>
    None = 0,

    /// <summary>The wort was weaker or stronger than any in the fit.</summary>
    OriginalOutsideFit = 1,

    /// <summary>The final gravity is lower or higher than any in the fit.</summary>
    FinalOutsideFit = 2,

    /// <summary>Less or more of the extract has gone than in any beer of the fit.</summary>
    AttenuationOutsideFit = 4,

    /// <summary>So little has fermented that the form is known to fail: take a hydrometer.</summary>
    StillFermenting = 8,
}

/// <summary>Gravity of fermented beer from two refractometer readings, one before and one after.</summary>
/// <remarks>
/// <para>The four forms stand at their methods; i and f below are the readings before and after.</para>
/// <para>Symbols: i, f readings in °Bx, each already divided by the wort correction factor.</para>
/// <para>Source: the forms of 2011 are hobby literature, read. The forms of 2017 are a magazine article (Zymurgy,
/// July/August 2017), coefficients from memory. None comes from a refereed journal.</para>
/// <para>Valid for: the 2011 forms, finished beer only: 1.036 to 1.106 before, 1.007 to 1.022 after, apparent
/// attenuation 73 to 91 %; below about 61 % they fail (an unfermented wort of 1.048 reads 1.032). The 2017 forms
/// also while it ferments; their fitted range is not known to us.</para>
/// <para>Accuracy: give ±0.003 of gravity with every result. The ASBC holds that each beer type needs a calibration
/// curve of its own.</para>
/// <para>Notes: one measured beer, with honey, 15.2 then 7.3 °Bx raw and 1.0085 by hydrometer: the 2017 forms are
/// within 0.0013 of it, the 2011 forms 0.0035 and 0.0038 high. An older cubic is left out: it reads about 0.005 low.
/// A hydrometer in a degassed sample settles the matter; before bottling, nothing else should: sugar left over bursts
/// glass.</para>
/// </remarks>
public static class RefractometerAfterFermentation
{
    /// <summary>What to state beside every gravity found this way.</summary>
    public const double GravityUncertainty = 0.003;

    /// <summary>Linear form of 2011, finished beer only: 1 − 0.00085683 i + 0.0034941 f.</summary>
    public static double GravityByLinear2011(double initialBrix, double finalBrix) =>
        1 - (0.00085683 * initialBrix) + (0.0034941 * finalBrix);

    /// <summary>
    /// Cubic form of 2011, finished beer only: 1 − 0.0044993 i + 0.00027581 i² − 7.28e-6 i³ + 0.011774 f
    /// − 0.0012717 f² + 6.3293e-5 f³.
    /// </summary>
    public static double GravityByCubic2011(double initialBrix, double finalBrix) =>
        1
        + (initialBrix * (-0.0044993 + (initialBrix * (0.00027581 - (initialBrix * 7.2800e-6)))))
        + (finalBrix * (0.011774 + (finalBrix * (-0.0012717 + (finalBrix * 6.3293e-5)))));

    /// <summary>Linear form of 2017, also mid-way: 1 − 0.002349 i + 0.006276 f.</summary>
    public static double GravityByLinear2017(double initialBrix, double finalBrix) =>
        1 - (0.002349 * initialBrix) + (0.006276 * finalBrix);

    /// <summary>
    /// Quadratic form of 2017, also mid-way: 1 + 1.335e-5 i² − 3.239e-5 i f + 2.916e-5 f² − 2.421e-3 i + 6.219e-3 f.
    /// </summary>
    public static double GravityByQuadratic2017(double initialBrix, double finalBrix)
    {
        double i = initialBrix;
        double f = finalBrix;
        return 1 + (1.335e-5 * i * i) - (3.239e-5 * i * f) + (2.916e-5 * f * f) - (2.421e-3 * i) + (6.219e-3 * f);
    }

    /// <summary>What speaks against a result of the 2011 forms, from the first reading and the gravity found.</summary>
    public static RefractometerDoubt DoubtsAbout2011Forms(double initialBrix, double gravityFound)
    {
        double originalGravity = SucroseSolution.GravityAt(initialBrix);
        double attenuation = 1 - (SucroseSolution.PlatoAt(gravityFound) / initialBrix);
        RefractometerDoubt doubts = RefractometerDoubt.None;
        doubts |= originalGravity is >= 1.036 and <= 1.106 ? RefractometerDoubt.None : RefractometerDoubt.OriginalOutsideFit;
        doubts |= gravityFound is >= 1.007 and <= 1.022 ? RefractometerDoubt.None : RefractometerDoubt.FinalOutsideFit;
        doubts |= attenuation is >= 0.73 and <= 0.91 ? RefractometerDoubt.None : RefractometerDoubt.AttenuationOutsideFit;
        doubts |= attenuation < 0.61 ? RefractometerDoubt.StillFermenting : RefractometerDoubt.None;
        return doubts;
    }
}
