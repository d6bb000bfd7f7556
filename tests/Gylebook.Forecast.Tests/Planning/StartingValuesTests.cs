using Gylebook.Forecast.Report;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Tests.Shared;

namespace Gylebook.Forecast.Tests.Planning;

/// <summary>A figure that nobody reads is a second copy waiting to differ.</summary>
public sealed class StartingValuesTests
{
    // No test asks for one by its id: what is asked here, the program asked.
    [Fact]
    public void Every_starting_value_is_asked_for_when_the_samples_are_forecast()
    {
        Kit kit = BuiltInKit.New("House");
        foreach (string sample in ParameterTests.Samples().Select(row => row.Data))
        {
            Recipe recipe = RecipeFile.Read(File.ReadAllText(RepositoryFile.PathOf("samples/recipes/" + sample))).Value!;
            foreach (SpargeMethod method in Enum.GetValues<SpargeMethod>())
            {
                Forecaster.Forecast(Rinsed(recipe, method), kit, Larder.Empty, sample);
            }
        }

        Assert.NotEmpty(StartingValues.All);
        Assert.Empty(StartingValues.All.Select(row => row.Id).Except(StartingValues.Asked));
    }

    private static Recipe Rinsed(Recipe recipe, SpargeMethod method) =>
        recipe.Mash is { } mash ? recipe with { Mash = mash with { Sparge = mash.Sparge with { Method = method } } } : recipe;
}
