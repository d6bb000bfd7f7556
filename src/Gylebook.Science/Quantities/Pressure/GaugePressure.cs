namespace Gylebook.Science.Quantities;

/// <summary>Pressure above that of the air around, as a gauge shows it.</summary>
/// <remarks>
/// Kept in bar; from -1.1 to 1000. <c>default</c> is no overpressure.
/// </remarks>
public readonly record struct GaugePressure : IQuantity<GaugePressure>
{
    private GaugePressure(double bar) => Bar = Limits.Check(bar);

    /// <inheritdoc/>
    public static QuantityLimits Limits { get; } = new("GaugePressure", "bar", -1.1, 1000);

    /// <summary>The value in bar.</summary>
    public double Bar { get; }

    /// <summary>A value stated in bar.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside <see cref="Limits"/>.</exception>
    public static GaugePressure FromBar(double bar) => new(bar);

    /// <inheritdoc/>
    public double Canonical => Bar;

    /// <inheritdoc/>
    public static GaugePressure FromCanonical(double value) => new(value);

    /// <inheritdoc/>
    public int CompareTo(GaugePressure other) => Bar.CompareTo(other.Bar);

    /// <inheritdoc/>
    public override string ToString() => Limits.Format(Bar);
}
