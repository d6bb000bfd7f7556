namespace Gylebook.Science.Water;

/// <summary>Activity coefficients of ions in dilute water.</summary>
/// <remarks>
/// <para>Symbols: A, Debye–Hückel slope (L/mol)^½; I, ionic strength mol/L; z, charge; t, °C; T, K; ε, relative
/// permittivity of water.</para>
/// <para>Source: Davies, C. W. (1962) Ion Association, Butterworths: log γ = −A z² (√I/(1+√I) − 0.3 I). Permittivity:
/// Malmberg, C. G. and Maryott, A. A. (1956) J. Res. NBS 56, 1 (from memory). A = 1.825e6 (εT)^−1.5.</para>
/// <para>Valid for: I up to 0.1; 0 to 100 °C. Accuracy: about 3 % of γ at 0.1 mol/L for single charges.</para>
/// <para>Notes: Davies printed 0.2 in 1938 and 0.3 in 1962; we use the later.</para>
/// </remarks>
public static class DaviesActivity
{
    /// <summary>The slope A at a temperature in °C.</summary>
    public static double Slope(double celsius)
    {
        double t = celsius;
        double permittivity = 87.740 - (0.40008 * t) + (9.398e-4 * t * t) - (1.41e-6 * t * t * t);
        return 1.825e6 * Math.Pow(permittivity * (t + 273.15), -1.5);
    }

    /// <summary>γ of an ion of that charge, with the slope A at its temperature.</summary>
    public static double Coefficient(int charge, double ionicStrength, double slope)
    {
        double root = Math.Sqrt(Allowed.IonicStrength.Check(ionicStrength));
        double logGamma = -slope * charge * charge * ((root / (1 + root)) - (0.3 * ionicStrength));
        return Math.Pow(10, logGamma);
    }
}
