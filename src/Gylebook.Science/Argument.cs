using System.Runtime.CompilerServices;

namespace Gylebook.Science;

/// <summary>Refuses a number that a formula has no meaning for: a bug of the caller, never a brewer's entry.</summary>
/// <remarks>
/// For arguments of one formula, named as it names them. Limits with a name and a unit of their own are a
/// <see cref="Quantities.QuantityLimits"/>: decision 0021. What is refused is refused here, by either.
/// </remarks>
internal static class Argument
{
    /// <summary>The value, a number from the low to the high limit.</summary>
    public static double MustBeWithin(
        double value, double low, double high, [CallerArgumentExpression(nameof(value))] string name = "") =>
        value >= low && value <= high ? value : Refused(name, value, Invariant($"must be from {low} to {high}"));

    /// <summary>The value, a finite number, nought or more.</summary>
    public static double MustNotBeNegative(double value, [CallerArgumentExpression(nameof(value))] string name = "") =>
        value >= 0 && value <= double.MaxValue ? value : Refused(name, value, "must be a number from 0 up");

    /// <summary>The value, a finite number above nought.</summary>
    public static double MustBePositive(double value, [CallerArgumentExpression(nameof(value))] string name = "") =>
        value > 0 && value <= double.MaxValue ? value : Refused(name, value, "must be a number above 0");

    /// <summary>Refuses a value.</summary>
    /// <param name="name">What it is the value of.</param>
    /// <param name="value">The value.</param>
    /// <param name="demand">What it must be, with the limits.</param>
    /// <exception cref="ArgumentOutOfRangeException">Always.</exception>
    public static double Refused(string name, double value, string demand) =>
        throw new ArgumentOutOfRangeException(name, value, $"{name} {demand}.");
}
