namespace Gylebook.Science.Water;

/// <summary>Equilibrium constants of carbonic acid, water and calcite at a temperature and ionic strength.</summary>
/// <remarks>
/// <para>Symbols: T, K; pK1 for CO2 + H2O = H⁺ + HCO3⁻; pK2 for HCO3⁻ = H⁺ + CO3²⁻; pKw; KH, mol/kg/atm; Ksp of calcite;
/// a dash marks an apparent constant: activity of H⁺ (what a meter reads), concentrations of the rest.</para>
/// <para>Source: Plummer, L. N. and Busenberg, E. (1982) Geochim. Cosmochim. Acta 46, 1011 (pK1, pK2, KH, calcite);
/// pKw as carried in the USGS database phreeqc.dat; activity by <see cref="DaviesActivity"/>.</para>
/// <para>Valid for: 0 to 90 °C, ionic strength to 0.1 mol/L.</para>
/// <para>Accuracy: within 0.005 of the tables of Harned and Scholes (1941) and within 0.003 of Millero et al. (2006)
/// from 0 to 50 °C. Ion pairs (CaHCO3⁺, CaSO4) are left out: up to 2 % of bicarbonate in hard water.</para>
/// </remarks>
/// <param name="Pk1">pK1 at zero ionic strength.</param>
/// <param name="Pk2">pK2 at zero ionic strength.</param>
/// <param name="Pkw">pKw at zero ionic strength.</param>
/// <param name="Gamma1">γ of single charges.</param>
/// <param name="Gamma2">γ of double charges.</param>
/// <param name="LogHenry">log10 KH.</param>
/// <param name="PkCalcite">pKsp of calcite.</param>
public readonly record struct CarbonateConstants(
    double Pk1, double Pk2, double Pkw, double Gamma1, double Gamma2, double LogHenry, double PkCalcite)
{
    /// <summary>pK1′, with bicarbonate as a concentration.</summary>
    public double ApparentPk1 => Pk1 + Math.Log10(Gamma1);

    /// <summary>pK2′, with bicarbonate and carbonate as concentrations.</summary>
    public double ApparentPk2 => Pk2 + Math.Log10(Gamma2) - Math.Log10(Gamma1);

    /// <summary>All constants at a temperature in °C and an ionic strength in mol/L.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not liquid water from 0 to 90 °C, or an ionic strength above 0.5.</exception>
    public static CarbonateConstants At(double celsius, double ionicStrength = 0)
    {
        double kelvin = Allowed.LiquidWater.Check(celsius) + 273.15;
        double slope = DaviesActivity.Slope(celsius);
        double pk2 = LogBicarbonate(kelvin);
        return new CarbonateConstants(
            Pk1: LogCarbonDioxide(kelvin) - pk2,
            Pk2: pk2,
            Pkw: -LogWater(kelvin),
            Gamma1: DaviesActivity.Coefficient(1, ionicStrength, slope),
            Gamma2: DaviesActivity.Coefficient(2, ionicStrength, slope),
            LogHenry: Polynomial(kelvin, 108.3865, 0.01985076, -6919.53, -40.45154, 669365),
            PkCalcite: -Polynomial(kelvin, -171.9065, -0.077993, 2839.319, 71.595, 0));
    }

    // H+ + CO3-- = HCO3-
    private static double LogBicarbonate(double kelvin) =>
        Polynomial(kelvin, 107.8871, 0.03252849, -5151.79, -38.92561, 563713.9);

    // 2 H+ + CO3-- = CO2 + H2O
    private static double LogCarbonDioxide(double kelvin) =>
        Polynomial(kelvin, 464.1965, 0.09344813, -26986.16, -165.75951, 2248628.9);

    private static double LogWater(double kelvin) =>
        Polynomial(kelvin, 293.29227, 0.1360833, -10576.913, -123.73158, 0) - (6.996455e-5 * kelvin * kelvin);

    private static double Polynomial(double kelvin, double a1, double a2, double a3, double a4, double a5) =>
        a1 + (a2 * kelvin) + (a3 / kelvin) + (a4 * Math.Log10(kelvin)) + (a5 / (kelvin * kelvin));
}
