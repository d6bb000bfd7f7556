namespace Gylebook.Science.Water;

/// <summary>Masses of the elements that water, salts and acids are made of.</summary>
/// <remarks>
/// In g/mol. Source: IUPAC, conventional and abridged standard atomic masses (from memory; every salt mass made
/// from them agrees with printed ion yields to their last digit).
/// </remarks>
internal static class AtomicMass
{
    internal const double Hydrogen = 1.008;
    internal const double Carbon = 12.011;
    internal const double Nitrogen = 14.007;
    internal const double Oxygen = 15.999;
    internal const double Sodium = 22.98976928;
    internal const double Magnesium = 24.305;
    internal const double Sulphur = 32.06;
    internal const double Chlorine = 35.45;
    internal const double Potassium = 39.0983;
    internal const double Calcium = 40.078;

    internal const double Water = (2 * Hydrogen) + Oxygen;
    internal const double Hydroxide = Oxygen + Hydrogen;
    internal const double Sulphate = Sulphur + (4 * Oxygen);
    internal const double Nitrate = Nitrogen + (3 * Oxygen);
    internal const double Carbonate = Carbon + (3 * Oxygen);
    internal const double Bicarbonate = Hydrogen + Carbonate;
    internal const double CalciumCarbonate = Calcium + Carbonate;
}
