using System.Text.RegularExpressions;
using Gylebook.Engine.Parameters;
using Gylebook.Engine.Running;
using Gylebook.Forecast.Planning;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;
using Gylebook.Tests.Shared;

namespace Gylebook.Forecast.Tests.Planning;

/// <summary>Every uncertain figure of every sample has an id, a source and a width or an honest none, from the one file.</summary>
public sealed class ParameterTests
{
    private static readonly Regex LotNumber = new(@"\.\d+$");

    public static TheoryData<string> Samples() => [.. Directory
        .EnumerateFiles(RepositoryFile.PathOf("samples/recipes"), "*.json", SearchOption.AllDirectories)
        .Where(file => Path.GetFileName(Path.GetDirectoryName(file)) is not ("foods" or "larder"))
        .Select(file => Path.GetRelativePath(RepositoryFile.PathOf("samples/recipes"), file)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Samples))]
    public void Each_has_a_prior_of_its_own_id_and_no_value_in_it(string sample)
    {
        RunPlan? plan = Plan(sample);
        Parameter[] parameters = plan?.Parameters ?? [];
        Assert.All(parameters, parameter =>
        {
            string id = LotNumber.Replace(parameter.Id, "");
            Assert.True(Known(id), $"{id} has no row in data/priors.csv");
            Assert.False(Regex.IsMatch(id, @"\d\.\d"), $"{id} carries a value");
            Assert.True(ParameterWords.Of(parameter.Id) is { Length: > 0 } words && !words.Contains('{'), $"{id} has no words in data/parameter-words.csv");
            Assert.NotEmpty(parameter.Unit);
            Assert.NotEmpty(parameter.Source);
            Assert.NotEmpty(parameter.Status);
        });
        Assert.Equal(parameters.Length, parameters.DistinctBy(p => p.Id).Count());
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void The_middle_of_each_prior_is_the_stored_value_to_the_last_bit(string sample)
    {
        foreach (Parameter parameter in Plan(sample)?.Parameters ?? [])
        {
            if (parameter.Prior is Prior.Spread spread)
            {
                Assert.Equal(
                    BitConverter.DoubleToInt64Bits(parameter.Median),
                    BitConverter.DoubleToInt64Bits(spread.Between.About(parameter.Median).Quantile(0.5)));
            }
        }
    }

    [Fact]
    public void A_label_makes_its_figures_as_wide_as_its_ends()
    {
        FoodMakeup flour = FoodMakeups.From(FoodFile.Read(File.ReadAllText(RepositoryFile.PathOf("samples/recipes/foods/pumpkin-seed-flour.json"))).Value!).Makeup!;
        Recipe recipe = RecipeFile.Read(File.ReadAllText(RepositoryFile.PathOf("samples/recipes/hedgerow-brown.json"))).Value!;
        RunPlan plan = BrewPlanner.Plan(recipe, Kits.Sample("lantern-shed"), Larder.OfFoods(flour)).Plan!;
        Parameter fat = plan.Parameters.Single(p => p.Id == $"food.{flour.Id}.fat");
        Prior.Label label = Assert.IsType<Prior.Label>(fat.Prior);
        Assert.Equal(flour.LabelEnds.Min(end => end.Fat), label.Low);
        Assert.Equal(flour.LabelEnds.Max(end => end.Fat), label.High);
        Assert.InRange(fat.Median, label.Low, label.High);
    }

    // The table of gas left in a beer ends at 22 °C.
    [Theory]
    [InlineData(19, "seen")]
    [InlineData(22, "seen")]
    [InlineData(23, "computed")]
    public void Residual_gas_beyond_its_table_says_so(double celsius, string status)
    {
        Recipe recipe = RecipeFile.Read(File.ReadAllText(RepositoryFile.PathOf("samples/recipes/plain-bitter.json"))).Value!;
        Recipe warm = recipe with { Ferment = [Typed.Days(celsius, 14)] };
        Parameter gas = BrewPlanner.Plan(warm, Kits.Sample("lantern-shed"), Larder.Empty).Plan!.Parameters.Single(p => p.Id == "ferment.residualGas");
        Assert.Equal(status, gas.Status);
        Assert.Equal(status == "computed", gas.Source.Contains("Weiss", StringComparison.Ordinal));
    }

    /// <summary>Of any kind: which kind a sample's own is, the lay-out knows.</summary>
    private static bool Known(string id) => Priors.All.Any(row => row.Level == PriorLevel.Between && Fits(row.Id, id));

    private static bool Fits(string pattern, string id) =>
        Regex.IsMatch(id, "^" + string.Join(@"\.", pattern.Split('.').Select(part => part == "*" ? "[^.]+" : Regex.Escape(part))) + "$");

    internal static RunPlan? Plan(string sample)
    {
        Recipe recipe = RecipeFile.Read(File.ReadAllText(RepositoryFile.PathOf("samples/recipes/" + sample))).Value!;
        return BrewPlanner.Plan(recipe, Kits.Sample("lantern-shed"), Larder.OfFoods(OwnFoods.Values)).Plan;
    }

    private static readonly Dictionary<string, FoodMakeup> OwnFoods = Directory
        .EnumerateFiles(RepositoryFile.PathOf("samples"), "*.json", SearchOption.AllDirectories)
        .Where(file => Path.GetFileName(Path.GetDirectoryName(file)) == "foods")
        .Select(file => FoodFile.Read(File.ReadAllText(file)).Value!)
        .ToDictionary(food => food.Id, food => FoodMakeups.From(food).Makeup!, StringComparer.Ordinal);
}
