namespace Gylebook.Science.Numerics;

/// <summary>Straight lines between the rows of a published table.</summary>
internal static class LinearInterpolation
{
    /// <summary>
    /// The value at <paramref name="x"/>. Beyond the ends the outermost line goes on: the caller says, and flags, what
    /// it does there.
    /// </summary>
    public static double At(double x, ReadOnlySpan<double> xs, ReadOnlySpan<double> ys)
    {
        int i = 1;
        while (i < xs.Length - 1 && x > xs[i])
        {
            i++;
        }

        // In this form both ends of a piece give the printed figure exactly.
        double share = (x - xs[i - 1]) / (xs[i] - xs[i - 1]);
        return ((1 - share) * ys[i - 1]) + (share * ys[i]);
    }
}
