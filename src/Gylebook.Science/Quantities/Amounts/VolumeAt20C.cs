namespace Gylebook.Science.Quantities;

/// <summary>A volume of liquid as it would stand at 20 °C: the only litres the balance knows.</summary>
/// <remarks>
/// Kept in L; from 0 to 1e7. <c>default</c> is no liquid.
/// Hot litres are a <see cref="HotVolume"/>; the two meet only through a density.
/// </remarks>
public readonly record struct VolumeAt20C : IQuantity<VolumeAt20C>
{
    private VolumeAt20C(double litres) => Litres = Limits.Check(litres);

    /// <inheritdoc/>
    public static QuantityLimits Limits { get; } = new("VolumeAt20C", "L", 0, 1e7);

    /// <summary>The value in L.</summary>
    public double Litres { get; }

    /// <summary>The same in millilitres.</summary>
    public double Millilitres => Litres * 1000;

    /// <summary>A value stated in L.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside <see cref="Limits"/>.</exception>
    public static VolumeAt20C FromLitres(double litres) => new(litres);

    /// <summary>A value stated in millilitres.</summary>
    public static VolumeAt20C FromMillilitres(double millilitres) => new(millilitres / 1000);

    /// <summary>Both together.</summary>
    public static VolumeAt20C operator +(VolumeAt20C left, VolumeAt20C right) => new(left.Litres + right.Litres);

    /// <summary>The first less the second, which must not be larger.</summary>
    public static VolumeAt20C operator -(VolumeAt20C left, VolumeAt20C right) => new(left.Litres - right.Litres);

    /// <summary>That many times as much.</summary>
    public static VolumeAt20C operator *(VolumeAt20C quantity, double factor) => new(quantity.Litres * factor);

    /// <inheritdoc/>
    public double Canonical => Litres;

    /// <inheritdoc/>
    public static VolumeAt20C FromCanonical(double value) => new(value);

    /// <inheritdoc/>
    public int CompareTo(VolumeAt20C other) => Litres.CompareTo(other.Litres);

    /// <inheritdoc/>
    public override string ToString() => Limits.Format(Litres);
}
