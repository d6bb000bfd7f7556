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
    // The solver stops within 0.005 IBU; grams are written to four places.
    private const double Close = 0.0051;

    private static readonly Recipe Bitter = Bitters.With(
        Bitters.Hop(30, AdditionPoint.Boil, 60), Bitters.Hop(20, AdditionPoint.Boil, 10)) with
    { Liquor = null };

    private static HopSolver Solver(BitternessModel model = BitternessModel.TimeGravity) => new(Bitters.AtTheSea, RandomBrews.Foods, model);

    private static double Ibu(Recipe recipe, BitternessModel model = BitternessModel.TimeGravity) =>
        recipe.Forecast(new ForecastRequest { Bitterness = model }).Number("bitterness");

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
        Near.Equal(found.Grams!.Value, found.Recipe!.Ingredients[1].Amount.Mass!.Value.Value.Grams, 1e-9);
        Assert.Equal(Bitter.Ingredients[2], found.Recipe.Ingredients[2]);
    }

    [Fact]
    public void A_swapped_dry_hop_keeps_its_weight_for_it_has_no_bitterness_to_keep()
    {
        Recipe dry = Bitters.With(Bitters.Hop(30, AdditionPoint.Boil, 60), Bitters.Hop(37, AdditionPoint.Ferment, 3));
        HopSolution swapped = Solver().Swap(dry, 2, "Target", null);
        Near.Equal(37, swapped.Grams!.Value, 1e-9);
        Near.Equal(Ibu(dry), Ibu(swapped.Recipe!), Close);
    }

    [Fact]
    public void More_bitterness_takes_more_hops()
    {
        double last = 0;
        foreach (double wished in new[] { 10.0, 20, 30, 40, 60 })
        {
            double grams = Solver().AmountFor(Bitter, 1, wished).Grams!.Value;
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
        Assert.True(moved.Grams > 30);
    }

    // The table's own ratio of utilisations at one gravity: (1 − e^(−0.04·60))/(1 − e^(−0.04·30)) = 1.301. The later minutes are a
    // little denser, which takes a percent more, and more hops hold more wort.
    [Fact]
    public void Half_the_time_takes_three_tenths_more() =>
        Assert.InRange(Solver().Move(Bitter, 1, new AdditionTime(AdditionPoint.Boil, 30)).Grams!.Value / 30, 1.301, 1.301 * 1.04);

    [Fact]
    public void Twice_the_alpha_acid_takes_half_the_hops()
    {
        HopSolution swapped = Solver().Swap(Bitter, 1, "Target", Typed.Share(0.16));
        Near.Equal(Ibu(Bitter), Ibu(swapped.Recipe!), Close);

        // Half, less the wort that the lighter hops no longer hold: under 2 % of the litres.
        Assert.InRange(swapped.Grams!.Value, 15 * 0.98, 15.01);
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
