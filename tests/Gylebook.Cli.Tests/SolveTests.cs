using System.Text.Json;

namespace Gylebook.Cli.Tests;

/// <summary>gylebook solve and scale: weighed for the beer wanted, and written only when it can be had.</summary>
public sealed class SolveTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("gylebook-solve-").FullName;

    [Fact]
    public void What_is_solved_is_written_and_a_forecast_of_the_file_comes_to_it()
    {
        // The flour's sheet lies beside the recipe, and so it does beside the new one.
        string folder = Path.GetDirectoryName(SampleFile.Recipe("hedgerow-brown"))!;
        Directory.CreateDirectory(Path.Combine(_folder, "foods"));
        File.Copy(Path.Combine(folder, "foods", "pumpkin-seed-flour.json"), Path.Combine(_folder, "foods", "pumpkin-seed-flour.json"));
        string written = Path.Combine(_folder, "new.json");
        Ran ran = GylebookProgram.Run(["solve", SampleFile.Recipe("hedgerow-brown"), "--for", "package=18L,og=1.054,ibu=30", "--out", written]);
        Assert.Equal((0, ""), (ran.ExitCode, ran.Errors));
        Assert.Contains("original gravity: 1.05", ran.Output, StringComparison.Ordinal);
        Assert.Contains("pumpkin seed flour: 600 g → 540 g", ran.Output, StringComparison.Ordinal);
        using JsonDocument told = JsonDocument.Parse(GylebookProgram.Run(["forecast", written, "--json", "--draws", "0"]).Output);
        JsonElement headline = told.RootElement.GetProperty("headline");
        Assert.Equal(18, headline.GetProperty("packagedLitres").GetProperty("likely").GetDouble(), 0.01);
        Assert.Equal(1.054, headline.GetProperty("originalGravity").GetProperty("likely").GetDouble(), 0.0005);
        Assert.Equal(30, headline.GetProperty("bitterness").GetProperty("likely").GetDouble(), 0.2);
    }

    [Fact]
    public void What_cannot_be_had_is_said_and_nothing_is_written()
    {
        string written = Path.Combine(_folder, "no.json");
        Ran ran = GylebookProgram.Run(["solve", SampleFile.Recipe("hedgerow-brown"), "--for", "og=1.005", "--out", written]);
        Assert.Equal(1, ran.ExitCode);
        Assert.Contains("what is not malt", ran.Errors, StringComparison.Ordinal);
        Assert.False(File.Exists(written));
    }

    [Theory]
    [InlineData("package=2OL", "--for package: 2OL: a volume is written with L")]
    [InlineData("package=0 L", "--for package: 0 L: must be above 0 L.")]
    [InlineData("ibu", "--for: ibu; must be a number and what it is of")]
    [InlineData("munch malt=10%", "nothing of that name is asked for or goes in")]
    [InlineData("munich malt=0%", "a share of the grist is above 0 % and up to 100 %")]
    [InlineData("munich malt=110%", "a share is from 0 % to 100")]
    public void A_wish_that_cannot_be_read_names_itself_and_the_limit(string wish, string said)
    {
        Ran ran = WarmProgram.Run(["solve", SampleFile.Recipe("hedgerow-brown"), "--for", wish]);
        Assert.Equal(1, ran.ExitCode);
        Assert.Contains(said, ran.Errors, StringComparison.Ordinal);
        Assert.Equal("", ran.Output);
    }

    [Fact]
    public void Scaled_for_another_kit_the_recipe_is_printed_and_what_changed_is_said_beside_it()
    {
        Ran ran = WarmProgram.Run(["scale", SampleFile.Recipe("plain-bitter"), "--kit", SampleFile.Kit("big-pot"), "--for", "package=8L"]);
        Assert.True(ran.ExitCode == 0, ran.Errors);
        using JsonDocument recipe = JsonDocument.Parse(ran.Output);
        Assert.Equal("8L", recipe.RootElement.GetProperty("package").GetProperty("volume").GetString());
        Assert.Contains("bitterness:", ran.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_has_what_changed_what_came_of_it_and_how_often_the_package_is_full()
    {
        Ran ran = WarmProgram.Run(["solve", SampleFile.Recipe("plain-bitter"), "--for", "package=15L", "--confidence", "90", "--json"]);
        Assert.True(ran.ExitCode == 0, ran.Errors + ran.Output);
        using JsonDocument told = JsonDocument.Parse(ran.Output);
        Assert.True(told.RootElement.GetProperty("met").GetBoolean());
        Assert.Equal(0.9, told.RootElement.GetProperty("confident").GetProperty("fullShare").GetDouble(), 0.006);
        Assert.True(told.RootElement.GetProperty("confident").GetProperty("plannedLitres").GetDouble() > 15);
        Assert.NotEmpty(told.RootElement.GetProperty("changes").EnumerateArray());
    }

    [Theory]
    [InlineData("0")]
    [InlineData("100")]
    [InlineData("often")]
    public void A_confidence_that_is_none_is_refused(string confidence) => Assert.Contains(
        "must be from 1 to 99", WarmProgram.Run(["solve", SampleFile.Recipe("plain-bitter"), "--for", "package=15L", "--confidence", confidence]).Errors, StringComparison.Ordinal);

    public void Dispose() => Directory.Delete(_folder, recursive: true);
}
