using Gylebook.Science.Numerics;

namespace Gylebook.Science.Tests.Numerics;

public class LeastSquaresTests
{
    /// <summary>A straight line has an answer in closed form: y = 1 + 2x through three points and one that lies off by 0.4.</summary>
    [Fact]
    public void Known_a_line_is_the_normal_equations()
    {
        // x 0, 1, 2, 3 and y 1, 3, 5, 7.4: slope 2 + 0.4·1.5/5 = 2.12, height 1 + 0.4/4 − 0.12·1.5 = 0.92.
        LeastSquaresFit fit = LeastSquares.Fit(new Line([0, 1, 2, 3], [1, 3, 5, 7.4]), [0, 0], [-100, -100], [100, 100]);
        Assert.True(fit.IsSettled);
        Assert.Equal(0.92, fit.Figures[0], 1e-6);
        Assert.Equal(2.12, fit.Figures[1], 1e-6);

        // Covariance of height and slope: (Σx²/nS, −x̄/S, 1/S) with S = Σ(x − x̄)² = 5: 0.7, −0.3, 0.2.
        double[,] l = fit.Root;
        Assert.Equal(0.7, l[0, 0] * l[0, 0], 1e-5);
        Assert.Equal(-0.3, l[0, 0] * l[1, 0], 1e-5);
        Assert.Equal(0.2, (l[1, 0] * l[1, 0]) + (l[1, 1] * l[1, 1]), 1e-5);
    }

    // Rosenbrock, Comput. J. 3:175 (1960), from memory: the bent valley ends at (1, 1) with nothing left.
    [Fact]
    public void Convergence_a_bent_valley_is_followed_to_its_end()
    {
        LeastSquaresFit fit = LeastSquares.Fit(new Valley(), [-1.2, 1], [-10, -10], [10, 10]);
        Assert.True(fit.IsSettled);
        Assert.Equal(1, fit.Figures[0], 1e-5);
        Assert.Equal(1, fit.Figures[1], 1e-5);
    }

    [Fact]
    public void Limits_a_figure_stops_at_its_end_and_the_others_go_on()
    {
        LeastSquaresFit fit = LeastSquares.Fit(new Line([0, 1, 2, 3], [1, 3, 5, 7]), [0, 0], [-100, -100], [100, 1.5]);

        // With slope 1.5 the best height is the mean of y − 1.5x: 4 − 2.25.
        Assert.Equal(1.5, fit.Figures[1], 1e-9);
        Assert.Equal(1.75, fit.Figures[0], 1e-5);
    }

    private readonly struct Line(double[] x, double[] y) : IMisfit
    {
        public int Count => x.Length;

        public void Off(ReadOnlySpan<double> figures, Span<double> off)
        {
            for (int i = 0; i < x.Length; i++)
            {
                off[i] = figures[0] + (figures[1] * x[i]) - y[i];
            }
        }
    }

    private readonly struct Valley : IMisfit
    {
        public int Count => 2;

        public void Off(ReadOnlySpan<double> figures, Span<double> off)
        {
            off[0] = 10 * (figures[1] - (figures[0] * figures[0]));
            off[1] = 1 - figures[0];
        }
    }
}
