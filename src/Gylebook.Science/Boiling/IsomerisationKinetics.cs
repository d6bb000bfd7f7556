namespace Gylebook.Science.Boiling;

/// <summary>Alpha acid into iso-alpha acid, and iso-alpha acid into loss, at one temperature.</summary>
/// <remarks>
/// <para>Symbols: T temperature (K); k1 = 7.9·10¹¹·e^(−11858/T) and k2 = 4.1·10¹²·e^(−12994/T), both per minute;
/// A0 alpha acid at the start, A and I what is there after t minutes. A/A0 = e^(−k1 t);
/// I/A0 = k1/(k2−k1)·(e^(−k1 t) − e^(−k2 t)).</para>
/// <para>Source: Malowicki and Shellhammer 2005, J. Agric. Food Chem. 53:4434–4439 (first-order rates; the closed form
/// is their integral at a constant temperature).</para>
/// <para>Valid for: 90 to 130 °C, in a buffer of pH 5.2. No effect of sugars, calcium or pH 4.8 to 6.0 was found.</para>
/// <para>Accuracy: the paper's own fit; activation energies 98.6 and 108.0 kJ/mol.</para>
/// <para>Notes: the yield in the kettle, not in the beer: half or so of it is lost on the way. Alpha acid dissolves to
/// about 90 mg/L only at pH 5.2, which is not in these equations.</para>
/// </remarks>
public static class IsomerisationKinetics
{
    /// <summary>Rate of alpha acid turning into iso-alpha acid, per minute.</summary>
    public static double IsomerisationPerMinute(double celsius) => 7.9e11 * Math.Exp(-11858 / Kelvin(celsius));

    /// <summary>Rate of iso-alpha acid being lost, per minute.</summary>
    public static double LossPerMinute(double celsius) => 4.1e12 * Math.Exp(-12994 / Kelvin(celsius));

    /// <summary>The share of the alpha acid that is still alpha acid.</summary>
    public static double AlphaAcidLeft(double minutes, double celsius)
    {
        Argument.MustNotBeNegative(minutes);
        return Math.Exp(-IsomerisationPerMinute(celsius) * minutes);
    }

    /// <summary>The share of the alpha acid that is iso-alpha acid.</summary>
    public static double IsoAlphaAcid(double minutes, double celsius)
    {
        Argument.MustNotBeNegative(minutes);
        double k1 = IsomerisationPerMinute(celsius);
        double k2 = LossPerMinute(celsius);

        // The rates stay a factor of 2 or more apart up to 200 °C, so their difference is safe to divide by.
        return k1 / (k2 - k1) * (Math.Exp(-k1 * minutes) - Math.Exp(-k2 * minutes));
    }

    /// <summary>Minutes in which half of the alpha acid has turned.</summary>
    public static double AlphaAcidHalfLifeMinutes(double celsius) => Math.Log(2) / IsomerisationPerMinute(celsius);

    /// <summary>Minutes after which there is most iso-alpha acid; longer loses more than it makes.</summary>
    public static double MinutesToMostIsoAlphaAcid(double celsius)
    {
        double k1 = IsomerisationPerMinute(celsius);
        double k2 = LossPerMinute(celsius);
        return Math.Log(k1 / k2) / (k1 - k2);
    }

    /// <summary>Whether the rates were measured at this temperature.</summary>
    public static bool IsWithinPublishedRange(double celsius) => celsius is >= 90 and <= 130;

    private static double Kelvin(double celsius)
    {
        Argument.MustBeWithin(celsius, -20, 200);
        return celsius + 273.15;
    }
}
