namespace Gylebook.Science.Water;

/// <summary>Alkalinity left after calcium and magnesium have set malt phosphate's protons free.</summary>
/// <remarks>
/// <para>Symbols: RA = Alk − Ca/3.5 − Mg/7, all in mEq/L.</para>
/// <para>Source: Kolbach, P. (1953) Monatsschrift für Brauerei 6, 49; MEBAK W-030.01.900 has the same definition.</para>
/// <para>Valid for: comparing liquors. Kolbach measured knocked-out wort of 12 °P, not the mash.</para>
/// <para>Accuracy: the magnesium factor has no second measurement here; calcium's effect saturates above about
/// 100 mg/L (see <c>MashPhCalcium</c>).</para>
/// </remarks>
public static class ResidualAlkalinity
{
    /// <summary>mEq of calcium for each mEq of protons.</summary>
    public const double CalciumPerProton = 3.5;

    /// <summary>mEq of magnesium for each mEq of protons.</summary>
    public const double MagnesiumPerProton = 7;

    /// <summary>Rise of 12 °P kettle wort pH per mEq/L: 0.3 for 10 German degrees (Kolbach 1953, from memory).</summary>
    public const double KettleWortPhPerMilliequivalent = 0.3 / (10 * HardnessUnits.GermanDegree);

    /// <summary>Residual alkalinity in mEq/L from alkalinity, calcium and magnesium in mEq/L.</summary>
    public static double FromMilliequivalents(double alkalinity, double calcium, double magnesium) =>
        alkalinity - (calcium / CalciumPerProton) - (magnesium / MagnesiumPerProton);

    /// <summary>Residual alkalinity of a liquor, mEq/L.</summary>
    public static double Of(IonProfile water) => FromMilliequivalents(
        water.AlkalinityMilliequivalents, water.Milliequivalents(Ion.Calcium), water.Milliequivalents(Ion.Magnesium));

    /// <summary>Residual alkalinity of a liquor, mg/L as CaCO3.</summary>
    public static double AsCalciumCarbonate(IonProfile water) => Of(water) / HardnessUnits.MilligramsCalciumCarbonate;
}
