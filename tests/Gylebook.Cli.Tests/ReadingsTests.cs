using System.Text.Json;
using Gylebook.Tests.Shared;

namespace Gylebook.Cli.Tests;

/// <summary>gylebook forecast RECIPE --readings FILE.</summary>
public sealed class ReadingsTests
{
    private static readonly string Recipe = RepositoryFile.PathOf("samples/recipes/plain-bitter.json"), Readings = RepositoryFile.PathOf("samples/readings/plain-bitter-brew-day.json");

    [Fact]
    public void The_forecast_after_readings_is_printed_with_what_was_learned_and_ways_on()
    {
        Ran ran = GylebookProgram.Run(["forecast", Recipe, "--readings", Readings, "--draws", "1000"]);
        Assert.Equal(0, ran.ExitCode);
        foreach (string said in new[] { "Readings", "Learned", "Ways on, the nearest to the plan first", "let it be", "how much boils off in an hour", "taken as it is" })
        {
            Assert.Contains(said, ran.Output, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void The_json_is_of_its_form_and_the_same_every_time()
    {
        string[] command = ["forecast", Recipe, "--readings", Readings, "--draws", "500", "--json"];
        Ran ran = GylebookProgram.Run(command);
        Assert.Empty(PublishedSchema.Objections("forecast", ran.Output));
        Assert.Equal(ran.Output, GylebookProgram.Run(command).Output);
        JsonElement told = JsonDocument.Parse(ran.Output).RootElement;
        Assert.Equal(4, told.GetProperty("readings").GetArrayLength());
        Assert.NotEqual(0, told.GetProperty("learned").GetProperty("figures").GetArrayLength());
        Assert.Contains(told.GetProperty("mends").EnumerateArray(), mend => mend.GetProperty("words").GetString() == "let it be");
    }

    [Fact]
    public void A_file_of_another_form_is_refused()
    {
        Ran ran = GylebookProgram.Run(["forecast", Recipe, "--readings", Recipe]);
        Assert.Equal(1, ran.ExitCode);
        Assert.Contains("format.wrong", ran.Output + ran.Errors, StringComparison.Ordinal);
    }
}
