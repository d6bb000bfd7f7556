using System.Diagnostics;
using System.Reflection;
using Gylebook.Engine.Drawing;
using Gylebook.Engine.Ensembles;
using Gylebook.Engine.Parameters;
using Gylebook.Engine.Readouts;
using Gylebook.Engine.Running;
using Gylebook.Forecast.Planning;
using Gylebook.Forecast.Tests.Planning;
using Gylebook.Forecast.Tests.Running;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Larders;
using Gylebook.Science.Numerics.Distributions;
using Gylebook.Tests.Shared;

namespace Gylebook.Forecast.Tests.Drawing;

/// <summary>The ensemble: each draw is the run itself, and nothing else moves a bit of it.</summary>
public sealed class EnsembleTests
{
    private static readonly RunPlan Bitter = ParameterTests.Plan("plain-bitter.json")!;

    private static readonly IReadOnlyList<Readout> All = new ReadoutTable(Bitter).All;

    [Fact]
    public void Each_draw_is_the_run_made_with_it()
    {
        Draws draws = Draws.Of(Bitter.Parameters, "each", 40);
        Ensemble ensemble = Ensemble.Of(Bitter, draws, All);
        for (int i = 0; i < draws.Count; i++)
        {
            double[] draw = [.. Bitter.Medians];
            draws.Put(i, draw);
            RunOutcome run = RunOutcome.At(Bitter, draw);
            Assert.All(All, readout => Assert.Equal(run[readout], ensemble[readout][i]));
        }
    }

    [Fact]
    public void The_bits_are_the_same_on_any_number_of_threads_and_every_time()
    {
        long[] BitsOn(int threads)
        {
            Ensemble ensemble = Ensemble.Of(Bitter, Draws.Of(Bitter.Parameters, "threads", 500), All, threads: threads);
            return [.. All.SelectMany(readout => ensemble[readout].ToArray()).Select(BitConverter.DoubleToInt64Bits)];
        }

        long[] one = BitsOn(1);
        Assert.Equal(one, BitsOn(2));
        Assert.Equal(one, BitsOn(7));
        Assert.Equal(one, BitsOn(1));
    }

    [Fact]
    public void A_line_of_nothing_moves_no_bit_and_the_order_of_lines_no_draw()
    {
        Recipe recipe = RecipeFile.Read(File.ReadAllText(RepositoryFile.PathOf("samples/recipes/plain-bitter.json"))).Value!;
        Recipe more = recipe with { Ingredients = [Typed.Line(IngredientKind.Food, "raspberries-raw", 0, AdditionPoint.Ferment, 3), .. recipe.Ingredients, Typed.Malt("munich malt", 0)] };
        Recipe turned = recipe with { Ingredients = [.. recipe.Ingredients.Reverse()] };
        Dictionary<string, long> before = BitsOf(recipe), with = BitsOf(more), after = BitsOf(turned);
        Assert.All(before, pair => Assert.Equal(pair.Value, with[pair.Key]));

        // Sums of mash and hops run in another order then, so the last digits of results may move; the draws may not.
        Assert.All(before.Where(pair => pair.Key.StartsWith("draw ", StringComparison.Ordinal)), pair => Assert.Equal(pair.Value, after[pair.Key]));
    }

    private static Dictionary<string, long> BitsOf(Recipe recipe)
    {
        RunPlan plan = BrewPlanner.Plan(recipe, Kits.Sample("lantern-shed"), Larder.Empty).Plan!;
        Ensemble ensemble = Ensemble.Of(plan, Draws.Of(plan.Parameters, "0 g", 100), BeerReadouts.All);
        Dictionary<string, long> bits = BeerReadouts.All.ToDictionary(readout => readout.Id, readout => Folded(ensemble[readout]));
        foreach (int place in ensemble.Draws.Moving)
        {
            bits[$"draw {plan.Parameters[place].Id}"] = Folded(ensemble.Draws[place]);
        }

        return bits;
    }

    private static long Folded(ReadOnlySpan<double> values)
    {
        long folded = 0;
        foreach (double value in values)
        {
            folded = (folded * 31) + BitConverter.DoubleToInt64Bits(value);
        }

        return folded;
    }

    [Fact]
    public void A_draw_allocates_nothing()
    {
        Assert.SkipWhen(
            typeof(Run).Assembly.GetCustomAttribute<DebuggableAttribute>()?.IsJITOptimizerDisabled == true,
            "Only an optimised build says anything about allocation.");
        foreach (Tour tour in Tours.All)
        {
            IReadOnlyList<Readout> all = new ReadoutTable(tour.Plan).All;
            Draws draws = Draws.Of(tour.Plan.Parameters, "bytes", 1000);
            EnsembleRun runs = new(tour.Plan, draws, all, [new(0, 0, 1, false)]);
            double[] values = new double[all.Count * draws.Count];
            // Every draw once, over and over: what is set up at first use, or by code not yet settled, is gone by a later round; what a draw allocates is in every one.
            long least = long.MaxValue;
            for (int round = 0; round < 8 && least > 0; round++)
            {
                long before = GC.GetAllocatedBytesForCurrentThread();
                for (int i = 0; i < draws.Count; i++)
                {
                    runs.Run(i, values);
                }

                least = Math.Min(least, GC.GetAllocatedBytesForCurrentThread() - before);
            }

            Assert.Equal(0, least);
        }
    }

    [Fact]
    public void What_a_model_leaves_open_is_added_after_the_run()
    {
        Parameter added = DrawsTests.Of("model.added", 0, Family.Normal, 0.001), times = DrawsTests.Of("model.times", 1, Family.LogNormal, 0.2, 0);
        Draws draws = Draws.Of([.. Bitter.Parameters, added, times], "terms", 200);
        Readout[] asked = [BeerReadouts.FinalGravity, BeerReadouts.Bitterness];
        Ensemble bare = Ensemble.Of(Bitter, draws, asked);
        Ensemble wider = Ensemble.Of(Bitter, draws, asked, [new(added, asked[0], 2), new(times, asked[1], Multiplies: true), new(added, BeerReadouts.Colour)]);
        for (int i = 0; i < draws.Count; i++)
        {
            Assert.Equal(bare[asked[0]][i] + (2 * draws[Bitter.Parameters.Length][i]), wider[asked[0]][i]);
            Assert.Equal(bare[asked[1]][i] * draws[Bitter.Parameters.Length + 1][i], wider[asked[1]][i]);
        }
    }

    [Fact]
    public void A_kettle_that_boils_dry_leaves_no_numbers()
    {
        RunPlan dry = Bitter with { Liquors = [.. Bitter.Liquors.Select(liquor => 0.2 * liquor)] };
        Ensemble ensemble = Ensemble.Of(dry, Draws.Of(dry.Parameters, "dry", 50), BeerReadouts.Headline);
        Assert.All(BeerReadouts.Headline, readout => Assert.Contains(ensemble[readout].ToArray(), double.IsNaN));
    }
}
