namespace Gylebook.Science.Quantities;

/// <summary>What a hydrometer takes for extract, in grams of sucrose per 100 g, alcohol or not.</summary>
/// <remarks>
/// Kept in °P; from -20 to 100. <c>default</c> is water.
/// With alcohol present it reads less than the <see cref="RealExtract"/>, and may be below zero.
/// </remarks>
public readonly record struct ApparentExtract : IQuantity<ApparentExtract>
{
    private ApparentExtract(double plato) => Plato = Limits.Check(plato);

    /// <inheritdoc/>
    public static QuantityLimits Limits { get; } = new("ApparentExtract", "°P", -20, 100);

    /// <summary>The value in °P.</summary>
    public double Plato { get; }

    /// <summary>A value stated in °P.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside <see cref="Limits"/>.</exception>
    public static ApparentExtract FromPlato(double plato) => new(plato);

    /// <inheritdoc/>
    public double Canonical => Plato;

    /// <inheritdoc/>
    public static ApparentExtract FromCanonical(double value) => new(value);

    /// <inheritdoc/>
    public int CompareTo(ApparentExtract other) => Plato.CompareTo(other.Plato);

    /// <inheritdoc/>
    public override string ToString() => Limits.Format(Plato);
}
