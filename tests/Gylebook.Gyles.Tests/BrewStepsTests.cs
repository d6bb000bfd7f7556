using Gylebook.Forecast.Report;
using Gylebook.Gyles.BrewDay;
using Gylebook.Gyles.Plans;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes.Liquors;
using Gylebook.Tests.Shared;

namespace Gylebook.Gyles.Tests;

/// <summary>Brew day laid out: every line once, every minute of the boil, every hazard at its step.</summary>
public sealed class BrewStepsTests
{
    private static readonly string[] Recipes = ["plain-bitter", "chestnut-mild", "hedgerow-brown", "apricot-cardamom-wheat"];
    private static readonly string[] KitNames = ["lantern-shed", "tun-and-kettle", "big-pot", "long-hose"];

    public static TheoryData<string, string> Brews()
    {
        TheoryData<string, string> all = [];
        foreach (string recipe in Recipes)
        {
            foreach (string kit in KitNames)
            {
                all.Add(recipe, kit);
            }
        }

        return all;
    }

    [Theory]
    [MemberData(nameof(Brews))]
    public void Every_line_up_to_the_pitch_is_weighed_out_once_and_keys_are_keys(string recipe, string kit)
    {
        (GyleInputs inputs, GylePlan? plan) = Frozen(recipe, kit);
        if (plan is null)
        {
            // A bag's recipe on a kit without a bag: the forecast says so, and nothing starts.
            Assert.Contains(Forecast(inputs).Findings, finding => finding.Severity == Severity.Error);
            return;
        }

        Assert.Distinct(plan.Steps.Select(step => step.Key));
        string[] items = [.. plan.Steps.SelectMany(step => step.Items).Select(item => item.Key)];
        Assert.Distinct(items);
        string[] brewDay = [.. inputs.Recipe.Ingredients.Index().Where(entry => entry.Item.At.Point <= AdditionPoint.Pitch && !entry.Item.Amount.IsNothing).Select(entry => $"line-{entry.Index + 1}")];
        Assert.Equal(brewDay.Order(), items.Where(item => item.StartsWith("line-", StringComparison.Ordinal)).Where(item => int.Parse(item["line-".Length..]) <= inputs.Recipe.Ingredients.Count).Order());
        Assert.Equal(
            inputs.Recipe.Boil?.Time.Value.Minutes ?? 0,
            plan.Steps.Where(step => step.Key.StartsWith("boil-", StringComparison.Ordinal)).Sum(step => step.Minutes ?? 0), 1e-9);
        Assert.Equal(
            inputs.Recipe.Mash?.Rests.Sum(rest => rest.Time.Value.Minutes) ?? 0,
            plan.Steps.Where(step => step.Key.StartsWith("rest-", StringComparison.Ordinal)).Sum(step => step.Minutes ?? 0), 1e-9);
    }

    [Theory]
    [MemberData(nameof(Brews))]
    public void Every_caution_of_brew_day_that_can_hurt_stands_at_a_step(string recipe, string kit)
    {
        (GyleInputs inputs, GylePlan? plan) = Frozen(recipe, kit);
        if (plan is null)
        {
            return;
        }

        string[] told = [.. plan.Steps.SelectMany(step => step.Cautions).Select(caution => caution.Message)];
        Assert.All(
            Forecast(inputs).Cautions.Where(caution => caution.Severity >= Severity.Warning && caution.Place <= Engine.State.Place.Pitch),
            caution => Assert.Contains(caution.Message, told));
    }

    [Fact]
    public void Water_for_a_degree_is_what_a_heat_balance_says()
    {
        (_, GylePlan? plan) = Frozen("plain-bitter", "lantern-shed");
        StepTrouble cold = plan!.Steps.First(step => step.Key == "strike").IfWrong.First(trouble => trouble.If == "Too cold");

        // 3.85 kg of grain at 1.7 kJ/kg/K and the strike of the plan at 4.18 (docs/science/mash-heat.md), a degree at 66 °C, from water that boils near 99.5 °C.
        double strike = double.Parse(plan.Steps.First(step => step.Key == "heat").Say.Split(' ')[2], System.Globalization.CultureInfo.InvariantCulture);
        double litres = ((3.85 * 1.7) + (strike * 4.17)) / (4.18 * (99.5 - 66));
        Assert.Equal(litres, double.Parse(cold.Do.Split("stir in ")[1].Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture), 0.08);
    }

    [Fact]
    public void With_a_water_plan_salts_and_acid_are_weighed_before_the_heat()
    {
        WaterPlan water = WaterFile.Read(File.ReadAllText(RepositoryFile.PathOf("samples/water/hard-well.json"))).Value!;
        (_, GylePlan? plan) = Frozen("plain-bitter", "lantern-shed", water);
        string[] keys = [.. plan!.Steps.Select(step => step.Key)];
        Assert.True(Array.IndexOf(keys, "salts") < Array.IndexOf(keys, "heat"));
        Assert.NotEmpty(plan.Steps.First(step => step.Key == "salts").Items);
    }

    [Fact]
    public void Cleaner_and_sanitiser_stay_on_as_the_kit_says_and_where_it_says_nothing_as_the_label_does()
    {
        // samples/kits/lantern-shed.json: a cleaner that stays on for 20 min, a sanitiser for 2 min; long-hose.json says nothing.
        BrewStep[] known = [.. Frozen("plain-bitter", "lantern-shed").Plan!.Steps], unknown = [.. Frozen("plain-bitter", "long-hose").Plan!.Steps];
        BrewStep sanitise = known.Single(step => step.Key == "sanitise"), clean = known.Single(step => step.Key == "clean");
        Assert.Equal((2.0, 20.0), (sanitise.Minutes, clean.Minutes));
        Assert.Contains("leave the cleaner on for 20 min", clean.Say, StringComparison.Ordinal);
        Assert.Contains("wet with the sanitiser for 2 min", sanitise.Say, StringComparison.Ordinal);
        Assert.True(Array.IndexOf(known, sanitise) < Array.FindIndex(known, step => step.Key == "chill") && clean == known[^1]);

        Assert.DoesNotContain(unknown, step => step.Key == "sanitise");
        Assert.Null(unknown[^1].Minutes);
        Assert.Contains("sanitise for as long as the product's own label says", unknown[^1].Say, StringComparison.Ordinal);
        Assert.All([clean, unknown[^1]], step => Assert.Contains("Never mix cleaners", step.Say, StringComparison.Ordinal));
    }

    internal static (GyleInputs Inputs, GylePlan? Plan) Frozen(string recipe, string kit, WaterPlan? water = null)
    {
        string text = File.ReadAllText(RepositoryFile.PathOf($"samples/recipes/{recipe}.json")), kitText = File.ReadAllText(RepositoryFile.PathOf($"samples/kits/{kit}.json"));
        Larder larder = new(Directory.GetFiles(RepositoryFile.PathOf("samples/recipes/foods"), "*.json").Order().Select(file => FoodFile.Read(File.ReadAllText(file)).Value!));
        GyleInputs inputs = new(RecipeFile.Read(text).Value!, KitFile.Read(kitText).Value!, larder, water);
        return (inputs, inputs.Freeze("test", 1, DateTimeOffset.UnixEpoch, new GyleFiles(text, kitText, null, [.. larder.Sheets.Select(LarderFile.Write)])).Plan);
    }

    private static BrewForecast Forecast(GyleInputs inputs) => inputs.Forecast("test", []);
}
