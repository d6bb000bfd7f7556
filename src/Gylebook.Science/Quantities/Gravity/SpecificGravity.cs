namespace Gylebook.Science.Quantities;

/// <summary>Density of a liquid over that of water, both in air and at 20 °C: what a hydrometer reads.</summary>
/// <remarks>
/// Kept in SG; from 0.5 to 2. <c>default</c> is water, 1.000.
/// Stored as its distance from water, so that <c>default</c> is water.
/// </remarks>
public readonly record struct SpecificGravity : IQuantity<SpecificGravity>
{
    private readonly double _aboveWater;

    private SpecificGravity(double ratio) => _aboveWater = Limits.Check(ratio) - 1;

    /// <inheritdoc/>
    public static QuantityLimits Limits { get; } = new("SpecificGravity", "SG", 0.5, 2);

    /// <summary>The gravity itself: 1.050 for an ordinary wort.</summary>
    public double Ratio => 1 + _aboveWater;

    /// <summary>A value stated in SG.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside <see cref="Limits"/>.</exception>
    public static SpecificGravity FromRatio(double ratio) => new(ratio);

    /// <inheritdoc/>
    public double Canonical => Ratio;

    /// <inheritdoc/>
    public static SpecificGravity FromCanonical(double value) => new(value);

    /// <inheritdoc/>
    public int CompareTo(SpecificGravity other) => Ratio.CompareTo(other.Ratio);

    /// <inheritdoc/>
    public override string ToString() => Limits.Format(Ratio);
}
