namespace Gylebook.Science.Quantities;

/// <summary>Extract that is really dissolved, in grams of sucrose-equivalent per 100 g of liquid.</summary>
/// <remarks>
/// Kept in °P; from 0 to 100. <c>default</c> is water.
/// </remarks>
public readonly record struct RealExtract : IQuantity<RealExtract>
{
    private RealExtract(double plato) => Plato = Limits.Check(plato);

    /// <inheritdoc/>
    public static QuantityLimits Limits { get; } = new("RealExtract", "°P", 0, 100);

    /// <summary>The value in °P.</summary>
    public double Plato { get; }

    /// <summary>A value stated in °P.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside <see cref="Limits"/>.</exception>
    public static RealExtract FromPlato(double plato) => new(plato);

    /// <inheritdoc/>
    public double Canonical => Plato;

    /// <inheritdoc/>
    public static RealExtract FromCanonical(double value) => new(value);

    /// <inheritdoc/>
    public int CompareTo(RealExtract other) => Plato.CompareTo(other.Plato);

    /// <inheritdoc/>
    public override string ToString() => Limits.Format(Plato);
}
