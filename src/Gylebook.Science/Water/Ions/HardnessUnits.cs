namespace Gylebook.Science.Water;

/// <summary>One mEq/L of hardness or alkalinity in the units that laboratories print.</summary>
/// <remarks>
/// <para>Symbols: each constant is mEq/L for one of that unit; multiply to enter, divide to print.</para>
/// <para>Source: the definitions (German degree 10 mg/L CaO, French degree 10 mg/L CaCO3, Clark degree one grain
/// in an imperial gallon, US grain in a US gallon, both as CaCO3) with IUPAC atomic masses.</para>
/// <para>Valid for: any concentration. Accuracy: that of the definitions.</para>
/// </remarks>
public static class HardnessUnits
{
    /// <summary>1 mg/L as CaCO3.</summary>
    public const double MilligramsCalciumCarbonate = 2 / AtomicMass.CalciumCarbonate;

    /// <summary>1 mmol/L of a divalent ion.</summary>
    public const double Millimoles = 2;

    /// <summary>1 German degree (dH): 10 mg/L CaO.</summary>
    public const double GermanDegree = 20 / (AtomicMass.Calcium + AtomicMass.Oxygen);

    /// <summary>1 French degree (fH): 10 mg/L CaCO3.</summary>
    public const double FrenchDegree = 10 * MilligramsCalciumCarbonate;

    /// <summary>1 Clark (English) degree: one grain of CaCO3, 64.79891 mg, in 4.54609 L.</summary>
    public const double ClarkDegree = 64.79891 / 4.54609 * MilligramsCalciumCarbonate;

    /// <summary>1 grain of CaCO3 in a US gallon of 3.785411784 L.</summary>
    public const double UsGrain = 64.79891 / 3.785411784 * MilligramsCalciumCarbonate;

    /// <summary>mg sulphate for 1 mg sulphate-sulphur, SO4-S.</summary>
    public const double SulphatePerSulphur = AtomicMass.Sulphate / AtomicMass.Sulphur;

    /// <summary>mg nitrate for 1 mg nitrate-nitrogen, NO3-N.</summary>
    public const double NitratePerNitrogen = AtomicMass.Nitrate / AtomicMass.Nitrogen;
}
