using Gylebook.Engine.Readouts;
using Gylebook.Forecast.Planning;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;
using Gylebook.Tests.Shared;
using static Gylebook.Forecast.Tests.Foods.SampleFoods;

namespace Gylebook.Forecast.Tests.Foods;

/// <summary>The one rule that the hold of defatted nut flour was calibrated on, held end to end through the engine.</summary>
public class SettledStarchTests(ITestOutputHelper output)
{
    // Common practice, no source: 0.9 kg of defatted nut powder at the end of the boil of 19 L leaves a little over 3.8 L behind, the
    // 1.0 to 1.5 L of an ordinary beer among them: so 2.35 to 2.85 L are the powder's.
    [Fact]
    public void Nut_powder_at_knock_out_leaves_what_the_rule_of_thumb_says()
    {
        Band powder = Effect("peanut-flour-defatted", 0.9, "knock-out", 19).SludgeLitres!;
        output.WriteLine($"{powder}");
        Assert.InRange(powder.Likely, 2.35, 2.85);
    }

    // The same rule end to end, in a hopped beer on a kit that loses nothing else: "a little over 3.8 L" is 2.35 to 2.85 L of powder and
    // 1.0 to 1.5 L of an ordinary beer. Nothing narrower can be had from the rule.
    [Fact]
    public void All_told_a_hopped_beer_leaves_what_the_rule_of_thumb_leaves()
    {
        Recipe bitter = RecipeFile.Read(File.ReadAllText(RepositoryFile.PathOf("samples/recipes/plain-bitter.json"))).Value!;
        Recipe dosed = bitter with
        {
            Package = bitter.Package with { Volume = Typed.Litres(15.5) },
            Ingredients =
            [
                .. bitter.Ingredients.Select(line => line.Kind == IngredientKind.Hop ? line with { Form = IngredientForm.Pellet } : line),
                Typed.Line(IngredientKind.Food, "peanut-flour-defatted", 0.9, AdditionPoint.KnockOut),
            ],
        };
        OneRun run = OneRun.Of(BrewPlanner.Plan(dosed, Kits.Lossless, Larder.Empty));
        output.WriteLine($"{run[BeerReadouts.CastLitres]} L cast, {run[BeerReadouts.SludgeLitres]} L left");
        Assert.Equal(19, run[BeerReadouts.CastLitres], 0.5);
        Assert.InRange(run[BeerReadouts.SludgeLitres], 2.35 + 1.0, 2.85 + 1.5);
    }

    // Insolubles 0.65 kg/kg include half the starch; without it they are less.
    [Fact]
    public void Starch_that_settles_is_taken_out_of_the_haze_and_none_is_lost()
    {
        var effect = Effect("sweetened-chocolate-puffed-corn-cereal", 1, "knock-out", 20);
        var food = OfTable("sweetened-chocolate-puffed-corn-cereal").Makeup!;
        Assert.Equal(1000 * food.Starch, effect.StarchGrams!.Likely, 1e-9);
        Assert.Equal(0.9, food.StarchThatSettles);
        // The haze that hangs is a tenth of it, less what the sludge holds back.
        Assert.InRange(effect.StarchHazeGrams!.Likely, 0.8 * 100 * food.Starch, 100 * food.Starch);
        Assert.Equal(effect.StarchGrams.Likely, effect.StarchHazeGrams.Likely + effect.StarchSettledGrams!.Likely, 1e-9);
        Assert.Equal(0, effect.StarchConvertedGrams!.Likely);
    }

    [Fact]
    public void In_the_mash_open_starch_is_converted_and_leaves_little_haze()
    {
        var mashed = Effect("sweetened-chocolate-puffed-corn-cereal", 1, "mash", 20);
        var hot = Effect("sweetened-chocolate-puffed-corn-cereal", 1, "knock-out", 20);
        Assert.True(mashed.StarchConvertedGrams!.Likely > 0.9 * mashed.StarchGrams!.Likely);
        Assert.Equal(0, mashed.StarchHazeGrams!.Likely, 1e-9);
        Assert.True(mashed.GravityPoints!.Likely > hot.GravityPoints!.Likely);
        Assert.True(mashed.SludgeLitres!.Likely < hot.SludgeLitres!.Likely);
    }
}
