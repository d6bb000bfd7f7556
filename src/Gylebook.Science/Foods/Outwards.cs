namespace Gylebook.Science.Foods;

/// <summary>Sums, products and quotients rounded away from an interval, only when they had to be rounded at all.</summary>
/// <remarks>
/// <para>What: the neighbouring double below or above the rounded result when the exact one lies on that side.</para>
/// <para>Source: the exact error of a sum by two-sum (Knuth, The Art of Computer Programming, vol. 2, 4.2.2), of a
/// product and a quotient by fused multiply-add.</para>
/// <para>Valid for: results that are neither infinite nor below 1e-290 in size; infinite ones are passed on.</para>
/// <para>Accuracy: at most one unit in the last place wider than the exact interval.</para>
/// </remarks>
internal static class Outwards
{
    public static double SumDown(double a, double b) => Down(a + b, SumError(a, b));

    public static double SumUp(double a, double b) => Up(a + b, SumError(a, b));

    public static double ProductDown(double a, double b) => Down(a * b, Math.FusedMultiplyAdd(a, b, -(a * b)));

    public static double ProductUp(double a, double b) => Up(a * b, Math.FusedMultiplyAdd(a, b, -(a * b)));

    public static double QuotientDown(double a, double positive) =>
        Down(a / positive, Math.FusedMultiplyAdd(-(a / positive), positive, a));

    public static double QuotientUp(double a, double positive) =>
        Up(a / positive, Math.FusedMultiplyAdd(-(a / positive), positive, a));

    private static double SumError(double a, double b)
    {
        double sum = a + b;
        double ofB = sum - a;
        return a - (sum - ofB) + (b - ofB);
    }

    private static double Down(double rounded, double exactLessRounded) =>
        double.IsFinite(rounded) && exactLessRounded < 0 ? Math.BitDecrement(rounded) : rounded;

    private static double Up(double rounded, double exactLessRounded) =>
        double.IsFinite(rounded) && exactLessRounded > 0 ? Math.BitIncrement(rounded) : rounded;
}
