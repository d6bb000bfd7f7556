namespace Gylebook.Science.Water;

/// <summary>Brings amounts to multiples of a step without leaving their limits.</summary>
/// <remarks>
/// Each goes to the nearest step; then one amount at a time moves a step up or down while that betters the objective.
/// Good, not proven best: the loss is small beside a balance's own error.
/// </remarks>
internal static class SaltRounding
{
    private const int MostRounds = 50;

    /// <summary>Rounds in place; a step of zero leaves an amount as it is.</summary>
    internal static void Round(SaltProblem problem, double[] amounts, double[] steps)
    {
        for (int column = 0; column < amounts.Length; column++)
        {
            if (steps[column] > 0)
            {
                amounts[column] = Nearest(problem, column, amounts[column], steps[column]);
            }
        }

        for (int round = 0; round < MostRounds && Improve(problem, amounts, steps); round++)
        {
        }
    }

    private static bool Improve(SaltProblem problem, double[] amounts, double[] steps)
    {
        bool improved = false;
        for (int column = 0; column < amounts.Length; column++)
        {
            foreach (double step in (ReadOnlySpan<double>)[steps[column], -steps[column]])
            {
                double before = amounts[column], was = problem.Objective(amounts);
                double moved = (Math.Round(before / steps[column]) * steps[column]) + step;
                if (steps[column] == 0 || moved < problem.Low[column] || moved > problem.High[column])
                {
                    continue;
                }

                amounts[column] = moved;
                if (problem.Objective(amounts) < was)
                {
                    improved = true;
                }
                else
                {
                    amounts[column] = before;
                }
            }
        }

        return improved;
    }

    // The limits need not be multiples of the step: round towards the inside.
    private static double Nearest(SaltProblem problem, int column, double amount, double step)
    {
        double rounded = Math.Round(amount / step) * step;
        return rounded > problem.High[column] ? Math.Floor(problem.High[column] / step) * step
            : rounded < problem.Low[column] ? Math.Ceiling(problem.Low[column] / step) * step
            : rounded;
    }
}
