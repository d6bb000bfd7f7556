using Gylebook.Forecast.Report;
using Gylebook.Forecast.Solving;
using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Science.Quantities;
using Gylebook.Tests.Shared;

namespace Gylebook.Forecast.Tests.Solving;

public sealed class AmountSolverTests
{
    // Weights are written to 1 g in 3.6 kg: about 3 in 10 000 of 50 points, so 0.00002; the least malt, 100 g, to 1 g adds 0.0001.
    private const double GravityOfWrittenWeights = 0.0002;

    // Hops are written to 0.1 g: on 5 g and some 3 IBU that is 0.03 IBU on the coarse side.
    private const double IbuOfWrittenWeights = 0.06;

    private static readonly string[] Samples =
        ["hedgerow-brown", "plain-bitter", "chestnut-mild", "apricot-cardamom-wheat", "edges/extract-only", "edges/tun-batch", "edges/part-mash"];

    public static TheoryData<string, double> Wishes() => [.. Samples.SelectMany(name => new[] { 1.040, 1.050, 1.065 }.Select(wish => (name, wish)))];

    [Theory]
    [MemberData(nameof(Wishes))]
    public void Weights_for_a_gravity_give_that_gravity_when_the_recipe_is_forecast_anew(string name, double wish)
    {
        RecipeDraft draft = Draft(name);
        AmountsFound found = new AmountSolver(draft.Recipe!, BuiltInKitFor(name), Foods).GristFor(SpecificGravity.FromRatio(wish));
        Assert.Null(found.Binding);
        Assert.InRange(Told(draft.Amounts(found.Amounts, "grist")?.After ?? draft, name, "originalGravity"), wish - GravityOfWrittenWeights, wish + GravityOfWrittenWeights);
    }

    [Fact]
    public void Weights_for_a_gravity_keep_the_shares_of_the_grist_and_touch_nothing_else()
    {
        RecipeDraft draft = Draft("hedgerow-brown");
        AmountsFound found = new AmountSolver(draft.Recipe!, BuiltInKit.LanternShed, Foods).GristFor(SpecificGravity.FromRatio(1.060));
        Assert.Equal([0, 1, 2, 3], found.Amounts.Keys.Order());
        RecipeDraft after = draft.Amounts(found.Amounts, "grist")!.After;
        double Times(int line) => after.Recipe!.Ingredients[line].Amount.Mass!.Value.Value.Kilograms / draft.Recipe!.Ingredients[line].Amount.Mass!.Value.Value.Kilograms;
        // 100 g are written to a gram: half a gram in a hundred either way.
        Assert.All([1, 2, 3], line => Assert.InRange(Times(line), Times(0) - 0.006, Times(0) + 0.006));
        Assert.Equal(draft.Lines.Skip(4), after.Lines.Skip(4));
    }

    [Fact]
    public void A_gravity_below_what_the_honey_brings_alone_is_refused_with_the_limit()
    {
        RecipeDraft draft = Draft("hedgerow-brown").Put("ingredients[8].amount", "5 kg")!.After;
        AmountsFound found = new AmountSolver(draft.Recipe!, BuiltInKit.LanternShed, Foods).GristFor(SpecificGravity.FromRatio(1.020));
        Assert.Empty(found.Amounts);
        Assert.Contains("not malt", found.Binding, StringComparison.Ordinal);
        Assert.True(found.Reached > 1.020);
    }

    [Fact]
    public void Without_malt_there_is_nothing_to_weigh()
    {
        RecipeDraft draft = Draft("hedgerow-brown").Remove(3).After.Remove(2).After.Remove(1).After.Remove(0).After;
        Assert.NotNull(new AmountSolver(draft.Recipe!, BuiltInKit.LanternShed, Foods).GristFor(SpecificGravity.FromRatio(1.050)).Binding);
    }

    [Theory]
    [InlineData("hedgerow-brown", 5, 20)]
    [InlineData("hedgerow-brown", 5, 45)]
    [InlineData("plain-bitter", 3, 30)]
    [InlineData("apricot-cardamom-wheat", 2, 12)]
    public void Hops_for_a_bitterness_give_that_bitterness_when_the_recipe_is_forecast_anew(string name, int line, double wish)
    {
        RecipeDraft draft = Draft(name);
        Assert.Equal(IngredientKind.Hop, draft.Lines[line].Kind);
        AmountsFound found = new AmountSolver(draft.Recipe!, BuiltInKit.LanternShed, Foods).HopFor(line, Bitterness.FromIbu(wish));
        Assert.Null(found.Binding);
        RecipeDraft after = draft.Amounts(found.Amounts, "hops")!.After;
        Assert.InRange(Told(after, name, "bitterness"), wish - IbuOfWrittenWeights, wish + IbuOfWrittenWeights);
    }

    [Fact]
    public void Hops_cannot_make_a_beer_less_bitter_than_the_others_do_alone()
    {
        RecipeDraft draft = Draft("hedgerow-brown");
        draft = draft.Add(IngredientKind.Hop, "Fuggle", "5 g", new AdditionTime(AdditionPoint.Boil, 15)).After;
        int late = draft.Lines.Last(l => l.Kind == IngredientKind.Hop).Number;
        AmountsFound found = new AmountSolver(draft.Recipe!, BuiltInKit.LanternShed, Foods).HopFor(late, Bitterness.FromIbu(5));
        Assert.Empty(found.Amounts);
        Assert.Contains("even without this hop", found.Binding, StringComparison.Ordinal);
    }

    [Fact]
    public void Hops_after_the_boil_cannot_be_weighed_for_bitterness()
    {
        RecipeDraft draft = Draft("hedgerow-brown").Put("ingredients[5].at", "knock-out")!.After;
        AmountsFound found = new AmountSolver(draft.Recipe!, BuiltInKit.LanternShed, Foods).HopFor(5, Bitterness.FromIbu(30));
        Assert.Empty(found.Amounts);
        Assert.Contains("at this time", found.Binding, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("3.6 kg", 3.8512, "3.851 kg")]
    [InlineData("28 g", 0.03149, "31.5 g")]
    [InlineData("500 g", 0.51234, "512 g")]
    [InlineData("8 lb", 4.5359237, "10 lb")]
    [InlineData("1,5 oz", 0.056699046, "2 oz")]
    public void Weights_are_written_in_the_unit_they_replace(string before, double kilograms, string after)
    {
        Assert.True(UnitTable.TryParse(before, out Entered<Mass> mass, out _));
        Assert.Equal(after, AmountText.Of(mass, kilograms));
    }

    internal static RecipeDraft Draft(string name) => RecipeDraft.Of(File.ReadAllText(RepositoryFile.PathOf($"samples/recipes/{name}.json")));

    internal static FoodMakeup? Foods(string id) => id == "pumpkin-seed-flour"
        ? FoodMakeups.From(FoodFile.Read(File.ReadAllText(RepositoryFile.PathOf("samples/recipes/foods/pumpkin-seed-flour.json"))).Value!).Makeup
        : null;

    private static Kit BuiltInKitFor(string name) => name.Contains("tun", StringComparison.Ordinal)
        ? KitFile.Read(File.ReadAllText(RepositoryFile.PathOf("samples/kits/tun-and-kettle.json"))).Value!
        : BuiltInKit.LanternShed;

    private static double Told(RecipeDraft draft, string name, string headline) =>
        Forecaster.Forecast(draft.Recipe!, BuiltInKitFor(name), Foods, "test").Headline.Single(h => h.Name == headline).Band!.Likely;
}
