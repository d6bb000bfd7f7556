namespace Gylebook.Layering.Tests;

/// <summary>Folders within a project point one way, and the drawing of them is what the compiler saw.</summary>
public sealed class RoomsTests
{
    private const string Begin = "<!-- rooms: written by RoomsTests, GYLEBOOK_APPROVE=1 writes them anew -->\n```text\n";
    private const string End = "```\n<!-- end of rooms -->";

    /// <summary>Projects whose folders still reach each other in circles, and who puts them in order.</summary>
    private static readonly Dictionary<string, string> NotYet = new(StringComparer.Ordinal)
    {
        ["Gylebook.Recipes"] = "issue 13",
        ["Gylebook.Store"] = "issue 13",
        ["Gylebook.Store.Sqlite"] = "issue 13",
        ["Gylebook.Web"] = "issue 13",
    };

    /// <summary>Single steps that still point back, with what it takes to turn them.</summary>
    private static readonly (string Project, string From, string To, string Why)[] Back =
    [
        ("Gylebook.Science", "Quantities", "Liquids", "the table of units goes from SG to °P by the curve of sucrose; the curve has twins in quantities"),
        ("Gylebook.Science", "Foods/Labels/Rounding", "Foods/Labels", "the rounding rules ask which line of a label it is"),
    ];

    public static TheoryData<string> InOrder() =>
        [.. House.Projects.Keys.Where(project => !NotYet.ContainsKey(project)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(InOrder))]
    public void Folders_point_one_way(string project)
    {
        Rooms rooms = Rooms.Of(project);
        Assert.NotEmpty(rooms.Known);
        foreach ((_, string from, string to, _) in Back.Where(step => step.Project == project))
        {
            Assert.True(rooms.Known[from].Remove(to), $"{from} no longer knows {to}: it need not be put off.");
        }

        string? circle = rooms.Circle();
        Assert.True(circle is null, circle);
    }

    [Fact]
    public void What_is_put_off_is_a_project_of_ours() => Assert.All(NotYet.Keys, project => Assert.Contains(project, House.Projects.Keys));

    [Fact]
    public void Rooms_are_seen_through_signatures_and_bodies()
    {
        Rooms forecast = Rooms.Of("Gylebook.Forecast");
        Assert.Contains("Planning", forecast.Known["Report"].Keys);
        Assert.Contains("Report/Labels", forecast.Known["Json"].Keys);
    }

    [Fact]
    public void A_circle_is_told_with_its_way()
    {
        Rooms rooms = new("House", new(StringComparer.Ordinal)
        {
            ["A"] = new(StringComparer.Ordinal) { ["B"] = "a uses b" },
            ["B"] = new(StringComparer.Ordinal) { ["C"] = "b uses c", ["D"] = "b uses d" },
            ["C"] = new(StringComparer.Ordinal) { ["B"] = "c uses b" },
            ["D"] = new(StringComparer.Ordinal),
        });
        Assert.Equal("House: B → C (b uses c) → B (c uses b)", rooms.Circle());
    }

    [Fact]
    public void The_drawing_in_the_guide_is_the_house()
    {
        string path = Path.Combine(House.Root, "CONTRIBUTING.md");
        string page = File.ReadAllText(path);
        int from = page.IndexOf(Begin, StringComparison.Ordinal) + Begin.Length, to = page.IndexOf(End, StringComparison.Ordinal);
        Assert.True(from >= Begin.Length && to >= from, "CONTRIBUTING.md has no place for the rooms.");
        string drawn = string.Join('\n', new[] { "Gylebook.Science", "Gylebook.Engine", "Gylebook.Forecast", "Gylebook.Pictures", "Gylebook" }
            .Select(project => Rooms.Of(project).Drawing()));
        if (Environment.GetEnvironmentVariable("GYLEBOOK_APPROVE") == "1")
        {
            File.WriteAllText(path, page[..from] + drawn + page[to..]);
            page = File.ReadAllText(path);
            to = page.IndexOf(End, StringComparison.Ordinal);
        }

        Assert.Equal(drawn, page[from..to]);
    }
}
