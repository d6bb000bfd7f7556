namespace Gylebook.Science.Quantities;

/// <summary>Heat or work per time.</summary>
/// <remarks>
/// Kept in kW; from 0 to 1e5. <c>default</c> is off.
/// </remarks>
public readonly record struct Power : IQuantity<Power>
{
    private Power(double kilowatts) => Kilowatts = Limits.Check(kilowatts);

    /// <inheritdoc/>
    public static QuantityLimits Limits { get; } = new("Power", "kW", 0, 1e5);

    /// <summary>The value in kW.</summary>
    public double Kilowatts { get; }

    /// <summary>A value stated in kW.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside <see cref="Limits"/>.</exception>
    public static Power FromKilowatts(double kilowatts) => new(kilowatts);

    /// <inheritdoc/>
    public double Canonical => Kilowatts;

    /// <inheritdoc/>
    public static Power FromCanonical(double value) => new(value);

    /// <inheritdoc/>
    public int CompareTo(Power other) => Kilowatts.CompareTo(other.Kilowatts);

    /// <inheritdoc/>
    public override string ToString() => Limits.Format(Kilowatts);
}
