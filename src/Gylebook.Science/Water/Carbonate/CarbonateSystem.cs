namespace Gylebook.Science.Water;

/// <summary>Where the carbonate of a water stands, in mmol/L.</summary>
/// <param name="CarbonDioxide">Dissolved CO2 with carbonic acid.</param>
/// <param name="Bicarbonate">HCO3⁻.</param>
/// <param name="Carbonate">CO3²⁻.</param>
/// <param name="Hydroxide">OH⁻.</param>
/// <param name="Hydrogen">H⁺.</param>
public readonly record struct CarbonateSpecies(
    double CarbonDioxide, double Bicarbonate, double Carbonate, double Hydroxide, double Hydrogen)
{
    /// <summary>CO2, bicarbonate and carbonate together.</summary>
    public double Total => CarbonDioxide + Bicarbonate + Carbonate;
}

/// <summary>Carbonate equilibria: distribution, pH with and without air, and acid to a pH.</summary>
/// <remarks>
/// <para>Symbols: Alk, alkalinity mEq/L = HCO3 + 2 CO3 + OH − H; CT, total carbonate mmol/L; f(pH), mean charge of CT;
/// W(pH) = OH − H, mEq/L; so that Alk = CT f + W at every pH.</para>
/// <para>Source: Stumm, W. and Morgan, J. J. (1996) Aquatic Chemistry, 3rd ed., ch. 4; constants by
/// <see cref="CarbonateConstants"/>.</para>
/// <para>Valid for: fresh water, ionic strength to 0.1 mol/L.</para>
/// <para>Accuracy: against the USGS code PHREEQC, which counts ion pairs, 2.2 % of a species at worst in hard water and
/// 0.0005 mEq/L on a titration.</para>
/// <para>Notes: alkalinity counts to the carbonic acid equivalence point. A laboratory that titrates to a fixed
/// pH of 4.5 prints about 0.03 mEq/L more.</para>
/// </remarks>
public static class CarbonateSystem
{
    /// <summary>CO2 of outdoor air in atm, 10^−3.38, as the published checks have it.</summary>
    public const double AirCarbonDioxide = 4.1686938e-4;

    /// <summary>f: charge carried by each mole of carbonate at a pH, from 0 to 2.</summary>
    public static double ChargeFraction(in CarbonateConstants constants, double ph)
    {
        double carbonDioxide = Math.Pow(10, constants.ApparentPk1 - ph);
        double carbonate = Math.Pow(10, ph - constants.ApparentPk2);
        return (1 + (2 * carbonate)) / (carbonDioxide + 1 + carbonate);
    }

    /// <summary>W: hydroxide less hydrogen in mEq/L.</summary>
    public static double WaterCharge(in CarbonateConstants constants, double ph) =>
        1000 * (Math.Pow(10, ph - constants.Pkw) - Math.Pow(10, -ph)) / constants.Gamma1;

    /// <summary>Charge of carbonate and water together at a pH, mEq/L: rises with pH.</summary>
    public static double Charge(in CarbonateConstants constants, double totalCarbonate, double ph) =>
        (totalCarbonate * ChargeFraction(constants, ph)) + WaterCharge(constants, ph);

    /// <summary>Total carbonate in mmol/L of a water whose alkalinity and pH are known; never below zero.</summary>
    /// <remarks>Where pH and alkalinity contradict each other (an alkalinity below that of the hydroxide), it is none.</remarks>
    public static double TotalCarbonate(in CarbonateConstants constants, double alkalinity, double ph)
    {
        double charge = Allowed.Alkalinity.Check(alkalinity) - WaterCharge(constants, Allowed.Ph.Check(ph));
        return Math.Max(0, charge / ChargeFraction(constants, ph));
    }

    /// <summary>The species of a water whose alkalinity (mEq/L) and pH are known.</summary>
    public static CarbonateSpecies Distribution(in CarbonateConstants constants, double alkalinity, double ph)
    {
        double total = TotalCarbonate(constants, alkalinity, ph);
        double carbonDioxide = Math.Pow(10, constants.ApparentPk1 - ph);
        double carbonate = Math.Pow(10, ph - constants.ApparentPk2);
        double bicarbonate = total / (carbonDioxide + 1 + carbonate);
        return new CarbonateSpecies(
            bicarbonate * carbonDioxide,
            bicarbonate,
            bicarbonate * carbonate,
            1000 * Math.Pow(10, ph - constants.Pkw) / constants.Gamma1,
            1000 * Math.Pow(10, -ph) / constants.Gamma1);
    }

    /// <summary>pH of a water in a closed vessel, from alkalinity (mEq/L) and total carbonate (mmol/L).</summary>
    /// <exception cref="Numerics.DidNotConvergeException">No pH from 0 to 14 carries such an alkalinity.</exception>
    public static double ClosedPh(CarbonateConstants constants, double alkalinity, double totalCarbonate)
    {
        double alk = Allowed.Alkalinity.Check(alkalinity);
        double total = Allowed.TotalCarbonate.Check(totalCarbonate);
        return Allowed.PhScale.Root(ph => alk - Charge(constants, total, ph), "pH of a closed water");
    }

    /// <summary>pH of a water that has come to rest with CO2 at a pressure in atm.</summary>
    /// <exception cref="Numerics.DidNotConvergeException">No pH from 0 to 14 carries such an alkalinity.</exception>
    public static double OpenPh(CarbonateConstants constants, double alkalinity, double carbonDioxideAtm)
    {
        double alk = Allowed.Alkalinity.Check(alkalinity);
        double pressure = Allowed.Pressure.Check(carbonDioxideAtm);
        return Allowed.PhScale.Root(ph => alk - OpenAlkalinity(constants, ph, pressure), "pH of a water in air");
    }

    /// <summary>Alkalinity in mEq/L of a water that is at rest with CO2 at a pressure in atm and has that pH.</summary>
    public static double OpenAlkalinity(CarbonateConstants constants, double ph, double carbonDioxideAtm)
    {
        double dissolved = 1000 * Math.Pow(10, constants.LogHenry) * Allowed.Pressure.Check(carbonDioxideAtm);
        double bicarbonate = dissolved * Math.Pow(10, Allowed.Ph.Check(ph) - constants.ApparentPk1);
        double carbonate = bicarbonate * Math.Pow(10, ph - constants.ApparentPk2);
        return bicarbonate + (2 * carbonate) + WaterCharge(constants, ph);
    }

    /// <summary>Acid in mEq/L that takes a water to a pH once its CO2 is at rest with that of the air; its own pH does not matter.</summary>
    /// <remarks>Almost all alkalinity must go: what a closed vessel holds back as CO2 escapes, and takes hours. Below zero, alkali.</remarks>
    public static double AcidToOpenPh(CarbonateConstants constants, double alkalinity, double targetPh, double carbonDioxideAtm) =>
        Allowed.Alkalinity.Check(alkalinity) - OpenAlkalinity(constants, targetPh, carbonDioxideAtm);

    /// <summary>Acid in mEq/L that takes a water from its pH to another, CO2 kept in: for sparge liquor.</summary>
    /// <remarks>
    /// Below zero, alkali is wanted instead. Add acid to water, never water to acid; keep eyes and hands covered.
    /// </remarks>
    public static double AcidToPh(in CarbonateConstants constants, double alkalinity, double ph, double targetPh)
    {
        double total = TotalCarbonate(constants, alkalinity, ph);
        return Charge(constants, total, ph) - Charge(constants, total, Allowed.Ph.Check(targetPh));
    }
}
