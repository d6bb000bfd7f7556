namespace Gylebook.Store.Tests;

public sealed class LocationTests
{
    private static string Root { get; } = Path.GetFullPath(Path.Combine(Path.GetTempPath(), "somewhere"));

    [Fact]
    public void The_file_given_by_hand_wins() =>
        Assert.Equal(Path.GetFullPath("mine.sqlite"), Find("mine.sqlite", (BookLocation.Variable, "other.sqlite")));

    [Fact]
    public void Then_the_one_the_environment_names() =>
        Assert.Equal(
            Path.Combine(Root, "other.sqlite"),
            Find(" ", (BookLocation.Variable, Path.Combine(Root, "other.sqlite")), ("XDG_DATA_HOME", Root)));

    [Fact]
    public void Then_the_data_folder_that_is_set() =>
        Assert.Equal(Path.Combine(Root, "gylebook", "book.sqlite"), Find(null, ("XDG_DATA_HOME", Root)));

    [Fact]
    public void A_relative_data_folder_is_passed_over_as_the_specification_says() =>
        Assert.Equal(Find(null), Find(null, ("XDG_DATA_HOME", "relative")));

    [Fact]
    public void Else_the_systems_own_place()
    {
        string file = Find(null);

        Assert.True(Path.IsPathFullyQualified(file));
        Assert.EndsWith(Path.Combine("gylebook", "book.sqlite"), file, StringComparison.Ordinal);
    }

    private static string Find(string? given, params (string Name, string Value)[] environment) =>
        BookLocation.Find(given, name => environment.FirstOrDefault(entry => entry.Name == name).Value);
}
