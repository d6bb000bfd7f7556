namespace Gylebook.Science.Quantities;

/// <summary>Ethanol by volume at 20 °C.</summary>
/// <remarks>
/// Kept in % ABV; from 0 to 100. <c>default</c> is no alcohol.
/// </remarks>
public readonly record struct AlcoholByVolume : IQuantity<AlcoholByVolume>
{
    private AlcoholByVolume(double percent) => Percent = Limits.Check(percent);

    /// <inheritdoc/>
    public static QuantityLimits Limits { get; } = new("AlcoholByVolume", "% ABV", 0, 100);

    /// <summary>The value in % ABV.</summary>
    public double Percent { get; }

    /// <summary>A value stated in % ABV.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside <see cref="Limits"/>.</exception>
    public static AlcoholByVolume FromPercent(double percent) => new(percent);

    /// <inheritdoc/>
    public double Canonical => Percent;

    /// <inheritdoc/>
    public static AlcoholByVolume FromCanonical(double value) => new(value);

    /// <inheritdoc/>
    public int CompareTo(AlcoholByVolume other) => Percent.CompareTo(other.Percent);

    /// <inheritdoc/>
    public override string ToString() => Limits.Format(Percent);
}
