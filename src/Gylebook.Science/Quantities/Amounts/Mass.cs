namespace Gylebook.Science.Quantities;

/// <summary>A mass.</summary>
/// <remarks>
/// Kept in kg; from 0 to 1e6. <c>default</c> is no mass.
/// </remarks>
public readonly record struct Mass : IQuantity<Mass>
{
    private Mass(double kilograms) => Kilograms = Limits.Check(kilograms);

    /// <inheritdoc/>
    public static QuantityLimits Limits { get; } = new("Mass", "kg", 0, 1e6);

    /// <summary>The value in kg.</summary>
    public double Kilograms { get; }

    /// <summary>The same in grams.</summary>
    public double Grams => Kilograms * 1000;

    /// <summary>A value stated in kg.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside <see cref="Limits"/>.</exception>
    public static Mass FromKilograms(double kilograms) => new(kilograms);

    /// <summary>A value stated in grams.</summary>
    public static Mass FromGrams(double grams) => new(grams / 1000);

    /// <summary>Both together.</summary>
    public static Mass operator +(Mass left, Mass right) => new(left.Kilograms + right.Kilograms);

    /// <summary>The first less the second, which must not be larger.</summary>
    public static Mass operator -(Mass left, Mass right) => new(left.Kilograms - right.Kilograms);

    /// <summary>That many times as much.</summary>
    public static Mass operator *(Mass quantity, double factor) => new(quantity.Kilograms * factor);

    /// <inheritdoc/>
    public double Canonical => Kilograms;

    /// <inheritdoc/>
    public static Mass FromCanonical(double value) => new(value);

    /// <inheritdoc/>
    public int CompareTo(Mass other) => Kilograms.CompareTo(other.Kilograms);

    /// <inheritdoc/>
    public override string ToString() => Limits.Format(Kilograms);
}
