
namespace Gylebook.Science.Quantities;

/// <summary>The values a quantity can have, checked once, where a number becomes a quantity.</summary>
/// <param name="Name">The quantity's name, as it stands in messages.</param>
/// <param name="Unit">Its canonical unit.</param>
/// <param name="Low">The least value, in that unit.</param>
/// <param name="High">The largest value, in that unit.</param>
public readonly record struct QuantityLimits(string Name, string Unit, double Low, double High)
{
    /// <summary>Whether the value is a number within the limits.</summary>
    public bool Allow(double value) => value >= Low && value <= High;

    /// <summary>The value itself, if it is a number within the limits.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is not.</exception>
    public double Check(double value) =>
        Allow(value) ? value : Argument.Refused(Name, value, $"must be from {Format(Low)} to {Format(High)}");

    /// <summary>The value with the canonical unit, the same in every country.</summary>
    public string Format(double value) => Invariant($"{value:0.######} {Unit}");
}
