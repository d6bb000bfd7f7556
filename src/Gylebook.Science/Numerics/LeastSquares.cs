namespace Gylebook.Science.Numerics;

/// <summary>Figures of a curve that make a sum of squares least.</summary>
/// <param name="Figures">The figures.</param>
/// <param name="Squares">The sum of squares that is left.</param>
/// <param name="IsSettled">Whether the last step made next to no difference.</param>
/// <param name="Root">Lower root L of the figures' covariance L·Lᵀ, when what is squared has a standard deviation of 1; not a number where the
/// readings do not tell them apart.</param>
public sealed record LeastSquaresFit(double[] Figures, double Squares, bool IsSettled, double[,] Root);

/// <summary>Least squares of a bent curve, its figures kept between ends.</summary>
/// <remarks>
/// <para>(JᵀJ + λ·diag JᵀJ)·step = −Jᵀr; λ a tenth after a step that helps, tenfold after one that does not; a figure that would leave its ends stops there.</para>
/// <para>Source: Levenberg, Quart. Appl. Math. 2:164 (1944); Marquardt, J. SIAM 11:431 (1963); from memory. Slopes by central differences.</para>
/// <para>Valid for: a handful of figures, and a start in the right valley: it goes down hill and no further.</para>
/// <para>Accuracy: until a step lessens the squares by less than 10⁻¹² of them; at most 200 steps.</para>
/// </remarks>
public static class LeastSquares
{
    private const int MostSteps = 200;
    private const double Enough = 1e-12, FirstDamping = 1e-3, MostDamping = 1e12, SlopeStep = 1e-6;

    /// <summary>Stands for a figure that is held at its end: so sure that nothing moves it.</summary>
    private const double Held = 1e30;

    /// <summary>Fits.</summary>
    /// <param name="misfit">The curve and what was read.</param>
    /// <param name="start">Where to start, moved inside the ends.</param>
    /// <param name="least">Least of each figure.</param>
    /// <param name="most">Most of each.</param>
    public static LeastSquaresFit Fit<TMisfit>(TMisfit misfit, ReadOnlySpan<double> start, ReadOnlySpan<double> least, ReadOnlySpan<double> most)
        where TMisfit : struct, IMisfit
    {
        int count = start.Length;
        double[] now = Inside(start, least, most), off = new double[misfit.Count];
        double squares = SquaresAt(misfit, now, off), damping = FirstDamping;
        double[,] normal = new double[count, count];
        double[] pull = new double[count];
        bool isSettled = false;
        for (int step = 0; step < MostSteps && !isSettled; step++)
        {
            Normal(misfit, now, off, (least.ToArray(), most.ToArray()), normal, pull);
            Hold(now, least, most, normal, pull);
            for (bool moved = false; !moved && !isSettled; damping = moved ? damping / 10 : damping * 10)
            {
                double[] next = Inside(Stepped(now, normal, pull, damping), least, most), nextOff = new double[off.Length];
                double nextSquares = SquaresAt(misfit, next, nextOff);
                moved = nextSquares <= squares;
                isSettled = (moved && squares - nextSquares <= Enough * squares) || damping > MostDamping;
                if (moved)
                {
                    (now, off, squares) = (next, nextOff, nextSquares);
                }
            }
        }

        Normal(misfit, now, off, (least.ToArray(), most.ToArray()), normal, pull);
        Hold(now, least, most, normal, pull);
        return new(now, squares, isSettled, InverseRoot(normal));
    }

    private static double SquaresAt<TMisfit>(TMisfit misfit, double[] figures, double[] off)
        where TMisfit : struct, IMisfit
    {
        misfit.Off(figures, off);
        double sum = 0;
        foreach (double one in off)
        {
            sum += one * one;
        }

        return double.IsNaN(sum) ? double.PositiveInfinity : sum;
    }

