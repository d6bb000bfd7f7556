using System.Text.Json.Nodes;
using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Forecast.Report;
using Gylebook.Gyles.BrewDay;
using Gylebook.Gyles.Days;
using Gylebook.Gyles.Plans;
using Gylebook.Gyles.Portions;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;

namespace Gylebook.Gyles.Tests.Portions;

/// <summary>What hands change after the pitch counts as if the recipe had said so: the same brew, typed as a recipe, is what it is held against.</summary>
public sealed class AsBrewedTests
{
    private static readonly DateTimeOffset Pitched = new(2026, 11, 20, 18, 0, 0, TimeSpan.Zero);
    private static readonly (GyleInputs Inputs, GylePlan? Plan) Bitter = BrewStepsTests.Frozen("plain-bitter", "lantern-shed");

    private static readonly BrewAction Pitch = Do(0, ActionKind.Done) with { Step = BrewSteps.PitchKey };
    private static readonly BrewAction Halves = Do(2, ActionKind.Divided) with { Detail = Division.Write([new("on fruit", 0.5), new("plain", 0.5)]) };

    [Fact]
    public void Nothing_changed_is_the_plan_itself() =>
        Assert.Equal(RecipeFile.Write(Bitter.Inputs.Recipe), RecipeFile.Write(AsBrewed.Of(Bitter.Plan!, Log(Pitch))!.Recipe));

    [Fact]
    public void Halves_of_one_beer_are_alike_and_together_all_of_it()
    {
        GyleInputs divided = AsBrewed.Of(Bitter.Plan!, Log(Pitch, Halves))!;
        Assert.Equal(["on fruit", "plain"], divided.Recipe.Portions.Select(portion => portion.Name));
        BrewForecast forecast = divided.Forecast("x", []), whole = Bitter.Inputs.Forecast("x", []);
        PortionView[] halves = [.. Division.ByHand(Log(Pitch, Halves)).Names.Select(name => PortionView.Of(forecast, Division.ByHand(Log(Pitch, Halves)), name))];

        // Of the package each vessel keeps its own loss, so the halves are held against each other there, and against the whole up to the racking.
        Assert.All(halves, half => Assert.Equal(Likely(whole, BeerReadouts.FinalGravity), PortionView.Band(forecast, half.FinalGravity)!.Likely, 1e-9));
        Assert.Equal(halves[0].Litres(forecast)!.Likely, halves[1].Litres(forecast)!.Likely, 1e-9);
        Assert.Equal(Likely(forecast, BeerReadouts.PackagedLitres), halves.Sum(half => half.Litres(forecast)!.Likely), 1e-9);
        Assert.Equal(Cast(whole), halves.Sum(half => half.CastLitres(forecast)), 1e-9);
    }

    [Fact]
    public void What_is_put_into_one_half_is_the_line_of_a_recipe_that_names_it()
    {
        BrewAction honey = Given(3.5, new GivenAddition(IngredientKind.Food, "honey", "400 g")) with { Portion = "on fruit" };
        Recipe brewed = AsBrewed.Of(Bitter.Plan!, Log(Pitch, Halves, honey))!.Recipe;

        JsonNode typed = JsonNode.Parse(Bitter.Plan!.Recipe)!;
        typed["liquor"] = new JsonObject { ["strike"] = Invariant($"{Strike:0.##########} L") };
        typed["portions"] = JsonNode.Parse("""[{ "name": "on fruit", "share": "50 %", "from": "cast" }, { "name": "plain", "share": "50 %", "from": "cast" }]""");
        typed["ingredients"]!.AsArray().Add(JsonNode.Parse("""{ "food": "honey", "amount": "400 g", "at": "ferment day 3", "portion": "on fruit" }"""));
        Recipe recipe = RecipeFile.Read(typed.ToJsonString()).Value!;
        BrewForecast one = (Bitter.Inputs with { Recipe = brewed }).Forecast("x", []), other = (Bitter.Inputs with { Recipe = recipe }).Forecast("x", []);
        Assert.Equal(other.Headline.Select(headline => headline.Band), one.Headline.Select(headline => headline.Band));

        Division halves = Division.ByHand(Log(Pitch, Halves));
        Assert.True(Likely(one, PortionView.Of(one, halves, "on fruit").OriginalGravity) > Likely(one, PortionView.Of(one, halves, "plain").OriginalGravity) + 0.01);
    }

