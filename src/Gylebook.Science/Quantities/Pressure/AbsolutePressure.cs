namespace Gylebook.Science.Quantities;

/// <summary>Pressure above that of empty space.</summary>
/// <remarks>
/// Kept in bar; from 0 to 1000. <c>default</c> is a vacuum.
/// </remarks>
public readonly record struct AbsolutePressure : IQuantity<AbsolutePressure>
{
    private AbsolutePressure(double bar) => Bar = Limits.Check(bar);

    /// <inheritdoc/>
    public static QuantityLimits Limits { get; } = new("AbsolutePressure", "bar", 0, 1000);

    /// <summary>The value in bar.</summary>
    public double Bar { get; }

    /// <summary>A value stated in bar.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside <see cref="Limits"/>.</exception>
    public static AbsolutePressure FromBar(double bar) => new(bar);

    /// <inheritdoc/>
    public double Canonical => Bar;

    /// <inheritdoc/>
    public static AbsolutePressure FromCanonical(double value) => new(value);

    /// <inheritdoc/>
    public int CompareTo(AbsolutePressure other) => Bar.CompareTo(other.Bar);

    /// <inheritdoc/>
    public override string ToString() => Limits.Format(Bar);
}
