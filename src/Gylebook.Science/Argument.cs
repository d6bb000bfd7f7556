using System.Runtime.CompilerServices;

namespace Gylebook.Science;

/// <summary>Refuses a number that a formula has no meaning for: a bug of the caller, never a brewer's entry.</summary>
internal static class Argument
{
    /// <summary>The value must be a number from the low to the high limit.</summary>
    public static void MustBeWithin(
        double value, double low, double high, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        if (!(value >= low && value <= high))
        {
            Refuse(name, value, Invariant($"must be from {low} to {high}"));
        }
    }

    /// <summary>The value must be a finite number, nought or more.</summary>
    public static void MustNotBeNegative(double value, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        if (!(value >= 0 && value <= double.MaxValue))
        {
            Refuse(name, value, "must be a number from 0 up");
        }
    }

    /// <summary>The value must be a finite number above nought.</summary>
    public static void MustBePositive(double value, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        if (!(value > 0 && value <= double.MaxValue))
        {
            Refuse(name, value, "must be a number above 0");
        }
    }

    private static void Refuse(string name, double value, string demand) =>
        throw new ArgumentOutOfRangeException(name, value, $"{name} {demand}.");
}
