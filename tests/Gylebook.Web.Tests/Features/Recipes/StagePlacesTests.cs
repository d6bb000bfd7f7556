using Gylebook.Engine.State;
using Gylebook.Forecast.Report;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Liquors;
using Gylebook.Tests.Shared;
using Gylebook.Web.Features.Recipes.Showing;

namespace Gylebook.Web.Tests.Features.Recipes;

/// <summary>A caution stands at the step that needs it: on every sample recipe, kit and water.</summary>
public sealed class StagePlacesTests
{
    private static readonly Kit[] Kits = [.. Samples("kits").Select(path => KitFile.Read(File.ReadAllText(path)).Value!)];
    private static readonly WaterPlan?[] Waters = [null, .. Samples("water").Select(path => WaterFile.Read(File.ReadAllText(path)).Value!)];

    private static readonly Larder Beside = new(Samples("recipes/foods").Concat(Samples("recipes/edges/foods")).Select(path => FoodFile.Read(File.ReadAllText(path)).Value!));

    public static TheoryData<string> Recipes() => [.. Samples("recipes").Concat(Samples("recipes/edges")).Select(path => Path.GetRelativePath(RepositoryFile.PathOf("samples"), path))];

    [Theory]
    [MemberData(nameof(Recipes))]
    public async Task Cautions_come_in_the_order_of_the_page(string name)
    {
        Recipe recipe = RecipeFile.Read(await File.ReadAllTextAsync(RepositoryFile.PathOf(Path.Combine("samples", name)), Xunit.TestContext.Current.CancellationToken)).Value!;
        foreach ((Kit kit, WaterPlan? water) in Kits.SelectMany(kit => Waters.Select(water => (kit, water))))
        {
            BrewForecast forecast = Forecaster.Forecast(recipe, kit, Beside, "samples", water);
            RecipeStage[] stages = [.. forecast.Cautions.Select(caution => StagePlaces.Of(caution.Place.Stage))];
            Assert.Equal(stages.Order(), stages);
            Assert.True(forecast.Stages.Count == 0 || stages.Length > 0, "A brew without any caution.");
            Assert.True(forecast.Cautions.Count(caution => caution.Code == "scald.liquor") <= 1);
        }
    }

    [Fact]
    public void The_chiller_scalds_where_the_wort_is_chilled() =>
        Assert.Equal(RecipeStage.KnockOut, StagePlaces.Of(Stage.Chill));

    private static IEnumerable<string> Samples(string folder) =>
        Directory.EnumerateFiles(RepositoryFile.PathOf(Path.Combine("samples", folder)), "*.json").Order(StringComparer.Ordinal);
}
