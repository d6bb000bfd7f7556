namespace Gylebook.Science.Quantities;

/// <summary>A temperature on the Celsius scale.</summary>
/// <remarks>
/// Kept in °C; from -273.15 to 2000. <c>default</c> is 0 °C.
/// Two temperatures do not add; their difference is a <see cref="TemperatureDifference"/>.
/// </remarks>
public readonly record struct Temperature : IQuantity<Temperature>
{
    private Temperature(double celsius) => Celsius = Limits.Check(celsius);

    /// <inheritdoc/>
    public static QuantityLimits Limits { get; } = new("Temperature", "°C", -273.15, 2000);

    /// <summary>The value in °C.</summary>
    public double Celsius { get; }

    /// <summary>A value stated in °C.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside <see cref="Limits"/>.</exception>
    public static Temperature FromCelsius(double celsius) => new(celsius);

    /// <summary>The same temperature in kelvin.</summary>
    public double Kelvin => Celsius + 273.15;

    /// <summary>How much warmer the first is than the second.</summary>
    public static TemperatureDifference operator -(Temperature warm, Temperature cold) =>
        TemperatureDifference.FromKelvins(warm.Celsius - cold.Celsius);

    /// <summary>The temperature that much further up the scale.</summary>
    public static Temperature operator +(Temperature start, TemperatureDifference rise) =>
        FromCelsius(start.Celsius + rise.Kelvins);

    /// <inheritdoc/>
    public double Canonical => Celsius;

    /// <inheritdoc/>
    public static Temperature FromCanonical(double value) => new(value);

    /// <inheritdoc/>
    public int CompareTo(Temperature other) => Celsius.CompareTo(other.Celsius);

    /// <inheritdoc/>
    public override string ToString() => Limits.Format(Celsius);
}
