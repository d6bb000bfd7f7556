using Gylebook.Science.Quantities;

namespace Gylebook.Science.Water;

/// <summary>A water analysis as a laboratory prints it; null is "not stated".</summary>
/// <remarks>
/// Hardness and alkalinity come here in mEq/L, by <see cref="HardnessUnits"/>. Where two fields say the same thing, the
/// direct one is used and <see cref="WaterReportCheck"/> compares them.
/// </remarks>
public sealed record WaterReport
{
    private readonly double? _ph;
    private readonly double? _conductivity;

    /// <summary>Ca²⁺.</summary>
    public Concentration? Calcium { get; init; }

    /// <summary>Mg²⁺.</summary>
    public Concentration? Magnesium { get; init; }

    /// <summary>Na⁺.</summary>
    public Concentration? Sodium { get; init; }

    /// <summary>K⁺.</summary>
    public Concentration? Potassium { get; init; }

    /// <summary>Total alkalinity, to pH 4.3 or 4.5.</summary>
    public Equivalents? Alkalinity { get; init; }

    /// <summary>Bicarbonate as HCO3⁻.</summary>
    public Concentration? Bicarbonate { get; init; }

    /// <summary>Carbonate as CO3²⁻, beside bicarbonate.</summary>
    public Concentration? Carbonate { get; init; }

    /// <summary>Total hardness.</summary>
    public Equivalents? Hardness { get; init; }

    /// <summary>Sulphate as SO4²⁻.</summary>
    public Concentration? Sulphate { get; init; }

    /// <summary>Sulphate given as its sulphur, SO4-S.</summary>
    public Concentration? SulphateSulphur { get; init; }

    /// <summary>Cl⁻.</summary>
    public Concentration? Chloride { get; init; }

    /// <summary>Nitrate as NO3⁻.</summary>
    public Concentration? Nitrate { get; init; }

    /// <summary>Nitrate given as its nitrogen, NO3-N.</summary>
    public Concentration? NitrateNitrogen { get; init; }

    /// <summary>pH at room temperature.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 14.</exception>
    public double? Ph
    {
        get => _ph;
        init => _ph = value is { } ph ? Allowed.Ph.Check(ph) : null;
    }

    /// <summary>Conductivity at 25 °C, µS/cm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or not a number.</exception>
    public double? ConductivityMicrosiemens
    {
        get => _conductivity;
        init => _conductivity = value is { } conductivity ? Argument.MustBeWithin(conductivity, 0, 1e6) : null;
    }

    /// <summary>Alkalinity in mEq/L from whichever field states it; carbonate counts twice for each mole.</summary>
    public double AlkalinityMilliequivalents => Alkalinity is { } stated
        ? stated.MilliequivalentsPerLitre
        : ((Bicarbonate?.MilligramsPerLitre ?? 0) / AtomicMass.Bicarbonate)
            + ((Carbonate?.MilligramsPerLitre ?? 0) * 2 / AtomicMass.Carbonate);

    /// <summary>Sulphate in mg/L from whichever field states it.</summary>
    public double SulphateMilligrams => Sulphate?.MilligramsPerLitre
        ?? ((SulphateSulphur?.MilligramsPerLitre ?? 0) * HardnessUnits.SulphatePerSulphur);

    /// <summary>Nitrate in mg/L from whichever field states it.</summary>
    public double NitrateMilligrams => Nitrate?.MilligramsPerLitre
        ?? ((NitrateNitrogen?.MilligramsPerLitre ?? 0) * HardnessUnits.NitratePerNitrogen);

    /// <summary>
    /// The ions. A missing magnesium or calcium is what total hardness leaves for it; anything else missing is none.
    /// </summary>
    public IonProfile ToProfile() => new(
        Calcium?.MilligramsPerLitre ?? FromHardness(Ion.Calcium, Magnesium, Ion.Magnesium),
        Magnesium?.MilligramsPerLitre ?? FromHardness(Ion.Magnesium, Calcium, Ion.Calcium),
        Sodium?.MilligramsPerLitre ?? 0,
        Potassium?.MilligramsPerLitre ?? 0,
        AlkalinityMilliequivalents * AtomicMass.Bicarbonate,
        SulphateMilligrams,
        Chloride?.MilligramsPerLitre ?? 0,
        NitrateMilligrams);

    private double FromHardness(Ion missing, Concentration? other, Ion otherIon)
    {
        if (Hardness is not { } hardness || other is not { } known)
        {
            return 0;
        }

        double left = hardness.MilliequivalentsPerLitre - (known.MilligramsPerLitre / otherIon.EquivalentWeight());
        return Math.Max(0, left) * missing.EquivalentWeight();
    }
}
