namespace Gylebook.Science.Quantities;

/// <summary>Ethanol by mass.</summary>
/// <remarks>
/// Kept in % ABW; from 0 to 100. <c>default</c> is no alcohol.
/// </remarks>
public readonly record struct AlcoholByMass : IQuantity<AlcoholByMass>
{
    private AlcoholByMass(double percent) => Percent = Limits.Check(percent);

    /// <inheritdoc/>
    public static QuantityLimits Limits { get; } = new("AlcoholByMass", "% ABW", 0, 100);

    /// <summary>The value in % ABW.</summary>
    public double Percent { get; }

    /// <summary>A value stated in % ABW.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside <see cref="Limits"/>.</exception>
    public static AlcoholByMass FromPercent(double percent) => new(percent);

    /// <inheritdoc/>
    public double Canonical => Percent;

    /// <inheritdoc/>
    public static AlcoholByMass FromCanonical(double value) => new(value);

    /// <inheritdoc/>
    public int CompareTo(AlcoholByMass other) => Percent.CompareTo(other.Percent);

    /// <inheritdoc/>
    public override string ToString() => Limits.Format(Percent);
}
