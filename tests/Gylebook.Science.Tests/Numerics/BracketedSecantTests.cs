using Gylebook.Science.Numerics;

namespace Gylebook.Science.Tests.Numerics;

public class BracketedSecantTests
{
    private static readonly Bracket Bounds = new(0, 100);

    // Known: closed forms. Steep, flat and bent both ways.
    public static TheoryData<string, Func<double, double?>, double, double> Curves => new()
    {
        { "line", x => 3 * x, 30, 10 },
        { "square", x => x * x, 49, 7 },
        { "root", x => Math.Sqrt(x), 4, 16 },
        { "saturating", x => x / (x + 5), 0.9, 45 },
        { "exponential", x => Math.Exp(x / 5) - 1, Math.Exp(8) - 1, 40 },
    };

    [Theory]
    [MemberData(nameof(Curves))]
    public void Known_wishes_are_met_as_closely_as_asked(string curve, Func<double, double?> figure, double wish, double at)
    {
        foreach (double first in new[] { 0.01, 1, 50, 100, 1e6 })
        {
            SecantResult found = BracketedSecant.Search(figure, wish, Bounds, first, close: 1e-9);
            Assert.True(found.Solved, Invariant($"{curve} from {first}: {found}"));
            Assert.Equal(wish, found.Reached, 1e-9);
            Assert.Equal(at, found.At, 1e-6);
        }
    }

    [Fact]
    public void Convergence_never_leaves_the_bounds_and_gives_up_after_forty()
    {
        List<double> asked = [];
        SecantResult jump = BracketedSecant.Search(
            x =>
            {
                asked.Add(x);
                return x < Math.PI ? 0 : 1;
            },
            0.5, Bounds, 1, close: 0.1);
        Assert.False(jump.Solved);
        Assert.Equal(40, asked.Count);
        Assert.All(asked, x => Assert.InRange(x, 0, 100));
    }

    [Fact]
    public void Limits_a_wish_beyond_a_bound_says_what_the_bound_reaches()
    {
        Assert.Equal(new SecantResult(false, 100, 300), BracketedSecant.Search(x => 3 * x, 1000, Bounds, 1, 1e-9));
        Assert.Equal(new SecantResult(false, 0, 5), BracketedSecant.Search(x => 5 + x, 1, Bounds, 50, 1e-9));
    }

    [Fact]
    public void Limits_where_nothing_comes_out_is_too_much()
    {
        SecantResult found = BracketedSecant.Search(x => x > 30 ? null : x, 25, Bounds, 90, 1e-9);
        Assert.Equal((true, 25.0), (found.Solved, Math.Round(found.At, 8)));
        Assert.Equal(double.PositiveInfinity, BracketedSecant.Search(_ => null, 25, Bounds, 0, 1e-9).Reached);
    }

    [Fact]
    public void Invalid_no_function_is_refused() =>
        Assert.Throws<ArgumentNullException>(() => BracketedSecant.Search(null!, 1, Bounds, 1, 1e-9));
}
