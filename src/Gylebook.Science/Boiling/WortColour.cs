namespace Gylebook.Science.Boiling;

/// <summary>Colour of the wort from the colour of the grist.</summary>
/// <remarks>
/// <para>Symbols: MCU malt colour units, Σ(kg·°L)/L × 8.3454 (which is Σ(lb·°L)/US gal); SRM = 1.4922·MCU^0.6859;
/// A absorbance at 430 nm through 1 cm, SRM = 12.7·A.</para>
/// <para>Source: Morey, letter "Beer's Law", BrewingTechniques (power law); ASBC Methods, Beer-10 (SRM and
/// absorbance).</para>
/// <para>Valid for: colours below 50 SRM.</para>
/// <para>Accuracy: R² = 0.97 of the fit, which is a fit to three older lines, not to measurements.</para>
/// <para>Notes: some copies print the exponent as 0.65896859, a slip. Absorbance adds and dilutes in proportion, SRM of
/// a grist does not: so convert once, at knock-out, and go on with absorbance.</para>
/// </remarks>
public static class WortColour
{
    /// <summary>SRM of wort that absorbs one unit at 430 nm through 1 cm.</summary>
    public const double SrmPerAbsorbance = 12.7;

    // Pounds in a kilogram over US gallons in a litre, by their definitions: 3.785411784 L, 0.45359237 kg.
    private const double PoundsPerGallon = 3.785411784 / 0.45359237;

    /// <summary>Malt colour units of a grist.</summary>
    /// <param name="kilogramLovibond">Σ mass × colour over the whole grist, kg·°L.</param>
    /// <param name="litres">Wort at knock-out, L at 20 °C.</param>
    public static double MaltColourUnits(double kilogramLovibond, double litres)
    {
        Argument.MustNotBeNegative(kilogramLovibond);
        Argument.MustBePositive(litres);
        return PoundsPerGallon * kilogramLovibond / litres;
    }

    /// <summary>Colour of the wort, SRM.</summary>
    /// <param name="mcu">Malt colour units.</param>
    public static double SrmOfMaltColourUnits(double mcu)
    {
        Argument.MustNotBeNegative(mcu);
        return 1.4922 * Math.Pow(mcu, 0.6859);
    }

    /// <summary>Absorbance at 430 nm through 1 cm.</summary>
    public static double AbsorbanceOfSrm(double srm)
    {
        Argument.MustNotBeNegative(srm);
        return srm / SrmPerAbsorbance;
    }

    /// <summary>Colour, SRM, from the absorbance at 430 nm through 1 cm.</summary>
    public static double SrmOfAbsorbance(double absorbancePerCentimetre)
    {
        Argument.MustNotBeNegative(absorbancePerCentimetre);
        return absorbancePerCentimetre * SrmPerAbsorbance;
    }

    /// <summary>Whether the power law was made for colours like this.</summary>
    public static bool IsWithinPublishedRange(double srm) => srm is >= 0 and < 50;
}
