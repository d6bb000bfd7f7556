namespace Gylebook.Science.Water;

/// <summary>What is dissolved in a liquor, in mg/L by ion.</summary>
/// <remarks>
/// <c>default</c> is distilled water. All alkalinity stands under <see cref="Ion.Bicarbonate"/> (as mEq/L ×
/// 61.017), because alkalinity, unlike the bicarbonate ion itself, adds up when waters are mixed or salted.
/// It alone may fall below zero: then acid was added beyond the last alkalinity.
/// </remarks>
public readonly record struct IonProfile
{
    /// <summary>A profile from mg/L; what is left out is none.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A value is not a number, or below zero (bicarbonate may be).</exception>
    public IonProfile(
        double calcium = 0, double magnesium = 0, double sodium = 0, double potassium = 0,
        double bicarbonate = 0, double sulphate = 0, double chloride = 0, double nitrate = 0)
    {
        Calcium = Allowed.MilligramsPerLitre.Check(calcium);
        Magnesium = Allowed.MilligramsPerLitre.Check(magnesium);
        Sodium = Allowed.MilligramsPerLitre.Check(sodium);
        Potassium = Allowed.MilligramsPerLitre.Check(potassium);
        Bicarbonate = Allowed.SignedMilligramsPerLitre.Check(bicarbonate);
        Sulphate = Allowed.MilligramsPerLitre.Check(sulphate);
        Chloride = Allowed.MilligramsPerLitre.Check(chloride);
        Nitrate = Allowed.MilligramsPerLitre.Check(nitrate);
    }

    /// <summary>Water without ions.</summary>
    public static IonProfile Distilled => default;

    /// <summary>Ca²⁺, mg/L.</summary>
    public double Calcium { get; }

    /// <summary>Mg²⁺, mg/L.</summary>
    public double Magnesium { get; }

    /// <summary>Na⁺, mg/L.</summary>
    public double Sodium { get; }

    /// <summary>K⁺, mg/L.</summary>
    public double Potassium { get; }

    /// <summary>Alkalinity as HCO3⁻, mg/L.</summary>
    public double Bicarbonate { get; }

    /// <summary>SO4²⁻, mg/L.</summary>
    public double Sulphate { get; }

    /// <summary>Cl⁻, mg/L.</summary>
    public double Chloride { get; }

    /// <summary>NO3⁻, mg/L.</summary>
    public double Nitrate { get; }

    /// <summary>The mg/L of one ion.</summary>
    public double this[Ion ion] => ion switch
    {
        Ion.Calcium => Calcium,
        Ion.Magnesium => Magnesium,
        Ion.Sodium => Sodium,
        Ion.Potassium => Potassium,
        Ion.Bicarbonate => Bicarbonate,
        Ion.Sulphate => Sulphate,
        Ion.Chloride => Chloride,
        Ion.Nitrate => Nitrate,
        _ => throw new ArgumentOutOfRangeException(nameof(ion), ion, "No such ion."),
    };

    /// <summary>Alkalinity in mEq/L.</summary>
    public double AlkalinityMilliequivalents => Bicarbonate / AtomicMass.Bicarbonate;

    /// <summary>Ca and Mg together in mEq/L: total hardness.</summary>
    public double HardnessMilliequivalents => Milliequivalents(Ion.Calcium) + Milliequivalents(Ion.Magnesium);

    /// <summary>Ionic strength in mol/L: half the sum of concentration × charge².</summary>
    public double IonicStrength
    {
        get
        {
            double sum = 0;
            foreach (Ion ion in Ions.All)
            {
                sum += Math.Abs(Milliequivalents(ion)) * Math.Abs(ion.Charge());
            }

            return sum / 2000;
        }
    }

    /// <summary>One ion in mEq/L, without sign of its charge.</summary>
    public double Milliequivalents(Ion ion) => this[ion] / ion.EquivalentWeight();

    /// <summary>The same water with one ion at another mg/L.</summary>
    public IonProfile With(Ion ion, double milligramsPerLitre)
    {
        IonProfile self = this;
        return FromFunction(each => each == ion ? milligramsPerLitre : self[each]);
    }

    /// <summary>A profile from a rule giving the mg/L of each ion.</summary>
    public static IonProfile FromFunction(Func<Ion, double> milligramsPerLitre) => new(
        milligramsPerLitre(Ion.Calcium), milligramsPerLitre(Ion.Magnesium),
        milligramsPerLitre(Ion.Sodium), milligramsPerLitre(Ion.Potassium),
        milligramsPerLitre(Ion.Bicarbonate), milligramsPerLitre(Ion.Sulphate),
        milligramsPerLitre(Ion.Chloride), milligramsPerLitre(Ion.Nitrate));

    /// <summary>This water and another mixed, litres with litres.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A volume is negative, or there is no water at all.</exception>
    public IonProfile BlendedWith(IonProfile other, double litresOfThis, double litresOfOther)
    {
        double total = Argument.MustBeWithin(
            Argument.MustBeWithin(litresOfThis, 0, 1e6) + Argument.MustBeWithin(litresOfOther, 0, 1e6), 1e-12, 1e6, "litres of both");
        double share = litresOfThis / total;
        IonProfile self = this;
        return FromFunction(ion => (share * self[ion]) + ((1 - share) * other[ion]));
    }

    /// <summary>This water with a share of it replaced by distilled water.</summary>
    public IonProfile Diluted(double shareDistilled) =>
        BlendedWith(Distilled, 1 - Argument.MustBeWithin(shareDistilled, 0, 1), shareDistilled);

    /// <summary>Both sets of ions in the same litre.</summary>
    public static IonProfile operator +(IonProfile left, IonProfile right) =>
        FromFunction(ion => left[ion] + right[ion]);

    /// <summary>That many times as much of each ion.</summary>
    public static IonProfile operator *(IonProfile profile, double factor) =>
        FromFunction(ion => profile[ion] * factor);
}
