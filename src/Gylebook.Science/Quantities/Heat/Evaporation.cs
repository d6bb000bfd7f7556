namespace Gylebook.Science.Quantities;

/// <summary>Water boiled off per hour, in litres at 20 °C.</summary>
/// <remarks>
/// Kept in L/h; from 0 to 1e5. <c>default</c> is none.
/// </remarks>
public readonly record struct Evaporation : IQuantity<Evaporation>
{
    private Evaporation(double litresPerHour) => LitresPerHour = Limits.Check(litresPerHour);

    /// <inheritdoc/>
    public static QuantityLimits Limits { get; } = new("Evaporation", "L/h", 0, 1e5);

    /// <summary>The value in L/h.</summary>
    public double LitresPerHour { get; }

    /// <summary>A value stated in L/h.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside <see cref="Limits"/>.</exception>
    public static Evaporation FromLitresPerHour(double litresPerHour) => new(litresPerHour);

    /// <inheritdoc/>
    public double Canonical => LitresPerHour;

    /// <inheritdoc/>
    public static Evaporation FromCanonical(double value) => new(value);

    /// <inheritdoc/>
    public int CompareTo(Evaporation other) => LitresPerHour.CompareTo(other.LitresPerHour);

    /// <inheritdoc/>
    public override string ToString() => Limits.Format(LitresPerHour);
}
