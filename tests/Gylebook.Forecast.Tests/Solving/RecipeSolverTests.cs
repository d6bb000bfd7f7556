using Gylebook.Forecast.Report;
using Gylebook.Forecast.Report.Pitching;
using Gylebook.Forecast.Solving;
using Gylebook.Recipes;
using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Larders;
using Gylebook.Science.Quantities;
using Gylebook.Tests.Shared;

namespace Gylebook.Forecast.Tests.Solving;

/// <summary>What was solved is forecast anew, by the forecast and not by the solver: the wish must come out of it.</summary>
public sealed class RecipeSolverTests
{
    // A malt above 1 kg is written to 10 g: half of it, of the least such grist of 2 kg and 65 points, is 0.00016; four such lines
    // would double that, and the least malt, 100 g to 1 g, adds 0.00001.
    private const double GravityOfWrittenWeights = 0.0004;

    // Hops are written to 0.1 g: on 5 g and some 3 IBU that is 0.03 IBU on the coarse side; malt's 0.0004 move utilisation by 0.3 %.
    private const double IbuOfWrittenWeights = 0.15;

    // What is told of the rounded weights is a run of its own at the same medians: the forecast's own digits only.
    private const double SameGravity = 1e-6;

    private static readonly string[] Samples =
        ["hedgerow-brown", "plain-bitter", "chestnut-mild", "apricot-cardamom-wheat", "edges/extract-only", "edges/tun-batch", "edges/part-mash"];

    internal static readonly Larder Foods = new([FoodFile.Read(File.ReadAllText(RepositoryFile.PathOf("samples/recipes/foods/pumpkin-seed-flour.json"))).Value!]);

    public static TheoryData<string, double> Wishes() => [.. Samples.SelectMany(name => new[] { 1.040, 1.050, 1.065 }.Select(wish => (name, wish)))];

    [Theory]
    [MemberData(nameof(Wishes))]
    public void A_gravity_alone_is_met_with_all_else_as_it_was(string name, double gravity)
    {
        RecipeDraft draft = Draft(name);
        SolvedRecipe solved = Solver(name).Solve(draft.Recipe!, new BeerWish { KeepsRest = false, OriginalGravity = SpecificGravity.FromRatio(gravity) });
        Assert.Empty(solved.Findings);
        RecipeDraft after = Written(draft, solved);
        double told = Told(after, KitFor(name), "originalGravity");
        Assert.InRange(told, gravity - GravityOfWrittenWeights, gravity + GravityOfWrittenWeights);
        Assert.InRange(solved.Reached.Single(reached => reached.Readout == "originalGravity").Reached, told - SameGravity, told + SameGravity);
        Assert.All(Others(draft, after), pair => Assert.Equal(pair.Before.Amount, pair.After.Amount));
    }

    [Theory]
    [InlineData("hedgerow-brown", 12, 1.048, 22)]
    [InlineData("hedgerow-brown", 23, 1.062, 40)]
    [InlineData("plain-bitter", 10, 1.052, 38)]
    [InlineData("chestnut-mild", 15, 1.038, 18)]
    public void Litres_gravity_and_bitterness_come_out_together(string name, double litres, double gravity, double ibu)
    {
        RecipeDraft draft = Draft(name);
        SolvedRecipe solved = Solver(name).Solve(draft.Recipe!, Wish(litres, gravity, ibu));
        Assert.Empty(solved.Findings);
        RecipeDraft after = Written(draft, solved);
        Assert.InRange(Told(after, KitFor(name), "packagedLitres"), litres - 1e-6, litres + 1e-6);
        Assert.InRange(Told(after, KitFor(name), "originalGravity"), gravity - GravityOfWrittenWeights, gravity + GravityOfWrittenWeights);
        Assert.InRange(Told(after, KitFor(name), "bitterness"), ibu - IbuOfWrittenWeights, ibu + IbuOfWrittenWeights);
    }

