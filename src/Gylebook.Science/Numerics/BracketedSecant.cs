namespace Gylebook.Science.Numerics;

/// <summary>How a search went.</summary>
/// <param name="Solved">Whether the wish was met.</param>
/// <param name="At">Where the search ended.</param>
/// <param name="Reached">What comes out there; not a number when nothing does.</param>
public readonly record struct SecantResult(bool Solved, double At, double Reached);

/// <summary>Finds where a rising figure meets a wish: a secant that never leaves its bounds nor the bracket it has found.</summary>
/// <remarks>
/// <para>Source: regula falsi with a bisection every third step, from memory.</para>
/// <para>Valid for: a figure that rises and is dear to reckon, such as a whole brew; bounds from 0 up.</para>
/// <para>Accuracy: as asked. After 40 steps it gives up and says so.</para>
/// </remarks>
public static class BracketedSecant
{
    private const int MostSteps = 40;
    private const double Overshoot = 1.02;

    /// <summary>Searches between two bounds.</summary>
    /// <param name="figure">Rises with what is sought; null where nothing comes out because it is too much.</param>
    /// <param name="wish">What it should be.</param>
    /// <param name="bounds">Least and most that may be tried.</param>
    /// <param name="first">Where to start; moved to the nearer bound when it lies outside.</param>
    /// <param name="close">How close to the wish is close enough.</param>
    public static SecantResult Search(Func<double, double?> figure, double wish, Bracket bounds, double first, double close)
    {
        ArgumentNullException.ThrowIfNull(figure);
        (double belowAt, double below) = (bounds.Low, double.NaN);
        (double aboveAt, double above) = (bounds.High, double.NaN);
        double at = Math.Clamp(first, bounds.Low, bounds.High);
        double reached = double.NaN;
        for (int step = 1; step <= MostSteps; step++)
        {
            reached = figure(at) ?? double.PositiveInfinity;
            if (Math.Abs(reached - wish) <= close)
            {
                return new SecantResult(true, at, reached);
            }

            if ((reached < wish && at >= bounds.High) || (reached > wish && at <= bounds.Low))
            {
                return new SecantResult(false, at, reached);
            }

            if (reached < wish)
            {
                (belowAt, below) = (at, reached);
            }
            else
            {
                (aboveAt, above) = (at, reached);
            }

            at = Next(belowAt, below, aboveAt, above, wish, bounds, step);
        }

        return new SecantResult(false, at, reached);
    }

    /// <summary>
    /// Between two known ends the secant, every third time the middle, so that a bent curve cannot hold it at one end. With
    /// one end known: down to the bound, or up in proportion and a little further, so that the wish comes to lie between.
    /// </summary>
    private static double Next(
        double belowAt, double below, double aboveAt, double above, double wish, Bracket bounds, int step)
    {
        if (double.IsFinite(below) && double.IsFinite(above))
        {
            return step % 3 == 0 ? (belowAt + aboveAt) / 2 : belowAt + ((aboveAt - belowAt) * (wish - below) / (above - below));
        }

        if (double.IsPositiveInfinity(above))
        {
            return (belowAt + aboveAt) / 2;
        }

        if (double.IsFinite(above))
        {
            return bounds.Low;
        }

        return below > 0 && belowAt > 0 ? Math.Min(belowAt * Overshoot * wish / below, bounds.High) : bounds.High;
    }
}
