namespace Gylebook.Science.Quantities;

/// <summary>A dissolved mass per volume of liquid.</summary>
/// <remarks>
/// Kept in mg/L; from 0 to 1e6. <c>default</c> is none.
/// </remarks>
public readonly record struct Concentration : IQuantity<Concentration>
{
    private Concentration(double milligramsPerLitre) => MilligramsPerLitre = Limits.Check(milligramsPerLitre);

    /// <inheritdoc/>
    public static QuantityLimits Limits { get; } = new("Concentration", "mg/L", 0, 1e6);

    /// <summary>The value in mg/L.</summary>
    public double MilligramsPerLitre { get; }

    /// <summary>A value stated in mg/L.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside <see cref="Limits"/>.</exception>
    public static Concentration FromMilligramsPerLitre(double milligramsPerLitre) => new(milligramsPerLitre);

    /// <inheritdoc/>
    public double Canonical => MilligramsPerLitre;

    /// <inheritdoc/>
    public static Concentration FromCanonical(double value) => new(value);

    /// <inheritdoc/>
    public int CompareTo(Concentration other) => MilligramsPerLitre.CompareTo(other.MilligramsPerLitre);

    /// <inheritdoc/>
    public override string ToString() => Limits.Format(MilligramsPerLitre);
}
