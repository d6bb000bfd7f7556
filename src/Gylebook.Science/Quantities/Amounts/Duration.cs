namespace Gylebook.Science.Quantities;

/// <summary>How long something takes.</summary>
/// <remarks>
/// Kept in min; from 0 to 1e8. <c>default</c> is no time at all.
/// </remarks>
public readonly record struct Duration : IQuantity<Duration>
{
    private Duration(double minutes) => Minutes = Limits.Check(minutes);

    /// <inheritdoc/>
    public static QuantityLimits Limits { get; } = new("Duration", "min", 0, 1e8);

    /// <summary>The value in min.</summary>
    public double Minutes { get; }

    /// <summary>The same in hours.</summary>
    public double Hours => Minutes * (1 / 60.0);

    /// <summary>The same in days.</summary>
    public double Days => Minutes * (1 / 1440.0);

    /// <summary>A value stated in min.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside <see cref="Limits"/>.</exception>
    public static Duration FromMinutes(double minutes) => new(minutes);

    /// <summary>A value stated in hours.</summary>
    public static Duration FromHours(double hours) => new(hours / (1 / 60.0));

    /// <summary>A value stated in days.</summary>
    public static Duration FromDays(double days) => new(days / (1 / 1440.0));

    /// <summary>Both together.</summary>
    public static Duration operator +(Duration left, Duration right) => new(left.Minutes + right.Minutes);

    /// <summary>The first less the second, which must not be larger.</summary>
    public static Duration operator -(Duration left, Duration right) => new(left.Minutes - right.Minutes);

    /// <summary>That many times as much.</summary>
    public static Duration operator *(Duration quantity, double factor) => new(quantity.Minutes * factor);

    /// <inheritdoc/>
    public double Canonical => Minutes;

    /// <inheritdoc/>
    public static Duration FromCanonical(double value) => new(value);

    /// <inheritdoc/>
    public int CompareTo(Duration other) => Minutes.CompareTo(other.Minutes);

    /// <inheritdoc/>
    public override string ToString() => Limits.Format(Minutes);
}
