namespace Gylebook.Science.Water;

/// <summary>A water that has come to rest with chalk and air.</summary>
/// <param name="ChalkMillimoles">CaCO3 gone into each litre, mmol; below zero it fell out.</param>
/// <param name="AlkalinityMilliequivalents">Alkalinity then, mEq/L.</param>
/// <param name="Ph">pH then.</param>
public readonly record struct CalciteRest(double ChalkMillimoles, double AlkalinityMilliequivalents, double Ph)
{
    /// <summary>Grams of chalk gone into each litre.</summary>
    public double ChalkGramsPerLitre => ChalkMillimoles * AtomicMass.CalciumCarbonate / 1000;
}

/// <summary>How much chalk a water can really hold.</summary>
/// <remarks>
/// <para>Symbols: at rest {Ca}{CO3} = Ksp and {CO2} = KH pCO2, braces for activities; the pH is where charges cancel. Calcium
/// stands as Ca²⁺, CaHCO3⁺ and CaCO3 in solution.</para>
/// <para>Source: Plummer, L. N. and Busenberg, E. (1982) Geochim. Cosmochim. Acta 46, 1011: calcite and both ion pairs
/// (coefficients of the pairs from memory; they give the printed 1.11 and 3.22 at 25 °C).</para>
/// <para>Valid for: 0 to 90 °C; water at rest with air, which takes hours to days.</para>
/// <para>Accuracy: 2 % against PHREEQC, which prints alkalinity 1.10 mEq/L and pH 8.21 at 25 °C in air; ours is 1.086 and
/// 8.20.</para>
/// <para>Notes: about 55 mg/L of chalk, however much is stirred in. Counting a gram of chalk in a litre as 1000 mg/L
/// alkalinity assumes CO2 or acid that plain liquor does not have.</para>
/// </remarks>
public static class CalciteEquilibrium
{
    private const int IonicStrengthRounds = 12;

    /// <summary>The water at rest with solid chalk and CO2 at a pressure in atm.</summary>
    /// <param name="water">The water before.</param>
    /// <param name="celsius">Its temperature, °C.</param>
    /// <param name="carbonDioxideAtm">CO2 of the air over it, atm.</param>
    /// <exception cref="Numerics.DidNotConvergeException">No pH from 0 to 14 balances its charges.</exception>
    public static CalciteRest WithChalk(
        IonProfile water, double celsius = 25, double carbonDioxideAtm = CarbonateSystem.AirCarbonDioxide)
    {
        double pressure = Allowed.Pressure.Check(carbonDioxideAtm);
        double calcium = water.Calcium / AtomicMass.Calcium;
        double alkalinity = water.AlkalinityMilliequivalents;
        double dissolved = 0, ph = 7;
        for (int round = 0; round < IonicStrengthRounds; round++)
        {
            // Ca at charge 2 and two HCO3 for each CaCO3: half of (4 + 2) mmol each.
            double ionicStrength = Math.Clamp(water.IonicStrength + (3e-3 * dissolved), 0, 0.5);
            CarbonateConstants constants = CarbonateConstants.At(celsius, ionicStrength);
            AtRest rest = new(constants, celsius, pressure);

            // All other ions keep their charge: what alkalinity is not balanced by calcium.
            double others = alkalinity - (2 * calcium);
            ph = Allowed.PhScale.Root(each => others + rest.Charge(each), "pH of a water with chalk");
            dissolved = rest.Calcium(ph) - calcium;
        }

        return new CalciteRest(dissolved, alkalinity + (2 * dissolved), ph);
    }

    /// <summary>Saturation index log Ω of a water of known pH, ion pairs left out: above zero chalk can fall out.</summary>
    /// <remarks>Up to 0.06 above PHREEQC, which counts the pairs.</remarks>
    public static double SaturationIndex(IonProfile water, double ph, double celsius)
    {
        CarbonateConstants constants = CarbonateConstants.At(celsius, Math.Min(0.5, water.IonicStrength));
        double carbonate = CarbonateSystem.Distribution(constants, water.AlkalinityMilliequivalents, ph).Carbonate;
        double product = Math.Max(1e-300, water.Calcium / AtomicMass.Calcium * carbonate * 1e-6);
        return Math.Log10(product) + (2 * Math.Log10(constants.Gamma2)) + constants.PkCalcite;
    }

    /// <summary>log K of Ca²⁺ + HCO3⁻ = CaHCO3⁺.</summary>
    internal static double LogBicarbonatePair(double kelvin) =>
        1209.120 + (0.31294 * kelvin) - (34765.05 / kelvin) - (478.782 * Math.Log10(kelvin));

    /// <summary>log K of Ca²⁺ + CO3²⁻ = CaCO3 in solution.</summary>
    internal static double LogCarbonatePair(double kelvin) =>
        -1228.732 - (0.299444 * kelvin) + (35512.75 / kelvin) + (485.818 * Math.Log10(kelvin));

    /// <summary>Species in mmol/L of a water at rest with calcite and CO2, at any pH.</summary>
    private readonly struct AtRest(CarbonateConstants constants, double celsius, double carbonDioxideAtm)
    {
        private readonly double _carbonDioxide = Math.Pow(10, constants.LogHenry) * carbonDioxideAtm;
        private readonly double _kelvin = celsius + 273.15;

        /// <summary>Charge of calcium, carbonate and water, mEq/L: falls as pH rises.</summary>
        internal double Charge(double ph)
        {
            double bicarbonate = BicarbonateActivity(ph) / constants.Gamma1;
            double carbonate = CarbonateActivity(ph) / constants.Gamma2;
            double calcium = CalciumActivity(ph) / constants.Gamma2;
            return (1000 * ((2 * calcium) + Pair(ph) - bicarbonate - (2 * carbonate)))
                - CarbonateSystem.WaterCharge(constants, ph);
        }

        /// <summary>All calcium in solution, mmol/L.</summary>
        internal double Calcium(double ph)
        {
            double neutral = Math.Pow(10, LogCarbonatePair(_kelvin) - constants.PkCalcite);
            return 1000 * ((CalciumActivity(ph) / constants.Gamma2) + Pair(ph) + neutral);
        }

        private double BicarbonateActivity(double ph) => _carbonDioxide * Math.Pow(10, ph - constants.Pk1);

        private double CarbonateActivity(double ph) => BicarbonateActivity(ph) * Math.Pow(10, ph - constants.Pk2);

        private double CalciumActivity(double ph) => Math.Pow(10, -constants.PkCalcite) / CarbonateActivity(ph);

        private double Pair(double ph) =>
            Math.Pow(10, LogBicarbonatePair(_kelvin)) * CalciumActivity(ph) * BicarbonateActivity(ph) / constants.Gamma1;
    }
}
