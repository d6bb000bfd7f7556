using System.Text.Json;
using Gylebook.Tests.Shared;

namespace Gylebook.Cli.Tests;

/// <summary>gylebook import and export with files of the open standards.</summary>
public sealed class OpenFormatsTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("gylebook-open").FullName;

    public OpenFormatsTests() =>
        Assert.Equal(0, GylebookProgram.Run(["restore", RepositoryFile.PathOf("tests/Gylebook.Store.Tests/Books/0.1.0.sqlite"), "--book", Path("book.sqlite")]).ExitCode);

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData("beerjson")]
    [InlineData("beerxml")]
    public void A_recipe_leaves_comes_back_and_is_taken_back_again(string form)
    {
        string file = Path($"hedgerow.{form}");
        Ran left = GylebookProgram.Run(["export", RepositoryFile.PathOf("samples/recipes/hedgerow-brown.json"), "--as", form, "--out", file]);
        Assert.Equal(0, left.ExitCode);
        Assert.Contains("left ingredients[4].food: Pumpkin-seed flour", left.Errors, StringComparison.Ordinal);

        Ran came = Run("import", file);
        Assert.Equal((0, ""), (came.ExitCode, came.Errors));
        Assert.Contains("recipe \"Hedgerow Brown\" is in the book.", came.Output, StringComparison.Ordinal);
        Assert.Contains("food \"Pumpkin-seed flour, toasted, defatted\" (pumpkin-seed-flour) is in the book.", came.Output, StringComparison.Ordinal);
        Assert.Contains("gylebook import --undo takes them back", came.Output, StringComparison.Ordinal);
        string recipe = Run("export", "Hedgerow Brown").Output;
        Assert.Contains("{ \"hop\": \"Fuggle\", \"alpha\": \"4.8 %\", \"form\": \"whole\", \"amount\": \"56 g\", \"at\": \"boil 60 min\" }", recipe, StringComparison.Ordinal);

        Ran undone = Run("import", "--undo");
        Assert.Equal(0, undone.ExitCode);
        Assert.Contains("2 of the things it brought are in the bin", undone.Output, StringComparison.Ordinal);
        Assert.Equal(1, Run("export", "Hedgerow Brown").ExitCode);
        Assert.Equal(1, Run("import", "--undo").ExitCode);
    }

    [Fact]
    public void Nothing_that_stands_is_changed_and_what_was_changed_since_stays()
    {
        string file = Path("bitter.json");
        Assert.Equal(0, GylebookProgram.Run(["export", RepositoryFile.PathOf("samples/recipes/plain-bitter.json"), "--as", "beerjson", "--out", file]).ExitCode);
        Assert.Equal(0, Run("import", RepositoryFile.PathOf("samples/recipes/plain-bitter.json"), "--as", "Plain Bitter").ExitCode);
        string before = Run("export", "Plain Bitter").Output;
        Ran came = Run("import", file);
        Assert.Contains("recipe \"Plain Bitter 2\" is in the book.", came.Output, StringComparison.Ordinal);
        Assert.Equal(before, Run("export", "Plain Bitter").Output);

        string changed = Path("changed.json");
        File.WriteAllText(changed, Run("export", "Plain Bitter 2").Output.Replace("\"notes\": \"", "\"notes\": \"Mine now. ", StringComparison.Ordinal));
        Assert.Equal(0, Run("import", changed, "--replace").ExitCode);
        Ran undone = Run("import", "--undo");
        Assert.Contains("recipe \"Plain Bitter 2\" stays: it was changed", undone.Output, StringComparison.Ordinal);
        Assert.Equal(0, Run("export", "Plain Bitter 2").ExitCode);
    }

    [Fact]
    public void What_happened_on_the_way_is_told_as_json_too()
    {
        Ran ran = Run("import", RepositoryFile.PathOf("tests/Gylebook.Recipes.Tests/Standards/beerjson/examples/real/FirstWortHopAddition.json"), "--json");
        Assert.Equal((0, ""), (ran.ExitCode, ran.Errors));
        JsonElement file = JsonDocument.Parse(ran.Output).RootElement.GetProperty("files")[0];
        Assert.Equal("BeerJSON 1.0", file.GetProperty("standard").GetString());
        Assert.Equal(4, file.GetProperty("added").GetArrayLength());
        Assert.Contains(file.GetProperty("travels").EnumerateArray(), travel =>
            travel.GetProperty("did").GetString() == "converted" && travel.GetProperty("where").GetString() == "recipes[0].batch_size");
    }

    [Theory]
    [InlineData("{ \"beerjson\": { \"version\": 1.0, \"recipes\": [", 1)]
    [InlineData("{ \"beerjson\": { \"version\": 1.0, \"version\": 1.0 } }", 1)]
    [InlineData("{ \"beerjson\": { \"version\": 1.0, \"styles\": [ { \"name\": \"Any\" } ] } }", 1)]
    public void A_file_that_brings_nothing_is_told_of_and_changes_nothing(string text, int exit)
    {
        File.WriteAllText(Path("in.json"), text);
        Ran ran = Run("import", Path("in.json"));
        Assert.Equal((exit, ""), (ran.ExitCode, ran.Output));
        Assert.NotEqual("", ran.Errors);
        Assert.Equal(1, Run("import", "--undo").ExitCode);
    }

    [Fact]
    public void Words_that_do_not_go_together_are_refused()
    {
        Assert.Equal(2, Run("import").ExitCode);
        Assert.Equal(2, Run("import", "--undo", Path("in.json")).ExitCode);
        Assert.Equal(2, Run("export", "Plain Bitter", "--as", "beerjson", "--kind", "kit").ExitCode);
    }

    private string Path(string name) => System.IO.Path.Combine(_folder, name);

    private Ran Run(params string[] arguments) => GylebookProgram.Run([.. arguments, "--book", Path("book.sqlite")]);
}
