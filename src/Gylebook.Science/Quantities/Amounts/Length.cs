namespace Gylebook.Science.Quantities;

/// <summary>A height or a distance.</summary>
/// <remarks>
/// Kept in m; from -1000 to 100000. <c>default</c> is none.
/// </remarks>
public readonly record struct Length : IQuantity<Length>
{
    private Length(double metres) => Metres = Limits.Check(metres);

    /// <inheritdoc/>
    public static QuantityLimits Limits { get; } = new("Length", "m", -1000, 100000);

    /// <summary>The value in m.</summary>
    public double Metres { get; }

    /// <summary>A value stated in m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside <see cref="Limits"/>.</exception>
    public static Length FromMetres(double metres) => new(metres);

    /// <inheritdoc/>
    public double Canonical => Metres;

    /// <inheritdoc/>
    public static Length FromCanonical(double value) => new(value);

    /// <inheritdoc/>
    public int CompareTo(Length other) => Metres.CompareTo(other.Metres);

    /// <inheritdoc/>
    public override string ToString() => Limits.Format(Metres);
}