    /// <summary>Solved for another kit and not multiplied: the beer stays, the weights do not follow the litres.</summary>
    [Theory]
    [InlineData("big-pot", 40)]
    [InlineData("long-hose", 10)]
    public void Another_kit_makes_the_same_beer(string kitName, double litres)
    {
        RecipeDraft draft = Draft("hedgerow-brown");
        Kit kit = KitNamed(kitName);
        double gravity = Told(draft, BuiltInKit.LanternShed, "originalGravity"), ibu = Told(draft, BuiltInKit.LanternShed, "bitterness");
        SolvedRecipe solved = new RecipeSolver(kit, Foods).Solve(draft.Recipe!, new BeerWish { Package = Litres(litres) }, BuiltInKit.LanternShed);
        Assert.Empty(solved.Findings);
        RecipeDraft after = Written(draft, solved);
        Assert.InRange(Told(after, kit, "originalGravity"), gravity - GravityOfWrittenWeights, gravity + GravityOfWrittenWeights);
        Assert.InRange(Told(after, kit, "bitterness"), ibu - IbuOfWrittenWeights, ibu + IbuOfWrittenWeights);
        double multiplied = draft.Recipe!.Ingredients[0].Amount.Mass!.Value.Value.Kilograms * litres / 20;
        Assert.True(Math.Abs((after.Recipe!.Ingredients[0].Amount.Mass!.Value.Value.Kilograms / multiplied) - 1) > 0.005, "The kits lose alike.");
    }

    [Fact]
    public void Shares_hold_the_foods_stay_and_the_other_malts_take_the_rest()
    {
        RecipeDraft draft = Draft("hedgerow-brown");
        SolvedRecipe solved = Solver("hedgerow-brown").Solve(
            draft.Recipe!, new BeerWish { OriginalGravity = SpecificGravity.FromRatio(1.060), Shares = new Dictionary<int, double> { [1] = 0.2, [3] = 0.03 } });
        Assert.Empty(solved.Findings);
        double[] kilograms = [.. solved.Recipe.Ingredients.Take(5).Select(line => line.Amount.Mass!.Value.Value.Kilograms)];
        double grist = kilograms.Sum();
        // Weights are written to 10 g and 1 g: of a grist of 5 kg that is 0.1 % either way.
        Assert.InRange(kilograms[1] / grist, 0.199, 0.201);
        Assert.InRange(kilograms[3] / grist, 0.029, 0.031);
        Assert.Equal(0.6, kilograms[4]);
        Assert.InRange(kilograms[0] / kilograms[2], 11.9, 12.1);
        Assert.InRange(Told(Written(draft, solved), BuiltInKit.LanternShed, "originalGravity"), 1.060 - GravityOfWrittenWeights, 1.060 + GravityOfWrittenWeights);
    }

    [Fact]
    public void What_binds_is_said_with_its_field_value_and_limit_and_nothing_is_changed()
    {
        Recipe brown = Draft("hedgerow-brown").Put("ingredients[8].amount", "5 kg")!.After.Recipe!;
        Finding honey = Assert.Single(Solver("hedgerow-brown").Solve(brown, new BeerWish { OriginalGravity = SpecificGravity.FromRatio(1.020) }).Findings);
        Assert.Equal(("solve.gravity", "1.0200"), (honey.Code, honey.Value));
        Assert.Contains("what is not malt", honey.Message, StringComparison.Ordinal);

        RecipeDraft late = Draft("hedgerow-brown").Add(IngredientKind.Hop, "Target", "60 g", new AdditionTime(AdditionPoint.Boil, 20)).After;
        SolvedRecipe solved = Solver("hedgerow-brown").Solve(late.Recipe!, new BeerWish { Bitterness = Bitterness.FromIbu(10) });
        Finding hops = Assert.Single(solved.Findings);
        Assert.Equal(("solve.bitterness", "ingredients[5].amount", "10.0 IBU"), (hops.Code, hops.Where, hops.Value));
        Assert.Empty(solved.Fields);
        Assert.Same(late.Recipe, solved.Recipe);

        Finding shares = Assert.Single(Solver("hedgerow-brown").Solve(brown, new BeerWish { Shares = new Dictionary<int, double> { [0] = 0.7, [1] = 0.4 } }).Findings);
        Assert.Equal(("solve.shares", "110 %", "100 %"), (shares.Code, shares.Value, shares.Limit));

        RecipeDraft sugar = Draft("hedgerow-brown").Remove(3).After.Remove(2).After.Remove(1).After.Remove(0).After;
        Assert.NotEmpty(Solver("hedgerow-brown").Solve(sugar.Recipe!, new BeerWish { OriginalGravity = SpecificGravity.FromRatio(1.050) }).Findings);
    }