    /// <summary>JᵀJ and −Jᵀr.</summary>
    private static void Normal<TMisfit>(
        TMisfit misfit, double[] figures, double[] off, (double[] Least, double[] Most) ends, double[,] normal, double[] pull)
        where TMisfit : struct, IMisfit
    {
        double[][] slopes = new double[figures.Length][];
        double[] below = new double[off.Length], above = new double[off.Length];
        for (int i = 0; i < figures.Length; i++)
        {
            double reach = SlopeStep * (Math.Abs(figures[i]) + 1e-3);
            double low = Math.Max(ends.Least[i], figures[i] - reach), high = Math.Min(ends.Most[i], figures[i] + reach);
            misfit.Off([.. figures.Select((figure, k) => k == i ? low : figure)], below);
            misfit.Off([.. figures.Select((figure, k) => k == i ? high : figure)], above);
            slopes[i] = [.. above.Select((value, k) => high > low ? (value - below[k]) / (high - low) : 0)];
        }

        for (int i = 0; i < figures.Length; i++)
        {
            pull[i] = -Product(slopes[i], off);
            for (int k = 0; k < figures.Length; k++)
            {
                normal[i, k] = Product(slopes[i], slopes[k]);
            }
        }
    }

    /// <summary>Takes figures out that stand at an end and are pulled beyond it.</summary>
    private static void Hold(double[] now, ReadOnlySpan<double> least, ReadOnlySpan<double> most, double[,] normal, double[] pull)
    {
        for (int i = 0; i < now.Length; i++)
        {
            if ((now[i] <= least[i] && pull[i] < 0) || (now[i] >= most[i] && pull[i] > 0))
            {
                for (int k = 0; k < now.Length; k++)
                {
                    normal[i, k] = normal[k, i] = 0;
                }

                (normal[i, i], pull[i]) = (Held, 0);
            }
        }
    }

    private static double Product(double[] one, double[] other)
    {
        double sum = 0;
        for (int i = 0; i < one.Length; i++)
        {
            sum += one[i] * other[i];
        }

        return sum;
    }

    private static double[] Stepped(double[] now, double[,] normal, double[] pull, double damping)
    {
        int count = now.Length;
        double[,] damped = (double[,])normal.Clone();
        for (int i = 0; i < count; i++)
        {
            damped[i, i] += (damping * normal[i, i]) + double.Epsilon;
        }

        double[,] root = InverseRoot(damped);
        double[] next = new double[count];
        for (int i = 0; i < count; i++)
        {
            next[i] = now[i];
            for (int k = 0; k < count; k++)
            {
                double inverse = 0;
                for (int j = 0; j <= Math.Min(i, k); j++)
                {
                    inverse += root[i, j] * root[k, j];
                }

                next[i] += inverse * pull[k];
            }
        }

        return Array.TrueForAll(next, double.IsFinite) ? next : now;
    }

    /// <summary>Lower root of the inverse of a symmetric matrix that is positive, by Cholesky; not a number where it is not.</summary>
    private static double[,] InverseRoot(double[,] matrix)
    {
        int count = matrix.GetLength(0);
        double[,] inverse = Inverse(matrix), root = new double[count, count];
        for (int row = 0; row < count; row++)
        {
            for (int column = 0; column <= row; column++)
            {
                double sum = inverse[row, column];
                for (int k = 0; k < column; k++)
                {
                    sum -= root[row, k] * root[column, k];
                }

                root[row, column] = column == row ? Math.Sqrt(sum) : sum / root[column, column];
            }
        }

        return root;
    }

    /// <summary>By Gauss and Jordan; a positive matrix needs no exchange of rows.</summary>
    private static double[,] Inverse(double[,] matrix)
    {
        int count = matrix.GetLength(0);
        double[,] work = (double[,])matrix.Clone(), inverse = new double[count, count];
        for (int i = 0; i < count; i++)
        {
            inverse[i, i] = 1;
        }

        for (int pivot = 0; pivot < count; pivot++)
        {
            double by = work[pivot, pivot];
            for (int k = 0; k < count; k++)
            {
                work[pivot, k] /= by;
                inverse[pivot, k] /= by;
            }

            for (int row = 0; row < count; row++)
            {
                double times = row == pivot ? 0 : work[row, pivot];
                for (int k = 0; k < count; k++)
                {
                    work[row, k] -= times * work[pivot, k];
                    inverse[row, k] -= times * inverse[pivot, k];
                }
            }
        }

        return inverse;
    }

    private static double[] Inside(ReadOnlySpan<double> figures, ReadOnlySpan<double> least, ReadOnlySpan<double> most)
    {
        double[] inside = new double[figures.Length];
        for (int i = 0; i < inside.Length; i++)
        {
            inside[i] = Math.Clamp(figures[i], least[i], most[i]);
        }

        return inside;
    }
}
