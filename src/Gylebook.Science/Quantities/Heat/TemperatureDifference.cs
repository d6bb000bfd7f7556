namespace Gylebook.Science.Quantities;

/// <summary>How far two temperatures lie apart.</summary>
/// <remarks>
/// Kept in K; from -2273.15 to 2273.15. <c>default</c> is no difference.
/// </remarks>
public readonly record struct TemperatureDifference : IQuantity<TemperatureDifference>
{
    private TemperatureDifference(double kelvins) => Kelvins = Limits.Check(kelvins);

    /// <inheritdoc/>
    public static QuantityLimits Limits { get; } = new("TemperatureDifference", "K", -2273.15, 2273.15);

    /// <summary>The value in K.</summary>
    public double Kelvins { get; }

    /// <summary>A value stated in K.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside <see cref="Limits"/>.</exception>
    public static TemperatureDifference FromKelvins(double kelvins) => new(kelvins);

    /// <inheritdoc/>
    public double Canonical => Kelvins;

    /// <inheritdoc/>
    public static TemperatureDifference FromCanonical(double value) => new(value);

    /// <inheritdoc/>
    public int CompareTo(TemperatureDifference other) => Kelvins.CompareTo(other.Kelvins);

    /// <inheritdoc/>
    public override string ToString() => Limits.Format(Kelvins);
}