    /// <summary>Counted by the forecast's own draws, which are others: two standard errors of 4,000 draws at 90 % are 1 %, and the search stops within a half.</summary>
    [Theory]
    [InlineData("hedgerow-brown", 1.0)]
    [InlineData("plain-bitter", 1.5)]
    public void Yeast_is_weighed_for_the_cells_that_the_wort_wants(string name, double share)
    {
        RecipeDraft draft = Draft(name);
        SolvedRecipe solved = Solver(name).Solve(draft.Recipe!, new BeerWish { OriginalGravity = SpecificGravity.FromRatio(1.070), Pitch = share });
        Assert.Empty(solved.Findings);
        PitchAdvice pitch = Forecaster.Forecast(Written(draft, solved).Recipe!, KitFor(name), Foods, "solved").Pitch!;

        // Dry yeast is written to 0.1 g, of some 20 g.
        Assert.Equal(share, (pitch.CellsLowBillions!.Value + pitch.CellsHighBillions!.Value) / 2 / pitch.CellsNeededBillions, 0.005);
    }

    [Fact]
    public void Yeast_whose_cells_nobody_knows_cannot_be_weighed_for_them()
    {
        Recipe recipe = Draft("plain-bitter").Recipe!;
        Recipe unsaid = recipe with { Ingredients = [.. recipe.Ingredients.Select(line => line.Kind == IngredientKind.Yeast ? line with { Form = null } : line)] };
        SolvedRecipe solved = Solver("plain-bitter").Solve(unsaid, new BeerWish { Pitch = 1 });
        Assert.Equal("solve.pitch", Assert.Single(solved.Findings).Code);
    }

    [Fact]
    public void A_package_asked_for_in_nine_of_ten_brews_is_full_in_nine_of_ten()
    {
        RecipeDraft draft = Draft("hedgerow-brown");
        SolvedRecipe solved = Solver("hedgerow-brown").Solve(draft.Recipe!, new BeerWish { Package = Litres(15), Confidence = 0.9 });
        Assert.Empty(solved.Findings);
        BrewForecast forecast = Forecaster.Forecast(Written(draft, solved).Recipe!, BuiltInKit.LanternShed, Foods, "other draws", null, new ForecastRequest { Draws = 4000 });
        double[] packaged = [.. forecast.HowSure!.Ensemble[Engine.Readouts.BeerReadouts.PackagedLitres]];
        Assert.InRange(packaged.Count(litres => litres >= 15) / 4000.0, 0.885, 0.915);
        Assert.True(solved.Confident!.PlannedLitres > 15);
    }

    [Fact]
    public void A_wish_that_is_met_already_changes_no_text()
    {
        RecipeDraft draft = Draft("plain-bitter");
        SolvedRecipe first = Solver("plain-bitter").Solve(draft.Recipe!, Wish(20, 1.044, 32));
        RecipeDraft after = Written(draft, first);
        Assert.Empty(Solver("plain-bitter").Solve(after.Recipe!, new BeerWish()).Fields);
    }

    internal static RecipeDraft Draft(string name) => RecipeDraft.Of(File.ReadAllText(RepositoryFile.PathOf($"samples/recipes/{name}.json")));

    private static BeerWish Wish(double litres, double gravity, double ibu) => new()
    {
        Package = Litres(litres), OriginalGravity = SpecificGravity.FromRatio(gravity), Bitterness = Bitterness.FromIbu(ibu),
    };

    private static Entered<VolumeAt20C> Litres(double litres) => new(VolumeAt20C.FromLitres(litres), Invariant($"{litres:0.#} L"));

    private static RecipeDraft Written(RecipeDraft draft, SolvedRecipe solved) => draft.Changed("solved", solved.Fields)?.After ?? draft;

    private static IEnumerable<(IngredientLine Before, IngredientLine After)> Others(RecipeDraft before, RecipeDraft after) =>
        before.Recipe!.Ingredients.Zip(after.Recipe!.Ingredients).Where(pair => pair.First.Kind is not (IngredientKind.Malt or IngredientKind.Extract));

    private static RecipeSolver Solver(string name) => new(KitFor(name), Foods);

    private static Kit KitFor(string name) => name.Contains("tun", StringComparison.Ordinal) ? KitNamed("tun-and-kettle") : BuiltInKit.LanternShed;

    private static Kit KitNamed(string name) => KitFile.Read(File.ReadAllText(RepositoryFile.PathOf($"samples/kits/{name}.json"))).Value!;

    private static double Told(RecipeDraft draft, Kit kit, string headline) =>
        Forecaster.Forecast(draft.Recipe!, kit, Foods, "test").Headline.Single(h => h.Name == headline).Band!.Likely;
}
