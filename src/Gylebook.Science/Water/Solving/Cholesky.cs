namespace Gylebook.Science.Water;

/// <summary>Solves a small positive definite system by Cholesky's square root.</summary>
internal static class Cholesky
{
    /// <summary>y with H y = b.</summary>
    internal static double[] Solve(double[] right, Func<int, int, double> hessian)
    {
        int count = right.Length;
        double[,] lower = new double[count, count];
        for (int row = 0; row < count; row++)
        {
            for (int column = 0; column <= row; column++)
            {
                double sum = hessian(row, column);
                for (int inner = 0; inner < column; inner++)
                {
                    sum -= lower[row, inner] * lower[column, inner];
                }

                lower[row, column] = row == column ? Math.Sqrt(Math.Max(sum, 1e-300)) : sum / lower[column, column];
            }
        }

        return Substitute(lower, right);
    }

    private static double[] Substitute(double[,] lower, double[] right)
    {
        double[] answer = [.. right];
        for (int row = 0; row < answer.Length; row++)
        {
            for (int inner = 0; inner < row; inner++)
            {
                answer[row] -= lower[row, inner] * answer[inner];
            }

            answer[row] /= lower[row, row];
        }

        for (int row = answer.Length - 1; row >= 0; row--)
        {
            for (int inner = row + 1; inner < answer.Length; inner++)
            {
                answer[row] -= lower[inner, row] * answer[inner];
            }

            answer[row] /= lower[row, row];
        }

        return answer;
    }
}
