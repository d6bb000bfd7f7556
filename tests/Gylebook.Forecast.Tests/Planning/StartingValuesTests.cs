using Gylebook.Recipes.Ingredients;
using Gylebook.Tests.Shared;

namespace Gylebook.Forecast.Tests.Planning;

/// <summary>A figure that nobody reads is a second copy waiting to differ.</summary>
public sealed class StartingValuesTests
{
    [Fact]
    public void Every_figure_of_the_limit_of_attenuation_is_asked_for_by_name()
    {
        string source = string.Concat(Directory
            .EnumerateFiles(RepositoryFile.PathOf("src"), "*.cs", SearchOption.AllDirectories).Select(File.ReadAllText));
        List<string> limits = [.. StartingValues.All.Select(value => value.Id).Where(id => id.StartsWith("mash.limit.", StringComparison.Ordinal))];
        Assert.NotEmpty(limits);
        Assert.All(limits, id => Assert.Contains($"\"{id}\"", source, StringComparison.Ordinal));
    }
}
