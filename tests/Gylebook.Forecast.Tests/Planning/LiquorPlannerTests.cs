using Gylebook.Engine.Readouts;
using Gylebook.Forecast.Planning;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;

namespace Gylebook.Forecast.Tests.Planning;

/// <summary>Planning backwards: the wish, exactly, in few runs, or the limit that binds.</summary>
public sealed class LiquorPlannerTests(ITestOutputHelper output)
{
    private const double LitresClose = 1e-6;
    private const int MostRuns = 8;

    [Fact]
    public void Every_random_recipe_packages_its_wish_or_says_what_binds()
    {
        int[] runs = new int[MostRuns + 1];
        int unsolved = 0;
        foreach (Brew drawn in RandomBrews.All)
        {
            BrewPlan brew = drawn.Recipe.PlanOn(drawn.Kit);
            if (brew.Plan is null)
            {
                Finding finding = Assert.Single(brew.Findings, f => f.Code == "volumes.noSolution");
                Assert.Contains(brew.Outcome.Binding!, finding.Message, StringComparison.Ordinal);
                unsolved++;
                continue;
            }

            Assert.InRange(brew.Outcome.Runs, 1, MostRuns);
            runs[brew.Outcome.Runs]++;
            double wished = drawn.Recipe.Package.Volume.Value.Litres;
            double packaged = new OneRun(brew.Plan).Beer[BeerReadouts.PackagedLitres];
            Assert.True(Math.Abs(packaged - wished) <= LitresClose, $"{drawn.Name}: {packaged:R} for {wished}");
        }

        output.WriteLine($"runs needed, from 0 on: {string.Join(' ', runs)}; unsolved {unsolved}");
        Assert.True(unsolved <= RandomBrews.Count / 100);
    }

    [Fact]
    public void Priming_makes_the_carbonation_that_was_wished()
    {
        int seen = 0;
        foreach (Brew drawn in RandomBrews.All.Where(b => b.Recipe.Package is { In: "bottle", Carbonation: not null }))
        {
            if (drawn.Recipe.PlanOn(drawn.Kit).Plan is not { } plan || plan.Packages.Any(p => p.Priming <= 0))
            {
                continue;
            }

            OneRun run = new(plan);

            // The plan's sugar is good to 1e-7 kg: 5e-5 g of gas, 3e-6 volumes in 8 L.
            Assert.All(plan.Packaged, portion => Assert.Equal(drawn.Recipe.Package.Carbonation!.Value.Value.Volumes, run.Of(portion, BeerReadouts.CarbonationVolumes), 1e-4));
            seen++;
        }

        Assert.True(seen > 200, $"{seen}");
    }

    [Fact]
    public void A_wish_smaller_than_the_foods_own_water_says_so()
    {
        BrewPlan brew = (Simple(2) with
        {
            Ingredients = [Typed.Line(IngredientKind.Extract, "liquid malt extract light", 0.5, AdditionPoint.CopperUp), Typed.Line(IngredientKind.Food, "raspberries-raw", 3.4, AdditionPoint.CopperUp), Typed.Yeast("American ale")],
            Boil = null,
            Mash = null,
        }).PlanOn(Kits.Lossless);
        Assert.Null(brew.Plan);
        Assert.Equal("even without this liquor more than the wish is packaged", brew.Outcome.Binding);
        Assert.Contains(brew.Findings, f => f.Code == "volumes.noSolution");
    }

    [Fact]
    public void Solids_that_hold_ten_packages_say_so()
    {
        BrewPlan brew = Simple(2).PlanOn(Kits.Whole with { Kettle = Kits.Whole.Kettle with { LeftBehind = Typed.Litres(30) } });
        Assert.Null(brew.Plan);
        Assert.Contains("10 times the package", brew.Outcome.Binding, StringComparison.Ordinal);
    }

    [Fact]
    public void A_strike_set_by_hand_that_boils_dry_is_a_finding_and_no_exception()
    {
        BrewPlan brew = (Simple(10) with { Liquor = new LiquorPlan(Typed.Litres(4), null) }).PlanOn(Kits.Whole);
        Assert.Null(brew.Plan);
        Assert.Contains("more leaves than there is", brew.Outcome.Binding, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_yeast_no_priming_is_piled_up()
    {
        Recipe recipe = Simple(10);
        BrewPlan brew = (recipe with { Ingredients = [.. recipe.Ingredients.Where(l => l.Kind != IngredientKind.Yeast)] }).PlanOn(Kits.Whole);
        Assert.All(brew.Plan!.Packages, p => Assert.Equal(0, p.Priming));
    }

    private static Recipe Simple(double litres) => new()
    {
        Name = "simple",
        Package = new PackageWish(Typed.Litres(litres), "bottle", Typed.Volumes(2.4)),
        Mash = new MashPlan(MashMethod.Bag, [Typed.Rest(66, 60)], SpargePlan.None),
        Boil = new BoilPlan(Typed.Minutes(60)),
        Ferment = [Typed.Days(19, 14)],
        Ingredients = [Typed.Malt("pale ale malt", 0.2 * litres), Typed.Yeast("American ale")],
    };
}
