using System.Runtime.CompilerServices;

namespace Gylebook.Science;

/// <summary>Refuses a number that a formula has no meaning for: a bug of the caller, never a brewer's entry.</summary>
/// <remarks>
/// For arguments of one formula. Where the limits have a name and a unit of their own and several places ask them, they are a
/// <see cref="Quantities.QuantityLimits"/> with a <c>Check</c> of its own.
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

    private static double Refused(string name, double value, string demand) =>
        throw new ArgumentOutOfRangeException(name, value, $"{name} {demand}.");
}
