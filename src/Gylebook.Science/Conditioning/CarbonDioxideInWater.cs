namespace Gylebook.Science.Conditioning;

/// <summary>How much carbon dioxide plain water holds.</summary>
/// <remarks>
/// <para>Symbols: T temperature (K); ln K0 = −58.0931 + 90.5069·(100/T) + 22.2940·ln(T/100), K0 in mol/L/atm;
/// volumes (Bunsen) = K0·22.2605, litres of real gas at 0 °C and 1 atm in a litre of water under 1 atm of the gas.</para>
/// <para>Source: Weiss 1974, Marine Chemistry 2:203–215, salinity 0. Molar volume 22.2605 L/mol of the real gas:
/// IUPAC–NIST solubility data.</para>
/// <para>Valid for: −1 to 40 °C.</para>
/// <para>Accuracy: within 1 % of Murray and Riley 1971.</para>
/// <para>Notes: the series of 1855 that old brewing textbooks print is 4 to 13 % too high.</para>
/// </remarks>
public static class CarbonDioxideInWater
{
    /// <summary>Litres of one mole of the gas at 0 °C and 1 atm.</summary>
    public const double LitresPerMole = 22.2605;

    /// <summary>Grams in a mole.</summary>
    public const double GramsPerMole = 44.0095;

    /// <summary>Dissolved gas under one atmosphere of it, mol/L/atm.</summary>
    public static double MolesPerLitreAtmosphere(double celsius)
    {
        Argument.MustBeWithin(celsius, -20, 120);
        double t = (celsius + 273.15) / 100;
        return Math.Exp(-58.0931 + (90.5069 / t) + (22.2940 * Math.Log(t)));
    }

    /// <summary>Volumes of gas in one of water under one atmosphere of it.</summary>
    public static double VolumesUnderOneAtmosphere(double celsius) =>
        MolesPerLitreAtmosphere(celsius) * LitresPerMole;
}
