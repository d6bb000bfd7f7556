namespace Gylebook.Tests.Shared;

/// <summary>Comparing with a printed figure, with a message that says by how much it missed.</summary>
internal static class Near
{
    // Lets a value that lies exactly on the edge of a rounding interval pass in spite of binary fractions.
    private const double BinaryDust = 1e-12;

    /// <summary>Holds that the value is within the tolerance of what is expected.</summary>
    public static void Equal(double expected, double actual, double tolerance) =>
        Assert.True(
            Math.Abs(actual - expected) <= tolerance + BinaryDust,
            $"{actual:G12} misses {expected:G12} by {actual - expected:G3}, more than {tolerance:G3}.");
}
