namespace Gylebook.Engine.Readings;

/// <summary>One step of an ensemble smoother: what some forecasts should rather have been, and how far everything else moves along with them.</summary>
/// <remarks>
/// <para>x ← x + C_xd (C_dd + R)⁻¹ (d − g), covariances those of the draws; d the reading with a scatter of its own for each draw.</para>
/// <para>Symbols: x a column of draws; g the forecasts of the readings; d what was read, perturbed; R the readings' error variances.</para>
/// <para>Source: Emerick and Reynolds, Computers &amp; Geosciences 55:3 (2013); equations from memory. With one step and normal draws it is
/// linear-Gaussian conditioning.</para>
/// <para>Valid for: draws that are nearly normal on the scale they are given in.</para>
/// <para>Notes: a correlation below 3/√n is taken for chance and moves nothing. Draws in which a forecast is no number stay where they are.</para>
/// </remarks>
public sealed class SmootherStep
{
    private const double ChanceCorrelation = 3;

    private readonly int[] _draws;
    private readonly double[][] _from;
    private readonly double[] _spread;
    private readonly double[][] _pull;
    private readonly double[,] _root;

    /// <summary>A step.</summary>
    /// <param name="forecasts">What each reading was forecast to be, draw by draw.</param>
    /// <param name="read">What it was, with the scatter of each draw.</param>
    /// <param name="variances">Error variances, as large as that scatter.</param>
    public SmootherStep(IReadOnlyList<double[]> forecasts, IReadOnlyList<double[]> read, IReadOnlyList<double> variances)
    {
        int count = forecasts.Count;
        _draws = [.. Enumerable.Range(0, forecasts[0].Length).Where(draw => forecasts.All(forecast => double.IsFinite(forecast[draw])))];
        _from = [.. forecasts.Select(forecast => FromMean(forecast))];
        _spread = [.. _from.Select(from => Math.Sqrt(Together(from, from)))];
        double[,] root = new double[count, count];
        for (int row = 0; row < count; row++)
        {
            for (int other = 0; other <= row; other++)
            {
                root[row, other] = Together(_from[row], _from[other]) + (row == other ? variances[row] : 0);
            }
        }

        TakeRoot(root, count);
        _root = root;
        _pull = [.. forecasts.Select(_ => new double[_draws.Length])];
        double[] off = new double[count];
        for (int i = 0; i < _draws.Length; i++)
        {
            for (int reading = 0; reading < count; reading++)
            {
                off[reading] = read[reading][_draws[i]] - forecasts[reading][_draws[i]];
            }

            Solve(root, off);
            for (int reading = 0; reading < count; reading++)
            {
                _pull[reading][i] = off[reading];
            }
        }
    }

    /// <summary>How strongly each reading pulls at a run that is none of the draws, by how far off its own forecast is; no pull where a forecast is no number.</summary>
    /// <param name="off">What was read, less what that run forecasts.</param>
    public double[] PullOn(double[] off)
    {
        double[] pull = [.. off];
        Solve(_root, pull);
        return Array.TrueForAll(pull, double.IsFinite) ? pull : new double[off.Length];
    }

    /// <summary>Moves a column by what the readings that may move it say.</summary>
    /// <param name="column">Written over; left alone where a draw that is used has no number.</param>
    /// <param name="isMovedBy">Which readings may; all when empty.</param>
    /// <returns>Whether anything moved.</returns>
    public bool Move(Span<double> column, ReadOnlySpan<bool> isMovedBy = default)
    {
        double alone = 0;
        return Move(column, isMovedBy, ref alone, []);
    }

    /// <summary>Moves a column, and one more figure as far as its own pull says.</summary>
    /// <param name="column">Written over; left alone where a draw that is used has no number.</param>
    /// <param name="isMovedBy">Which readings may; all when empty.</param>
    /// <param name="alone">The figure, of a run that is none of the draws.</param>
    /// <param name="pull">What pulls at it (<see cref="PullOn"/>); nothing when empty.</param>
    /// <returns>Whether anything moved.</returns>
    public bool Move(Span<double> column, ReadOnlySpan<bool> isMovedBy, ref double alone, ReadOnlySpan<double> pull)
    {
        double[] from = FromMean(column);
        double spread = Math.Sqrt(Together(from, from));
        if (!(spread > 0))
        {
            return false;
        }

        bool moved = false;
        double chance = ChanceCorrelation / Math.Sqrt(_draws.Length);
        for (int reading = 0; reading < _from.Length; reading++)
        {
            double together = isMovedBy.IsEmpty || isMovedBy[reading] ? Together(from, _from[reading]) : 0;
            if (!(Math.Abs(together) >= chance * spread * _spread[reading]) || together == 0)
            {
                continue;
            }

            moved = true;
            alone += pull.IsEmpty ? 0 : together * pull[reading];
            for (int i = 0; i < _draws.Length; i++)
            {
                column[_draws[i]] += together * _pull[reading][i];
            }
        }

        return moved;
    }

    private double[] FromMean(ReadOnlySpan<double> column)
    {
        double sum = 0;
        foreach (int draw in _draws)
        {
            sum += column[draw];
        }

        double mean = sum / _draws.Length;
        double[] from = new double[_draws.Length];
        for (int i = 0; i < from.Length; i++)
        {
            from[i] = column[_draws[i]] - mean;
        }

        return from;
    }

    private static double Together(double[] one, double[] other)
    {
        double sum = 0;
        for (int i = 0; i < one.Length; i++)
        {
            sum += one[i] * other[i];
        }

        return sum / (one.Length - 1);
    }

    /// <summary>Cholesky's lower root, in place.</summary>
    private static void TakeRoot(double[,] matrix, int count)
    {
        for (int row = 0; row < count; row++)
        {
            for (int other = 0; other <= row; other++)
            {
                double sum = matrix[row, other];
                for (int k = 0; k < other; k++)
                {
                    sum -= matrix[row, k] * matrix[other, k];
                }

                matrix[row, other] = row == other ? Math.Sqrt(sum) : sum / matrix[other, other];
            }
        }
    }

    private static void Solve(double[,] root, double[] right)
    {
        for (int row = 0; row < right.Length; row++)
        {
            for (int k = 0; k < row; k++)
            {
                right[row] -= root[row, k] * right[k];
            }

            right[row] /= root[row, row];
        }

        for (int row = right.Length - 1; row >= 0; row--)
        {
            for (int k = row + 1; k < right.Length; k++)
            {
                right[row] -= root[k, row] * right[k];
            }

            right[row] /= root[row, row];
        }
    }
}
