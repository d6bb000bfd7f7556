namespace Gylebook.Science.Quantities;

/// <summary>A volume as it stands in the vessel, at whatever temperature it has there.</summary>
/// <remarks>
/// Kept in L; from 0 to 1e7. <c>default</c> is no liquid.
/// Never added to a <see cref="VolumeAt20C"/>: four per cent lie between them at the boil.
/// </remarks>
public readonly record struct HotVolume : IQuantity<HotVolume>
{
    private HotVolume(double litres) => Litres = Limits.Check(litres);

    /// <inheritdoc/>
    public static QuantityLimits Limits { get; } = new("HotVolume", "L", 0, 1e7);

    /// <summary>The value in L.</summary>
    public double Litres { get; }

    /// <summary>A value stated in L.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside <see cref="Limits"/>.</exception>
    public static HotVolume FromLitres(double litres) => new(litres);

    /// <inheritdoc/>
    public double Canonical => Litres;

    /// <inheritdoc/>
    public static HotVolume FromCanonical(double value) => new(value);

    /// <inheritdoc/>
    public int CompareTo(HotVolume other) => Litres.CompareTo(other.Litres);

    /// <inheritdoc/>
    public override string ToString() => Limits.Format(Litres);
}
