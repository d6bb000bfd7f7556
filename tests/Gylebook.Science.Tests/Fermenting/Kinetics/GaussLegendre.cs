namespace Gylebook.Science.Tests.Fermenting.Kinetics;

/// <summary>Another way to follow differential equations, to hold ours against: implicit, three stages, sixth order, steps of one length.</summary>
/// <remarks>Source: Butcher, Math. Comp. 18:50 (1964), from memory. The stages are found by putting them in again until they stay.</remarks>
internal static class GaussLegendre
{
    private static readonly double Root = Math.Sqrt(15);

    private static readonly double[] Along = [0.5 - (Root / 10), 0.5, 0.5 + (Root / 10)];

    private static readonly double[][] Stage =
    [
        [5.0 / 36, (2.0 / 9) - (Root / 15), (5.0 / 36) - (Root / 30)],
        [(5.0 / 36) + (Root / 24), 2.0 / 9, (5.0 / 36) - (Root / 24)],
        [(5.0 / 36) + (Root / 30), (2.0 / 9) + (Root / 15), 5.0 / 36],
    ];

    private static readonly double[] Weight = [5.0 / 18, 4.0 / 9, 5.0 / 18];

    /// <summary>The state at each of some times, whole numbers of steps from 0.</summary>
    public static double[][] Follow(Func<double, double[], double[]> change, double[] start, double step, double[] times)
    {
        double[] now = [.. start];
        List<double[]> there = [];
        int taken = 0;
        foreach (double time in times)
        {
            for (int last = (int)Math.Round(time / step); taken < last; taken++)
            {
                now = After(change, now, taken * step, step);
            }

            there.Add([.. now]);
        }

        return [.. there];
    }

    private static double[] After(Func<double, double[], double[]> change, double[] now, double at, double step)
    {
        double[] first = change(at, now);
        double[][] slopes = [first, first, first];
        for (int round = 0; round < 60; round++)
        {
            double moved = 0;
            double[][] next = new double[3][];
            for (int i = 0; i < 3; i++)
            {
                next[i] = change(at + (Along[i] * step), [.. now.Select((y, k) => y + (step * Sum(Stage[i], slopes, k)))]);
                moved = Math.Max(moved, next[i].Zip(slopes[i], (a, b) => Math.Abs(a - b)).Max());
            }

            slopes = next;
            if (moved < 1e-13)
            {
                break;
            }
        }

        return [.. now.Select((y, k) => y + (step * Sum(Weight, slopes, k)))];
    }

    private static double Sum(double[] weights, double[][] slopes, int k) =>
        (weights[0] * slopes[0][k]) + (weights[1] * slopes[1][k]) + (weights[2] * slopes[2][k]);
}
