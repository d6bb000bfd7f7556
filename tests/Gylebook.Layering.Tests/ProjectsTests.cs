using System.Xml.Linq;

namespace Gylebook.Layering.Tests;

/// <summary>Who may know whom.</summary>
public sealed class ProjectsTests
{
    // Each may refer to those before it, and to nobody after. A new project finds its place here first.
    private static readonly string[] Order =
    [
        "Gylebook.Science", "Gylebook.Engine", "Gylebook.Recipes", "Gylebook.Forecast", "Gylebook.Gyles", "Gylebook.Store",
        "Gylebook.Store.Sqlite", "Gylebook.Store.Postgres", "Gylebook.Pictures", "Gylebook.Site", "Gylebook.Reader", "Gylebook.Web", "Gylebook",
    ];

    public static TheoryData<string> Projects() => [.. House.Projects.Keys.Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Projects))]
    public void References_point_one_way(string project)
    {
        int place = Array.IndexOf(Order, project);
        Assert.True(place >= 0, $"{project} has no place in the order yet.");
        Assert.All(House.ReferencesOf(project), reference =>
            Assert.True(Array.IndexOf(Order, reference) is >= 0 and int other && other < place, $"{project} must not refer to {reference}."));
    }

    [Fact]
    public void Pictures_do_not_know_the_store()
    {
        if (House.Projects.ContainsKey("Gylebook.Pictures"))
        {
            Assert.DoesNotContain(House.ReferencesOf("Gylebook.Pictures"), name => name.StartsWith("Gylebook.Store", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Science_refers_to_no_project_and_no_package()
    {
        Assert.Empty(House.ReferencesOf("Gylebook.Science"));
        Assert.Empty(House.Items("Gylebook.Science", "PackageReference"));
    }

    [Fact]
    public void What_every_project_gets_is_an_analyser_that_stays_private()
    {
        XDocument targets = XDocument.Load(Path.Combine(House.Root, "Directory.Build.targets"));
        XElement[] everywhere = [.. targets.Descendants("ItemGroup")
            .Where(group => group.Attribute("Condition")?.Value != "'$(IsTestProject)' == 'true'")
            .Elements("PackageReference")];
        Assert.NotEmpty(everywhere);
        Assert.All(everywhere, package =>
        {
            Assert.Matches("Analyzers?$", package.Attribute("Include")!.Value);
            Assert.Equal("all", package.Attribute("PrivateAssets")?.Value);
        });
    }

    [Fact]
    public void Every_project_is_in_the_solution()
    {
        string[] listed = [.. XDocument.Load(Path.Combine(House.Root, "Gylebook.slnx")).Descendants("Project")
            .Select(item => Path.GetFullPath(Path.Combine(House.Root, item.Attribute("Path")!.Value)))];
        string[] found = [.. new[] { "src", "tests" }.SelectMany(folder =>
            Directory.EnumerateFiles(Path.Combine(House.Root, folder), "*.csproj", SearchOption.AllDirectories))];
        Assert.NotEmpty(found);
        Assert.Empty(found.Except(listed));
    }
}
