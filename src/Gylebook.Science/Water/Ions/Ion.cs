namespace Gylebook.Science.Water;

/// <summary>The ions of liquor that a brewer reads on a report and moves with salts.</summary>
public enum Ion
{
    /// <summary>Ca²⁺.</summary>
    Calcium,

    /// <summary>Mg²⁺.</summary>
    Magnesium,

    /// <summary>Na⁺.</summary>
    Sodium,

    /// <summary>K⁺.</summary>
    Potassium,

    /// <summary>All alkalinity, written as HCO3⁻: 61.017 mg for each mEq. Below zero it is free acid.</summary>
    Bicarbonate,

    /// <summary>SO4²⁻.</summary>
    Sulphate,

    /// <summary>Cl⁻.</summary>
    Chloride,

    /// <summary>NO3⁻.</summary>
    Nitrate,
}

/// <summary>Mass and charge of each ion.</summary>
public static class Ions
{
    /// <summary>Every ion, in the order of the enumeration.</summary>
    public static IReadOnlyList<Ion> All { get; } = Enum.GetValues<Ion>();

    /// <summary>Its charge with sign.</summary>
    public static int Charge(this Ion ion) => ion switch
    {
        Ion.Calcium or Ion.Magnesium => 2,
        Ion.Sodium or Ion.Potassium => 1,
        Ion.Sulphate => -2,
        Ion.Bicarbonate or Ion.Chloride or Ion.Nitrate => -1,
        _ => throw new ArgumentOutOfRangeException(nameof(ion), ion, "No such ion."),
    };

    /// <summary>Its molar mass in g/mol.</summary>
    public static double MolarMass(this Ion ion) => ion switch
    {
        Ion.Calcium => AtomicMass.Calcium,
        Ion.Magnesium => AtomicMass.Magnesium,
        Ion.Sodium => AtomicMass.Sodium,
        Ion.Potassium => AtomicMass.Potassium,
        Ion.Bicarbonate => AtomicMass.Bicarbonate,
        Ion.Sulphate => AtomicMass.Sulphate,
        Ion.Chloride => AtomicMass.Chlorine,
        Ion.Nitrate => AtomicMass.Nitrate,
        _ => throw new ArgumentOutOfRangeException(nameof(ion), ion, "No such ion."),
    };

    /// <summary>Its mass for one unit of charge, in mg/mEq.</summary>
    public static double EquivalentWeight(this Ion ion) => ion.MolarMass() / Math.Abs(ion.Charge());
}
