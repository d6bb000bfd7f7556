namespace Gylebook.Science.Quantities;

/// <summary>Bitterness units: milligrams of iso-alpha acids and their like per litre.</summary>
/// <remarks>
/// Kept in IBU; from 0 to 100000. <c>default</c> is none.
/// </remarks>
public readonly record struct Bitterness : IQuantity<Bitterness>
{
    private Bitterness(double ibu) => Ibu = Limits.Check(ibu);

    /// <inheritdoc/>
    public static QuantityLimits Limits { get; } = new("Bitterness", "IBU", 0, 100000);

    /// <summary>The value in IBU.</summary>
    public double Ibu { get; }

    /// <summary>A value stated in IBU.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside <see cref="Limits"/>.</exception>
    public static Bitterness FromIbu(double ibu) => new(ibu);

    /// <inheritdoc/>
    public double Canonical => Ibu;

    /// <inheritdoc/>
    public static Bitterness FromCanonical(double value) => new(value);

    /// <inheritdoc/>
    public int CompareTo(Bitterness other) => Ibu.CompareTo(other.Ibu);

    /// <inheritdoc/>
    public override string ToString() => Limits.Format(Ibu);
}
