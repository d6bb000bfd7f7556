namespace Gylebook.Science.Quantities;

/// <summary>A share of a whole, from nothing to all of it.</summary>
/// <remarks>
/// Kept in the ratio itself; from 0 to 1. <c>default</c> is none of it.
/// </remarks>
public readonly record struct Fraction : IQuantity<Fraction>
{
    private Fraction(double ratio) => Ratio = Limits.Check(ratio);

    /// <inheritdoc/>
    public static QuantityLimits Limits { get; } = new("Fraction", "1", 0, 1);

    /// <summary>The value as a ratio.</summary>
    public double Ratio { get; }

    /// <summary>The same in percent.</summary>
    public double Percent => Ratio * 100;

    /// <summary>A value stated as a ratio.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside <see cref="Limits"/>.</exception>
    public static Fraction FromRatio(double ratio) => new(ratio);

    /// <summary>A value stated in percent.</summary>
    public static Fraction FromPercent(double percent) => new(percent / 100);

    /// <inheritdoc/>
    public double Canonical => Ratio;

    /// <inheritdoc/>
    public static Fraction FromCanonical(double value) => new(value);

    /// <inheritdoc/>
    public int CompareTo(Fraction other) => Ratio.CompareTo(other.Ratio);

    /// <inheritdoc/>
    public override string ToString() => Limits.Format(Ratio);
}
