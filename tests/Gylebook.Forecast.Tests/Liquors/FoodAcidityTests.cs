using Gylebook.Forecast.Liquors;
using Gylebook.Forecast.Planning;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes.Liquors;
using Gylebook.Tests.Shared;

namespace Gylebook.Forecast.Tests.Liquors;

/// <summary>A food of measured pH and buffer in the mash of a recipe.</summary>
public sealed class FoodAcidityTests
{
    private static readonly WaterPlan Still = Plans.Read("\"sources\": [ { \"name\": \"still\", \"distilled\": true } ]");

    /// <summary>In distilled water the mash is where the buffers' pull is even: Σ m b (pH − pH of each) = 0, so the food's part can be worked out by hand.</summary>
    [Fact]
    public void A_measured_food_pulls_the_mash_by_its_buffer_and_is_no_longer_left_out()
    {
        WaterOutcome without = Treated("");
        WaterOutcome with = Treated("\"acidity\": { \"distilledPh\": 4.5, \"buffer\": 90 },");
        Assert.Contains(without.Cautions, caution => caution.Code == "mashPh.unmeasured");
        Assert.DoesNotContain(with.Cautions, caution => caution.Code == "mashPh.unmeasured");

        // 3.6 kg and 0.5 kg at 45, 0.3 kg of caramel at 45, 0.1 kg of chocolate at 60; 0.6 kg of the food at 90.
        double grist = ((3.6 + 0.5 + 0.3) * 45) + (0.1 * 60), food = 0.6 * 90;
        double byHand = ((grist * without.MashPh!.Likely) + (food * 4.5)) / (grist + food);

        // Water itself carries 0.003 mEq/L of free acid at pH 5.5, 0.1 mEq of all: less than 0.001 pH.
        Near.Equal(byHand, with.MashPh!.Likely, 0.001);
    }

    private static WaterOutcome Treated(string acidity)
    {
        string recipe = File.ReadAllText(RepositoryFile.PathOf("samples/recipes/hedgerow-brown.json"));
        string sheet = File.ReadAllText(RepositoryFile.PathOf("samples/recipes/foods/pumpkin-seed-flour.json"))
            .Replace("\"assume\":", $"{acidity} \"assume\":", StringComparison.Ordinal);
        FoodMakeup food = FoodMakeups.From(FoodFile.Read(sheet).Value!).Makeup!;
        BrewPlan planned = BrewPlanner.Plan(RecipeFile.Read(recipe).Value!, Kits.Whole, Larder.OfFoods(food));
        return WaterTreatment.Of(Still, LiquorNeed.Of(planned)!);
    }
}
