using Gylebook.Engine.State;
using Gylebook.Forecast.Report;
using Gylebook.Forecast.Solving;
using Gylebook.Forecast.Tests.Report;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Tests.Shared;

namespace Gylebook.Forecast.Tests.Solving;

public sealed class HopSolverTests
{
    // The solver stops within 0.005 IBU; the scale rounds by 0.05 g at most, of hops that bring less than 2 IBU a gram: 16 % of alpha acid, a quarter of it used, in 20 L.
    private const double Close = 0.005 + (0.05 * 2);

    private static readonly Recipe Bitter = Bitters.With(
        Bitters.Hop(30, AdditionPoint.Boil, 60), Bitters.Hop(20, AdditionPoint.Boil, 10)) with
    { Liquor = null };

    private static HopSolver Solver(BitternessModel model = BitternessModel.TimeGravity) => new(Bitters.AtTheSea, RandomBrews.Foods, model);

    private static double Ibu(Recipe recipe, BitternessModel model = BitternessModel.TimeGravity) =>
        recipe.Forecast(new ForecastRequest { Bitterness = model }).Number("bitterness");

    private static double Grams(HopSolution found) => found.Amount!.Value.Value.Grams;

    [Theory]
    [InlineData(28, BitternessModel.TimeGravity)]
    [InlineData(28, BitternessModel.Isomerisation)]
    [InlineData(12, BitternessModel.TimeGravity)]
    [InlineData(75, BitternessModel.Isomerisation)]
    public void The_amount_for_a_bitterness_gives_it(double wished, BitternessModel model)
    {
        HopSolution found = Solver(model).AmountFor(Bitter, 1, wished);
        Assert.Null(found.Problem);
        Near.Equal(wished, Ibu(found.Recipe!, model), Close);
        Near.Equal(found.Ibu, Ibu(found.Recipe!, model), 1e-6);
        Assert.Equal(found.Amount, found.Recipe!.Ingredients[1].Amount.Mass);
        Near.Equal(Math.Round(Grams(found), 1), Grams(found), 1e-9);
        Assert.Equal(Bitter.Ingredients[2], found.Recipe.Ingredients[2]);
    }

    [Fact]
    public void A_swapped_dry_hop_keeps_its_weight_for_it_has_no_bitterness_to_keep()
    {
        Recipe dry = Bitters.With(Bitters.Hop(30, AdditionPoint.Boil, 60), Bitters.Hop(37, AdditionPoint.Ferment, 3));
        HopSolution swapped = Solver().Swap(dry, 2, "Target", null);
        Near.Equal(37, Grams(swapped), 1e-9);
        Near.Equal(Ibu(dry), Ibu(swapped.Recipe!), Close);
    }

    [Fact]
    public void More_bitterness_takes_more_hops()
    {
        double last = 0;
        foreach (double wished in new[] { 10.0, 20, 30, 40, 60 })
        {
            double grams = Grams(Solver().AmountFor(Bitter, 1, wished));
            Assert.True(grams > last);
            last = grams;
        }
    }

    [Theory]
    [InlineData(BitternessModel.TimeGravity, 30)]
    [InlineData(BitternessModel.Isomerisation, 15)]
    public void A_moved_hop_keeps_the_bitterness_and_takes_more_when_later(BitternessModel model, double minutes)
    {
        HopSolution moved = Solver(model).Move(Bitter, 1, new AdditionTime(AdditionPoint.Boil, minutes));
        Near.Equal(Ibu(Bitter, model), Ibu(moved.Recipe!, model), Close);
        Assert.Equal(minutes, moved.Recipe!.Ingredients[1].At.Count);
        Assert.True(Grams(moved) > 30);
    }

    // The table's own ratio of utilisations at one gravity: (1 − e^(−0.04·60))/(1 − e^(−0.04·30)) = 1.301. The later minutes are a
    // little denser, which takes a percent more, and more hops hold more wort.
    [Fact]
    public void Half_the_time_takes_three_tenths_more() =>
        Assert.InRange(Grams(Solver().Move(Bitter, 1, new AdditionTime(AdditionPoint.Boil, 30))) / 30, 1.301, 1.301 * 1.04);

    [Fact]
    public void Twice_the_alpha_acid_takes_half_the_hops()
    {
        HopSolution swapped = Solver().Swap(Bitter, 1, "Target", Typed.Share(0.16));
        Near.Equal(Ibu(Bitter), Ibu(swapped.Recipe!), Close);

        // Half, less the wort that the lighter hops no longer hold: under 2 % of the litres.
        Assert.InRange(Grams(swapped), 15 * 0.98, 15.01);
        Assert.Equal("Target", swapped.Recipe!.Ingredients[1].Of);
    }

    [Fact]
    public void What_cannot_be_had_says_which_limit_binds()
    {
        HopSolution tooBitter = Solver().AmountFor(Bitter, 1, 1);
        Assert.Equal("hop.tooBitter", tooBitter.Problem!.Code);
        Assert.Null(tooBitter.Recipe);

        Recipe dry = Bitters.With(Bitters.Hop(30, AdditionPoint.Ferment, 3)) with { Liquor = null };
        HopSolution never = Solver().AmountFor(dry, 1, 20);
        Assert.Equal(("hop.noAmount", "20.0 IBU", "2000 g"), (never.Problem!.Code, never.Problem.Value, never.Problem.Limit));

        Recipe broken = Bitter with { Package = Bitter.Package with { In = "bucket" } };
        Assert.Equal("hop.noRun", Solver().AmountFor(broken, 1, 20).Problem!.Code);
        Assert.Equal("hop.noRun", Solver().Swap(broken, 1, "Target", null).Problem!.Code);
    }

    [Fact]
    public void What_has_no_meaning_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Solver().AmountFor(Bitter, 0, 20));
        Assert.Throws<ArgumentOutOfRangeException>(() => Solver().AmountFor(Bitter, 9, 20));
        Assert.Throws<ArgumentOutOfRangeException>(() => Solver().AmountFor(Bitter, 1, double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => Solver().Move(Bitter, -1, default));
    }
}
