namespace Gylebook.Science.Quantities;

/// <summary>Hardness or alkalinity by charge.</summary>
/// <remarks>
/// Kept in mEq/L; from -1e4 to 1e4. <c>default</c> is none.
/// </remarks>
public readonly record struct Equivalents : IQuantity<Equivalents>
{
    private Equivalents(double milliequivalentsPerLitre) => MilliequivalentsPerLitre = Limits.Check(milliequivalentsPerLitre);

    /// <inheritdoc/>
    public static QuantityLimits Limits { get; } = new("Equivalents", "mEq/L", -1e4, 1e4);

    /// <summary>The value in mEq/L.</summary>
    public double MilliequivalentsPerLitre { get; }

    /// <summary>A value stated in mEq/L.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside <see cref="Limits"/>.</exception>
    public static Equivalents FromMilliequivalentsPerLitre(double milliequivalentsPerLitre) => new(milliequivalentsPerLitre);

    /// <inheritdoc/>
    public double Canonical => MilliequivalentsPerLitre;

    /// <inheritdoc/>
    public static Equivalents FromCanonical(double value) => new(value);

    /// <inheritdoc/>
    public int CompareTo(Equivalents other) => MilliequivalentsPerLitre.CompareTo(other.MilliequivalentsPerLitre);

    /// <inheritdoc/>
    public override string ToString() => Limits.Format(MilliequivalentsPerLitre);
}
