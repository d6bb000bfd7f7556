using Gylebook.Engine.Readouts;
using Gylebook.Engine.Running;
using Gylebook.Engine.State;

namespace Gylebook.Forecast.Tests.Running;

/// <summary>Portions that part, meet again and are filled up: lists of steps written by hand, as the engine allows.</summary>
public sealed class PortionTests
{
    /// <summary>How far two ways to the same sum may differ by rounding alone.</summary>
    private const double Rounding = 1e-12;

    [Theory]
    [InlineData(0.5)]
    [InlineData(0.137)]
    public void Two_parts_of_a_split_blended_give_the_whole_again(double share)
    {
        foreach (Tour tour in Tours.All.Where(t => t.Plan.SplitShares.Length == 0))
        {
            OneRun whole = new(tour.Plan, tour.Draw);
            RunPlan parted = With(tour.Plan, Move.CastOver, Stage.Cast, [share], new Step(Move.Divide, Stage.Split, 0, 2, 0), new Step(Move.Join, Stage.Blend, 2, 0, 0));
            OneRun blended = new(parted, tour.Draw);
            Assert.True(blended.Ledger.Closes, tour.Name);
            AssertSame(whole, blended, tour.Plan.Packaged[0]);
        }
    }

    [Fact]
    public void Two_parts_fermented_apart_and_blended_give_the_whole_again()
    {
        Tour tour = Tours.All[2];
        OneRun whole = new(tour.Plan, tour.Draw);
        int ferment = Array.FindIndex(tour.Plan.Steps, s => s.Move == Move.FermentOut);
        int addYeast = ferment - 1;
        Step[] steps =
        [
            .. tour.Plan.Steps[..(addYeast + 1)],
            new Step(Move.Divide, Stage.Split, 0, 2, 0),
            new Step(Move.FermentOut, Stage.Ferment, 2, 2, 0),
            .. tour.Plan.Steps[ferment..(ferment + 1)],
            new Step(Move.Join, Stage.Blend, 2, 0, 0),
            .. tour.Plan.Steps[(ferment + 1)..],
        ];
        OneRun blended = new(tour.Plan with { PortionCount = 3, Steps = steps, SplitShares = [0.4] }, tour.Draw);
        Assert.True(blended.Ledger.Closes);
        AssertSame(whole, blended, 0);
    }

    [Fact]
    public void Liquor_added_after_the_boil_thins_the_wort_by_just_that_much()
    {
        Tour tour = Tours.All[2];
        OneRun strong = new(tour.Plan, tour.Draw);
        double[] liquors = [.. tour.Plan.Liquors, 4];
        RunPlan toppedUp = With(tour.Plan, Move.Look, Stage.Chill, [], new Step(Move.AddLiquor, Stage.TopUp, 0, 0, liquors.Length - 1));
        OneRun thin = new(toppedUp with { Liquors = liquors }, tour.Draw);

        Assert.True(thin.Ledger.Closes);
        Wort before = strong.At(Stage.Chill);
        Wort after = thin.At(Stage.TopUp);
        Assert.Equal(before[Component.Water] + 4, after[Component.Water], Rounding * after[Component.Water]);
        Assert.Equal(before.ExtractMass, after.ExtractMass, Rounding * after.ExtractMass);
        Assert.True(thin[BeerReadouts.CastGravity] < strong[BeerReadouts.CastGravity]);
        Assert.Equal(strong[BeerReadouts.KnockOutGravity], thin[BeerReadouts.KnockOutGravity]);
    }

    private static void AssertSame(OneRun whole, OneRun blended, int portion)
    {
        foreach (Readout readout in BeerReadouts.All)
        {
            double expected = whole.Of(portion, readout);
            double actual = blended.Of(portion, readout);
            Assert.True(Math.Abs(actual - expected) <= Rounding * Math.Max(1, Math.Abs(expected)), $"{readout.Id}: {expected:R} {actual:R}");
        }
    }

    /// <summary>The plan with steps put in after the first of a kind.</summary>
    private static RunPlan With(RunPlan plan, Move after, Stage at, double[] splitShares, params Step[] put)
    {
        int place = Array.FindIndex(plan.Steps, s => s.Move == after && s.Stage == at) + 1;
        return plan with { PortionCount = 3, SplitShares = splitShares, Steps = [.. plan.Steps[..place], .. put, .. plan.Steps[place..]] };
    }
}
