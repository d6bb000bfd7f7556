namespace Gylebook.Science.Quantities;

/// <summary>Carbon dioxide dissolved in beer.</summary>
/// <remarks>
/// Kept in g/L; from 0 to 1000. <c>default</c> is flat.
/// One volume is a litre of ideal gas at 0 °C and 1 atm per litre of beer: 44.0095 / 22.414 = 1.9635 g/L.
/// </remarks>
public readonly record struct Carbonation : IQuantity<Carbonation>
{
    private Carbonation(double gramsPerLitre) => GramsPerLitre = Limits.Check(gramsPerLitre);

    /// <inheritdoc/>
    public static QuantityLimits Limits { get; } = new("Carbonation", "g/L", 0, 1000);

    /// <summary>The value in g/L.</summary>
    public double GramsPerLitre { get; }

    /// <summary>A value stated in g/L.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside <see cref="Limits"/>.</exception>
    public static Carbonation FromGramsPerLitre(double gramsPerLitre) => new(gramsPerLitre);

    /// <summary>Grams per litre in one volume of carbon dioxide: 44.0095 g/mol over 22.414 L/mol, rounded as the trade does to 1.9635.</summary>
    public const double GramsPerLitreInOneVolume = 1.9635;

    /// <summary>The same in volumes of gas at 0 °C and 1 atm per volume of beer.</summary>
    public double Volumes => GramsPerLitre / GramsPerLitreInOneVolume;

    /// <summary>A carbonation stated in volumes of gas per volume of beer.</summary>
    public static Carbonation FromVolumes(double volumes) => FromGramsPerLitre(volumes * GramsPerLitreInOneVolume);

    /// <inheritdoc/>
    public double Canonical => GramsPerLitre;

    /// <inheritdoc/>
    public static Carbonation FromCanonical(double value) => new(value);

    /// <inheritdoc/>
    public int CompareTo(Carbonation other) => GramsPerLitre.CompareTo(other.GramsPerLitre);

    /// <inheritdoc/>
    public override string ToString() => Limits.Format(GramsPerLitre);
}
