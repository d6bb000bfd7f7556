namespace Gylebook.Science.Quantities;

/// <summary>Heat a vessel takes up per degree.</summary>
/// <remarks>
/// Kept in kJ/K; from 0 to 1e5. <c>default</c> is none.
/// </remarks>
public readonly record struct HeatCapacity : IQuantity<HeatCapacity>
{
    private HeatCapacity(double kilojoulesPerKelvin) => KilojoulesPerKelvin = Limits.Check(kilojoulesPerKelvin);

    /// <inheritdoc/>
    public static QuantityLimits Limits { get; } = new("HeatCapacity", "kJ/K", 0, 1e5);

    /// <summary>The value in kJ/K.</summary>
    public double KilojoulesPerKelvin { get; }

    /// <summary>A value stated in kJ/K.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside <see cref="Limits"/>.</exception>
    public static HeatCapacity FromKilojoulesPerKelvin(double kilojoulesPerKelvin) => new(kilojoulesPerKelvin);

    /// <inheritdoc/>
    public double Canonical => KilojoulesPerKelvin;

    /// <inheritdoc/>
    public static HeatCapacity FromCanonical(double value) => new(value);

    /// <inheritdoc/>
    public int CompareTo(HeatCapacity other) => KilojoulesPerKelvin.CompareTo(other.KilojoulesPerKelvin);

    /// <inheritdoc/>
    public override string ToString() => Limits.Format(KilojoulesPerKelvin);
}
