namespace Gylebook.Science.Quantities;

/// <summary>Litres that go with a kilogram of something: what grain keeps, what hops hold.</summary>
/// <remarks>
/// Kept in L/kg; from 0 to 1000. <c>default</c> is none.
/// </remarks>
public readonly record struct SpecificVolume : IQuantity<SpecificVolume>
{
    private SpecificVolume(double litresPerKilogram) => LitresPerKilogram = Limits.Check(litresPerKilogram);

    /// <inheritdoc/>
    public static QuantityLimits Limits { get; } = new("SpecificVolume", "L/kg", 0, 1000);

    /// <summary>The value in L/kg.</summary>
    public double LitresPerKilogram { get; }

    /// <summary>A value stated in L/kg.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside <see cref="Limits"/>.</exception>
    public static SpecificVolume FromLitresPerKilogram(double litresPerKilogram) => new(litresPerKilogram);

    /// <inheritdoc/>
    public double Canonical => LitresPerKilogram;

    /// <inheritdoc/>
    public static SpecificVolume FromCanonical(double value) => new(value);

    /// <inheritdoc/>
    public int CompareTo(SpecificVolume other) => LitresPerKilogram.CompareTo(other.LitresPerKilogram);

    /// <inheritdoc/>
    public override string ToString() => Limits.Format(LitresPerKilogram);
}