    [Fact]
    public void What_is_left_out_of_the_fermenter_is_no_line_and_a_day_taken_up_again_is()
    {
        (GyleInputs inputs, GylePlan? plan) = BrewStepsTests.Frozen("hedgerow-brown", "lantern-shed");
        IngredientLine honey = inputs.Recipe.Ingredients.First(line => line.At.Point == AdditionPoint.Ferment);
        BrewAction skipped = Do(3, ActionKind.Skipped) with { Step = GyleDays.KeyOf(honey.At.Count) };
        Recipe without = AsBrewed.Of(plan!, Log(Pitch, skipped))!.Recipe;
        Assert.Equal(inputs.Recipe.Ingredients.Count - inputs.Recipe.Ingredients.Count(line => line.At == honey.At), without.Ingredients.Count);
        Assert.Equal(inputs.Recipe.Ingredients.Count, AsBrewed.Of(plan!, Log(Pitch, skipped, skipped with { EntryId = Guid.NewGuid(), Kind = ActionKind.Reopened }))!.Recipe.Ingredients.Count);

        // Left out of one half alone, it goes into the other.
        Recipe half = AsBrewed.Of(plan!, Log(Pitch, Halves, skipped with { Portion = "plain" }))!.Recipe;
        Assert.Equal("on fruit", half.Ingredients.First(line => line.At == honey.At).Portion);
    }

    [Theory]
    [InlineData("a lot", "amount")]
    [InlineData("-3 g", "amount")]
    public void A_wrong_amount_is_named(string amount, string where) =>
        Assert.Equal(where, Assert.Single(AsBrewed.Wrong(Bitter.Plan!, Log(Pitch), Given(1, new GivenAddition(IngredientKind.Food, "honey", amount)))).Where);

    [Fact]
    public void Shares_are_all_of_the_beer_and_names_differ()
    {
        GyleLog log = Log(Pitch);
        string? Wrong(params DividedPortion[] wanted) => Division.None.Wrong(wanted, log);
        Assert.Null(Wrong(new("a", 0.5), new("b", 0.5)));
        Assert.Contains("must be 100 %", Wrong(new("a", 0.5), new("b", 0.4)), StringComparison.Ordinal);
        Assert.Contains("names two portions", Wrong(new("a", 0.5), new("A", 0.5)), StringComparison.Ordinal);
        Assert.Contains("from 2 to 24", Wrong(new DividedPortion("a", 1)), StringComparison.Ordinal);
        Assert.Contains("above 0 and below 100", Wrong(new("a", 0), new("b", 1)), StringComparison.Ordinal);
        Assert.Contains("each portion needs a name", Wrong(new(" ", 0.5), new("b", 0.5)), StringComparison.Ordinal);
        Assert.Contains("yeast is not in yet", Division.None.Wrong([new("a", 0.5), new("b", 0.5)], Log()), StringComparison.Ordinal);
        Assert.Contains("divided already", Division.ByHand(Log(Pitch, Halves)).Wrong([new("a", 0.5), new("b", 0.5)], log), StringComparison.Ordinal);
        Assert.Contains("entries of their own", Division.ByHand(Log(Pitch, Halves)).Kept(Log(Pitch, Halves, Do(4, ActionKind.Said) with { Portion = "plain" })), StringComparison.Ordinal);
        Assert.Null(Division.ByHand(Log(Pitch, Halves)).Kept(Log(Pitch, Halves)));
    }

    private static double Strike => Forecaster.Plan(Bitter.Inputs.Recipe, Bitter.Inputs.Kit, Bitter.Inputs.Larder, Bitter.Inputs.Water).Brew.Plan!.Liquors[0] / Wort.WaterKilogramsPerLitre;

    private static double Cast(BrewForecast forecast) => forecast.Stages.First(stage => stage.Stage == Stage.Cast).LitresAt20C;

    private static double Likely(BrewForecast forecast, Readout readout) => PortionView.Band(forecast, readout)!.Likely;

    private static BrewAction Given(double days, GivenAddition what) => Do(days, ActionKind.Given) with { Detail = what.Write(), What = what.Of };

    private static GyleLog Log(params BrewAction[] actions) => new(Bitter.Plan!.Steps, actions, []);

    private static BrewAction Do(double days, ActionKind kind) => new() { At = Pitched.AddDays(days), EntryId = Guid.NewGuid(), Kind = kind, What = "" };
}
