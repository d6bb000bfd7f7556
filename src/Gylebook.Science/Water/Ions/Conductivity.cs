namespace Gylebook.Science.Water;

/// <summary>Electrical conductivity that an analysis ought to have.</summary>
/// <remarks>
/// <para>Symbols: λ°, equivalent conductivity at infinite dilution, S cm²/eq; c, mEq/L; z, charge; z′, mean charge of the
/// opposite ions by equivalents; I, mol/L; λ = λ° − z (0.229 z′ λ° + 30.1) √I/(1 + 1.3 √I); κ = Σ λ c, µS/cm.</para>
/// <para>Source: Onsager's limiting law with the ion size of Robinson, R. A. and Stokes, R. H. (1959) Electrolyte Solutions,
/// ch. 7; λ° from the CRC Handbook of Chemistry and Physics (both from memory).</para>
/// <para>Valid for: 25 °C, to about 2500 µS/cm, pH 6 to 9.</para>
/// <para>Accuracy: 1 % on single chlorides of the CRC Handbook at 10 mEq/L, 2 % on sodium sulphate; sulphates pair, those of
/// calcium and magnesium more so, and conduct a few per cent less. Standard Methods 1030 E takes a ratio from 0.9 to 1.1 to the measured value as
/// agreement (from memory).</para>
/// <para>Notes: the shortcut κ = y² Σ λ° c with the activity coefficient y, found in water manuals, is 13 % low for
/// potassium chloride of 0.01 mol/L; we do not use it.</para>
/// </remarks>
public static class Conductivity
{
    private const double Relaxation = 0.229;
    private const double Electrophoresis = 30.1;
    private const double IonSize = 1.3;

    /// <summary>Calculated conductivity at 25 °C in µS/cm.</summary>
    public static double MicrosiemensPerCentimetre(IonProfile water)
    {
        double root = Math.Sqrt(Math.Max(0, water.IonicStrength));
        double crowding = root / (1 + (IonSize * root));
        double cationCharge = MeanCharge(water, sign: 1), anionCharge = MeanCharge(water, sign: -1);
        double sum = 0;
        foreach (Ion ion in Ions.All)
        {
            int charge = ion.Charge();
            double free = AtInfiniteDilution(ion);
            double opposite = charge > 0 ? anionCharge : cationCharge;
            double slowing = Math.Abs(charge) * ((Relaxation * opposite * free) + Electrophoresis) * crowding;
            sum += Math.Max(0, free - slowing) * Math.Abs(water.Milliequivalents(ion));
        }

        return sum;
    }

    private static double MeanCharge(IonProfile water, int sign)
    {
        double weighted = 0, total = 0;
        foreach (Ion ion in Ions.All)
        {
            if (Math.Sign(ion.Charge()) == sign)
            {
                double equivalents = Math.Abs(water.Milliequivalents(ion));
                weighted += equivalents * Math.Abs(ion.Charge());
                total += equivalents;
            }
        }

        return total == 0 ? 1 : weighted / total;
    }

    private static double AtInfiniteDilution(Ion ion) => ion switch
    {
        Ion.Calcium => 59.5,
        Ion.Magnesium => 53.1,
        Ion.Sodium => 50.1,
        Ion.Potassium => 73.5,
        Ion.Bicarbonate => 44.5,
        Ion.Sulphate => 80.0,
        Ion.Chloride => 76.3,
        Ion.Nitrate => 71.4,
        _ => throw new ArgumentOutOfRangeException(nameof(ion), ion, "No such ion."),
    };
}
