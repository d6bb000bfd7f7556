namespace Gylebook.Forecast.Solving;

/// <summary>How a search went.</summary>
/// <param name="Solved">Whether the wish was met.</param>
/// <param name="At">Where the search ended.</param>
/// <param name="Reached">What comes out there; not a number when nothing does.</param>
internal readonly record struct SearchOutcome(bool Solved, double At, double Reached);

/// <summary>Finds where a rising figure meets a wish: a secant that never leaves its bounds nor the bracket it has found.</summary>
internal static class BoundedSecant
{
    private const int MostRuns = 40;
    private const double Overshoot = 1.02;

    /// <summary>Searches between two bounds.</summary>
    /// <param name="figure">Rises with what is sought; null where nothing comes out because it is too much.</param>
    /// <param name="wish">What it should be.</param>
    /// <param name="low">Least that may be tried.</param>
    /// <param name="first">Where to start.</param>
    /// <param name="high">Most that may be tried.</param>
    /// <param name="close">How close is close enough.</param>
    public static SearchOutcome Search(Func<double, double?> figure, double wish, double low, double first, double high, double close)
    {
        (double belowAt, double below) = (low, double.NaN);
        (double aboveAt, double above) = (high, double.NaN);
        double at = Math.Clamp(first, low, high);
        double reached = double.NaN;
        for (int run = 1; run <= MostRuns; run++)
        {
            reached = figure(at) ?? double.PositiveInfinity;
            if (Math.Abs(reached - wish) <= close)
            {
                return new SearchOutcome(true, at, reached);
            }

            if ((reached < wish && at >= high) || (reached > wish && at <= low))
            {
                return new SearchOutcome(false, at, reached);
            }

            if (reached < wish)
            {
                (belowAt, below) = (at, reached);
            }
            else
            {
                (aboveAt, above) = (at, reached);
            }

            at = Next(belowAt, below, aboveAt, above, wish, low, high, run);
        }

        return new SearchOutcome(false, at, reached);
    }

    /// <summary>
    /// Between two known ends the secant, every third time the middle, so that a bent curve cannot hold it at one end. With
    /// one end known: down to the bound, or up in proportion and a little further, so that the wish comes to lie between.
    /// </summary>
    private static double Next(
        double belowAt, double below, double aboveAt, double above, double wish, double low, double high, int run)
    {
        if (double.IsFinite(below) && double.IsFinite(above))
        {
            return run % 3 == 0 ? (belowAt + aboveAt) / 2 : belowAt + ((aboveAt - belowAt) * (wish - below) / (above - below));
        }

        if (double.IsPositiveInfinity(above))
        {
            return (belowAt + aboveAt) / 2;
        }

        if (double.IsFinite(above))
        {
            return low;
        }

        return below > 0 && belowAt > 0 ? Math.Min(belowAt * Overshoot * wish / below, high) : high;
    }
}
